package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Covering;
import org.tugtest.model.Layout;
import org.tugtest.model.Splice;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Scope;
import org.tugtest.text.NaturalOrder;

/** The rows of what goes over splices, connectors and breakouts, piece by piece. */
final class PieceCoverings {
  private final Facts facts;
  private final Scope scope;
  private final Map<String, Covering> parts;
  private final List<Layout.Segment> its;

  PieceCoverings(Facts facts, Scope scope, List<Layout.Segment> its) {
    this.facts = facts;
    this.scope = scope;
    this.parts = facts.harness().parts().coverings();
    this.its = its;
  }

  List<List<Cell>> singles() {
    List<List<Cell>> rows = new ArrayList<>();
    for (String id : LoomParts.splices(facts, scope)) {
      Splice splice = facts.harness().splices().get(id);
      if (splice != null) {
        splice.coverings().forEach(part -> rows.add(single("splice " + id, part)));
      }
    }
    for (String id : LoomParts.connectors(facts, scope)) {
      Connector connector = facts.harness().connectors().get(id);
      if (connector != null && connector.boot() != null) {
        rows.add(single("connector " + id + ", boot", connector.boot()));
      }
    }
    for (String id : meetings().keySet()) {
      Layout.Node node = facts.harness().layout().nodes().get(id);
      if (node != null) {
        node.coverings().forEach(part -> rows.add(single("breakout " + id, part)));
      }
    }
    return rows;
  }

  private List<Cell> single(String on, String id) {
    Covering part = parts.get(id);
    return List.of(
        Cell.text(on),
        Cell.text(id).over(part == null ? "no such part" : ""),
        CoveringCells.kind(part),
        CoveringCells.inside(part),
        Cell.text("length not known: measure on the piece"));
  }

  /** The nodes that its segments touch, with those segments. */
  private Map<String, Set<Layout.Segment>> meetings() {
    Map<String, Set<Layout.Segment>> byNode = new TreeMap<>(NaturalOrder.NATURAL);
    for (Layout.Segment segment : its) {
      for (String node : new String[] {segment.from(), segment.to()}) {
        if (node != null) {
          byNode.computeIfAbsent(node, id -> new LinkedHashSet<>()).add(segment);
        }
      }
    }
    return byNode;
  }

  List<List<Cell>> breakouts() {
    List<List<Cell>> rows = new ArrayList<>();
    meetings()
        .forEach(
            (id, segments) -> {
              if (segments.size() > 1) {
                Layout.Node node = facts.harness().layout().nodes().get(id);
                rows.add(
                    List.of(
                        Cell.text(id),
                        Cell.text(joined(segments, Layout.Segment::id)),
                        Cell.text(joined(segments, PieceCoverings::outermost)),
                        Cell.text(node == null ? "" : String.join(", ", node.coverings()))));
              }
            });
    return rows;
  }

  private static String joined(
      Set<Layout.Segment> segments, Function<Layout.Segment, String> word) {
    return segments.stream().map(word).collect(Collectors.joining(", "));
  }

  private static String outermost(Layout.Segment segment) {
    List<String> coverings = segment.coverings();
    return segment.id() + ": " + (coverings.isEmpty() ? "bare" : String.join(" in ", coverings));
  }
}
