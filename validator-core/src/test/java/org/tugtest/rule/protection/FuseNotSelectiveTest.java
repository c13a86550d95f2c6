package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class FuseNotSelectiveTest {
  private static String car(String main, String branch, String more) {
    return """
    {"format": 1, "sketch": true, "parts": {"fuses": {"m": %s, "b": %s}},
     "devices": {
       "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12,
                                     "ohms": 0.1}}},
       "FM": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "1"}}},
       "FB": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "1"}}},
       "LAMP": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
       "PUMP": {"elements": {"p": {"kind": "load", "a": "1", "b": "2", "amps": 1,
                                   "critical": true}}}},
     "fitted": {"FM.f": "m", "FB.f": "b"},
     "wires": {"W1": {"from": "BAT:+", "to": "FM:in", "areaMm2": 6, "cutMm": 100},
               "W2": {"from": "FM:1", "to": "FB:in", "areaMm2": 6, "cutMm": 100},
               "W3": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 6, "cutMm": 100},
               "W4": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 6, "cutMm": 100}%s}}
    """
        .formatted(main, branch, more);
  }

  private static Judged judged(String main, String branch) {
    return Judged.of(new FuseNotSelective(), car(main, branch, ""));
  }

  private static String opens(double rating, double least, double greatest) {
    return ("{\"ratingA\": %s, \"coldMilliohm\": 1, \"times\": [{\"multiple\": 2, \"leastS\": %s,"
            + " \"greatestS\": %s}]}")
        .formatted(rating, least, greatest);
  }

  /** At 40 A both are at their one point, and past it both keep their energy. */
  @Test
  void justBelowAtAndJustAboveWhatTheOtherHolds() {
    assertThat(judged(opens(20, 1, 9), opens(20, 0.1, 0.999)).messages()).isEmpty();
    assertThat(judged(opens(20, 1, 9), opens(20, 0.1, 1)).messages()).isEmpty();
    Judged over = judged(opens(20, 1, 9), opens(20, 0.1, 1.001));
    assertThat(over.messages().get(0))
        .contains("fuse FM.f (20 A), nearer to the source, may open after 1 s, while FB.f (20 A)");
    assertThat(over.findings().get(0).level()).isEqualTo(Level.NOTE);
    assertThat(over.findings().get(0).identity())
        .isEqualTo("fuse-not-selective(devices/FB.f,devices/FM.f)");
    assertThat(over.coverage().judged()).isEqualTo(1);
  }

  @Test
  void beforeACriticalLoadItIsAWarning() {
    String pump =
        ", \"W5\": {\"from\": \"FM:1\", \"to\": \"PUMP:1\", \"areaMm2\": 6, \"cutMm\": 100},"
            + "\"W6\": {\"from\": \"PUMP:2\", \"to\": \"BAT:-\", \"areaMm2\": 6, \"cutMm\": 100}";
    Judged judged =
        Judged.of(new FuseNotSelective(), car(opens(20, 1, 9), opens(20, 0.1, 2), pump));
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(judged.findings().get(0).details())
        .containsExactly("FM.f also feeds what is critical: PUMP.p");
    Judged own =
        Judged.of(
            new FuseNotSelective(),
            car(opens(20, 1, 9), opens(20, 0.1, 2), pump.replace("FM:1", "FB:1")));
    assertThat(own.findings().get(0).level()).isEqualTo(Level.NOTE);
  }

  @Test
  void farApartRatingsAreFineAndNearOnesAreNot() {
    String small = "{\"ratingA\": 10, \"style\": \"blade-mini\"}";
    assertThat(judged("{\"ratingA\": 100, \"style\": \"bolt-m8\"}", small).messages()).isEmpty();
    assertThat(judged("{\"ratingA\": 15, \"style\": \"blade-mini\"}", small).messages()).hasSize(1);
  }

  @Test
  void whatCannotBeJudgedIsSaid() {
    String small = "{\"ratingA\": 10, \"style\": \"blade-mini\"}";
    assertThat(judged("{\"ratingA\": 15}", small).coverage().missing())
        .containsOnlyKeys("opening times of it or of a fuse before it are not known");
    assertThat(judged(opens(200, 5, 9), opens(100, 0.1, 1)).coverage().missing())
        .containsOnlyKeys("no short behind it is sure to open it");
    Judged alone = Judged.of(new FuseNotSelective(), "{\"format\": 1}");
    assertThat(alone.coverage().judged()).isZero();
  }

  @Test
  void theFusesOfTwoBatteriesSideBySideAreNotInARow() {
    Judged judged =
        Judged.of(
            new FuseNotSelective(),
            """
            {"format": 1, "sketch": true, "parts": {"fuses": {"m": %s}},
             "devices": {
               "A": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 24, "ohms": 0.02}}},
               "B": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 24, "ohms": 0.02}}},
               "FA": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "1"}}},
               "FB": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "1"}}},
               "LAMP": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
             "fitted": {"FA.f": "m", "FB.f": "m"},
             "wires": {"W1": {"from": "A:+", "to": "FA:in", "areaMm2": 16, "cutMm": 100},
                       "W2": {"from": "B:+", "to": "FB:in", "areaMm2": 16, "cutMm": 100},
                       "W3": {"from": "FA:1", "to": "LAMP:1", "areaMm2": 16, "cutMm": 300},
                       "W4": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 16, "cutMm": 400},
                       "W5": {"from": "LAMP:2", "to": "A:-", "areaMm2": 16, "cutMm": 300},
                       "W6": {"from": "B:-", "to": "A:-", "areaMm2": 16, "cutMm": 300}}}
            """
                .formatted(opens(20, 1, 9)));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing().keySet())
        .containsExactly(
            "current can come to it from either side, so that no fuse is surely before it");
  }
}
