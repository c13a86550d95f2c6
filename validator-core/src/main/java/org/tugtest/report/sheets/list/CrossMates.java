package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.check.CheckedFinding;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Column;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Table;
import org.tugtest.rule.Coverage;

/** What each pin would meet if plugs that can be exchanged were exchanged. */
public final class CrossMates implements DocumentMaker {
  private static final String TITLE = "Cross-mate study";
  private static final String MEETS = " meets ";
  private static final List<Column> COLUMNS =
      List.of(
          Column.text("plug", "If plugged so"),
          Column.text("contact", "Contact"),
          Column.text("would_meet", "Would meet"));
  private static final String RULE = "cross-mating-possible";

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Document> of(HarnessReport harness) {
    List<CheckedFinding> found =
        harness.result().findings().stream()
            .filter(checked -> checked.finding().rule().equals(RULE))
            .toList();
    Coverage coverage =
        harness.result().coverage().stream()
            .filter(cover -> cover.rule().equals(RULE))
            .findFirst()
            .orElse(null);
    if (coverage == null || harness.facts().wiring().connectors().isEmpty()) {
      return List.of();
    }
    Sheet.Builder sheet =
        Sheet.titled(Scope.WHOLE, "cross-mates", TITLE)
            .purpose("What each pin would meet if plugs that can be exchanged were exchanged.")
            .note(
                "Looked at are connectors of one housing within reach of each other, as the rule "
                    + RULE
                    + " takes them.");
    int unknown = coverage.notJudged();
    if (unknown > 0) {
      sheet.note(
          unknown
              + (unknown == 1 ? " connector is" : " connectors are")
              + " left out: housing or place is not known.");
    }
    if (found.isEmpty()) {
      sheet.note("No two connectors can be exchanged, as far as housings and places are known.");
    }
    for (CheckedFinding checked : found) {
      String waived = checked.waived() ? " (accepted by a waiver)" : "";
      sheet.add(
          Table.of(COLUMNS, rows(checked.finding().details()), "Nothing there meets.")
              .captioned(checked.finding().message() + waived));
    }
    return List.of(sheet.build());
  }

  /** The details of the rule: a line that names the plug, then one for each of its contacts. */
  private static List<List<Cell>> rows(List<String> details) {
    List<List<Cell>> rows = new ArrayList<>();
    Cell plug = Cell.EMPTY;
    for (String line : details) {
      int meets = line.indexOf(MEETS);
      if (line.endsWith(":") && meets < 0) {
        plug = Cell.text(line.substring(0, line.length() - 1));
      } else if (meets < 0) {
        rows.add(List.of(Cell.text(line.strip()), Cell.EMPTY, Cell.EMPTY));
      } else {
        Cell contact = Cell.text(line.substring(0, meets).strip());
        rows.add(List.of(plug, contact, Cell.text(line.substring(meets + MEETS.length()).strip())));
      }
    }
    return rows;
  }
}
