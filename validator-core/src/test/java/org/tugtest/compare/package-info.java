/** Tests of what a change means. */
@NullMarked
package org.tugtest.compare;

import org.jspecify.annotations.NullMarked;
