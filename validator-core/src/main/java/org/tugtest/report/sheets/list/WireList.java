package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Column;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Table;

/** The wire list of each loom: every wire with both ends, its length and what sits on it. */
public final class WireList implements DocumentMaker {
  private static final List<Column> COLUMNS = List.of(Column.text("wire", "Wire"));

  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    List<Document> sheets = new ArrayList<>();
    for (Scope scope : Scope.parts(facts.harness())) {
      List<List<Cell>> rows = new ArrayList<>();
      for (Wire wire : facts.harness().wires().values()) {
        if (scope.holds(wire.loom())) {
          rows.add(List.of(Cell.text(wire.id())));
        }
      }
      sheets.add(
          Sheet.titled(scope, "wire-list", "Wire list")
              .purpose("Every wire with both ends, its length and what sits on it.")
              .landscape()
              .add(Table.of(COLUMNS, rows, "There are no wires.").withTicks())
              .build());
    }
    return sheets;
  }
}
