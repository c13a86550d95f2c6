/** The lists of the bench: what is cut, crimped, covered, labelled, fitted and bought. */
@NullMarked
package org.tugtest.report.sheets.list;

import org.jspecify.annotations.NullMarked;
