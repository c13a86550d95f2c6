package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class SourceOverloadedTest {
  private static final String CONVERTER =
      """
      {"kind": "source", "plus": "3", "minus": "4", "volts": 12, "ohms": 0.01, "maxA": %s,
       "generator": true, "selfLimiting": true}
      """;

  /** A converter from 24 V whose minus is joined to the battery's, with one load behind it. */
  private static Judged judge(String source, String draws, String more) {
    return Judged.of(new SourceOverloaded(), car(source, draws, more));
  }

  private static String car(String source, String draws, String more) {
    return """
    {"format": 1,
     "devices": {
       "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 25.2}}},
       "DCDC": {"elements": {
         "in": {"kind": "load", "a": "1", "b": "2", "watts": 100, "use": "internal"},
         "out": %s}},
       %s
       "RADIO": {"elements": {"supply": {"kind": "load", "a": "1", "b": "2", %s}}}},
     "wires": {"W1": {"from": "BAT:+", "to": "DCDC:1", "areaMm2": 4, "cutMm": 500},
               "W2": {"from": "DCDC:2", "to": "BAT:-", "areaMm2": 4, "cutMm": 500},
               %s
               "W3": {"from": "DCDC:3", "to": "RADIO:1", "areaMm2": 4, "cutMm": 500},
               "W4": {"from": "RADIO:2", "to": "DCDC:4", "areaMm2": 4, "cutMm": 500},
               "W5": {"from": "DCDC:4", "to": "BAT:-", "areaMm2": 4, "cutMm": 500}},
     "states": {"run": {"on": ["DCDC.in", "RADIO"], "running": ["DCDC", "DC2", "ALT"]}}}
    """
        .formatted(
            source,
            more,
            draws,
            more.isEmpty()
                ? ""
                : "\"X\": {\"from\": \"DCDC:3\", \"to\": \"DC2:3\", \"areaMm2\": 4, \"cutMm\":"
                    + " 100}, \"Y\": {\"from\": \"DCDC:4\", \"to\": \"DC2:4\", \"areaMm2\": 4,"
                    + " \"cutMm\": 100},")
        .replace(more.isEmpty() ? ", \"DC2\", \"ALT\"" : ", \"ALT\"", "");
  }

  private static String second(String source) {
    return "\"DC2\": {\"elements\": {\"out\": " + source + "}},";
  }

  @Test
  void aLoadUpToTheLimitIsFine() {
    assertThat(judge(CONVERTER.formatted("10"), "\"amps\": 9.99", "").findings()).isEmpty();
    assertThat(judge(CONVERTER.formatted("10"), "\"watts\": 117", "").findings()).isEmpty();
  }

  @Test
  void aSteadyCurrentOverTheLimitTakesTheVoltsAway() {
    Judged judged = judge(CONVERTER.formatted("10"), "\"amps\": 15", "");
    assertThat(judged.messages())
        .containsExactly(
            "RADIO.supply wants 15 A of DCDC.out in state run; it gives at most 10 A (120 W),"
                + " so its volts fall to 4.07 V");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.ERROR);
  }

  @Test
  void aSteadyPowerOverTheLimitTakesTheVoltsAway() {
    Judged judged = judge(CONVERTER.formatted("10"), "\"watts\": 121", "");
    assertThat(judged.subjects()).containsExactly("devices/DCDC.out");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.ERROR);
  }

  @Test
  void aLoadThatStillWorksIsAWarning() {
    Judged judged = judge(CONVERTER.formatted("10"), "\"ohms\": 0.8, \"minV\": 6", "");
    assertThat(judged.findings()).extracting(f -> f.level()).containsExactly(Level.WARNING);
    assertThat(judge(CONVERTER.formatted("10"), "\"ohms\": 0.8, \"minV\": 9", "").findings())
        .extracting(f -> f.level())
        .containsExactly(Level.ERROR);
  }

  @Test
  void twoSideBySideGiveTheirSum() {
    String ten = CONVERTER.formatted("10");
    assertThat(judge(ten, "\"watts\": 200", second(ten)).findings()).isEmpty();
    assertThat(judge(ten, "\"watts\": 300", second(ten)).messages())
        .singleElement()
        .asString()
        .contains("of DC2.out and DCDC.out", "they give at most 20 A (240 W)");
  }

  @Test
  void aBatteryBesideItGivesTheRest() {
    String battery =
        """
        {"kind": "source", "plus": "3", "minus": "4", "volts": 11.5, "ohms": 0.01}
        """;
    assertThat(judge(CONVERTER.formatted("10"), "\"amps\": 15", second(battery)).findings())
        .isEmpty();
  }

  @Test
  void aSourceWithoutALimitIsNoSubject() {
    Judged judged =
        judge(
            "{\"kind\": \"source\", \"plus\": \"3\", \"minus\": \"4\", \"volts\": 12}",
            "\"amps\": 15",
            "");
    assertThat(judged.coverage().subjects()).isZero();
  }

  @Test
  void whatDrawsAnUnknownCurrentLeavesItOpen() {
    Judged judged = judge(CONVERTER.formatted("10"), "\"minV\": 6", "");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("a load that it feeds does not say what it draws");
  }

  @Test
  void whatFollowsNamesItAsItsCause() {
    String car = car(CONVERTER.formatted("10"), "\"watts\": 150", "");
    Judged collapse = Judged.of(new SupplyCollapses(), car);
    assertThat(collapse.messages())
        .singleElement()
        .asString()
        .contains("gives at most 120 W, as DCDC.out is at its limit of 10 A");
    assertThat(collapse.findings().get(0).cause()).isEqualTo("source-overloaded(devices/DCDC.out)");
    assertThat(Judged.of(new VoltsUnderLeast(), car).findings().get(0).cause())
        .isEqualTo("source-overloaded(devices/DCDC.out)");
  }
}
