package org.tugtest.rule.built;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

/** Bands: IPC/WHMA-A-620 table 11-1 (draft B for industry review). */
class BuiltLengthOffTest {
  private static Judged judged(String at, String more) {
    return Front.entries(Front.entry("1", "length", at, more)).judged(new BuiltLengthOff());
  }

  @ParameterizedTest
  @CsvSource({
    "300, 325",
    "301, 351",
    "1500, 1550",
    "1501, 1601",
    "3000, 3100",
    "3001, 3151",
    "7500, 7650",
    "8000, 8400"
  })
  void longerThanItsBandIsAWarning(int planned, int most) {
    String at = "wires/W4";
    String said = "\"planned\": " + planned + ", \"builtMm\": ";
    assertThat(judged(at, said + (most - 1)).messages()).isEmpty();
    assertThat(judged(at, said + most).messages()).isEmpty();
    Judged over = judged(at, said + (most + 1));
    assertThat(over.messages())
        .containsExactly(
            "wire W4 was built "
                + (most + 1)
                + " mm long instead of "
                + planned
                + " mm; nobody has accepted that");
    assertThat(over.findings().get(0).level()).isEqualTo(Level.WARNING);
  }

  @Test
  void shorterIsAnErrorAtAnySize() {
    assertThat(judged("wires/W2", "\"planned\": 1000, \"builtMm\": 1000").messages()).isEmpty();
    Judged shorter = judged("wires/W2", "\"planned\": 1000, \"builtMm\": 999.5");
    assertThat(shorter.messages()).hasSize(1);
    assertThat(shorter.findings().get(0).level()).isEqualTo(Level.ERROR);
  }

  @Test
  void acceptedIsFineAndSegmentsHaveLengthsToo() {
    assertThat(judged("wires/W2", "\"builtMm\": 900, \"accepted\": true").messages()).isEmpty();
    assertThat(judged("segments/s1", "\"planned\": 800, \"built\": 790").messages())
        .containsExactly(
            "segment s1 was built 790 mm long instead of 800 mm; nobody has accepted that");
  }

  @Test
  void withoutAPlannedLengthItIsNotJudged() {
    assertThat(judged("wires/W7", "\"builtMm\": 900").coverage().missing().keySet())
        .containsExactly("no planned length is known");
  }
}
