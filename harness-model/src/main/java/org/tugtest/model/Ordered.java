package org.tugtest.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.tugtest.text.NaturalOrder;

/** Immutable maps in natural order of their ids. */
final class Ordered {
  private Ordered() {}

  static <V> Map<String, V> copyOf(Map<String, V> map) {
    if (map.isEmpty()) {
      return Map.of();
    }
    List<String> ids = new ArrayList<>(map.keySet());
    ids.sort(NaturalOrder.NATURAL);
    Map<String, V> sorted = new LinkedHashMap<>(map.size() * 2);
    ids.forEach(id -> sorted.put(id, Objects.requireNonNull(map.get(id))));
    return Collections.unmodifiableMap(sorted);
  }
}
