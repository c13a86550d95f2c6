package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class FigureMissingTest {
  private static Judged judged(String devices) {
    return Judged.of(
        new FigureMissing(),
        Map.of(Judged.ROOT, "{\"format\": 1, \"devices\": {" + devices + "}}"));
  }

  private static String load(String device, String figure) {
    return "\"%s\": {\"elements\": {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\"%s}}}"
        .formatted(device, figure);
  }

  @Test
  void anyFigureOfALoadWillDo() {
    Judged judged =
        judged(
            load("A", ", \"amps\": 0")
                + ", "
                + load("B", ", \"watts\": 21")
                + ", "
                + load("C", ", \"ohms\": 12")
                + ", "
                + load("D", ", \"watts\": 21, \"atVolts\": 12"));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(4);
  }

  @Test
  void loadsWithoutAreOneFindingWithTheList() {
    Judged judged =
        judged(load("A", "") + ", " + load("B", "") + ", " + load("C", ", \"amps\": 1"));
    assertThat(judged.messages())
        .containsExactly("2 loads give none of amps, watts and ohms: A.l and B.l");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.NOTE);
    assertThat(judged.findings().get(0).at()).hasSize(2);
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void aSourceWithoutVoltsIsAWarningOfItsOwn() {
    Judged judged =
        judged(
            """
            "B1": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
            "B2": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}}
            """);
    assertThat(judged.messages())
        .containsExactly("source B1.cell gives no volts, so it feeds nothing");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
  }

  /** What is written wrongly has a finding of its own. */
  @Test
  void aFigureThatIsWrittenWronglyIsNotCalledMissing() {
    Judged judged =
        judged(
            load("A", ", \"amps\": \"4 A\"")
                + ", \"B\": {\"elements\": {\"c\": {\"kind\": \"source\", \"plus\": \"+\","
                + " \"minus\": \"-\", \"volts\": \"12\"}}}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(2);
  }

  @Test
  void theSameInATypeOfDevices() {
    Judged judged =
        Judged.of(
            new FigureMissing(),
            """
            {"format": 1,
             "parts": {"deviceTypes": {"lamp": {"elements": {
               "l": {"kind": "load", "a": "1", "b": "2", "watts": "21 W"}}}}},
             "devices": {"A": {"type": "lamp"}}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }
}
