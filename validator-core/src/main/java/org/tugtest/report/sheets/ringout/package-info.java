/** The sheet on which a loom is rung out, with room for readings that are judged on the spot. */
@NullMarked
package org.tugtest.report.sheets.ringout;

import org.jspecify.annotations.NullMarked;
