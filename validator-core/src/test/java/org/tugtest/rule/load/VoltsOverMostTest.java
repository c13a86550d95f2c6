package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class VoltsOverMostTest {
  /** One thing straight on a battery of so many volts, without a loss worth a millivolt. */
  private static Judged judged(double volts, String element, String more) {
    return Judged.of(
        new VoltsOverMost(),
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": %s, "ohms": 0.000001}}},
           "U": {"elements": {"it": {"a": "1", "b": "2", %s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "U:1", "areaMm2": 95, "cutMm": 100},
                   "W2": {"from": "U:2", "to": "BAT:-", "areaMm2": 95, "cutMm": 100}}%s}
        """
            .formatted(volts, element, more));
  }

  private static final String AT_24 = ", \"defaults\": {\"nominalV\": 24}";

  private static Judged load(double volts, String figures) {
    return judged(volts, "\"kind\": \"load\", " + figures, "");
  }

  @Test
  void theLoadsOwnFigureIsAnError() {
    assertThat(load(18, "\"ohms\": 10000, \"maxV\": 18").findings()).isEmpty();
    assertThat(load(18, "\"ohms\": 10000, \"maxV\": 18").coverage().judged()).isEqualTo(1);
    Judged over = load(18.1, "\"ohms\": 10000, \"maxV\": 18");
    assertThat(over.messages())
        .containsExactly("U.it sees 18.1 V in state as drawn; it stands 18 V");
    assertThat(over.findings().get(0).level()).isEqualTo(Level.ERROR);
    assertThat(over.findings().get(0).details()).containsExactly("BAT:+ -W1- U:1");
  }

  @Test
  void aLampStandsSomewhatMoreThanItsVolts() {
    String bulb = "\"watts\": 0.01, \"atVolts\": 12";
    assertThat(load(19.1, bulb).findings()).isEmpty();
    Judged over = load(19.3, bulb);
    assertThat(over.messages())
        .containsExactly(
            "U.it sees 19.3 V in state as drawn; it stands 19.2 V (1.6 times its atVolts)");
    assertThat(over.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(over.findings().get(0).remedy()).endsWith("give its \"maxV\"");
  }

  @Test
  void aControlUnitIsToldByTheVoltsItStopsAt() {
    assertThat(judged(31.9, "\"kind\": \"load\", \"watts\": 0.01, \"minV\": 8", AT_24).findings())
        .isEmpty();
    assertThat(judged(32.1, "\"kind\": \"load\", \"watts\": 0.01, \"minV\": 8", AT_24).messages())
        .containsExactly("U.it sees 32.1 V in state as drawn; it stands 32 V (4 times its minV)");
  }

  @Test
  void aCoilIsToldByTheVoltsItPullsAt() {
    String coil = "\"kind\": \"coil\", \"ohms\": 10000, \"pullInV\": 7";
    assertThat(judged(22.3, coil, "").findings()).isEmpty();
    assertThat(judged(22.5, coil, "").messages())
        .containsExactly(
            "U.it sees 22.5 V in state as drawn; it stands 22.4 V (3.2 times its pullInV)");
    assertThat(judged(48, coil + ", \"maxV\": 60", "").findings()).isEmpty();
  }

  @Test
  void withoutAnyFigureNominalCountsWhereThereIsNoOther() {
    assertThat(load(14.4, "\"ohms\": 10000").findings()).isEmpty();
    assertThat(load(14.4, "\"ohms\": 10000").coverage().judged()).isEqualTo(1);
    assertThat(load(24, "\"ohms\": 10000").messages())
        .containsExactly("U.it sees 24 V in state as drawn; it stands 19.2 V (1.6 times nominal)");
    Judged low =
        judged(13, "\"kind\": \"load\", \"ohms\": 10000", ", \"defaults\": {\"nominalV\": 48}");
    assertThat(low.findings()).isEmpty();
    assertThat(low.coverage().missing())
        .containsKey("it gives no maxV, atVolts or minV, and the sources are of several voltages");
  }

  @Test
  void aStateThatDoesNotWantTheLoadKillsItAllTheSame() {
    assertThat(
            judged(
                    48,
                    "\"kind\": \"load\", \"ohms\": 10000, \"maxV\": 16",
                    ", \"states\": {\"off\": {}, \"low\": {\"volts\": {\"BAT\": 12}}}")
                .messages())
        .containsExactly("U.it sees 48 V in state off; it stands 16 V");
  }

  @Test
  void whatSeesNoVoltsIsNoSubject() {
    assertThat(load(0, "\"ohms\": 10000, \"maxV\": 16").coverage().subjects()).isZero();
  }

  @Test
  void besideOtherVoltagesTheSupplyThatMinVFitsCounts() {
    String other = ", \"defaults\": {\"nominalV\": 12}";
    String fan = "\"kind\": \"load\", \"watts\": 0.01, \"minV\": %s";
    Judged over = judged(38.5, fan.formatted("21.6"), other);
    assertThat(over.messages())
        .containsExactly(
            "U.it sees 38.5 V in state as drawn; it stands 38.4 V (1.6 times the supply that its"
                + " minV fits)");
    assertThat(judged(38.3, fan.formatted("21.6"), other).findings()).isEmpty();
    assertThat(judged(38.5, fan.formatted("21.7"), other).findings()).as("made for 36 V").isEmpty();
  }
}
