package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.network.Edge;
import org.tugtest.rule.Judged;

class FuseBreakingCapacityLowTest {
  private static String car(String source, String part, String wire) {
    return """
    {"format": 1, "sketch": true, "parts": {"fuses": {"f": %s}},
     "devices": {
       "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"%s}}},
       "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}}}},
     "fitted": {"FB.f1": "f"},
     "wires": {"W1": {"from": "BAT:+", "to": "FB:in"%s}}}
    """
        .formatted(part, source, wire);
  }

  private static final String BATTERY = ", \"volts\": 12, \"ohms\": 0.01";
  private static final String SHORT = ", \"areaMm2\": 35, \"cutMm\": 100";

  private static String breaks(double amps) {
    return String.format(Locale.ROOT, "{\"ratingA\": 10, \"breakingCapacityA\": %.6f}", amps);
  }

  private static Judged judged(String car) {
    return Judged.of(new FuseBreakingCapacityLow(), car);
  }

  private static double amps() {
    Facts facts = Judged.facts(Map.of(Judged.ROOT, car(BATTERY, breaks(1), SHORT)));
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement fuse && fuse.device().equals("FB")) {
        return facts.faults().behindFuse(fuse).orElseThrow().amps();
      }
    }
    throw new AssertionError("no fuse");
  }

  /** 12 V behind 10 milliohm and 100 mm of 35 mm² at 0.554 milliohm/m (IEC 60228): 1193 A. */
  @Test
  void theFuseItselfHasNoResistanceInIt() {
    assertThat(amps())
        .isCloseTo(12 / 0.0100554, org.assertj.core.data.Percentage.withPercentage(0.01));
  }

  @Test
  void justBelowAtAndJustAboveWhatItBreaks() {
    double amps = amps();
    assertThat(judged(car(BATTERY, breaks(amps * 1.001), SHORT)).messages()).isEmpty();
    assertThat(judged(car(BATTERY, breaks(amps + 1e-5), SHORT)).messages()).isEmpty();
    Judged over = judged(car(BATTERY, breaks(amps * 0.999), SHORT));
    assertThat(over.messages().get(0))
        .startsWith("a short directly behind fuse FB.f1 (10 A) draws up to 119");
    assertThat(over.findings().get(0).level()).isEqualTo(Level.ERROR);
    assertThat(over.subjects()).containsExactly("devices/FB.f1");
  }

  @Test
  void aSourceWithoutOhmsAndBoltedFusesFromMemoryWarn() {
    String blade = "{\"ratingA\": 10, \"style\": \"blade-mini\"}";
    assertThat(judged(car(", \"volts\": 12", blade, SHORT)).findings().get(0).level())
        .isEqualTo(Level.WARNING);
    assertThat(judged(car(", \"volts\": 12", blade, SHORT)).findings().get(0).remedy())
        .contains("give the \"ohms\" of the sources");
    String bolted = "{\"ratingA\": 100, \"style\": \"bolt-m5\"}";
    assertThat(judged(car(BATTERY, bolted, SHORT)).findings().get(0).level())
        .isEqualTo(Level.WARNING);
    assertThat(judged(car(BATTERY, blade, SHORT)).findings().get(0).level()).isEqualTo(Level.ERROR);
  }

  @Test
  void whatCannotBeJudgedIsSaid() {
    String blade = "{\"ratingA\": 10, \"style\": \"blade-mini\"}";
    assertThat(reasons(car(BATTERY, "{\"ratingA\": 10, \"style\": \"own\"}", SHORT)))
        .containsExactly("its breaking capacity is not known");
    assertThat(reasons(car(BATTERY, blade, ", \"areaMm2\": 1")))
        .containsExactly("a length or an area before it is not known");
    assertThat(
            judged(car(", \"volts\": 12, \"ohms\": 0.02", blade, ", \"areaMm2\": 1"))
                .coverage()
                .judged())
        .as("fine whatever the length is")
        .isEqualTo(1);
    assertThat(reasons(car(BATTERY, blade, SHORT).replace("BAT:+", "BAT:x")))
        .containsExactly("it lies on no feed that can be reckoned");
  }

  private static Iterable<String> reasons(String car) {
    Judged judged = judged(car);
    assertThat(judged.messages()).isEmpty();
    return judged.coverage().missing().keySet();
  }

  /** Two fuses side by side share: neither sees the whole. */
  @Test
  void onARingAFuseSeesItsShare() {
    String car =
        """
        {"format": 1, "sketch": true, "parts": {"fuses": {"f": %s}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12,
                                         "ohms": 0.01}}},
           "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"},
                               "f2": {"kind": "fuse", "a": "in", "b": "1"}}}},
         "fitted": {"FB.f1": "f", "FB.f2": "f"},
         "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 35, "cutMm": 100},
                   "W2": {"from": "FB:1", "to": "X:1", "areaMm2": 6, "cutMm": 100}}}
        """;
    String part = "{\"ratingA\": 10, \"coldMilliohm\": 7, \"breakingCapacityA\": %s}";
    assertThat(judged(car.formatted(part.formatted(445))).messages()).isEmpty();
    Judged over = judged(car.formatted(part.formatted(440)));
    assertThat(over.messages().get(0))
        .startsWith("a short directly behind any of 2 fuses of FB draws up to 44");
    assertThat(over.subjects()).containsExactly("devices/FB");
    assertThat(over.findings().get(0).details()).containsExactly("FB.f1 (10 A)", "FB.f2 (10 A)");
    assertThat(over.coverage().judged()).isEqualTo(2);
  }
}
