/** Volts per state, and what is lost when something opens. */
@NullMarked
package org.tugtest.report.html.volts;

import org.jspecify.annotations.NullMarked;
