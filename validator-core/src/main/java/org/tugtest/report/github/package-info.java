/** Findings as workflow commands, which a GitHub runner shows at the lines of a change. */
@NullMarked
package org.tugtest.report.github;

import org.jspecify.annotations.NullMarked;
