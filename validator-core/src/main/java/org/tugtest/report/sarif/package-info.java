/** A report as SARIF 2.1.0, which code hosts show beside the lines of a change. */
@NullMarked
package org.tugtest.report.sarif;

import org.jspecify.annotations.NullMarked;
