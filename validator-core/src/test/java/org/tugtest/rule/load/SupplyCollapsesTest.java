package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.rule.Judged;

/** 12 V behind 1 ohm in all: at most 36 W. */
class SupplyCollapsesTest {
  private static Judged judged(String elements, String more) {
    return Judged.of(
        new SupplyCollapses(),
        """
        {"format": 1, "defaults": {"crimpMilliohm": 0},
         "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 125, "milliohmPerM": 0.0000001}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 1}}},
           "UNIT": {"elements": {%s}}},
         "wires": {"W1": {"from": "BAT:+", "to": "UNIT:1", "part": "w", "cutMm": 10},
                   "W2": {"from": "UNIT:2", "to": "BAT:-", "part": "w", "cutMm": 10}}%s}
        """
            .formatted(elements, more));
  }

  private static String load(String name, String figures) {
    return "\"%s\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", %s}".formatted(name, figures);
  }

  private static Judged watts(double watts) {
    return judged(load("supply", String.format(Locale.ROOT, "\"watts\": %s", watts)), "");
  }

  @Test
  void upToTheMostIsFineAndAboveCollapses() {
    for (double fine : new double[] {1, 35, 35.9, 35.99}) {
      assertThat(watts(fine).findings()).as("%f", fine).isEmpty();
      assertThat(watts(fine).coverage().judged()).isEqualTo(1);
    }
    for (double bad : new double[] {36.01, 37, 400}) {
      Judged judged = watts(bad);
      assertThat(judged.findings()).as("%f", bad).hasSize(1);
      Finding finding = judged.findings().get(0);
      assertThat(finding.level()).isEqualTo(Level.ERROR);
      Measured measured = finding.measured();
      assertThat(measured).isNotNull();
      assertThat(measured.actual()).isEqualTo(bad);
      assertThat(measured.limit()).isCloseTo(36, within(1e-3));
    }
    assertThat(watts(37).messages())
        .containsExactly(
            "UNIT.supply wants 37 W in state as drawn; what feeds it gives at most 36 W, so the"
                + " volts collapse");
  }

  @Test
  void severalThatCouldBeFedAloneAreOneFinding() {
    Judged judged = judged(load("one", "\"watts\": 20") + ", " + load("two", "\"watts\": 25"), "");
    assertThat(judged.subjects()).containsExactly("devices/UNIT.one");
    assertThat(judged.messages().get(0)).startsWith("UNIT.one and UNIT.two together want 45 W");
    assertThat(judged.coverage().judged()).isEqualTo(2);
    assertThat(
            judged(load("one", "\"watts\": 15") + ", " + load("two", "\"watts\": 20"), "")
                .findings())
        .isEmpty();
  }

  @Test
  void resistancesAndCurrentsDoNotCollapse() {
    Judged judged =
        judged(
            load("lamp", "\"watts\": 90, \"atVolts\": 12") + ", " + load("motor", "\"amps\": 30"),
            "");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().subjects()).isZero();
  }

  @Test
  void aLoadUnderItsLeastVoltsThatCouldBeFedIsAnotherRulesMatter() {
    assertThat(judged(load("supply", "\"watts\": 35, \"minV\": 11"), "").findings()).isEmpty();
  }

  @Test
  void theWorstStateIsNamedAndTheOthersListed() {
    Judged judged =
        judged(
            load("supply", "\"watts\": 37"),
            ", \"states\": {\"day\": {\"on\": [\"UNIT\"]}, \"weak\": {\"on\": [\"UNIT\"],"
                + " \"volts\": {\"BAT\": 11}}, \"idle\": {}}");
    assertThat(judged.findings()).hasSize(1);
    assertThat(judged.findings().get(0).state()).isEqualTo("weak");
    assertThat(judged.findings().get(0).details()).contains("also in state day");
  }

  @Test
  void whatIsNotWantedIsNotJudged() {
    Judged judged = judged(load("supply", "\"watts\": 100"), ", \"states\": {\"idle\": {}}");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().subjects()).isZero();
  }

  @Test
  void aFeedOfUnknownLengthIsNotJudgedAsFine() {
    Judged judged =
        Judged.of(
            new SupplyCollapses(),
            """
            {"format": 1,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.01}}},
               "UNIT": {"elements": {"supply": {"kind": "load", "a": "1", "b": "2", "watts": 30}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "UNIT:1", "areaMm2": 1},
                       "W2": {"from": "UNIT:2", "to": "BAT:-", "areaMm2": 1}}}
            """);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsKey("a wire on its way gives no length or size");
  }

  @Test
  void aLoadFedThroughAnotherLoadAloneIsNotFed() {
    Judged judged =
        Judged.of(
            new SupplyCollapses(),
            """
            {"format": 1,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.01}}},
               "UNIT": {"elements": {"sense": {"kind": "load", "a": "0", "b": "1", "ohms": 100, "use": "free"},
                                     "supply": {"kind": "load", "a": "1", "b": "2", "watts": 30}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "UNIT:0", "areaMm2": 1, "cutMm": 100},
                       "W2": {"from": "UNIT:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 100}}}
            """);
    assertThat(judged.findings()).isEmpty();
  }

  @Test
  void fewVoltsAtTheLoadFollowFromIt() {
    Judged collapse = watts(37);
    Judged volts =
        Judged.of(
            new VoltsUnderLeast(),
            Judged.facts(
                Map.of(
                    Judged.ROOT,
                    """
                    {"format": 1, "defaults": {"crimpMilliohm": 0},
                     "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 125, "milliohmPerM": 0.0000001}}},
                     "devices": {
                       "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 1}}},
                       "UNIT": {"elements": {"supply": {"kind": "load", "a": "1", "b": "2", "watts": 37}}}},
                     "wires": {"W1": {"from": "BAT:+", "to": "UNIT:1", "part": "w", "cutMm": 10},
                               "W2": {"from": "UNIT:2", "to": "BAT:-", "part": "w", "cutMm": 10}}}
                    """)));
    assertThat(volts.findings()).hasSize(1);
    assertThat(volts.findings().get(0).cause()).isEqualTo(collapse.findings().get(0).identity());
  }
}
