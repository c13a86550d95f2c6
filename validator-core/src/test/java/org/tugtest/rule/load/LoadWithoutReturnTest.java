package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class LoadWithoutReturnTest {
  private static Judged judged(String wires) {
    return Judged.of(
        new LoadWithoutReturn(),
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
           "A": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
           "B": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
         "splices": {"S1": {}},
         "wires": {"W1": {"from": "BAT:+", "to": "A:1"}, "W2": {"from": "BAT:+", "to": "B:1"}, %s}}
        """
            .formatted(wires));
  }

  @Test
  void aSharedEarthThatIsThereIsFine() {
    Judged judged =
        judged(
            "\"W3\": {\"from\": \"A:2\", \"to\": \"S1\"}, \"W4\": {\"from\": \"B:2\", \"to\":"
                + " \"S1\"}, \"W5\": {\"from\": \"S1\", \"to\": \"BAT:-\"}");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void oneMissingEarthIsOneCause() {
    Judged judged =
        judged(
            "\"W3\": {\"from\": \"A:2\", \"to\": \"S1\"}, \"W4\": {\"from\": \"B:2\", \"to\":"
                + " \"S1\"}");
    assertThat(judged.messages())
        .containsExactly(
            "A.led has no way to a source's minus in state as drawn",
            "B.led has no way to a source's minus in state as drawn");
    assertThat(judged.findings().stream().filter(one -> Objects.isNull(one.cause()))).hasSize(1);
  }

  @Test
  void anOpenContactInTheReturnIsNamed() {
    Judged judged =
        Judged.of(
            new LoadWithoutReturn(),
            """
            {"format": 1,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
               "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
               "A": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "A:1"}, "W2": {"from": "A:2", "to": "SW:1"},
                       "W3": {"from": "SW:2", "to": "BAT:-"}},
             "states": {"on": {"on": ["A"]}}}
            """);
    assertThat(judged.findings()).hasSize(1);
    assertThat(judged.findings().get(0).details()).containsExactly("SW.contact is open");
  }

  @Test
  void aLoadThatIsNotFedButEarthedIsNotThisRulesMatter() {
    Judged judged =
        Judged.of(
            new LoadWithoutReturn(),
            """
            {"format": 1,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
               "A": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
             "wires": {"W2": {"from": "A:2", "to": "BAT:-"}}}
            """);
    assertThat(judged.findings()).isEmpty();
  }

  /** A load before another one; both hang between plus and minus. */
  private static Judged inARow(String first, String second, String on) {
    return Judged.of(
        new LoadWithoutReturn(),
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "A": {"elements": {"it": {"kind": "load", "a": "1", "b": "2", %s}}},
           "B": {"elements": {"it": {"kind": "load", "a": "1", "b": "2", %s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "A:1", "areaMm2": 1, "cutMm": 100},
                   "W2": {"from": "A:2", "to": "B:1", "areaMm2": 1, "cutMm": 100},
                   "W3": {"from": "B:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 100}},
         "states": {"run": {"on": [%s]}}}
        """
            .formatted(first, second, on));
  }

  @Test
  void aChargeLampReturnsThroughTheFieldOfItsAlternator() {
    String lamp = "\"watts\": 2, \"atVolts\": 12";
    String field = "\"ohms\": 4, \"use\": \"free\"";
    assertThat(inARow(lamp, field, "\"A\"").findings()).isEmpty();
    assertThat(inARow(lamp, "\"ohms\": 72", "\"A\"").messages())
        .as("what the state does not want is no way back")
        .containsExactly("A.it has no way to a source's minus in state run");
  }

  @Test
  void twoFansInARowReturnOneThroughTheOtherAsLongAsEachHasItsVolts() {
    String fan = "\"ohms\": 1, \"minV\": 5.9";
    assertThat(inARow(fan, fan, "\"A\", \"B\"").findings()).isEmpty();
    String weak = "\"ohms\": 1, \"minV\": 6";
    assertThat(inARow(weak, weak, "\"A\", \"B\"").messages())
        .as("the wires take what is missing to 6 V")
        .containsExactly("A.it has no way to a source's minus in state run");
  }

  @Test
  void theMinusOfABatteryWithNoEarthInCommonIsNoReturn() {
    String car =
        """
        {"format": 1,
         "devices": {
           "B1": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "B2": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "A": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
         "wires": {"W1": {"from": "B1:+", "to": "A:1"}, "W2": {"from": "A:2", "to": "B2:-"}%s}}
        """;
    assertThat(Judged.of(new LoadWithoutReturn(), car.formatted("")).messages())
        .containsExactly("A.led has no way to a source's minus in state as drawn");
    assertThat(Judged.of(new VoltsUnderLeast(), car.formatted("")).findings()).isEmpty();
    String earth = ", \"W3\": {\"from\": \"B1:-\", \"to\": \"B2:-\"}";
    assertThat(Judged.of(new LoadWithoutReturn(), car.formatted(earth)).findings()).isEmpty();
    String row = ", \"W3\": {\"from\": \"B1:-\", \"to\": \"B2:+\"}";
    assertThat(Judged.of(new LoadWithoutReturn(), car.formatted(row)).findings()).isEmpty();
  }

  /** The case of a generator that stands still takes nothing back. */
  @Test
  void aGeneratorThatStandsStillIsNoReturn() {
    String car =
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "ALT": {"elements": {"g": {"kind": "source", "plus": "+", "minus": "-", "volts": 14,
                                      "generator": true}}},
           "LAMP": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
         "splices": {"P": {}},
         "wires": {"W1": {"from": "BAT:+", "to": "P"}, "W2": {"from": "ALT:+", "to": "P"},
                   "W3": {"from": "P", "to": "LAMP:1"}, "W4": {"from": "LAMP:2", "to": "ALT:-"}},
         "states": {"still": {"on": ["LAMP"]}, "turning": {"on": ["LAMP"], "running": ["ALT"]}}}
        """;
    assertThat(Judged.of(new LoadWithoutReturn(), car).messages())
        .containsExactly("LAMP.l has no way to a source's minus in state still");
  }
}
