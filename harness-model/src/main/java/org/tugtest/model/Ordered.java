package org.tugtest.model;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.tugtest.text.NaturalOrder;

/** Immutable maps in natural order of their ids. */
final class Ordered {
  private Ordered() {}

  static <V> Map<String, V> copyOf(Map<String, V> map) {
    if (map.isEmpty()) {
      return Map.of();
    }
    TreeMap<String, V> sorted = new TreeMap<>(NaturalOrder.NATURAL);
    sorted.putAll(map);
    return Collections.unmodifiableMap(sorted);
  }
}
