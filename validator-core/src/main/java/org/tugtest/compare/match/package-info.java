/** Which thing of one revision is which thing of the other. */
@NullMarked
package org.tugtest.compare.match;

import org.jspecify.annotations.NullMarked;
