package org.tugtest.report.sheets.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class BuildOrderTest {
  private static final String LOOM =
      """
      {"format": 1,
       "parts": {
         "housings": {"h": {"side": "pin", "sealed": true, "rows": [["1", "2"]],
                            "secondaryLock": true}},
         "coverings": {"braid": {"kind": "braided-sleeve", "innerMm": 9},
                       "wrap": {"kind": "tape"}, "boot": {"kind": "heat-shrink"},
                       "tube": {"kind": "heat-shrink"}}},
       "connectors": {"X": {"housing": "h", "at": "n1", "boot": "boot", "blanked": true,
                            "parked": "capped"}},
       "splices": {"S": {"on": "s", "offsetMm": 100, "coverings": ["tube"]}},
       "groups": {"G": {"kind": "twisted", "wires": ["W1", "W2"], "pitchMm": 25}},
       "layout": {"nodes": {"n1": {}, "n2": {"coverings": ["tube"]}},
                  "segments": {"s": {"from": "n1", "to": "n2", "lengthMm": 500,
                                     "coverings": ["braid", "wrap"], "supports": 2}}},
       "wires": {"W1": {"from": "X:1", "to": "S", "awg": "20", "evidence": "guess"},
                 "W2": {"from": "S", "to": "S", "awg": "20"},
                 "W3": {"from": "S", "to": "S", "awg": "20", "decision": "undecided"},
                 "W4": {"from": "S", "to": "S", "awg": "20", "decision": "remove",
                        "reason": "no second horn"}}}
      """;

  private static int step(List<CSVRecord> rows, String on, String task) {
    return rows.stream()
        .filter(row -> row.get("on").contains(on) && row.get("do").contains(task))
        .map(row -> Integer.parseInt(row.get("step")))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no step " + on + ": " + task));
  }

  @Test
  void whatCannotPassAFittedTerminalGoesOnFirst() {
    List<CSVRecord> rows = Made.of(new BuildOrder(), LOOM).rows("build-order.csv");
    int terminal = step(rows, "X", "crimp");
    assertThat(step(rows, "branch to X", "slide on")).isLessThan(terminal);
    assertThat(step(rows, "segment s", "slide on braid")).isLessThan(terminal);
    assertThat(step(rows, "breakout n2", "slide on")).isLessThan(terminal);
    assertThat(terminal).isLessThan(step(rows, "X", "insert 1"));
    assertThat(step(rows, "X", "insert 1")).isLessThan(step(rows, "segment s", "put round wrap"));
    assertThat(rows.stream().filter(row -> row.get("on").equals("branch to X")))
        .allMatch(row -> row.get("with").equals("boot boot; label X; wire labels W1"));
  }

  @Test
  void splicesComeBeforeCoveringsAndTheirOwnTubeBeforeTheCrimp() {
    List<CSVRecord> rows = Made.of(new BuildOrder(), LOOM).rows("build-order.csv");
    int splice = step(rows, "S, segment s at 100 mm", "slide the covering on, then join");
    assertThat(splice).isLessThan(step(rows, "segment s", "slide on braid"));
    assertThat(step(rows, "G", "twist W1 and W2")).isLessThan(splice);
  }

  @Test
  void donorWiresAreSettledFirstWithTheirReason() {
    List<CSVRecord> rows = Made.of(new BuildOrder(), LOOM).rows("build-order.csv");
    assertThat(step(rows, "W3", "not decided yet")).isEqualTo(1);
    assertThat(step(rows, "W4", "take it out")).isEqualTo(2);
    assertThat(rows.get(0).get("with")).isEqualTo("no reason given");
    assertThat(rows.get(1).get("with")).isEqualTo("no second horn");
    assertThat(rows.get(2).get("do")).contains("cut 2");
  }

  @Test
  void aDonorsWireIsNotCrimpedAgainAndOneThatGoesIsNotJoined() {
    Made made =
        Made.of(
            new BuildOrder(),
            """
            {"format": 1, "sketch": true, "wires": {
              "W1": {"from": "A:1", "to": "S1", "decision": "keep"},
              "W2": {"from": "S1", "to": "B:1", "decision": "remove"},
              "W3": {"from": "S1", "to": "C:1"},
              "W4": {"from": "A:2", "to": "S2", "decision": "keep"}}}
            """);
    List<CSVRecord> rows = made.rows("build-order.csv");
    assertThat(step(rows, "S1", "join W1 and W3")).isPositive();
    assertThat(rows.stream().filter(row -> row.get("do").contains("crimp by")))
        .allMatch(row -> row.get("on").equals("C"))
        .hasSize(1);
    assertThat(made.words("build-order.html"))
        .contains("1 × not known: no terminal given")
        .doesNotContain("S2, ");
  }

  @Test
  void blanksLockAndGuessesAreSaid() {
    Made made = Made.of(new BuildOrder(), LOOM);
    List<CSVRecord> rows = made.rows("build-order.csv");
    assertThat(step(rows, "X", "plug 1 cavity; close the secondary lock; seat the boot"))
        .isPositive();
    assertThat(made.words("build-order.html")).contains("X guess");
  }

  @Test
  void stepsAreNumberedWithoutGaps() {
    List<String> steps =
        Made.ofSample(new BuildOrder()).column("loom-engine/build-order.csv", "step");
    for (int i = 0; i < steps.size(); i++) {
      assertThat(steps.get(i)).isEqualTo(Integer.toString(i + 1));
    }
  }

  @Test
  void aLoomOfSplicesAloneHasNoTerminalToPull() {
    List<CSVRecord> rows =
        Made.of(
                new BuildOrder(),
                """
                {"format": 1, "sketch": true,
                 "wires": {"W1": {"from": "S1", "to": "S2"}, "W2": {"from": "S2", "to": "S1"}}}
                """)
            .rows("build-order.csv");
    assertThat(rows).noneMatch(row -> row.get("with").contains("crimp table"));
    assertThat(rows).anyMatch(row -> row.get("do").equals("join W1 and W2"));
    assertThat(Made.of(new BuildOrder(), LOOM).rows("build-order.csv"))
        .anyMatch(row -> row.get("with").contains("crimp table"));
  }
}
