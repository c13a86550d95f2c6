package org.tugtest.report;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tugtest.check.CheckResult;
import org.tugtest.compare.Announced;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadLimits;
import org.tugtest.rule.Judged;

/** A harness of many wires in which not one stays as it was; for tests of what a report bears. */
public final class TotalRewrite {
  private static final int ROWS = 4;
  private static final int COLUMNS = 24;
  private static final int CAVITIES = ROWS * COLUMNS;
  private static final Map<Integer, Report> MADE = new ConcurrentHashMap<>();

  private TotalRewrite() {}

  /** The report on it, made once; no rules are run. */
  public static Report ofWires(int wires) {
    return MADE.computeIfAbsent(wires, TotalRewrite::made);
  }

  private static Report made(int wires) {
    Snapshot before = snapshot("1a2b3c4", text("A", 1, "RD", wires));
    Snapshot after = snapshot("the files", text("B", 7, "BU/WH", wires));
    Comparison comparison = Comparison.of(before, after);
    Baseline baseline =
        new Baseline(comparison, List.of(), Announced.of(comparison, List.of(), List.of()));
    return new Report(
        "1.2.3",
        "src/main/harness",
        Reports.REVISION,
        new Gate(Level.ERROR, 0),
        List.of(),
        List.of(new HarnessReport(after.facts(), after.result(), baseline)));
  }

  /** Wires from one plug to another, each step cavities further on there. */
  private static String text(String letter, int step, String colour, int wires) {
    int plugs = wires / CAVITIES;
    StringBuilder json =
        new StringBuilder("{\"format\": 1, \"title\": \"Rewritten\", ")
            .append("\"parts\": {\"housings\": {\"h96\": {\"side\": \"socket\", \"rows\": ")
            .append(rows())
            .append("}}}, \"connectors\": {");
    for (int plug = 0; plug < 2 * plugs; plug++) {
      json.append(plug == 0 ? "" : ",")
          .append(
              "\"X%s%d\": {\"housing\": \"h96\", \"parked\": \"capped\"}".formatted(letter, plug));
    }
    json.append("}, \"wires\": {");
    for (int wire = 0; wire < plugs * CAVITIES; wire++) {
      int other = (wire * step + wire / CAVITIES) % (plugs * CAVITIES);
      json.append(wire == 0 ? "" : ",")
          .append("\"W%s%d\": ".formatted(letter, wire))
          .append("{\"from\": \"" + cavity(letter, 0, wire) + "\", ")
          .append("\"to\": \"" + cavity(letter, plugs, other) + "\", ")
          .append("\"areaMm2\": 0.5, \"cutMm\": %d, ".formatted(300 + step * (wire % 90)))
          .append("\"colour\": \"" + colour + "\", \"circuit\": \"" + letter.repeat(30) + "\"}");
    }
    return json.append("}}\n").toString();
  }

  private static String rows() {
    return IntStream.range(0, ROWS)
        .mapToObj(
            row ->
                IntStream.rangeClosed(1, COLUMNS)
                    .mapToObj(column -> "\"" + (row * COLUMNS + column) + "\"")
                    .collect(Collectors.joining(",", "[", "]")))
        .collect(Collectors.joining(",", "[", "]"));
  }

  private static String cavity(String letter, int first, int number) {
    return "X" + letter + (first + number / CAVITIES) + ":" + (number % CAVITIES + 1);
  }

  private static Snapshot snapshot(String label, String json) {
    Facts facts =
        Facts.of(
            new HarnessReader(MemoryFiles.of(Map.of(Judged.ROOT, json)), ReadLimits.STANDARD)
                .read(Judged.ROOT),
            Judged.TODAY,
            org.tugtest.facts.KnownRules.NONE);
    return Snapshot.of(
        label,
        facts,
        new CheckResult(Judged.ROOT, List.of(), List.of(), List.of(), List.of(), List.of()));
  }
}
