/** Many roots in one run: read and checked side by side, with the same result as one by one. */
@NullMarked
package org.tugtest.fleet;

import org.jspecify.annotations.NullMarked;
