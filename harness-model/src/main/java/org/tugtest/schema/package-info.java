/** The published JSON Schemas of the format, and their judgement in sentences. */
@NullMarked
package org.tugtest.schema;

import org.jspecify.annotations.NullMarked;
