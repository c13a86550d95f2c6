package org.tugtest.rule.built;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

/** W1: 5 m of 20 milliohm a metre and crimps of none, 0.1 ohm; W2: 0.02 ohm; plugs 10 milliohm. */
class ReadingHighTest {
  private static Judged judged(String... lines) {
    return Front.readings(lines).judged(new ReadingHigh());
  }

  @Test
  void fiftyMilliohmMoreAreGoodOnAShortWire() {
    assertThat(judged("X1:2,X2:2,0.0699,,,").messages()).isEmpty();
    assertThat(judged("X1:2,X2:2,0.07,,,").messages()).isEmpty();
    Judged over = judged("X1:2,X2:2,0.0701,,,");
    assertThat(over.messages())
        .containsExactly("X1:2 to X2:2 reads 0.0701 ohm; computed are 0.02 ohm");
    assertThat(over.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(over.findings().get(0).details()).containsExactly("way: X1:2 -W2- X2:2");
  }

  /** W1 over the plug and W3: 0.1 + 0.01 + 0.02. With 50 % of it the share rules. */
  @Test
  void aFifthMoreIsGoodOnALongWay() {
    Front long1 = Front.readings("X1:1,X3:3,0.19499,,,").limits("reading-high", "\"percent\": 50");
    assertThat(long1.judged(new ReadingHigh()).messages()).isEmpty();
    Front over = Front.readings("X1:1,X3:3,0.1951,,,").limits("reading-high", "\"percent\": 50");
    assertThat(over.judged(new ReadingHigh()).messages()).hasSize(1);
    Front tight = Front.readings("X1:1,X2:1,0.1201,,,").limits("reading-high", "\"ohms\": 0.001");
    assertThat(tight.judged(new ReadingHigh()).messages()).hasSize(1);
    Front at = Front.readings("X1:1,X2:1,0.12,,,").limits("reading-high", "\"ohms\": 0.001");
    assertThat(at.judged(new ReadingHigh()).messages()).isEmpty();
  }

  /** 12 V over 2.04 ohm and the contacts are 5.87 A: 3 % of 12 V are lost in 0.0613 ohm. */
  @Test
  void anExcessThatCostsTooManyVoltsIsAnError() {
    Judged little = judged("BAT:+,LAMP:1,0.081,,,");
    assertThat(little.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(little.findings().get(0).details())
        .contains("at 5.87 A (as drawn) the excess costs 0.358 V");
    Judged much = judged("BAT:+,LAMP:1,0.0815,,,");
    assertThat(much.findings().get(0).level()).isEqualTo(Level.ERROR);
    assertThat(much.findings().get(0).state()).isEqualTo("as drawn");
  }

  @Test
  void withoutLengthOrSizeItIsNotJudged() {
    assertThat(judged("X1:3,LAMP:1,0.5,,,").coverage().missing().keySet())
        .containsExactly("a wire on the way gives no length or no size");
  }

  @Test
  void openLinesInsulationAndReadingsWithoutOhmsAreNotItsMatter() {
    assertThat(
            judged(
                    "X1:1,X2:1,100,,,",
                    "X1:2,X2:2,,yes,,",
                    "X1:1,X3:1,50,,insulation,",
                    "X1:1,X1:2,5,,,")
                .coverage()
                .subjects())
        .isZero();
  }
}
