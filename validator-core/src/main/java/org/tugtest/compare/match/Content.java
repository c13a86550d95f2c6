package org.tugtest.compare.match;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.entry.RecordShape;

/**
 * What an entry says, without its own id.
 *
 * @param values of its fields, in the order of the record
 */
record Content(Class<?> type, List<@Nullable Object> values) {
  static Object of(Object entry) {
    if (!(entry instanceof Record)) {
      return entry;
    }
    RecordShape shape = RecordShape.of(entry);
    List<@Nullable Object> values = new ArrayList<>();
    for (int i = 0; i < shape.names().size(); i++) {
      values.add(shape.names().get(i).equals("id") ? null : shape.value(entry, i));
    }
    return new Content(entry.getClass(), values);
  }
}
