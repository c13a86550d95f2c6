package org.tugtest.report.html;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Long lists of things that a page shows on demand. Equal lists, such as the wires that several
 * rules could not judge for the same want of data, are kept once.
 */
final class SubjectLists {
  /** Lists up to this length stand in the page itself. */
  static final int SHORT = 40;

  private final Map<List<String>, Integer> lists = new LinkedHashMap<>();

  /** The number of a list, from 0. */
  int number(List<String> list) {
    return lists.computeIfAbsent(list, none -> lists.size());
  }

  /** All lists, by number. */
  List<List<String>> all() {
    return List.copyOf(lists.keySet());
  }
}
