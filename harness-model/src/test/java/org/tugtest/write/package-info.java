/** Tests of writing, and the random documents they are made with. */
@NullMarked
package org.tugtest.write;

import org.jspecify.annotations.NullMarked;
