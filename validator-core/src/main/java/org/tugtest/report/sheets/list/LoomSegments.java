package org.tugtest.report.sheets.list;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.facts.Facts;
import org.tugtest.model.Layout;
import org.tugtest.model.Wire;
import org.tugtest.report.sheets.Scope;
import org.tugtest.route.Bundle;

/**
 * The segments of a scope: those of its loom, and those of no loom on which only its wires run. A
 * segment on which wires of several looms run belongs to what is loose, as in the totals.
 */
final class LoomSegments {
  private final Facts facts;
  private final Map<String, String> looms = new HashMap<>();

  LoomSegments(Facts facts) {
    this.facts = facts;
    for (Layout.Segment segment : facts.harness().layout().segments().values()) {
      looms.put(segment.id(), segment.loom() == null ? loomOfWires(segment) : segment.loom());
    }
  }

  /** The segments of a scope, in natural order. */
  List<Layout.Segment> of(Scope scope) {
    return facts.harness().layout().segments().values().stream()
        .filter(segment -> scope.holds(looms.get(segment.id())))
        .toList();
  }

  private String loomOfWires(Layout.Segment segment) {
    Set<String> found = new TreeSet<>();
    for (Bundle bundle : facts.bundles().of(segment.id())) {
      for (String id : bundle.wireIds()) {
        Wire wire = facts.harness().wires().get(id);
        if (wire != null) {
          found.add(wire.loom() == null ? "" : wire.loom());
        }
      }
    }
    return found.size() == 1 ? found.iterator().next() : "";
  }
}
