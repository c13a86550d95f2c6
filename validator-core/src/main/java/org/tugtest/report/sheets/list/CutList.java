package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.model.Group;
import org.tugtest.model.Wire;
import org.tugtest.network.WireEnd;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Column;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Table;
import org.tugtest.table.LengthToleranceTable;
import org.tugtest.text.Series;

/**
 * The cut list of each loom: reel by reel, the longest first, so that ends of a reel still serve.
 */
public final class CutList implements DocumentMaker {
  private static final String TITLE = "Cut list";
  private static final int NAMED = 12;
  private static final List<Column> WIRES = columns(false);
  private static final List<Column> LAID = columns(true);
  private static final List<Column> CABLES =
      List.of(
          Column.text("cable", "Cable"),
          Column.number("cut_mm", "Cut", "mm"),
          Column.number("plus_mm", "Longer by up to", "mm"),
          Column.text("wires", "Its wires"),
          Column.text("colours", "Colours"),
          Column.text("cut_from", "Length is"));
  private static final List<Column> SUMS =
      List.of(
          Column.text("part", "Part"),
          Column.number("count", "Pieces", ""),
          Column.number("metres", "Together", "m"),
          Column.number("without_length", "Without length", ""));

  /** The columns of wires that are cut to length, or of those that are laid along their way. */
  private static List<Column> columns(boolean laid) {
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.text("part", "Part"),
                laid
                    ? Column.number("routed_mm", "Routed", "mm")
                    : Column.number("cut_mm", "Cut", "mm"),
                Column.number("plus_mm", "Longer by up to", "mm"),
                Column.text("wire", "Wire"),
                Column.text("label", "Label"),
                Column.text("colour", "Colour"),
                Column.text("size", "Size"),
                Column.text("from", "From"),
                Column.number("from_strip_mm", "Strip", "mm")));
    if (laid) {
      columns.add(Column.text("way", "Along"));
    }
    columns.add(Column.text("to", "To"));
    columns.add(Column.number("to_strip_mm", "Strip", "mm"));
    columns.add(Column.text("group", "Group"));
    columns.add(
        laid ? Column.text("laid", "Laid, mm").onPaper() : Column.text("cut_from", "Length is"));
    columns.add(Column.text("evidence", "Evidence").inCsv());
    return List.copyOf(columns);
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    List<Document> sheets = new ArrayList<>();
    for (Scope scope : Scope.parts(facts.harness())) {
      CutPlan plan = CutPlan.of(facts, scope);
      if (!plan.pieces().isEmpty() || !plan.donors().isEmpty()) {
        sheets.add(new Maker(facts).sheet(scope, plan));
      }
    }
    return sheets;
  }

  private static final class Maker {
    private final WireCells cells;
    private final EndCells ends;
    private final CutLength lengths;

    Maker(Facts facts) {
      cells = new WireCells(facts);
      ends = new EndCells(facts);
      lengths = new CutLength(facts);
    }

    Sheet sheet(Scope scope, CutPlan plan) {
      List<List<Cell>> wires = new ArrayList<>();
      List<List<Cell>> laid = new ArrayList<>();
      List<List<Cell>> cables = new ArrayList<>();
      for (CutPlan.Piece piece : plan.pieces()) {
        Group cable = piece.cable();
        if (cable != null) {
          cables.add(cable(piece, cable));
        } else {
          (piece.inPlace() ? laid : wires).add(wire(piece));
        }
      }
      List<String> donors = plan.donors().stream().map(Wire::id).toList();
      Sheet.Builder sheet =
          Sheet.titled(scope, "cut-list", TITLE)
              .purpose("What is cut from which reel: part by part, the longest first.")
              .note(CutLength.TOLERANCE)
              .note(
                  donors.isEmpty()
                      ? ""
                      : "Not cut, since the donor loom has them: "
                          + Series.and(donors, NAMED)
                          + ".")
              .note(
                  twisted(plan)
                      ? "Members of a twisted group are cut with the length that the twist takes"
                          + " in; cut them together."
                      : "")
              .landscape()
              .add(Table.of(WIRES, wires, "No single wire is cut.").withTicks());
      if (!laid.isEmpty()) {
        sheet.add(
            Table.of(LAID, laid, "")
                .captioned(
                    "Laid in place: run from the reel along its way before any covering goes on,"
                        + " and cut there")
                .inCsv("laid")
                .withTicks());
      }
      if (!cables.isEmpty()) {
        sheet.add(Table.of(CABLES, cables, "").captioned("Cables").inCsv("cables").withTicks());
      }
      return sheet
          .add(
              Table.of(SUMS, sums(plan), "Nothing is cut.")
                  .captioned("What it takes, without waste")
                  .inCsv("sums"))
          .build();
    }

    private List<Cell> wire(CutPlan.Piece piece) {
      Wire wire = piece.wires().get(0);
      WireEnd from = new WireEnd(wire, true);
      WireEnd to = new WireEnd(wire, false);
      List<Cell> row =
          new ArrayList<>(
              List.of(
                  piece.part().isEmpty() ? Cell.unknown("no part given") : Cell.text(piece.part()),
                  lengths.cell(wire),
                  Cell.number(lengths.plusMm(wire), 0, "no length"),
                  cells.id(wire).over(""),
                  Cell.text(wire.labelText()),
                  cells.colour(wire),
                  cells.size(wire),
                  ends.place(from).over(""),
                  ends.strip(from)));
      if (piece.inPlace()) {
        row.add(lengths.way(wire));
      }
      row.add(ends.place(to).over(""));
      row.add(ends.strip(to));
      row.add(cells.group(wire));
      row.add(piece.inPlace() ? Cell.EMPTY : Cell.text(lengths.origin(wire)));
      row.add(cells.evidence(wire));
      return row;
    }

    private List<Cell> cable(CutPlan.Piece piece, Group cable) {
      Double mm = piece.mm();
      List<String> colours =
          piece.wires().stream()
              .map(wire -> wire.colour() == null ? "no colour" : wire.colour())
              .toList();
      List<String> ids = piece.wires().stream().map(Wire::id).toList();
      return List.of(
          Cell.text(cable.id()),
          Cell.number(mm, 0, "no wire of it has a length"),
          mm == null ? Cell.EMPTY : Cell.number(LengthToleranceTable.plusMm(mm).value(), 0),
          Cell.text(String.join(", ", ids)),
          Cell.text(String.join(", ", colours)),
          Cell.text(piece.inPlace() ? CutLength.LAID : ""));
    }

    private boolean twisted(CutPlan plan) {
      return plan.pieces().stream()
          .flatMap(piece -> piece.wires().stream())
          .anyMatch(wire -> !cells.inCable(wire) && !cells.group(wire).isEmpty());
    }

    private static List<List<Cell>> sums(CutPlan plan) {
      List<List<Cell>> rows = new ArrayList<>();
      plan.sums()
          .forEach(
              (stock, sum) ->
                  rows.add(
                      List.of(
                          stock.part().isEmpty()
                              ? Cell.unknown("no part given")
                              : Cell.text(stock.part()).over(stock.cable() ? "cable" : ""),
                          Cell.count(sum.count()),
                          sum.withoutLength() == sum.count()
                              ? Cell.unknown("no length")
                              : Cell.number(sum.metres(), 3),
                          sum.withoutLength() == 0
                              ? Cell.EMPTY
                              : Cell.count(sum.withoutLength()))));
      return rows;
    }
  }
}
