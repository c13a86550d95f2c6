package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Measured;
import org.tugtest.rule.Judged;

/**
 * Two wires of 11 milliohm (10 of copper at 20 degrees, 0.5 crimp, half a splice) each with a
 * contact of 4 side by side. With 2 milliohm in one contact and 8 in the other they would have 13
 * and 19 milliohm cold, and by the current divider the first takes 19 / (13 + 19) of the whole:
 * 11.875 A of 20 A. Warm, their copper has {@link #COPPER}.
 */
class ParallelSharesUnevenlyTest {
  private static final String RATED = ", \"maxA\": ";

  private static String json(String terminal, String limits, String wires, String load) {
    return """
    {"format": 1, "defaults": {"ambientC": 20, "contactMilliohm": 4}%s,
     "parts": {
       "wires": {"w": {"areaMm2": 2.5, "milliohmPerM": 10}},
       "housings": {"s": {"side": "socket", "family": "t2.8", "rows": [["1", "2", "3"]], "terminals": ["ts"]},
                    "p": {"side": "pin", "family": "t2.8", "rows": [["3", "2", "1"]]}},
       "terminals": {"ts": {"family": "t2.8", "side": "socket", "areaMinMm2": 0.35, "areaMaxMm2": 2.5%s}}},
     "devices": {
       "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
       "ECU": {"ports": {"plug": {"housing": "p"}},
               "elements": {"bar": {"kind": "link", "a": "1", "b": "2"}, "power": %s}}},
     "splices": {"S1": {}},
     "connectors": {"X1": {"housing": "s", "mates": "ECU"}},
     "wires": {"W1": {"from": "BAT:+", "to": "S1", "areaMm2": 6, "cutMm": 300},
               %s
               "W4": {"from": "X1:3", "to": "BAT:-", "areaMm2": 6, "cutMm": 300}}}
    """
        .formatted(limits, terminal, load, wires);
  }

  private static final String LOAD =
      "{\"kind\": \"load\", \"a\": \"1\", \"b\": \"3\", \"amps\": 20}";

  private static final String PAIR =
      """
      "W2": {"from": "S1", "to": "X1:1", "part": "w", "cutMm": 1000},
      "W3": {"from": "S1", "to": "X1:2", "part": "w", "cutMm": 1000},
      """;

  /** Milliohm of a metre of each wire, as warm as 10 A make it. */
  private static final double COPPER = warm(json("", "", PAIR, LOAD), "W2");

  private static final double DIVIDED = 20 * (COPPER + 9) / (COPPER + 3 + COPPER + 9);

  /** 10 milliohm at 20 degrees, and 0.393 % more for each kelvin. */
  private static double warm(String json, String wire) {
    Facts facts = Judged.facts(Map.of(Judged.ROOT, json));
    double celsius = facts.operating().all().get(0).celsius(facts.harness().wires().get(wire));
    assertThat(celsius).isBetween(21.0, 60.0);
    return 10 * (1 + 0.00393 * (celsius - 20));
  }

  private static Judged judged(String terminal, String limits, String wires) {
    return Judged.of(new ParallelSharesUnevenly(), json(terminal, limits, wires, LOAD));
  }

  @Test
  void theCurrentIsThatOfTheDivider() {
    Judged judged = judged(RATED + 11, "", PAIR);
    assertThat(judged.messages())
        .containsExactly(
            "terminal X1:1 carries 11.8 A of the 20.0 A that W2 and W3 share in state as drawn when"
                + " X1:1-ECU:1 has 2.00 milliohm and X1:2-ECU:2 has 8.00 milliohm; it may carry 11"
                + " A");
    Measured measured = judged.findings().get(0).measured();
    assertThat(measured).isNotNull();
    assertThat(measured.actual()).isCloseTo(DIVIDED, within(1e-9));
    assertThat(judged.findings().get(0).details())
        .containsExactly(
            String.format(Locale.ROOT, "W2: %.2f milliohm, 10.0 A as it stands", COPPER + 5),
            String.format(Locale.ROOT, "W3: %.2f milliohm, 10.0 A as it stands", COPPER + 5));
    assertThat(judged.findings().get(0).remedy())
        .isEqualTo("size each of them for 11.9 A, or take one that carries all 20.0 A");
  }

  @Test
  void theRatingIsTheLimit() {
    assertThat(judged(RATED + (DIVIDED + 0.005), "", PAIR).findings()).isEmpty();
    assertThat(judged(RATED + DIVIDED, "", PAIR).findings()).isEmpty();
    assertThat(judged(RATED + (DIVIDED - 0.005), "", PAIR).findings()).hasSize(1);
    assertThat(judged(RATED + 11.88, "", PAIR).coverage().judged()).isEqualTo(1);
  }

  @Test
  void theTeamSaysHowFarContactsDiffer() {
    String wide =
        ", \"limits\": {\"parallel-shares-unevenly\": {\"leastPercent\": 0, \"greatestPercent\":"
            + " 400}}";
    Measured measured = judged(RATED + 11.88, wide, PAIR).findings().get(0).measured();
    assertThat(measured).isNotNull();
    assertThat(measured.actual())
        .isCloseTo(20 * (COPPER + 17) / (COPPER + 1 + COPPER + 17), within(1e-4));
  }

  @Test
  void aLoadOfWattsIsSolvedInTheWholeNetwork() {
    String watts = LOAD.replace("\"amps\": 20", "\"ohms\": 0.6");
    Judged judged = Judged.of(new ParallelSharesUnevenly(), json(RATED + 11, "", PAIR, watts));
    Measured measured = judged.findings().get(0).measured();
    assertThat(measured).isNotNull();
    // 12 V over 0.6 ohm, the cell's 10, the pair's 13 beside 19, and W1 and W4 as solved
    double pair = 1 / (1 / 0.013 + 1 / 0.019);
    double feed = 2 * 0.3 * 3.39e-3;
    double sum = 0.6 + 0.010 + pair + feed;
    assertThat(measured.actual()).isCloseTo(12 / sum * 19 / 32, within(0.15));
  }

  /** 11 milliohm each cold, of which 1 in the ends: 10.5, 11 and 12 cold, so 0.3534 of 20 A. */
  @Test
  void ofThreeOneIsWornAndOneStaysAsItIs() {
    String three =
        """
        "W2": {"from": "BAT:+", "to": "S1", "part": "w", "cutMm": 1000},
        "W3": {"from": "BAT:+", "to": "S1", "part": "w", "cutMm": 1000},
        "W5": {"from": "BAT:+", "to": "S1", "part": "w", "cutMm": 1000},
        "W6": {"from": "S1", "to": "X1:1", "areaMm2": 6, "cutMm": 300},
        """;
    String json = json("", "", three, LOAD).replaceAll("\"W1\": .*\n", "");
    String rated = "\"areaMm2\": 2.5, \"maxA\": 7, \"milliohmPerM\"";
    Judged judged =
        Judged.of(
            new ParallelSharesUnevenly(),
            json.replace("\"areaMm2\": 2.5, \"milliohmPerM\"", rated));
    assertThat(judged.messages())
        .containsExactly(
            "wire W2 carries 7.06 A of the 20.0 A that W2, W3 and W5 share in state as drawn"
                + " when the ends of W2 have 0.50 milliohm and the ends of W3 have 2.00 milliohm;"
                + " it may carry 7 A");
    Measured measured = judged.findings().get(0).measured();
    assertThat(measured).isNotNull();
    double copper = warm(json, "W2");
    double least = 1 / (copper + 0.5);
    double share = least / (least + 1 / (copper + 1) + 1 / (copper + 2));
    assertThat(measured.actual()).isCloseTo(20 * share, within(1e-9));
  }

  @Test
  void aWireWithSomethingOnItIsNoPartOfASet() {
    String tapped =
        PAIR.replace("\"W3\": {\"from\": \"S1\"", "\"W3\": {\"from\": \"S2\"")
            + "\"W5\": {\"from\": \"S1\", \"to\": \"S2\", \"part\": \"w\", \"cutMm\": 100},"
            + "\"W6\": {\"from\": \"S2\", \"to\": \"LAMP:1\", \"part\": \"w\", \"cutMm\": 100},"
            + "\"W7\": {\"from\": \"LAMP:2\", \"to\": \"BAT:-\", \"part\": \"w\", \"cutMm\": 100},";
    String json =
        json(RATED + 5, "", tapped, LOAD)
            .replace("\"S1\": {}", "\"S1\": {}, \"S2\": {}")
            .replace(
                "\"ECU\": {\"ports\"",
                "\"LAMP\": {\"elements\": {\"bulb\": {\"kind\": \"load\", \"a\": \"1\", \"b\":"
                    + " \"2\", \"watts\": 5}}}, \"ECU\": {\"ports\"");
    Judged judged = Judged.of(new ParallelSharesUnevenly(), json);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isZero();
    String dead =
        json.replace("\"W7\"", "\"W8\"")
            .replace("\"LAMP:2\", \"to\": \"BAT:-\"", "\"LAMP:2\", \"to\": \"LAMP:9\"");
    assertThat(Judged.of(new ParallelSharesUnevenly(), dead).coverage().judged()).isEqualTo(1);
  }

  @Test
  void whatIsNotKnownIsNotJudged() {
    String open = PAIR.replace(", \"cutMm\": 1000", "");
    assertThat(judged(RATED + 11, "", open).coverage().notJudged()).isEqualTo(1);
    String bare = PAIR.replace("\"part\": \"w\", ", "");
    assertThat(judged("", "", bare).coverage().notJudged()).isEqualTo(1);
    assertThat(judged(RATED + 9, "", PAIR).findings()).isEmpty();
  }

  @Test
  void briefStatesAreLeftOut() {
    String brief =
        ", \"states\": {\"crank\": {\"on\": [\"ECU\"], \"brief\": true}}, \"title\": \"car\"";
    assertThat(judged(RATED + 11, brief, PAIR).findings()).isEmpty();
    assertThat(judged(RATED + 11, brief, PAIR).coverage().notJudged()).isEqualTo(1);
    assertThat(judged(RATED + 11, brief.replace(", \"brief\": true", ""), PAIR).findings())
        .hasSize(1);
  }
}
