/** A harness as entries by section and id, and what the fields of an entry name. */
@NullMarked
package org.tugtest.compare.entry;

import org.jspecify.annotations.NullMarked;
