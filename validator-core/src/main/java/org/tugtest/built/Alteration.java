package org.tugtest.built;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A value that would have to stand otherwise in the plan.
 *
 * @param thing place string of the thing: {@code wires/W1}, {@code segments/s1}, {@code fitted}
 * @param fields names that lead to the value inside the thing; none: the thing itself
 * @param value text, number, truth value, or map or list of such; null: it is taken out
 */
public record Alteration(String thing, List<String> fields, @Nullable Object value) {
  public Alteration {
    fields = List.copyOf(fields);
  }
}
