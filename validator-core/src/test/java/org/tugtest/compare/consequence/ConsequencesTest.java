package org.tugtest.compare.consequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.compare.Compared;

class ConsequencesTest {
  private static final String BASE =
      """
      {"format": 1,
       "parts": {
        "wires": {"w1": {"areaMm2": 1.0, "maxC": 125, "milliohmPerM": 20, "gramsPerM": 10},
                  "w2": {"areaMm2": 2.0, "maxC": 125, "milliohmPerM": 10, "gramsPerM": 20}},
        "fuses": {"f10": {"ratingA": 10}, "f15": {"ratingA": 15}}},
       "defaults": {"crimpMilliohm": 0},
       "devices": {
        "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12,
                                      "ohms": 0.001}}},
        "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}}},
        "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": 5}}}},
       "fitted": {"FB.f1": "f10"},
       "wires": {
        "W1": {"from": "BAT:+", "to": "FB:in", "part": "w2", "cutMm": 1000},
        "W2": {"from": "FB:1", "to": "LAMP:1", "part": "w1", "cutMm": 2000},
        "W3": {"from": "LAMP:2", "to": "BAT:-", "part": "w1", "cutMm": 2000}}}
      """;

  private static List<Consequences> after(String what, String with) {
    assertThat(BASE).contains(what);
    return Consequences.of(Compared.json(BASE, BASE.replace(what, with)).comparison());
  }

  private static List<Moved> of(List<Consequences> all, String title) {
    return all.stream()
        .filter(one -> one.title().startsWith(title))
        .flatMap(one -> one.moved().stream())
        .toList();
  }

  @Test
  void nothingMovesWithoutAChange() {
    assertThat(after("12", "12")).isEmpty();
  }

  /** 2 m more of 20 milliohm a metre: 40 milliohm at 20 °C, and more when warm. */
  @Test
  void longerWire() {
    List<Consequences> all =
        after(
            "\"LAMP:1\", \"part\": \"w1\", \"cutMm\": 2000",
            "\"LAMP:1\", \"part\": \"w1\", \"cutMm\": 4000");
    assertThat(of(all, "totals"))
        .extracting(moved -> moved.what() + " " + moved.difference())
        .containsExactly("wire +2.00 m", "mass +20 g");
    assertThat(of(all, "lengths"))
        .extracting(moved -> moved.what() + " " + moved.difference())
        .containsExactly("W2 +2000 mm");
    Moved path = of(all, "resistances").get(0);
    assertThat(path.what()).isEqualTo("FB:1 to LAMP:1");
    assertThat(path.after() - path.before()).isCloseTo(40, within(1e-9));
    Moved volts = of(all, "volts").get(0);
    assertThat(volts.what()).isEqualTo("LAMP.bulb in as drawn");
    assertThat(volts.before() - volts.after()).isBetween(5 * 0.040, 5 * 0.060);
    assertThat(of(all, "currents that the fuses")).isEmpty();
  }

  /**
   * 4 m of 20 milliohm a metre instead of 2 at 40 °C, 5 A: 5 · 0.040 · 1.0786 = 0.216 V less at the
   * lamp's pin and across the lamp; with the warmth of 5 A a little more.
   */
  @Test
  void theVoltsOfANetAreThoseOfItsWorstPin() {
    List<Consequences> all =
        after(
            "\"LAMP:1\", \"part\": \"w1\", \"cutMm\": 2000",
            "\"LAMP:1\", \"part\": \"w1\", \"cutMm\": 4000");
    List<Moved> nets = of(all, "volts within the nets");
    assertThat(nets).extracting(Moved::what).containsExactly("LAMP:1 in as drawn");
    assertThat(nets.get(0).before() - nets.get(0).after()).isBetween(0.215, 0.235);
  }

  /** What the maker allows is less than the wire stands in air, so it moves by what he allows. */
  @Test
  void carryingCapacityOfEachNet() {
    String rated = BASE.replace("\"gramsPerM\": 10", "\"gramsPerM\": 10, \"maxA\": 6");
    String twice =
        rated.replace(
            "\"W3\": {",
            "\"W4\": {\"from\": \"FB:1\", \"to\": \"LAMP:1\", \"part\": \"w1\", \"cutMm\": 900},"
                + " \"W3\": {");
    List<Consequences> all =
        Consequences.of(
            Compared.json(twice, twice.replace("\"maxA\": 6", "\"maxA\": 8.5")).comparison());
    assertThat(of(all, "lasting currents that the wires stand"))
        .extracting(moved -> moved.what() + " " + moved.difference() + " " + moved.note())
        .containsExactly("W2 +2.5 A and 1 other wire of its net by no more", "W3 +2.5 A ");
  }

  /**
   * 10 + 40 + 40 milliohm at the class temperature of 125 °C (times 1.41265), 5 of the fuse, 1 of
   * the cell: 90.1 A of 12 V, 9.01 times 10 A, past the last point of the curve at 6 times in 0.1
   * s: 0.1 · (6 / 9.01)² = 0.044 s. With 40 milliohm more 63.3 A and 0.090 s.
   */
  @Test
  void fusesClearLater() {
    String timed =
        BASE.replace(
            "\"f10\": {\"ratingA\": 10}",
            "\"f10\": {\"ratingA\": 10, \"coldMilliohm\": 5, \"times\": TIMES}");
    timed =
        timed.replace(
            "TIMES",
            "[{\"multiple\": 2, \"leastS\": 0.1, \"greatestS\": 5}, {\"multiple\": 6, \"leastS\":"
                + " 0.02, \"greatestS\": 0.1}]");
    List<Moved> times =
        of(
            Consequences.of(
                Compared.json(
                        timed,
                        timed.replace(
                            "\"LAMP:1\", \"part\": \"w1\", \"cutMm\": 2000",
                            "\"LAMP:1\", \"part\": \"w1\", \"cutMm\": 4000"))
                    .comparison()),
            "times");
    assertThat(times).extracting(Moved::what).containsExactly("LAMP.bulb");
    assertThat(times.get(0).before()).isCloseTo(0.1 * Math.pow(6 / 9.013, 2), within(5e-4));
    assertThat(times.get(0).after()).isCloseTo(0.1 * Math.pow(6 / 6.327, 2), within(5e-4));
    assertThat(
            new Moved("a", null, 0.1, Double.POSITIVE_INFINITY, "s", 2, "")
                .shown(Double.POSITIVE_INFINITY))
        .isEqualTo("never");
  }

  /** Twice the current in a wire warms it about four times as much. */
  @Test
  void wiresBecomeWarmer() {
    List<Moved> warm = of(after("\"amps\": 5", "\"amps\": 10"), "greatest temperatures");
    assertThat(warm).extracting(Moved::what).containsExactly("W2", "W3", "W1");
    double before = warm.get(0).before() - 40;
    double now = warm.get(0).after() - 40;
    assertThat(now / before).isBetween(3.3, 4.5);
  }

  /** A battery of 13 V instead of 12 moves all states but the one that gives its volts itself. */
  @Test
  void otherStatesStandBesideTheWorst() {
    String states =
        BASE.replace(
            "\"fitted\"",
            "\"states\": {\"day\": {\"on\": [\"LAMP\"]}, \"night\": {\"on\": [\"LAMP\"],"
                + " \"volts\": {\"BAT\": 11}}, \"rain\": {\"on\": [\"LAMP\"]}}, \"fitted\"");
    List<Moved> volts =
        of(
            Consequences.of(
                Compared.json(states, states.replace("\"volts\": 12", "\"volts\": 13"))
                    .comparison()),
            "volts at the loads");
    assertThat(volts)
        .extracting(moved -> moved.what() + " " + moved.difference() + " " + moved.note())
        .containsExactly("LAMP.bulb in day +1.00 V in rain +1.00 V");
  }

  @Test
  void strongerFuse() {
    List<Consequences> all = after("\"FB.f1\": \"f10\"", "\"FB.f1\": \"f15\"");
    assertThat(of(all, "currents that the fuses"))
        .extracting(moved -> moved.what() + " " + moved.difference())
        .containsExactly("W2 +5.0 A");
  }

  @Test
  void fuseTakenOutLeavesTheLoadDead() {
    List<Consequences> all = after("\"FB.f1\": \"f10\"", "");
    assertThat(of(all, "volts").get(0).shown(of(all, "volts").get(0).after())).isEqualTo("0.00 V");
    assertThat(of(all, "greatest currents"))
        .extracting(moved -> moved.what() + " " + moved.difference())
        .containsExactly("W1 -5.00 A", "W2 -5.00 A", "W3 -5.00 A");
  }

  @Test
  void largestFirstAndRoundedAsShown() {
    Moved small = Moved.of("b", null, 1.0, 1.06, "V", 1).orElseThrow();
    Moved large = Moved.of("c", null, 5.0, 1.0, "V", 1).orElseThrow();
    Moved lost = Moved.of("a", null, 5.0, null, "V", 1).orElseThrow();
    assertThat(Moved.sorted(List.of(small, large, lost))).containsExactly(lost, large, small);
    assertThat(Moved.of("d", null, 1.0, 1.04, "V", 1)).isEmpty();
    assertThat(Moved.of("d", null, -0.01, 0.01, "V", 1)).isEmpty();
    assertThat(lost.difference()).isEmpty();
    assertThat(large.difference()).isEqualTo("-4.0 V");
    assertThat(new Moved("e", null, 3.0, Double.POSITIVE_INFINITY, "A", 1, "").difference())
        .isEmpty();
  }
}
