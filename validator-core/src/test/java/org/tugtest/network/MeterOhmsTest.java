package org.tugtest.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.table.Cited;

class MeterOhmsTest {
  private static final String PARTS =
      """
      "parts": {
        "wires": {"w": {"areaMm2": 0.5, "maxC": 125, "milliohmPerM": 37.1}, "g": {"awg": "20", "maxC": 105}},
        "housings": {"s": {"side": "socket", "rows": [["1"]], "terminals": ["skt"]},
                     "p": {"side": "pin", "rows": [["1"]], "terminals": ["pin"]}},
        "terminals": {
          "skt": {"family": "t", "side": "socket", "areaMinMm2": 0.1, "areaMaxMm2": 3, "crimpMilliohm": 0.2, "contactMilliohm": 3},
          "pin": {"family": "t", "side": "pin", "areaMinMm2": 0.1, "areaMaxMm2": 3, "contactMilliohm": 4},
          "ring": {"family": "stud-m6", "side": "ring", "areaMinMm2": 0.1, "areaMaxMm2": 3, "crimpMilliohm": 0.3}},
        "splices": {"sp": {"areaMinMm2": 0.1, "areaMaxMm2": 5, "maxWires": 4, "milliohm": 0.8}}},
      "devices": {"E": {"pins": {"s": {"family": "stud-m6"}}, "boltedTo": {"s": "F:s"}}, "F": {"pins": {"s": {}}}},
      "connectors": {"X1": {"housing": "s", "mates": "X2"}, "X2": {"housing": "p"}}
      """;

  private static Cited of(String wire, String other) {
    Built built =
        Built.of(PARTS, other, "\"wires\": {\"W1\": " + wire + ", \"W2\": {\"from\": \"X2:1\"}}");
    return of(built, Edge.OfWire.class);
  }

  private static Cited of(Built built, Class<? extends Edge> kind) {
    Edge edge = built.network().edges().stream().filter(kind::isInstance).findFirst().orElseThrow();
    return resistances(built).milliohm(edge).orElseThrow();
  }

  private static MeterOhms resistances(Built built) {
    return new MeterOhms(
        built.facts().harness(), built.wiring(), built.facts().fitting(), built.facts().lengths());
  }

  @Test
  void wireIsItsPartsFigureTimesLengthAndBothCrimps() {
    Cited ohms =
        of(
            "{\"from\": \"X1:1\", \"to\": \"E:s\", \"part\": \"w\", \"cutMm\": 2000,"
                + " \"toTerminal\": \"ring\"}",
            "\"zones\": {}");
    assertThat(ohms.value()).isCloseTo(2 * 37.1 + 0.2 + 0.3, within(1e-9));
    assertThat(ohms.basis()).isEqualTo(Basis.GIVEN);
  }

  /** Plain class 5 strand of 0.5 mm2 has at most 39.0 ohm/km: IEC 60228 (2004). */
  @Test
  void wireWithoutThePartsFigureIsThatOfTheTable() {
    Cited half =
        of(
            "{\"from\": \"E:s\", \"to\": \"X1:1\", \"areaMm2\": 0.5, \"cutMm\": 1000}",
            "\"zones\": {}");
    assertThat(half.value() - 0.5 - 0.2).isCloseTo(39.0, within(0.01));
    assertThat(half.basis()).isEqualTo(Basis.COMMON_PRACTICE);
  }

  @Test
  void wireInASpliceHoldsHalfTheSplice() {
    Cited own =
        of(
            "{\"from\": \"S1\", \"to\": \"X1:1\", \"part\": \"w\", \"builtMm\": 1000, \"cutMm\":"
                + " 900}",
            "\"splices\": {\"S1\": {\"part\": \"sp\"}}");
    assertThat(own.value()).isCloseTo(37.1 + 0.4 + 0.2, within(1e-9));
    Cited standard =
        of(
            "{\"from\": \"S1\", \"to\": \"X1:1\", \"part\": \"w\", \"cutMm\": 1000}",
            "\"splices\": {\"S1\": {}}");
    assertThat(standard.value()).isCloseTo(37.1 + 0.5 + 0.2, within(1e-9));
  }

  @Test
  void contactIsTheWorseOfItsHalvesElseTheDefault() {
    Built built =
        Built.of(
            PARTS,
            "\"wires\": {\"W1\": {\"from\": \"X1:1\", \"to\": \"E:s\"}, \"W2\": {\"from\":"
                + " \"X2:1\", \"to\": \"F:s\"}}");
    assertThat(of(built, Edge.OfMating.class).value()).isEqualTo(4);
    assertThat(of(built, Edge.OfBolt.class).value()).isEqualTo(0.1);
    Built one =
        Built.of(
            PARTS.replace("\"contactMilliohm\": 4", "\"grams\": 1"),
            "\"wires\": {\"W1\": {\"from\": \"X1:1\", \"to\": \"E:s\"}, \"W2\": {\"from\":"
                + " \"X2:1\", \"to\": \"F:s\"}}");
    assertThat(of(one, Edge.OfMating.class).value()).isEqualTo(3);
    Built none = Built.of(PARTS, "\"defaults\": {\"contactMilliohm\": 7}");
    assertThat(of(none, Edge.OfMating.class).value()).isEqualTo(7);
  }

  @Test
  void wireWithoutLengthOrSizeIsNotKnown() {
    Built built =
        Built.of(
            PARTS,
            """
            "wires": {"W1": {"from": "X1:1", "to": "E:s", "part": "w"},
                      "W2": {"from": "X2:1", "to": "F:s", "cutMm": 100},
                      "W3": {"from": "X1:1", "to": "F:s", "part": "g", "cutMm": 100}}
            """);
    MeterOhms resistances = resistances(built);
    assertThat(built.network().edges())
        .filteredOn(edge -> edge instanceof Edge.OfWire)
        .extracting(resistances::missing)
        .containsExactly("no length", "no size", "");
  }

  @Test
  void elementsAreNotLookedInto() {
    Built built =
        Built.of(
            "\"devices\": {\"D\": {\"elements\": {\"l\": {\"kind\": \"link\", \"a\": \"1\", \"b\":"
                + " \"2\"}}}}");
    Edge link = built.network().edges().get(0);
    assertThat(resistances(built).milliohm(link)).isEmpty();
    assertThat(resistances(built).missing(link)).isEmpty();
  }
}
