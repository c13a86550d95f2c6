package org.tugtest.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.model.Need;
import org.tugtest.model.Zone;

class BundlesTest {
  private static final String PARTS =
      """
      "parts": {"wires": {"w2": {"areaMm2": 1, "maxC": 125, "outerMm": 2},
        "w3": {"areaMm2": 2.5, "maxC": 125, "outerMm": 3}}}
      """;

  private static final String LAYOUT =
      """
      "layout": {"nodes": {"a": {"zone": "cool"}, "b": {"zone": "warm"}, "c": {}}, "segments": {
        "s1": {"from": "a", "to": "b", "lengthMm": 400, "coverings": ["c9"]},
        "s2": {"from": "b", "to": "c", "lengthMm": 200}}},
      "zones": {"cool": {"ambientC": 30, "moisture": "wet", "needs": ["abrasion"]},
        "warm": {"ambientC": 90, "moisture": "dry", "needs": ["heat"]}},
      "devices": {"A": {"at": "a"}, "B": {"at": "b"}, "C": {"at": "c"}}
      """;

  private static Bundles bundles(String... sections) {
    List<String> all = new ArrayList<>(List.of(PARTS, LAYOUT));
    all.addAll(List.of(sections));
    return Laid.out(all.toArray(String[]::new)).facts().bundles();
  }

  private static String wires(String... wires) {
    return "\"wires\": {" + String.join(", ", wires) + "}";
  }

  private static String wire(String id, String from, String to, String part) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"part\": \"%s\"}"
        .formatted(id, from, to, part);
  }

  @Test
  void aSpliceCutsASegmentAndSplitsExactlyTheWiresOverIt() {
    Bundles bundles =
        bundles(
            "\"splices\": {\"S\": {\"on\": \"s1\", \"offsetMm\": 150}}",
            wires(
                wire("W1", "A:1", "S", "w2"),
                wire("W2", "S", "B:2", "w2"),
                wire("W3", "S", "C:3", "w2"),
                wire("W4", "A:4", "C:4", "w3")));
    List<Bundle> s1 = bundles.of("s1");
    assertThat(s1).hasSize(2);
    assertThat(s1.get(0).wireIds()).containsExactly("W1", "W4");
    assertThat(s1.get(0).text(400)).isEqualTo("segment s1 from 0 to 150 mm");
    assertThat(s1.get(1).wireIds()).containsExactly("W2", "W3", "W4");
    assertThat(s1.get(1).fromMm()).isEqualTo(150);
    assertThat(s1.get(1).toMm()).isEqualTo(400);
    assertThat(bundles.of("s2").get(0).wireIds()).containsExactly("W3", "W4");
    assertThat(bundles.of("s2").get(0).text(200)).isEqualTo("segment s2");
    assertThat(bundles.thickest("s1").orElseThrow()).isSameAs(s1.get(1));
    assertThat(bundles.thinnest("s1").orElseThrow()).isSameAs(s1.get(0));
  }

  @Test
  void twoWiresLieSideBySideAndThreeByTheFormulas() {
    Bundles bundles =
        bundles(
            "\"splices\": {\"S\": {\"on\": \"s1\", \"offsetMm\": 150}}",
            wires(
                wire("W1", "A:1", "S", "w2"),
                wire("W2", "S", "B:2", "w2"),
                wire("W3", "S", "C:3", "w2"),
                wire("W4", "A:4", "C:4", "w3")));
    Bundle two = bundles.of("s1").get(0);
    assertThat(two.leastMm()).isEqualTo(5);
    assertThat(two.expectedMm()).isEqualTo(5);
    assertThat(two.looseMm()).isEqualTo(5);
    assertThat(two.basis()).isEqualTo(Basis.GIVEN);
    Bundle three = bundles.of("s1").get(1);
    // sum of squares 17: 1.2 * sqrt(17) = 4.948; three equal circles 2.1547 * sqrt(17 / 3) = 5.129;
    // circle round three that touch (Descartes), curvatures 2/3, 1, 1: 1 / |8/3 - 2 sqrt(7/3)|
    double round = 2 / Math.abs(8.0 / 3 - 2 * Math.sqrt(7.0 / 3));
    assertThat(round).isCloseTo(5.1496, within(1e-4));
    assertThat(three.expectedMm()).isCloseTo(round, within(1e-4));
    assertThat(three.looseMm()).isCloseTo(1.3 * Math.sqrt(17), within(1e-9));
    assertThat(three.leastMm()).isCloseTo(round, within(1e-4));
    assertThat(three.basis()).isEqualTo(Basis.COMMON_PRACTICE);
    assertThat(three.packing().circles()).hasSize(3);
    assertThat(three.strands().get(0).id()).isEqualTo("W4");
  }

  @Test
  void formulasHoldTheRuleOfThumbWhereItIsTheGreatest() {
    // 1.2 * sqrt(N) * d: 3.1749 d for 7, 5.2307 d for 19 (table of the rule in the bundle notes)
    assertThat(BundleDiameter.expectedMm(Collections.nCopies(7, 1.0)))
        .isCloseTo(3.1749, within(1e-4));
    assertThat(BundleDiameter.expectedMm(Collections.nCopies(19, 2.0)))
        .isCloseTo(2 * 5.2307, within(1e-4));
    // and the published optimum where that is greater: 6 circles 3.0 d, 9 circles 3.6131 d
    assertThat(BundleDiameter.expectedMm(Collections.nCopies(6, 1.0))).isEqualTo(3.0);
    assertThat(BundleDiameter.expectedMm(Collections.nCopies(9, 1.0)))
        .isCloseTo(3.6131, within(1e-4));
    assertThat(BundleDiameter.expectedMm(List.of(11.0, 9.4, 1.0, 1.0))).isEqualTo(20.4);
    assertThat(BundleDiameter.expectedMm(List.of())).isZero();
  }

  @Test
  void leastIsNeverOverExpectedNorThatOverLoose() {
    double[] sizes = {1.1, 1.3, 1.5, 2.0, 2.8, 9.4};
    Random random = new Random(5);
    for (int round = 0; round < 100; round++) {
      List<String> wires = new ArrayList<>();
      StringBuilder parts = new StringBuilder("\"parts\": {\"wires\": {");
      for (int i = random.nextInt(40); i >= 0; i--) {
        wires.add(wire("W" + i, "A:" + i, "B:" + i, "p" + i));
        parts
            .append(
                "\"p%d\": {\"areaMm2\": 1, \"maxC\": 125, \"outerMm\": %s}"
                    .formatted(i, sizes[random.nextInt(sizes.length)]))
            .append(i == 0 ? "}}" : ", ");
      }
      Bundle bundle =
          Laid.out(parts.toString(), LAYOUT, wires(wires.toArray(String[]::new)))
              .facts()
              .bundles()
              .of("s1")
              .get(0);
      assertThat(bundle.strands()).hasSameSizeAs(wires);
      assertThat(bundle.leastMm()).isLessThanOrEqualTo(bundle.expectedMm());
      assertThat(bundle.expectedMm()).isLessThanOrEqualTo(bundle.looseMm());
    }
  }

  @Test
  void aCableIsOneCircleWhereTwoOfItsWiresLieAndAWireWhereOneDoes() {
    Bundles bundles =
        bundles(
            wires(
                wire("W1", "A:1", "C:1", "w2"),
                wire("W2", "A:2", "B:2", "w2"),
                wire("W3", "A:3", "B:3", "w2"),
                wire("W4", "A:4", "C:4", "w2")),
            """
            "groups": {"G": {"kind": "cable", "wires": ["W1", "W2"], "screen": "W3", "outerMm": 5}}
            """);
    Bundle s1 = bundles.of("s1").get(0);
    assertThat(s1.strands()).extracting(Strand::text).containsExactly("cable G", "wire W4");
    assertThat(s1.strands().get(0).wires()).containsExactly("W1", "W2", "W3");
    assertThat(s1.expectedMm()).isEqualTo(7);
    assertThat(s1.wires()).isEqualTo(4);
    assertThat(bundles.of("s2").get(0).strands())
        .extracting(Strand::text)
        .containsExactly("wire W1", "wire W4");
  }

  @Test
  void aCableWithoutDiameterIsAsThickAsItsWires() {
    Bundles bundles =
        bundles(
            wires(wire("W1", "A:1", "C:1", "w2"), wire("W2", "A:2", "C:2", "w3")),
            "\"groups\": {\"G\": {\"kind\": \"cable\", \"wires\": [\"W1\", \"W2\"]}}");
    Strand cable = bundles.of("s2").get(0).strands().get(0);
    assertThat(cable.outerMm().value()).isEqualTo(5);
    assertThat(cable.outerMm().source()).isEqualTo("its wires, as cable G gives no outerMm");
  }

  @Test
  void aWireThatRunsOutAndBackLiesThereTwice() {
    Bundles bundles =
        bundles(
            """
            "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w2", "via": ["c"]}}
            """);
    Bundle s2 = bundles.of("s2").get(0);
    assertThat(s2.strands()).hasSize(2);
    assertThat(s2.wires()).isEqualTo(2);
    assertThat(s2.expectedMm()).isEqualTo(4);
  }

  @Test
  void aWireWithoutDiameterIsSaidAndLeftOut() {
    Bundles bundles =
        bundles(
            wires(wire("W1", "A:1", "B:1", "w2"))
                .replace("}}", "}, \"W2\": {\"from\": \"A:2\", \"to\": \"B:2\"}}"));
    assertThat(bundles.of("s1").get(0).unsized()).containsExactly("W2");
    assertThat(bundles.of("s1").get(0).expectedMm()).isEqualTo(2);
    assertThat(bundles.of("s1").get(0).wires()).isEqualTo(2);
  }

  @Test
  void theOrderOfTheWiresChangesNothing() {
    List<String> wires = new ArrayList<>();
    for (int i = 0; i < 25; i++) {
      wires.add(wire("W" + i, "A:" + i, "C:" + i, i % 3 == 0 ? "w3" : "w2"));
    }
    Bundle one = bundles(wires(wires.toArray(String[]::new))).of("s1").get(0);
    Collections.shuffle(wires, new Random(1));
    Bundle other = bundles(wires(wires.toArray(String[]::new))).of("s1").get(0);
    assertThat(other.strands()).isEqualTo(one.strands());
    assertThat(other.packing()).isEqualTo(one.packing());
  }

  @Test
  void aWireMeetsTheMostNeighboursAndTheWorstSurroundingsOfItsRoute() {
    Bundles bundles =
        bundles(
            wires(
                wire("W1", "A:1", "C:1", "w2"),
                wire("W2", "A:2", "B:2", "w2"),
                wire("W3", "B:3", "C:3", "w2"),
                wire("W4", "B:4", "C:4", "w2"),
                wire("W5", "C:5", "C:6", "w2")));
    Bundles.Company w1 = bundles.along("W1").orElseThrow();
    assertThat(w1.neighbours()).isEqualTo(2);
    assertThat(w1.covered()).isTrue();
    assertThat(w1.coverings()).containsExactly("c9");
    assertThat(w1.around().ambientC().value()).isEqualTo(90);
    assertThat(w1.around().ambientC().source()).isEqualTo("zone warm");
    assertThat(w1.around().moisture()).isEqualTo(Zone.Moisture.WET);
    assertThat(w1.around().needs()).containsExactlyInAnyOrder(Need.ABRASION, Need.HEAT);
    assertThat(w1.around().byDefault()).containsExactly("node c has no zone");
    Bundles.Company w3 = bundles.along("W3").orElseThrow();
    assertThat(w3.covered()).isFalse();
    Bundles.Company w5 = bundles.along("W5").orElseThrow();
    assertThat(w5.neighbours()).isZero();
    assertThat(w5.around().ambientC().value()).isEqualTo(40);
    assertThat(w5.around().ambientC().basis()).isEqualTo(Basis.COMMON_PRACTICE);
    assertThat(bundles.along("W9")).isEmpty();
  }

  @Test
  void aSegmentHasItsOwnZoneElseTheWorseOfItsNodes() {
    Surroundings around =
        Laid.out(
                """
                "defaults": {"ambientC": 50},
                "zones": {"z1": {"ambientC": 30, "near": ["fuel"]}, "z2": {"moisture": "wet"}},
                "layout": {"nodes": {"a": {"zone": "z1"}, "b": {"zone": "z2"}}, "segments": {
                  "s1": {"from": "a", "to": "b", "lengthMm": 1, "zone": "z1"},
                  "s2": {"from": "a", "to": "b", "lengthMm": 1}}}
                """)
            .facts()
            .bundles()
            .surroundings();
    assertThat(around.ofSegment("s1").ambientC().value()).isEqualTo(30);
    assertThat(around.ofSegment("s1").byDefault()).isEmpty();
    assertThat(around.ofSegment("s2").ambientC().value()).isEqualTo(50);
    assertThat(around.ofSegment("s2").ambientC().basis()).isEqualTo(Basis.GIVEN);
    assertThat(around.ofSegment("s2").moisture()).isEqualTo(Zone.Moisture.WET);
    assertThat(around.ofSegment("s2").byDefault()).containsExactly("zone z2 gives no ambientC");
  }
}
