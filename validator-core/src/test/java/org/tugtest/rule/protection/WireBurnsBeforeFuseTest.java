package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.heat.Warming;
import org.tugtest.heat.WireForm;
import org.tugtest.model.Wire;
import org.tugtest.rule.Judged;

class WireBurnsBeforeFuseTest {
  private static String car(String part, String feed, String back) {
    return """
    {"format": 1, "sketch": true, "parts": {"fuses": {"f": %s}},
     "devices": {
       "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12,
                                     "ohms": 0.05}}},
       "FB": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "1"}}},
       "LAMP": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
     "fitted": {"FB.f": "f"},
     "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 25, "cutMm": 100},
               "W2": {"from": "FB:1", "to": "LAMP:1"%s},
               "W3": {"from": "LAMP:2", "to": "BAT:-"%s}}}
    """
        .formatted(part, feed, back);
  }

  private static final String THICK = ", \"areaMm2\": 25, \"cutMm\": 100";
  private static final String THIN = ", \"areaMm2\": 1, \"cutMm\": 100";

  private static Judged judged(String part, String feed, String back) {
    return Judged.of(new WireBurnsBeforeFuse(), car(part, feed, back));
  }

  /** One point at 100 A; past it the energy stays, which a wire outlasts if it does so at 100 A. */
  private static String at100A(double seconds) {
    return String.format(
        Locale.ROOT,
        "{\"ratingA\": 20, \"coldMilliohm\": 1, \"times\": [{\"multiple\": 5, \"greatestS\": %.9f},"
            + " {\"multiple\": 50, \"greatestS\": 0.000001}]}",
        seconds);
  }

  private static double seconds(double toC) {
    Facts facts = Judged.facts(Map.of(Judged.ROOT, car(at100A(1), THIN, THICK)));
    Wire wire = facts.harness().wires().get("W2");
    WireForm form = facts.ampacity().forms().of(wire).orElseThrow();
    return new Warming(
            1,
            form.insulated().milliohmPerM(),
            facts.ampacity().cooling(wire).orElseThrow(),
            form.maxC(),
            toC)
        .seconds(100);
  }

  @Test
  void justBelowAtAndJustAboveTheWiresTime() {
    double wire = seconds(150);
    assertThat(judged(at100A(0.999 * wire), THIN, THICK).messages()).isEmpty();
    assertThat(judged(at100A(wire - 1e-8), THIN, THICK).messages()).isEmpty();
    Judged over = judged(at100A(1.001 * wire), THIN, THICK);
    assertThat(over.subjects()).containsExactly("wires/W2");
    assertThat(over.messages().get(0))
        .startsWith("at 100 A wire W2 is at 150 °C after ")
        .contains("while fuse FB.f (20 A) may take");
    assertThat(over.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(over.coverage().judged()).isEqualTo(2);
  }

  /** Over 250 °C, the final temperature of cross-linked insulation, it is no matter of memory. */
  @Test
  void overTheFinalTemperatureItIsAnError() {
    double burnt = seconds(250);
    assertThat(judged(at100A(0.99 * burnt), THIN, THICK).findings().get(0).level())
        .isEqualTo(Level.WARNING);
    assertThat(judged(at100A(1.01 * burnt), THIN, THICK).findings().get(0).level())
        .isEqualTo(Level.ERROR);
  }

  @Test
  void theReturnWireCarriesTheFeedsFault() {
    Judged judged = judged(at100A(1.2 * seconds(150)), THICK, THIN);
    assertThat(judged.subjects()).containsExactly("wires/W3");
  }

  /** Bolted fuses are from memory; the point of a blade at 135 % was read. */
  @Test
  void timesFromMemoryWarnOnly() {
    String thin = THIN.replace("\"areaMm2\": 1", "\"areaMm2\": 0.35");
    Judged bolted = judged("{\"ratingA\": 40, \"style\": \"bolt-m8\"}", thin, THICK);
    assertThat(bolted.findings()).hasSize(1);
    assertThat(bolted.findings().get(0).level()).isEqualTo(Level.WARNING);
    Judged blade = judged("{\"ratingA\": 30, \"style\": \"blade-mini\"}", thin, THICK);
    assertThat(blade.messages().get(0)).startsWith("at 40.5 A wire W2");
    assertThat(blade.findings().get(0).level()).isEqualTo(Level.ERROR);
  }

  @Test
  void whatCannotBeJudgedIsSaid() {
    assertThat(judged("{\"ratingA\": 20}", THIN, THICK).coverage().missing())
        .containsOnlyKeys("opening times of a fuse before it are not known");
    assertThat(judged(at100A(1), ", \"cutMm\": 100", THICK).coverage().missing())
        .containsKey("its size is not known");
    String never = "{\"ratingA\": 200, \"times\": [{\"multiple\": 9, \"greatestS\": 1}]}";
    assertThat(judged(never, THIN, THICK).coverage().missing())
        .containsOnlyKeys("no short at it is sure to open its fuse");
    Judged empty = Judged.of(new WireBurnsBeforeFuse(), "{\"format\": 1}");
    assertThat(empty.coverage().judged()).isZero();
  }

  /** Two fuses feed one splice; a greater one and another source's lie before them. */
  private static String ring(double rating) {
    return """
    {"format": 1, "sketch": true,
     "devices": {
       "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12,
                                     "ohms": 0.02}}},
       "GEN": {"elements": {"g": {"kind": "source", "plus": "+", "minus": "-", "volts": 14,
                                  "ohms": 0.1, "generator": true}}},
       "FB": {"elements": {
         "main": {"kind": "fuse", "a": "in", "b": "bar", "ratingA": 40, "style": "bolt-m5"},
         "gen": {"kind": "fuse", "a": "g", "b": "in", "ratingA": 50, "style": "bolt-m5"},
         "f1": {"kind": "fuse", "a": "bar", "b": "1", "ratingA": %1$s, "style": "blade-mini"},
         "f2": {"kind": "fuse", "a": "bar", "b": "2", "ratingA": %1$s, "style": "blade-mini"}}},
       "DASH": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 2}}},
       "CLOCK": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
     "splices": {"S": {}, "E": {}},
     "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 25, "cutMm": 100},
               "W2": {"from": "GEN:+", "to": "FB:g", "areaMm2": 25, "cutMm": 1000},
               "W3": {"from": "FB:1", "to": "S", "areaMm2": 1.5, "cutMm": 1500},
               "W4": {"from": "FB:2", "to": "S", "areaMm2": 1.5, "cutMm": 1700},
               "W5": {"from": "S", "to": "DASH:1", "areaMm2": 1.5, "cutMm": 300},
               "W6": {"from": "S", "to": "CLOCK:1", "areaMm2": 1.5, "cutMm": 300},
               "W7": {"from": "DASH:2", "to": "E", "areaMm2": 1.5, "cutMm": 300},
               "W8": {"from": "CLOCK:2", "to": "E", "areaMm2": 1.5, "cutMm": 300},
               "W9": {"from": "E", "to": "BAT:-", "areaMm2": 1.5, "cutMm": 1800},
               "W10": {"from": "GEN:-", "to": "BAT:-", "areaMm2": 25, "cutMm": 1000}}}
    """
        .formatted(rating);
  }

  /** The main fuse is not what ends a short behind a ring of small ones. */
  @Test
  void twoFusesOfARingEndAShortTogether() {
    Judged small = Judged.of(new WireBurnsBeforeFuse(), ring(5));
    assertThat(small.messages()).isEmpty();
    assertThat(small.coverage().judged()).isEqualTo(8);
    assertThat(Judged.of(new WireBurnsBeforeFuse(), ring(30)).subjects())
        .contains("wires/W3", "wires/W4", "wires/W5", "wires/W7", "wires/W9");
  }

  /** A trip without times and a main fuse far too large and slow for the wire behind both. */
  @Test
  void aSmallerTripOfUnknownTimesMayBeWhatEndsIt() {
    String car =
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12,
                                         "ohms": 0.01}}},
           "PDM": {"elements": {
             "main": {"kind": "fuse", "a": "in", "b": "bar", "ratingA": 80, "style": "bolt-m5"},
             "o1": {"kind": "fuse", "a": "bar", "b": "1", "ratingA": %s, "electronic": true}}},
           "LAMP": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "PDM:in", "areaMm2": 35, "cutMm": 200},
                   "W2": {"from": "PDM:1", "to": "LAMP:1", "areaMm2": 1, "cutMm": 500},
                   "W3": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 500}}}
        """;
    Judged trip = Judged.of(new WireBurnsBeforeFuse(), car.formatted(10));
    assertThat(trip.messages()).isEmpty();
    assertThat(trip.coverage().missing())
        .containsOnlyKeys("opening times of a fuse before it are not known");
    assertThat(trip.coverage().notJudged()).isEqualTo(2);
    assertThat(Judged.of(new WireBurnsBeforeFuse(), car.formatted(100)).subjects())
        .containsExactly("wires/W2", "wires/W3");
    assertThat(Judged.of(new FuseDoesNotClear(), car.formatted(10)).messages()).isEmpty();
  }
}
