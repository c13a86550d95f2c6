/**
 * Everything the files say of one vehicle: {@link org.tugtest.model.Harness} and its records.
 * Values are immutable, equal when their content is equal, and hold neither places nor anything
 * computed. A field that the file leaves out is null, or the format's default where the format
 * gives one; the unit stands in the name.
 */
@NullMarked
package org.tugtest.model;

import org.jspecify.annotations.NullMarked;
