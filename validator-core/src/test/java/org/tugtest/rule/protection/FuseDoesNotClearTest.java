package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class FuseDoesNotClearTest {
  private static String car(String fusePart, String wires, String... more) {
    return """
    {"format": 1, "sketch": true,
     "parts": {"fuses": {"f": %s}},
     "devices": {
       "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12,
                                     "ohms": 0.01}}},
       "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}}},
       "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}},
       "HORN": {"elements": {"horn": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
     "fitted": {"FB.f1": "f"},
     "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 6, "cutMm": 200},
               "W3": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 1000}%s}%s}
    """
        .formatted(
            fusePart, wires.isEmpty() ? "" : ", " + wires, more.length == 0 ? "" : ", " + more[0]);
  }

  private static String feed(int cutMm) {
    return "\"W2\": {\"from\": \"FB:1\", \"to\": \"LAMP:1\", \"areaMm2\": 1, \"cutMm\": %d}"
        .formatted(cutMm);
  }

  private static Judged judged(String car) {
    return Judged.of(new FuseDoesNotClear(), car);
  }

  private static String blade(double rating) {
    return "{\"ratingA\": %s, \"style\": \"blade-mini\"}".formatted(rating);
  }

  private static double shortAmps(String car) {
    Facts facts = Judged.facts(Map.of(Judged.ROOT, car));
    return facts.faults().slowest(facts.faults().inLoads().get(0)).orElseThrow().first().amps();
  }

  private static String opensFrom(double amps, double seconds) {
    return String.format(
        Locale.ROOT,
        "{\"ratingA\": 10, \"coldMilliohm\": 7, \"times\": [{\"multiple\": %.9f, \"greatestS\":"
            + " %.6f}]}",
        amps / 10,
        seconds);
  }

  @Test
  void aShortThatOpensItsFuseAtOnceIsFine() {
    Judged judged = judged(car(blade(10), feed(1000)));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void justBelowAtAndJustAboveTheLeastCurrentThatOpensIt() {
    double amps = shortAmps(car(opensFrom(20, 1), feed(3000)));
    assertThat(judged(car(opensFrom(amps * 0.999, 1), feed(3000))).messages()).isEmpty();
    assertThat(judged(car(opensFrom(amps, 1), feed(3000))).messages()).isEmpty();
    Judged above = judged(car(opensFrom(amps * 1.001, 1), feed(3000)));
    assertThat(above.findings()).hasSize(1);
    Finding finding = above.findings().get(0);
    assertThat(finding.level()).isEqualTo(Level.ERROR);
    assertThat(finding.message())
        .startsWith("a short inside LAMP.bulb draws ")
        .contains("and fuse FB.f1 (10 A) is sure to open only from");
    assertThat(finding.identity())
        .isEqualTo("fuse-does-not-clear(devices/FB.f1,devices/LAMP.bulb)");
    assertThat(finding.details().get(0)).startsWith("the way has ").contains("W2 0.0");
    assertThat(finding.remedy()).contains("W2 has most");
  }

  @Test
  void justBelowAtAndJustAboveTheTime() {
    assertThat(judged(car(opensFrom(20, 5), feed(3000))).messages()).hasSize(0);
    double amps = shortAmps(car(opensFrom(20, 1), feed(3000)));
    assertThat(judged(car(opensFrom(amps, 4.999), feed(3000))).messages()).isEmpty();
    assertThat(judged(car(opensFrom(amps, 5), feed(3000))).messages()).isEmpty();
    Judged late = judged(car(opensFrom(amps, 5.001), feed(3000)));
    assertThat(late.messages().get(0)).startsWith("fuse FB.f1 (10 A) may take 5");
    assertThat(late.findings().get(0).level()).isEqualTo(Level.ERROR);
    String limits = "\"limits\": {\"fuse-does-not-clear\": {\"seconds\": 6}}";
    assertThat(judged(car(opensFrom(amps, 5.001), feed(3000), limits)).messages()).isEmpty();
  }

  @Test
  void timesFromMemoryWarnOnly() {
    Judged judged = judged(car(blade(20), feed(14_000)));
    assertThat(judged.messages().get(0)).contains("may take");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
  }

  @Test
  void oneFuseIsOneFindingWithAllItsPlaces() {
    String horn =
        "\"W4\": {\"from\": \"FB:1\", \"to\": \"HORN:1\", \"areaMm2\": 1, \"cutMm\": 30000},"
            + "\"W5\": {\"from\": \"HORN:2\", \"to\": \"BAT:-\", \"areaMm2\": 1, \"cutMm\": 1000}";
    Judged judged = judged(car(blade(20), feed(20_000) + ", " + horn));
    assertThat(judged.findings()).hasSize(1);
    assertThat(judged.messages().get(0)).startsWith("a short inside HORN.horn draws");
    assertThat(judged.findings().get(0).details())
        .anyMatch(line -> line.startsWith("also inside LAMP.bulb: "));
  }

  @Test
  void whatCannotBeJudgedIsSaid() {
    assertThat(reasons(car("{\"ratingA\": 10}", feed(1000))))
        .containsExactly("its opening times are not known");
    assertThat(reasons(car(blade(10), feed(1000).replace(", \"cutMm\": 1000", ""))))
        .containsExactly("a length or an area behind it is not known");
    assertThat(reasons(car(blade(10), ""))).containsExactly("no short behind it can be reckoned");
    assertThat(
            judged(
                    car(
                        blade(20),
                        feed(30_000)
                            + ", \"W9\": {\"from\": \"FB:1\", \"to\": \"X:1\", \"areaMm2\": 1}"))
                .messages())
        .as("fails whatever the unknown length is")
        .hasSize(1);
    Judged empty =
        judged(car(blade(10), feed(1000)).replace("\"fitted\": {\"FB.f1\": \"f\"},", ""));
    assertThat(empty.coverage().judged()).isZero();
    assertThat(empty.coverage().missing()).isEmpty();
  }

  private static Iterable<String> reasons(String car) {
    Judged judged = judged(car);
    assertThat(judged.messages()).isEmpty();
    return judged.coverage().missing().keySet();
  }

  @Test
  void anUnfusedPlaceIsNotItsMatter() {
    Judged judged =
        judged(
            car(
                blade(10),
                "\"W2\": {\"from\": \"BAT:+\", \"to\": \"LAMP:1\", \"areaMm2\": 1, \"cutMm\":"
                    + " 1000}"));
    assertThat(judged.messages()).isEmpty();
  }

  /** A trip without times in front of a blade: the blade clears, and the trip is not judged. */
  @Test
  void aTripWithoutTimesIsNotJudged() {
    String trip =
        "\"W2\": {\"from\": \"FB:1\", \"to\": \"ECU:1\", \"areaMm2\": 1, \"cutMm\": 500},"
            + "\"W8\": {\"from\": \"ECU:2\", \"to\": \"LAMP:1\", \"areaMm2\": 1, \"cutMm\": 500}";
    String car =
        car(blade(10), trip)
            .replace(
                "\"LAMP\":",
                "\"ECU\": {\"elements\": {\"t\": {\"kind\": \"fuse\", \"a\": \"1\", \"b\": \"2\","
                    + " \"ratingA\": 5, \"electronic\": true}}}, \"LAMP\":");
    Judged judged = judged(car);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
    assertThat(judged.coverage().missing()).containsKey("its opening times are not known");
  }
}
