package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Loom;
import org.tugtest.model.Splice;
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
import org.tugtest.write.SheetCell;

/** The texts of all labels of each loom, in the order in which they are used, for a printer. */
public final class LabelTexts implements DocumentMaker {
  private static final String TITLE = "Label texts";

  /** Shorter wires carry no mark, up to the next figure one in the middle. */
  private static final double NO_MARK_MM = 76;

  private static final double ONE_MARK_MM = 178;
  private static final List<Column> COLUMNS =
      List.of(
          Column.text("text", "Text"),
          Column.text("on", "On"),
          Column.text("end", "End"),
          Column.text("where", "Where"),
          Column.number("outer_mm", "Goes over", "mm"),
          Column.text("evidence", "Evidence").inCsv());

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    List<Document> sheets = new ArrayList<>();
    for (Scope scope : Scope.parts(facts.harness())) {
      Maker maker = new Maker(facts);
      List<List<Cell>> rows = maker.rows(scope);
      if (!rows.isEmpty()) {
        sheets.add(sheet(scope, rows, maker.unmarked));
      }
    }
    return sheets;
  }

  private static Sheet sheet(Scope scope, List<List<Cell>> rows, int unmarked) {
    long guarded = rows.stream().filter(row -> LabelTexts.guarded(row.get(0).value())).count();
    return Sheet.titled(scope, "labels", TITLE)
        .purpose("What the label printer prints, in the order in which the labels are used.")
        .note(
            "Both ends of a wire carry its label; none goes on a wire under 76 mm, and one in the"
                + " middle up to 178 mm (FAA AC 43.13-1B, 11-208).")
        .note(
            "Slide labels on before the terminal; 30 to 60 mm from the connector they clear a boot"
                + " (common practice).")
        .note(
            unmarked == 0
                ? ""
                : unmarked + (unmarked == 1 ? " thing has" : " things have") + " no label text.")
        .note(
            guarded == 0
                ? ""
                : "In the CSV file "
                    + guarded
                    + (guarded == 1 ? " text begins" : " texts begin")
                    + " with an apostrophe that is not printed: a spreadsheet would take them for a"
                    + " formula, a date or a number.")
        .add(Table.of(COLUMNS, rows, "Nothing has a label.").withTicks())
        .build();
  }

  private static boolean guarded(String text) {
    return !SheetCell.of(text).equals(text);
  }

  private static final class Maker {
    private final Facts facts;
    private final WireCells cells;
    private final CutLength lengths;
    private int unmarked;

    Maker(Facts facts) {
      this.facts = facts;
      cells = new WireCells(facts);
      lengths = new CutLength(facts);
    }

    List<List<Cell>> rows(Scope scope) {
      List<List<Cell>> rows = new ArrayList<>();
      if (scope.kind() == Scope.Kind.LOOM) {
        Loom loom = facts.harness().looms().get(scope.loom());
        String revision = loom == null || loom.revision() == null ? "" : " rev " + loom.revision();
        add(rows, scope.loom() + revision, "loom " + scope.loom(), "", "tag", Cell.EMPTY);
      }
      for (String id : LoomParts.connectors(facts, scope)) {
        Connector written = facts.harness().connectors().get(id);
        String text = written == null ? id : written.labelText();
        add(rows, text, "connector " + id, "", "on its branch", Cell.EMPTY);
      }
      for (String id : LoomParts.splices(facts, scope)) {
        Splice written = facts.harness().splices().get(id);
        String label = written == null ? null : written.label();
        String text = label == null ? id : label;
        add(rows, text, "splice " + id, "", "beside it", Cell.EMPTY);
      }
      LoomParts.wires(facts.harness(), scope).forEach(wire -> wire(rows, wire));
      return rows;
    }

    private void wire(List<List<Cell>> rows, Wire wire) {
      String on = "wire " + wire.id();
      Double mm = lengths.mm(wire);
      Cell evidence = cells.evidence(wire);
      if (mm != null && mm < NO_MARK_MM) {
        unmarked++;
      } else if (mm != null && mm <= ONE_MARK_MM) {
        add(rows, wire.labelText(), on, "both", "in the middle", cells.outer(wire), evidence);
      } else {
        for (WireEnd end : List.of(new WireEnd(wire, true), new WireEnd(wire, false))) {
          String where = end.ref() == null ? "open end" : "near " + end.ref().text();
          add(rows, wire.labelText(), on, end.field(), where, cells.outer(wire), evidence);
        }
      }
    }

    private void add(
        List<List<Cell>> rows, String text, String on, String end, String where, Cell... more) {
      if (text.isBlank()) {
        unmarked++;
        return;
      }
      rows.add(
          List.of(
              Cell.text(text),
              Cell.text(on),
              Cell.text(end),
              Cell.text(where),
              more[0],
              more.length > 1 ? more[1] : Cell.EMPTY));
    }
  }
}
