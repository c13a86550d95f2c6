/** The goals: parameters in, the core called, the verdict out. */
@NullMarked
package org.tugtest.goal;

import org.jspecify.annotations.NullMarked;
