package org.tugtest.route;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tugtest.model.Layout;

/** The segments of a layout by the loom they belong to, told apart once. */
final class SegmentsByLoom {
  private final List<Layout.Segment> segments;
  private final List<Integer> loose = new ArrayList<>();
  private final Map<String, List<Integer>> ofLoom = new HashMap<>();

  SegmentsByLoom(Layout layout) {
    segments = List.copyOf(layout.segments().values());
    for (int i = 0; i < segments.size(); i++) {
      String loom = segments.get(i).loom();
      (loom == null ? loose : ofLoom.computeIfAbsent(loom, id -> new ArrayList<>())).add(i);
    }
  }

  /** The ways along the segments of these looms and those of none. */
  LoomWays ways(Collection<String> looms) {
    Map<Integer, Layout.Segment> usable = new TreeMap<>();
    loose.forEach(at -> usable.put(at, segments.get(at)));
    for (String loom : looms) {
      ofLoom.getOrDefault(loom, List.of()).forEach(at -> usable.put(at, segments.get(at)));
    }
    return new LoomWays(usable.values());
  }
}
