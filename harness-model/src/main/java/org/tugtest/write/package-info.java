/** Writing harness files back: the tidy form, the spreadsheet form, and small edits in place. */
@NullMarked
package org.tugtest.write;

import org.jspecify.annotations.NullMarked;
