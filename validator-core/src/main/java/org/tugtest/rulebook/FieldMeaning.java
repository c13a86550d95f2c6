package org.tugtest.rulebook;

import java.util.List;

/**
 * What a property of the format means.
 *
 * @param when conditions of which one holds where it means this ({@code kind is load}); empty:
 *     always
 * @param value what may be written, in words
 */
record FieldMeaning(List<String> when, String description, String value, boolean required) {
  FieldMeaning {
    when = List.copyOf(when);
  }

  /** Whether two meanings differ in nothing but their conditions. */
  boolean saysTheSameAs(FieldMeaning other) {
    return description.equals(other.description)
        && value.equals(other.value)
        && required == other.required;
  }
}
