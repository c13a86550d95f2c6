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
