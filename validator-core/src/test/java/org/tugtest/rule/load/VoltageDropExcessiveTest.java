package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class VoltageDropExcessiveTest {
  /**
   * A load of 10 A over two wires of so many milliohm each; 10 mohm make 0.1 V. Contacts, crimps
   * and the battery's own ohms are out of the drop, and the wires are so long and thick that they
   * stay cold.
   */
  private static Judged judged(double milliohmEach, String load, String more) {
    return Judged.of(
        new VoltageDropExcessive(),
        """
        {"format": 1,
         "defaults": {"nominalV": 12, "crimpMilliohm": 0, "contactMilliohm": 0},
         "parts": {"wires": {"w": {"areaMm2": 1.5, "maxC": 125, "outerMm": 20, "conductorMm": 19, "milliohmPerM": %s}}},
         "zones": {"z": {"ambientC": 20}},
         "layout": {"nodes": {"n": {"zone": "z"}}},
         "devices": {
           "BAT": {"at": "n", "elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 14}}},
           "PUMP": {"at": "n", "elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 10%s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "PUMP:1", "part": "w", "cutMm": 100000},
                   "W2": {"from": "PUMP:2", "to": "BAT:-", "part": "w", "cutMm": 100000}}%s}
        """
            .formatted(milliohmEach / 100, load, more));
  }

  private static List<String> levels(Judged judged) {
    return judged.findings().stream().map(finding -> finding.level().word()).toList();
  }

  @Test
  void halfAVoltIsTheLimitOfAContinuousLoad() {
    assertThat(judged(24.99, "", "").findings()).isEmpty();
    assertThat(judged(24.99, "", "").coverage().judged()).isEqualTo(1);
    Judged over = judged(25.05, "", "");
    assertThat(over.messages())
        .containsExactly(
            "PUMP.motor loses 0.501 V on its way in state as drawn (0.25 V in the supply, 0.25 V in"
                + " the return); at most 0.5 V");
    assertThat(levels(over)).containsExactly("warning");
  }

  @Test
  void anIntermittentLoadMayLoseOneVolt() {
    String load = ", \"intermittent\": true";
    assertThat(judged(49.9, load, "").findings()).isEmpty();
    assertThat(levels(judged(50.1, load, ""))).containsExactly("warning");
  }

  @Test
  void aCriticalLoadMayLoseThreePercent() {
    String load = ", \"critical\": true";
    assertThat(judged(17.9, load, "").findings()).isEmpty();
    assertThat(levels(judged(18.1, load, ""))).containsExactly("warning");
  }

  @Test
  void theLoadsOwnLimitAndTheTeamsWinInThatOrder() {
    String team =
        ", \"limits\": {\"voltage-drop-excessive\": {\"percent\": 2, \"places\":"
            + " {\"devices/PUMP\": {\"percent\": 5}}}}";
    assertThat(judged(29.9, "", team).findings()).as("5 % of 12 V for the pump").isEmpty();
    assertThat(judged(30.1, "", team).findings()).hasSize(1);
    String own = ", \"maxDropPercent\": 6";
    assertThat(judged(35.9, own, team).findings()).isEmpty();
    assertThat(judged(36.1, own, team).findings()).hasSize(1);
  }

  @Test
  void overTenPercentIsAnError() {
    assertThat(levels(judged(59.9, "", ""))).containsExactly("warning");
    Judged grave = judged(60.1, "", "");
    assertThat(levels(grave)).containsExactly("error");
    assertThat(grave.findings().get(0).measured()).isNotNull();
    assertThat(grave.messages().get(0)).endsWith("at most 1.2 V");
  }

  @Test
  void aBriefStateMayLoseTwice() {
    String brief = ", \"states\": {\"cranking\": {\"on\": [\"PUMP\"], \"brief\": true}}";
    assertThat(judged(49.9, "", brief).findings()).isEmpty();
    assertThat(judged(50.1, "", brief).findings()).hasSize(1);
  }

  @Test
  void from20VoltsOnTwiceIsAllowed() {
    Judged judged =
        Judged.of(
            new VoltageDropExcessive(),
            """
            {"format": 1, "defaults": {"nominalV": 24, "crimpMilliohm": 0},
             "parts": {"wires": {"w": {"areaMm2": 1.5, "maxC": 125, "outerMm": 20, "conductorMm": 19, "milliohmPerM": 0.49}}},
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 28}}},
               "PUMP": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 9}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "PUMP:1", "part": "w", "cutMm": 100000},
                       "W2": {"from": "PUMP:2", "to": "BAT:-", "part": "w", "cutMm": 100000}}}
            """);
    assertThat(judged.findings()).isEmpty();
  }

  @Test
  void otherStatesAreListedAndTheWorstIsTheOneSaid() {
    String states =
        ", \"states\": {\"idle\": {\"on\": [\"PUMP\"], \"volts\": {\"BAT\": 13}}, \"race\":"
            + " {\"on\": [\"PUMP\"]}}";
    Judged judged =
        Judged.of(
            new VoltageDropExcessive(),
            """
            {"format": 1, "defaults": {"crimpMilliohm": 0},
             "parts": {"wires": {"w": {"areaMm2": 1.5, "maxC": 125, "milliohmPerM": 30}}},
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 14}}},
               "PUMP": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "ohms": 1.3}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "PUMP:1", "part": "w", "cutMm": 1000},
                       "W2": {"from": "PUMP:2", "to": "BAT:-", "part": "w", "cutMm": 1000}}%s}
            """
                .formatted(states));
    assertThat(judged.findings()).hasSize(1);
    assertThat(judged.findings().get(0).state()).isEqualTo("race");
    assertThat(judged.findings().get(0).details()).anyMatch(line -> line.contains("state idle"));
  }

  @Test
  void whatIsNotFedOrHasNoLengthIsNotJudged() {
    Judged noLength =
        Judged.of(
            new VoltageDropExcessive(),
            """
            {"format": 1,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 14}}},
               "PUMP": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
               "LAMP": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "PUMP:1", "areaMm2": 1},
                       "W2": {"from": "PUMP:2", "to": "BAT:-", "areaMm2": 1}}}
            """);
    assertThat(noLength.findings()).isEmpty();
    assertThat(noLength.coverage().missing().keySet())
        .containsExactly(
            "a wire on its way gives no length or size", "no state that wants it feeds it");
  }

  @Test
  void levelIsWarningByDefault() {
    assertThat(new VoltageDropExcessive().info().level()).isEqualTo(Level.WARNING);
  }

  /**
   * 5 m of 20 milliohm a metre at 4 A and 40 °C: 0.4315 V. With 10 a metre 0.2157 V less, with 5
   * 0.3236 V less, a little more with the warmth of 4 A; another 0.30 V is lost elsewhere, so only
   * the second comes under 0.5 V.
   */
  @Test
  void theRemedyIsTheGaugeThatComesUnderTheLimit() {
    Judged judged =
        Judged.of(
            new VoltageDropExcessive(),
            """
            {"format": 1, "defaults": {"crimpMilliohm": 0},
             "parts": {"wires": {
               "a": {"areaMm2": 1, "maxC": 125, "milliohmPerM": 20, "gramsPerM": 10},
               "b": {"areaMm2": 2, "maxC": 125, "milliohmPerM": 10, "gramsPerM": 20},
               "c": {"areaMm2": 4, "maxC": 125, "milliohmPerM": 5, "gramsPerM": 40}}},
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
               "BAR": {"elements": {"strap": {"kind": "link", "a": "1", "b": "2", "milliohm": 75}}},
               "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 4}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "FAN:1", "part": "a", "cutMm": 5000},
                       "W2": {"from": "FAN:2", "to": "BAR:1", "areaMm2": 10, "cutMm": 100},
                       "W3": {"from": "BAR:2", "to": "BAT:-", "areaMm2": 10, "cutMm": 100}}}
            """);
    assertThat(judged.findings().get(0).remedy())
        .matches("make W1 of c: 0.33 V less, 0.41 V in all, 150 g more");
  }

  @Test
  void whatTwoLoadsInARowShareIsNoLoss() {
    Judged judged =
        Judged.of(
            new VoltageDropExcessive(),
            """
            {"format": 1,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
               "A": {"elements": {"it": {"kind": "load", "a": "1", "b": "2", "ohms": 1, "minV": 5}}},
               "B": {"elements": {"it": {"kind": "load", "a": "1", "b": "2", "ohms": 1, "minV": 5}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "A:1", "areaMm2": 1, "cutMm": 100},
                       "W2": {"from": "A:2", "to": "B:1", "areaMm2": 1, "cutMm": 100},
                       "W3": {"from": "B:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 100}}}
            """);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsKey("its current passes another load as well, with which it shares the volts");
  }

  /** A converter of 13 V beside the battery of 48 V that it shares the return with. */
  private static Judged converter(int mm) {
    return Judged.of(
        new VoltageDropExcessive(),
        """
        {"format": 1, "defaults": {"nominalV": 48},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 52}}},
           "DC": {"elements": {
             "in": {"kind": "load", "a": "in", "b": "0", "watts": 60},
             "out": {"kind": "source", "plus": "12", "minus": "0", "volts": 13, "generator": true}}},
           "LED": {"elements": {"it": {"kind": "load", "a": "1", "b": "2", "amps": 4, "minV": 9}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "DC:in", "areaMm2": 1.5, "cutMm": 500},
                   "W2": {"from": "DC:0", "to": "BAT:-", "areaMm2": 1.5, "cutMm": 500},
                   "W3": {"from": "DC:12", "to": "LED:1", "areaMm2": 1, "cutMm": %d},
                   "W4": {"from": "LED:2", "to": "DC:0", "areaMm2": 1, "cutMm": 100}}}
        """
            .formatted(mm));
  }

  @Test
  void dropsBehindAConverterAreCountedFromIt() {
    assertThat(converter(1000).findings()).isEmpty();
    assertThat(converter(20_000).messages()).hasSize(1);
    assertThat(converter(20_000).messages().get(0)).startsWith("LED.it loses 1.");
  }

  @Test
  void besideAnAlternatorTheWayIsThatFromTheBattery() {
    Judged judged =
        Judged.of(
            new VoltageDropExcessive(),
            """
            {"format": 1,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
               "ALT": {"elements": {
                 "gen": {"kind": "source", "plus": "w", "minus": "31", "volts": 15, "generator": true},
                 "rect": {"kind": "diode", "a": "w", "b": "B+"}}},
               "BAR": {"elements": {"it": {"kind": "link", "a": "1", "b": "2"}}},
               "FAN": {"elements": {"it": {"kind": "load", "a": "1", "b": "2", "amps": 10}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "BAR:1", "areaMm2": 16, "cutMm": 300},
                       "W2": {"from": "ALT:B+", "to": "BAR:1", "areaMm2": 16, "cutMm": 1500},
                       "W3": {"from": "BAR:2", "to": "FAN:1", "areaMm2": 1, "cutMm": 4000},
                       "W4": {"from": "FAN:2", "to": "BAT:-", "areaMm2": 2.5, "cutMm": 500},
                       "W5": {"from": "ALT:31", "to": "BAT:-", "areaMm2": 16, "cutMm": 1500}}}
            """);
    assertThat(judged.findings()).hasSize(1);
    assertThat(judged.findings().get(0).details())
        .anyMatch(line -> line.contains(" in W3 "))
        .anyMatch(line -> line.contains(" in W1 "))
        .noneMatch(line -> line.contains("ALT.rect") || line.contains(" in W2 "));
  }

  /** A drive on 48 V in a car of 12 V: ten per cent are those of its own source. */
  @Test
  void aLoadOnFarMoreVoltsIsHeldToItsOwnSource() {
    String car =
        """
        {"format": 1, "sketch": true, "defaults": {"crimpMilliohm": 0},
         "devices": {
           "PACK": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": %s}}},
           "INV": {"elements": {"drive": {"kind": "load", "a": "1", "b": "2", "amps": 80, "maxDropPercent": 5}}}},
         "parts": {"wires": {"w": {"areaMm2": 35, "maxC": 125, "milliohmPerM": 8}}},
         "wires": {"W1": {"from": "PACK:+", "to": "INV:1", "part": "w", "cutMm": 1000},
                   "W2": {"from": "INV:2", "to": "PACK:-", "part": "w", "cutMm": 1000}},
         "states": {"pull": {"on": ["INV"], "brief": false}}}
        """;
    Judged own = Judged.of(new VoltageDropExcessive(), car.formatted("50"));
    assertThat(own.findings()).isEmpty();
    assertThat(Judged.of(new VoltageDropExcessive(), car.formatted("18")).findings()).hasSize(1);
  }
}
