/** Sheets for bench and track: what is on them, and how they are written as page and as table. */
@NullMarked
package org.tugtest.report.sheets;

import org.jspecify.annotations.NullMarked;
