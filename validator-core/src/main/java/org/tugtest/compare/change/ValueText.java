package org.tugtest.compare.change;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.entry.RecordShape;
import org.tugtest.model.Element;
import org.tugtest.model.Ref;
import org.tugtest.model.Word;
import org.tugtest.text.Quoted;

/** Values of fields as people write them. */
final class ValueText {
  private ValueText() {}

  /** The value; null for a field that is left out. */
  static @Nullable String of(@Nullable Object value) {
    if (value == null) {
      return null;
    }
    if (value instanceof Number number) {
      return value instanceof Integer ? value.toString() : Quoted.number(number.doubleValue());
    }
    if (value instanceof Ref ref) {
      return ref.text();
    }
    if (value instanceof Word word) {
      return word.word();
    }
    if (value instanceof Collection<?> list) {
      return list(list);
    }
    if (value instanceof Map<?, ?> map) {
      List<String> parts = new ArrayList<>();
      map.forEach((key, item) -> parts.add(of(key) + ": " + of(item)));
      return parts.isEmpty() ? "none" : String.join(", ", parts);
    }
    return value instanceof Record record ? record(record) : value.toString();
  }

  private static String list(Collection<?> list) {
    boolean ordered = list instanceof List<?>;
    List<String> parts = new ArrayList<>();
    list.forEach(
        item -> parts.add(item instanceof Collection<?> row ? "[" + of(row) + "]" : of(item)));
    if (!ordered) {
      parts.sort(org.tugtest.text.NaturalOrder.NATURAL);
    }
    return parts.isEmpty() ? "none" : String.join(", ", parts);
  }

  private static String record(Record record) {
    RecordShape shape = RecordShape.of(record);
    List<String> parts = new ArrayList<>();
    if (record instanceof Element element) {
      parts.add(element.kind());
    }
    for (int i = 0; i < shape.names().size(); i++) {
      Object value = shape.value(record, i);
      if (value != null && !Boolean.FALSE.equals(value) && !isEmpty(value)) {
        parts.add(shape.names().get(i) + " " + of(value));
      }
    }
    return "(" + String.join(", ", parts) + ")";
  }

  private static boolean isEmpty(Object value) {
    return (value instanceof Collection<?> list && list.isEmpty())
        || (value instanceof Map<?, ?> map && map.isEmpty());
  }
}
