/** Which changes cause a finding, and where the changes of two branches meet. */
@NullMarked
package org.tugtest.compare.cause;

import org.jspecify.annotations.NullMarked;
