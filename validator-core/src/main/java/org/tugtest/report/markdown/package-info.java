/** A report as Markdown, short enough for a merge request comment and a step summary. */
@NullMarked
package org.tugtest.report.markdown;

import org.jspecify.annotations.NullMarked;
