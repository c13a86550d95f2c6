package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Covering;
import org.tugtest.model.Layout;
import org.tugtest.model.Splice;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Column;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Table;
import org.tugtest.route.Bundle;
import org.tugtest.route.CoverLayers;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Quoted;

/** What goes over the segments, breakouts, splices and connectors of each loom. */
public final class CoveringList implements DocumentMaker {
  /** Heat shrink gets up to so much shorter. */
  static final double SHRINKS = 0.15;

  private static final List<Column> SEGMENTS =
      List.of(
          Column.text("segment", "Segment"),
          Column.text("from", "From"),
          Column.text("to", "To"),
          Column.number("layer", "Layer", ""),
          Column.text("covering", "Covering"),
          Column.text("kind", "Kind"),
          Column.number("length_mm", "Covers", "mm"),
          Column.number("cut_mm", "Cut", "mm"),
          Column.text("inside", "Inside, mm"),
          Column.number("over_mm", "Goes over", "mm"),
          Column.text("fits", "Fit"),
          Column.text("supports", "Supports"));
  private static final List<Column> SINGLES =
      List.of(
          Column.text("on", "On"),
          Column.text("covering", "Covering"),
          Column.text("kind", "Kind"),
          Column.text("inside", "Inside, mm"),
          Column.text("note", "Note"));
  private static final List<Column> BREAKOUTS =
      List.of(
          Column.text("node", "Breakout"),
          Column.text("segments", "Segments that meet"),
          Column.text("coverings", "Their coverings end here"),
          Column.text("over", "Over the breakout"));

  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    List<Document> sheets = new ArrayList<>();
    LoomSegments ofLooms = new LoomSegments(facts);
    for (Scope scope : Scope.parts(facts.harness())) {
      Maker maker = new Maker(facts, scope, ofLooms.of(scope));
      List<List<Cell>> segments = maker.segments();
      List<List<Cell>> singles = maker.singles();
      List<List<Cell>> breakouts = maker.breakouts();
      if (!segments.isEmpty() || !singles.isEmpty()) {
        sheets.add(
            Sheet.titled(scope, "coverings", "Covering and heat-shrink list")
                .purpose("What is cut to go over which segment, inside first.")
                .note(
                    "Goes over is the loose diameter of what is inside: 1.3 times the root of the"
                        + " sum of squares, from three wires on. Heat shrink is cut 15 % longer,"
                        + " for it gets 5 to 15 % shorter (a sleeve seller's answers); the rest is"
                        + " cut to length.")
                .note("A segment is covered from node to node; breakouts are listed below.")
                .landscape()
                .add(
                    Table.of(SEGMENTS, segments, "No segment is covered.")
                        .captioned("Segments")
                        .withTicks())
                .add(
                    Table.of(SINGLES, singles, "Nothing else is covered.")
                        .captioned("Splices, connectors and breakouts")
                        .inCsv("pieces")
                        .withTicks())
                .add(
                    Table.of(BREAKOUTS, breakouts, "No segments meet.")
                        .captioned("Breakouts")
                        .inCsv("breakouts"))
                .build());
      }
    }
    return sheets;
  }

  private static final class Maker {
    private final Facts facts;
    private final Scope scope;
    private final Map<String, Covering> parts;
    private final List<Layout.Segment> its;

    Maker(Facts facts, Scope scope, List<Layout.Segment> its) {
      this.facts = facts;
      this.scope = scope;
      this.parts = facts.harness().parts().coverings();
      this.its = its;
    }

    List<List<Cell>> segments() {
      List<List<Cell>> rows = new ArrayList<>();
      for (Layout.Segment segment : its) {
        Bundle thickest = facts.bundles().thickest(segment.id()).orElse(null);
        Bundle thinnest = facts.bundles().thinnest(segment.id()).orElse(null);
        CoverLayers over = layers(segment, thickest);
        CoverLayers least = layers(segment, thinnest);
        for (int i = 0; i < segment.coverings().size(); i++) {
          rows.add(layer(segment, i, over, least, thickest));
        }
        if (segment.coverings().isEmpty() && thickest != null) {
          rows.add(bare(segment, thickest));
        }
      }
      return rows;
    }

    private CoverLayers layers(Layout.Segment segment, @Nullable Bundle bundle) {
      return CoverLayers.of(
          parts,
          segment.coverings(),
          bundle == null ? 0 : bundle.expectedMm(),
          bundle == null ? 0 : bundle.looseMm());
    }

    private List<Cell> layer(
        Layout.Segment segment,
        int index,
        CoverLayers over,
        CoverLayers least,
        @Nullable Bundle bundle) {
      CoverLayers.Layer layer = over.layers().get(index);
      Covering part = layer.part();
      Double mm = segment.lengthMm();
      boolean shrinks = part != null && part.kind() == Covering.Kind.HEAT_SHRINK;
      return List.of(
          Cell.text(segment.id()),
          Cell.text(segment.from()),
          Cell.text(segment.to()),
          Cell.count(index + 1),
          Cell.text(layer.id()).over(part == null ? "no such part" : ""),
          kind(part),
          Cell.number(mm, 0, "the segment gives no length"),
          mm == null
              ? Cell.EMPTY
              : Cell.number(Math.ceil(mm * (shrinks ? 1 + SHRINKS : 1) - 1e-9), 0),
          inside(part),
          bundle == null
              ? Cell.unknown("no wire runs there")
              : sized(Cell.number(layer.insideLooseMm(), 1), bundle),
          bundle == null ? Cell.EMPTY : fits(layer, least.layers().get(index)),
          index == 0 ? supports(segment) : Cell.EMPTY);
    }

    private List<Cell> bare(Layout.Segment segment, Bundle bundle) {
      return List.of(
          Cell.text(segment.id()),
          Cell.text(segment.from()),
          Cell.text(segment.to()),
          Cell.EMPTY,
          Cell.text("none"),
          Cell.EMPTY,
          Cell.number(segment.lengthMm(), 0, "the segment gives no length"),
          Cell.EMPTY,
          Cell.EMPTY,
          sized(Cell.number(bundle.looseMm(), 1), bundle),
          Cell.EMPTY,
          supports(segment));
    }

    private static Cell sized(Cell cell, Bundle bundle) {
      int unsized = bundle.unsized().size();
      return unsized == 0 ? cell : cell.over("without " + unsized + " of unknown size");
    }

    private static Cell fits(CoverLayers.Layer most, CoverLayers.Layer least) {
      Double greatest = most.mostMm();
      Double closes = most.leastMm();
      if (greatest == null || closes == null) {
        return Cell.unknown("no inside given");
      }
      if (most.insideLooseMm() > greatest) {
        return Cell.text("too narrow");
      }
      boolean grips = most.part() != null && most.part().innerMinMm() != null;
      return Cell.text(grips && least.insideMm() < closes ? "does not close on it" : "fits");
    }

    private static Cell supports(Layout.Segment segment) {
      Integer count = segment.supports();
      if (count == null || count == 0) {
        return Cell.EMPTY;
      }
      String part = segment.supportPart();
      return Cell.text(count + " × " + (part == null ? "support" : part));
    }

    private static Cell kind(@Nullable Covering part) {
      return Cell.text(part == null || part.kind() == null ? "" : part.kind().word());
    }

    private static Cell inside(@Nullable Covering part) {
      Double least = part == null ? null : CoverLayers.least(part);
      Double most = part == null ? null : CoverLayers.most(part);
      if (least == null || most == null) {
        return Cell.unknown("");
      }
      String text = Quoted.number(most);
      return Cell.text(least.equals(most) ? text : Quoted.number(least) + " to " + text);
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
          kind(part),
          inside(part),
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
                          Cell.text(joined(segments, Maker::outermost)),
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
}
