/** The documents that a harness gives, all of them. */
@NullMarked
package org.tugtest.report.sheets.documents;

import org.jspecify.annotations.NullMarked;
