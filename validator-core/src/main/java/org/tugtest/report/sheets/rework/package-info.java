/** The sheet by which a loom is changed into another one on the bench. */
@NullMarked
package org.tugtest.report.sheets.rework;

import org.jspecify.annotations.NullMarked;
