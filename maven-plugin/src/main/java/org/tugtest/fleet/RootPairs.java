package org.tugtest.fleet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which root of a base is which root now: the one of the same path. Where just one root is left on
 * either side, it was given another name.
 */
final class RootPairs {
  private RootPairs() {}

  /** By the path now, the path in the base; a root that is new has none. */
  static Map<String, String> of(List<String> now, List<String> base) {
    Map<String, String> pairs = new LinkedHashMap<>();
    List<String> left = new ArrayList<>();
    for (String root : now) {
      if (base.contains(root)) {
        pairs.put(root, root);
      } else {
        left.add(root);
      }
    }
    List<String> gone = base.stream().filter(root -> !now.contains(root)).toList();
    if (left.size() == 1 && gone.size() == 1) {
      pairs.put(left.get(0), gone.get(0));
    }
    return pairs;
  }
}
