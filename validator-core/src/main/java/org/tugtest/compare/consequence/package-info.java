/** What follows from a change: the figures that moved. */
@NullMarked
package org.tugtest.compare.consequence;

import org.jspecify.annotations.NullMarked;
