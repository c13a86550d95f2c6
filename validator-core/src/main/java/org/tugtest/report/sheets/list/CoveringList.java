package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.model.Layout;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Column;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Table;

/** What goes over the segments, breakouts, splices and connectors of each loom. */
public final class CoveringList implements DocumentMaker {
  private static final String TITLE = "Covering and heat-shrink list";

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
  public String title() {
    return TITLE;
  }

  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    List<Document> sheets = new ArrayList<>();
    LoomSegments ofLooms = new LoomSegments(facts);
    for (Scope scope : Scope.parts(facts.harness())) {
      List<Layout.Segment> its = ofLooms.of(scope);
      PieceCoverings pieces = new PieceCoverings(facts, scope, its);
      List<List<Cell>> segments = new SegmentCoverings(facts, its).segments();
      List<List<Cell>> singles = pieces.singles();
      List<List<Cell>> breakouts = pieces.breakouts();
      if (!segments.isEmpty() || !singles.isEmpty()) {
        sheets.add(
            Sheet.titled(scope, "coverings", TITLE)
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
}
