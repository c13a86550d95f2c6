package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
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
import org.tugtest.text.Quoted;

/** The wire list of each loom: every wire with both ends, its length and what sits on it. */
public final class WireList implements DocumentMaker {
  private static final String TITLE = "Wire list";
  private static final List<Column> COLUMNS =
      List.of(
          Column.text("wire", "Wire"),
          Column.text("from", "From"),
          Column.text("from_owner", "From").inCsv(),
          Column.text("from_contact", "Cavity").inCsv(),
          Column.text("from_housing", "Housing").inCsv(),
          Column.text("to", "To"),
          Column.text("to_owner", "To").inCsv(),
          Column.text("to_contact", "Cavity").inCsv(),
          Column.text("to_housing", "Housing").inCsv(),
          Column.text("part", "Part"),
          Column.text("colour", "Colour"),
          Column.text("colour_drawn", "Drawn").inCsv(),
          Column.text("size", "Size"),
          Column.number("area_mm2", "Area", "mm²").inCsv(),
          Column.text("group", "Group"),
          Column.text("circuit", "Circuit"),
          Column.text("net", "Net").inCsv(),
          Column.number("cut_mm", "Cut", "mm"),
          Column.text("cut_from", "Cut from").inCsv(),
          Column.number("routed_mm", "Routed", "mm"),
          Column.number("plus_mm", "Longer", "mm").inCsv(),
          Column.number("built_mm", "Built", "mm").inCsv(),
          Column.text("from_terminal", "Terminal at from"),
          Column.text("from_seal", "Seal at from"),
          Column.number("from_strip_mm", "Strip", "mm"),
          Column.text("to_terminal", "Terminal at to"),
          Column.text("to_seal", "Seal at to"),
          Column.number("to_strip_mm", "Strip", "mm"),
          Column.text("label", "Label").inCsv(),
          Column.text("evidence", "Evidence").inCsv(),
          Column.text("decision", "Decision").inCsv(),
          Column.text("reason", "Reason").inCsv());

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    Rows rows = new Rows(facts);
    List<Document> sheets = new ArrayList<>();
    for (Scope scope : Scope.parts(facts.harness())) {
      List<Wire> wires = LoomParts.wires(facts.harness(), scope);
      if (!wires.isEmpty()) {
        sheets.add(
            Sheet.titled(scope, "wire-list", TITLE)
                .purpose("Every wire with both ends, its length and what sits on it.")
                .note(
                    "Cut is the length to cut to; it is routed where the files plan none. A wire"
                        + " that is laid in place is cut there, and as long as Routed says. "
                        + CutLength.TOLERANCE)
                .landscape()
                .add(
                    Table.of(COLUMNS, wires.stream().map(rows::of).toList(), "There are no wires.")
                        .withTicks())
                .build());
      }
    }
    return sheets;
  }

  private static final class Rows {
    private final WireCells cells;
    private final EndCells ends;
    private final CutLength lengths;

    Rows(Facts facts) {
      cells = new WireCells(facts);
      ends = new EndCells(facts);
      lengths = new CutLength(facts);
    }

    List<Cell> of(Wire wire) {
      WireEnd from = new WireEnd(wire, true);
      WireEnd to = new WireEnd(wire, false);
      Double plus = lengths.plusMm(wire);
      List<Cell> row = new ArrayList<>();
      row.add(cells.id(wire));
      place(row, from);
      place(row, to);
      row.add(cells.part(wire));
      row.add(cells.colour(wire));
      row.add(Cell.text(wire.colourDrawn()));
      row.add(cells.size(wire));
      row.add(cells.area(wire));
      row.add(cells.group(wire));
      row.add(cells.circuit(wire));
      row.add(Cell.text(ends.net(from)));
      String band = plus == null ? "" : "+" + Quoted.number(plus);
      boolean laid = wire.laidInPlace();
      row.add(laid ? Cell.text(CutLength.LAID) : lengths.cell(wire).over(band));
      row.add(Cell.text(lengths.origin(wire)));
      Double routed = lengths.routedMm(wire);
      row.add(laid ? lengths.cell(wire).over(band) : routed(routed));
      row.add(Cell.number(plus, 0, "no length"));
      row.add(wire.builtMm() == null ? Cell.EMPTY : Cell.number(wire.builtMm(), 0));
      fitted(row, from);
      fitted(row, to);
      row.add(Cell.text(wire.labelText()));
      row.add(cells.evidence(wire));
      row.add(cells.decision(wire));
      row.add(Cell.text(wire.reason()));
      return row;
    }

    private static Cell routed(@Nullable Double mm) {
      return mm == null ? Cell.EMPTY : Cell.number(mm, 0);
    }

    private void place(List<Cell> row, WireEnd end) {
      row.add(ends.place(end));
      row.add(Cell.text(ends.owner(end)));
      row.add(Cell.text(ends.contact(end)));
      row.add(Cell.text(ends.housing(end)));
    }

    private void fitted(List<Cell> row, WireEnd end) {
      row.add(ends.terminal(end));
      row.add(ends.seal(end));
      row.add(ends.strip(end));
    }
  }
}
