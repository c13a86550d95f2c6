package org.tugtest.compare.entry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Ref;

/** What differs between the entries of two harnesses, id by id, and entries with that applied. */
public final class Leaves {
  private Leaves() {}

  /** Every leaf that differs; things are the same by their ids alone, as files are merged. */
  public static List<Leaf> between(
      Map<String, Map<String, Object>> before, Map<String, Map<String, Object>> after) {
    List<Leaf> leaves = new ArrayList<>();
    for (String section : Sections.NAMES) {
      Map<String, Object> old = before.getOrDefault(section, Map.of());
      Map<String, Object> now = after.getOrDefault(section, Map.of());
      Set<String> ids = new LinkedHashSet<>(old.keySet());
      ids.addAll(now.keySet());
      for (String id : ids) {
        Object one = old.get(id);
        Object other = now.get(id);
        if (!Objects.equals(one, other)) {
          collect(section, id, List.of(), one, other, leaves);
        }
      }
    }
    return leaves;
  }

  private static void collect(
      String section,
      String id,
      List<Object> path,
      @Nullable Object one,
      @Nullable Object other,
      List<Leaf> leaves) {
    if (Objects.equals(one, other)) {
      return;
    }
    if (one instanceof Record
        && other instanceof Record
        && one.getClass() == other.getClass()
        && !(one instanceof Ref)) {
      RecordShape shape = RecordShape.of(one);
      for (int i = 0; i < shape.names().size(); i++) {
        List<Object> inner = with(path, shape.names().get(i));
        collect(section, id, inner, shape.value(one, i), shape.value(other, i), leaves);
      }
    } else if (one instanceof Map<?, ?> map && other instanceof Map<?, ?> otherMap) {
      Set<Object> keys = new LinkedHashSet<>(map.keySet());
      keys.addAll(otherMap.keySet());
      for (Object key : keys) {
        collect(section, id, with(path, key), map.get(key), otherMap.get(key), leaves);
      }
    } else {
      leaves.add(new Leaf(section, id, path, one, other));
    }
  }

  private static List<Object> with(List<Object> path, Object name) {
    List<Object> longer = new ArrayList<>(path);
    longer.add(name);
    return longer;
  }

  /** An entry with the value after of a leaf; null when it goes. */
  public static @Nullable Object with(@Nullable Object entry, Leaf leaf) {
    return put(entry, leaf.path(), 0, leaf.after());
  }

  /**
   * Alters the entries, whose maps are written to. A leaf of an entry that is not there does
   * nothing.
   */
  public static void apply(Map<String, Map<String, Object>> entries, Leaf leaf) {
    Map<String, Object> section =
        entries.computeIfAbsent(leaf.section(), none -> new LinkedHashMap<>());
    Object now = with(section.get(leaf.id()), leaf);
    if (now == null) {
      section.remove(leaf.id());
    } else {
      section.put(leaf.id(), now);
    }
  }

  private static @Nullable Object put(
      @Nullable Object in, List<Object> path, int at, @Nullable Object value) {
    if (at == path.size()) {
      return value;
    }
    if (in instanceof Record record) {
      RecordShape shape = RecordShape.of(record);
      @Nullable Object[] values = new Object[shape.names().size()];
      for (int i = 0; i < values.length; i++) {
        Object old = shape.value(record, i);
        values[i] = shape.names().get(i).equals(path.get(at)) ? put(old, path, at + 1, value) : old;
      }
      return shape.make(values);
    }
    if (in instanceof Map<?, ?> map) {
      Map<Object, Object> changed =
          path.get(at) instanceof Ref ? new TreeMap<>() : new LinkedHashMap<>();
      changed.putAll(map);
      Object inner = put(map.get(path.get(at)), path, at + 1, value);
      if (inner == null) {
        changed.remove(path.get(at));
      } else {
        changed.put(path.get(at), inner);
      }
      return changed;
    }
    return in;
  }
}
