/** The page for the track: what is on a pin, what a fault takes, which fault fits what is seen. */
@NullMarked
package org.tugtest.report.sheets.track;

import org.jspecify.annotations.NullMarked;
