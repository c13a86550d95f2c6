package org.tugtest.compare.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.entry.RecordShape;
import org.tugtest.model.Element;
import org.tugtest.model.FusePart;
import org.tugtest.model.Ref;
import org.tugtest.text.NaturalOrder;

/**
 * One field that differs between two states of an entry.
 *
 * @param path the names that lead to it in the records: {@code [cutMm]}, {@code [own, elements,
 *     pump, amps]}
 * @param raw the value before, as its files write it; null when there was none
 * @param translated the value before by the ids after; null when there was none
 * @param now the value after; null when there is none
 * @param in the record after that it is a field of; null for an entry that is a single value
 */
record FieldDiff(
    List<String> path,
    @Nullable Object raw,
    @Nullable Object translated,
    @Nullable Object now,
    @Nullable Object in) {

  FieldDiff {
    path = List.copyOf(path);
  }

  /**
   * Every field that differs, the id left out; none when the two are equal.
   *
   * @param raw the entry before
   * @param translated the same by the ids after
   */
  static List<FieldDiff> between(Object raw, Object translated, Object now) {
    List<FieldDiff> diffs = new ArrayList<>();
    if (!translated.equals(now)) {
      collect(List.of(), raw, translated, now, null, diffs);
    }
    return diffs;
  }

  /** Whether it is the rating of a fuse; a contact has a field of that name too. */
  boolean inFuse() {
    boolean fuse = in instanceof Element.Fuse || in instanceof FusePart;
    return fuse && path.get(path.size() - 1).equals("ratingA");
  }

  /** The first name of the path; empty when the entry is a single value. */
  String head() {
    return path.isEmpty() ? "" : path.get(0);
  }

  private static void collect(
      List<String> path,
      @Nullable Object raw,
      @Nullable Object one,
      @Nullable Object other,
      @Nullable Object in,
      List<FieldDiff> diffs) {
    if (Objects.equals(one, other)) {
      return;
    }
    if (one instanceof Record && other instanceof Record && sameShape(one, other)) {
      RecordShape shape = RecordShape.of(one);
      for (int i = 0; i < shape.names().size(); i++) {
        String name = shape.names().get(i);
        if (!path.isEmpty() || !(name.equals("id") || (name.equals("rule") && isLimits(shape)))) {
          Object rawValue = raw == null ? null : shape.value(raw, i);
          collect(
              with(path, name), rawValue, shape.value(one, i), shape.value(other, i), other, diffs);
        }
      }
    } else if (one instanceof Map<?, ?> map && other instanceof Map<?, ?> otherMap) {
      Map<?, ?> rawMap = raw instanceof Map<?, ?> known ? known : Map.of();
      keys(map, otherMap)
          .forEach(
              (name, key) -> {
                Object old = map.get(key);
                Object rawValue = rawMap.containsKey(key) ? rawMap.get(key) : old;
                collect(with(path, name), rawValue, old, otherMap.get(key), in, diffs);
              });
    } else {
      diffs.add(new FieldDiff(path, raw, one, other, in));
    }
  }

  private static boolean isLimits(RecordShape shape) {
    return shape.names().contains("places");
  }

  /** A reference is one value; other records are looked into. */
  private static boolean sameShape(Object one, Object other) {
    return one.getClass() == other.getClass() && !(one instanceof Ref);
  }

  private static List<String> with(List<String> path, String name) {
    List<String> longer = new ArrayList<>(path);
    longer.add(name);
    return longer;
  }

  private static Map<String, Object> keys(Map<?, ?> map, Map<?, ?> other) {
    Map<String, Object> keys = new TreeMap<>(NaturalOrder.NATURAL);
    map.keySet().forEach(key -> keys.put(key.toString(), key));
    Set<?> others = other.keySet();
    others.forEach(key -> keys.put(key.toString(), key));
    return keys;
  }
}
