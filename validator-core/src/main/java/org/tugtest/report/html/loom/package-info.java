/** The drawing of the looms: knots and arms, their places on a board or in the vehicle, labels. */
@NullMarked
package org.tugtest.report.html.loom;

import org.jspecify.annotations.NullMarked;
