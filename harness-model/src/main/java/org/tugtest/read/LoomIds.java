package org.tugtest.read;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;

/** Watches that no two looms have ids that differ only in case. */
final class LoomIds {
  private final List<Problem> problems;
  private final Map<String, Seen> seen = new HashMap<>();

  LoomIds(List<Problem> problems) {
    this.problems = problems;
  }

  private record Seen(String id, Place place) {}

  void check(String id, Place place) {
    Seen first = seen.putIfAbsent(id.toLowerCase(Locale.ROOT), new Seen(id, place));
    if (first != null && !first.id().equals(id)) {
      problems.add(Namespace.onlyCase("looms/" + id, id, place, first.id(), first.place()));
    }
  }
}
