package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Column;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Table;

/** In which order each loom is built: what cannot pass a fitted terminal goes on first. */
public final class BuildOrder implements DocumentMaker {
  private static final String TITLE = "Build order";
  private static final List<Column> COLUMNS =
      List.of(
          Column.number("step", "Step", ""),
          Column.text("stage", "Stage").inCsv(),
          Column.text("on", "On"),
          Column.text("do", "Do"),
          Column.text("with", "With"));

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    LoomSegments segments = new LoomSegments(facts);
    List<Document> sheets = new ArrayList<>();
    for (Scope scope : Scope.parts(facts.harness())) {
      if (LoomParts.wires(facts.harness(), scope).isEmpty()) {
        continue;
      }
      Map<BuildStage, List<BuildStep>> stages = new LinkedHashMap<>();
      for (BuildStep step : new BuildSteps(facts, scope, segments.of(scope)).all()) {
        stages.computeIfAbsent(step.stage(), stage -> new ArrayList<>()).add(step);
      }
      Sheet.Builder sheet =
          Sheet.titled(scope, "build-order", TITLE)
              .purpose("What is done before what, so that nothing has to come off again.")
              .note(
                  "What cannot pass a fitted terminal or housing goes on before it: labels, boots,"
                      + " seals, heat shrink and closed sleeves.")
              .signed();
      int number = 1;
      for (Map.Entry<BuildStage, List<BuildStep>> stage : stages.entrySet()) {
        List<List<Cell>> rows = new ArrayList<>();
        for (BuildStep step : stage.getValue()) {
          rows.add(
              List.of(
                  Cell.count(number++),
                  Cell.text(stage.getKey().title()),
                  Cell.text(step.on()).guessed(step.guessed()),
                  Cell.text(step.task()),
                  Cell.text(step.with())));
        }
        sheet.add(
            Table.of(COLUMNS, rows, "")
                .captioned(stage.getKey().title() + ": " + stage.getKey().why())
                .withTicks());
      }
      sheets.add(sheet.build());
    }
    return sheets;
  }
}
