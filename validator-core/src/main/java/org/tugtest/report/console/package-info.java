/** The lines of a check in a terminal or a build log. */
@NullMarked
package org.tugtest.report.console;

import org.jspecify.annotations.NullMarked;
