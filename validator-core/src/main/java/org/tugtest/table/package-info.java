/** Figures from published tables, each with its document, table and basis. */
@NullMarked
package org.tugtest.table;

import org.jspecify.annotations.NullMarked;
