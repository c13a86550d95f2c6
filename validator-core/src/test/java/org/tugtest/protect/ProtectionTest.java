package org.tugtest.protect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.network.Edge;
import org.tugtest.rule.Judged;

class ProtectionTest {
  private static Protection of(String devices, String wires, String... more) {
    String json =
        "{\"format\": 1, \"sketch\": true, \"devices\": {"
            + devices
            + "}, \"wires\": {"
            + wires
            + "}"
            + (more.length == 0 ? "" : ", " + String.join(", ", more))
            + "}";
    return Judged.facts(Map.of(Judged.ROOT, json)).protection();
  }

  private static String battery(String id) {
    return source(id, "");
  }

  private static String source(String id, String more) {
    return "\"%s\": {\"elements\": {\"s\": {\"kind\": \"source\", \"plus\": \"+\", \"minus\": \"-\"%s}}}"
        .formatted(id, more);
  }

  private static String fuse(String id, double rating) {
    return "\"%s\": {\"elements\": {\"f\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"out\", \"ratingA\": %s}}}"
        .formatted(id, rating);
  }

  private static String load(String id) {
    return "\"%s\": {\"elements\": {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\"}}}"
        .formatted(id);
  }

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(id, from, to);
  }

  private static String all(String... things) {
    return String.join(", ", things);
  }

  private static double limit(Protection protection, String wire) {
    Exposure exposure = protection.exposure(wire).orElseThrow();
    return exposure.limitA().orElseThrow();
  }

  private static List<String> cut(Protection protection, String wire) {
    return protection.exposure(wire).orElseThrow().cut().stream().map(Edge::text).toList();
  }

  @Test
  void onATreeTheNearestOfTheLeastFusesUpstreamIsTheLimit() {
    Protection car =
        of(
            all(battery("B"), fuse("F1", 30), fuse("F2", 10), fuse("F3", 15)),
            all(
                wire("W1", "B:+", "F1:in"),
                wire("W2", "F1:out", "F2:in"),
                wire("W3", "F2:out", "F3:in"),
                wire("W4", "F3:out", "X:1")));
    assertThat(car.exposure("W1").orElseThrow().unbounded()).isTrue();
    assertThat(limit(car, "W2")).isEqualTo(30);
    assertThat(limit(car, "W3")).isEqualTo(10);
    assertThat(limit(car, "W4")).isEqualTo(10);
    assertThat(cut(car, "W4")).containsExactly("F2.f");
  }

  @Test
  void parallelFusesAddUp() {
    Protection car =
        of(
            all(battery("B"), fuse("F1", 10), fuse("F2", 15), load("L")),
            all(
                wire("W1", "B:+", "F1:in"),
                wire("W2", "B:+", "F2:in"),
                wire("W3", "F1:out", "S"),
                wire("W4", "F2:out", "S"),
                wire("W5", "S", "L:1")));
    assertThat(limit(car, "W5")).isEqualTo(25);
    assertThat(limit(car, "W3")).as("from S when it chafes near its fuse").isEqualTo(15);
    assertThat(limit(car, "W4")).isEqualTo(15);
  }

  @Test
  void ringFeedIsBoundedByTheGreaterOfWhatEitherEndGets() {
    Protection car =
        of(
            all(battery("B"), fuse("F1", 10), fuse("F2", 20), load("L"), load("M")),
            all(
                wire("W1", "B:+", "F1:in"),
                wire("W2", "B:+", "F2:in"),
                wire("W3", "F1:out", "L:1"),
                wire("W4", "L:1", "M:1"),
                wire("W5", "M:1", "F2:out")));
    for (String wire : List.of("W3", "W4", "W5")) {
      assertThat(limit(car, wire)).as(wire).isEqualTo(20);
      assertThat(cut(car, wire)).as(wire).containsExactly("F2.f");
    }
  }

  @Test
  void fuseAtOneEndAndAnAlternatorAtTheOtherDoNotAddUp() {
    Protection car =
        of(
            all(
                battery("B"),
                fuse("F", 60),
                source("ALT", ", \"generator\": true, \"selfLimiting\": true, \"maxA\": 50")),
            all(wire("W1", "B:+", "F:in"), wire("W2", "F:out", "ALT:+")));
    assertThat(limit(car, "W2")).isEqualTo(60);
    assertThat(cut(car, "W2")).containsExactly("F.f");
    assertThat(car.exposure("W1").orElseThrow().unbounded()).isTrue();
  }

  @Test
  void cableFusedAtBothEndsBetweenTwoBatteries() {
    Protection car =
        of(
            all(battery("B1"), battery("B2"), fuse("F1", 80), fuse("F2", 50)),
            all(
                wire("W1", "B1:+", "F1:in"),
                wire("W2", "F1:out", "F2:out"),
                wire("W3", "F2:in", "B2:+")));
    assertThat(limit(car, "W2")).isEqualTo(80);
  }

  @Test
  void cappedDonorTailHasTheLimitOfItsSection() {
    Protection car =
        of(
            all(battery("B"), fuse("F", 5), load("L")),
            all(
                wire("W1", "B:+", "F:in"),
                wire("W2", "F:out", "S"),
                wire("W3", "S", "L:1"),
                wire("W4", "S", "CAP")),
            "\"splices\": {\"S\": {}, \"CAP\": {\"kind\": \"end-cap\"}}");
    assertThat(limit(car, "W4")).isEqualTo(5);
  }

  @Test
  void parallelWiresHaveTheWholeLimitEach() {
    Protection car =
        of(
            all(battery("B"), fuse("F", 40), load("L")),
            all(
                wire("W1", "B:+", "F:in"),
                wire("W2", "F:out", "L:1"),
                wire("W3", "F:out", "L:1"),
                wire("W4", "L:1", "L:1")));
    assertThat(limit(car, "W2")).isEqualTo(40);
    assertThat(limit(car, "W3")).isEqualTo(40);
    assertThat(car.exposure("W4")).isEmpty();
  }

  @Test
  void changeOverBetweenTwoFeedsDoesNotAddThemUpNorFeedThemBack() {
    String relay =
        """
        "K": {"elements": {
          "coil": {"kind": "coil", "a": "85", "b": "86", "ohms": 80},
          "no": {"kind": "contact", "a": "30", "b": "87", "coil": "coil", "rest": "open"},
          "nc": {"kind": "contact", "a": "30", "b": "87a", "coil": "coil", "rest": "closed"}}}
        """;
    Protection car =
        of(
            all(battery("B"), fuse("F1", 10), fuse("F2", 20), relay, load("L")),
            all(
                wire("W1", "B:+", "F1:in"),
                wire("W2", "B:+", "F2:in"),
                wire("W3", "F1:out", "K:87"),
                wire("W4", "F2:out", "K:87a"),
                wire("W5", "K:30", "L:1")));
    assertThat(limit(car, "W3")).isEqualTo(10);
    assertThat(limit(car, "W4")).isEqualTo(20);
    assertThat(limit(car, "W5")).isEqualTo(20);
  }

  @Test
  void manyChangeOversAreTriedOneByOne() {
    StringBuilder devices = new StringBuilder(all(battery("B"), fuse("F1", 10), fuse("F2", 20)));
    StringBuilder wires =
        new StringBuilder(all(wire("W1", "B:+", "F1:in"), wire("W2", "B:+", "F2:in")));
    for (int i = 0; i < 9; i++) {
      devices.append(
          """
          , "K%1$d": {"positions": ["a", "b"], "elements": {
            "x": {"kind": "contact", "a": "30", "b": "87", "closedIn": ["a"]},
            "y": {"kind": "contact", "a": "30", "b": "87a", "closedIn": ["b"]}}}
          """
              .formatted(i));
      wires.append(", ").append(wire("A" + i, "F1:out", "K" + i + ":87"));
      wires.append(", ").append(wire("B" + i, "F2:out", "K" + i + ":87a"));
      wires.append(", ").append(wire("C" + i, "K" + i + ":30", "L" + i + ":1"));
    }
    Protection car = of(devices.toString(), wires.toString());
    assertThat(car.exposure("C4").orElseThrow().mostA()).isBetween(20.0, 30.0);
    assertThat(car.exposure("A4").orElseThrow().mostA()).isBetween(10.0, 30.0);
  }

  @Test
  void fuseWithoutARatingLeavesALimitThatIsOnlyBounded() {
    String unrated =
        "\"F2\": {\"elements\": {\"f\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"out\","
            + " \"electronic\": true}}}";
    Protection car =
        of(
            all(battery("B"), fuse("F1", 30), unrated, load("L")),
            all(
                wire("W1", "B:+", "F1:in"),
                wire("W2", "F1:out", "F2:in"),
                wire("W3", "F2:out", "L:1")));
    Exposure behind = car.exposure("W3").orElseThrow();
    assertThat(behind.mostA()).isEqualTo(30);
    assertThat(behind.leastA()).isEqualTo(0);
    assertThat(behind.limitA()).isEmpty();
    assertThat(behind.unbounded()).isFalse();
    assertThat(limit(car, "W2")).isEqualTo(30);
    assertThat(car.unrated()).extracting(Edge::text).containsExactly("F2.f");
  }

  @Test
  void fittedFuseCountsBeforeTheRatingOfItsPlace() {
    Protection car =
        of(
            all(battery("B"), fuse("F", 30), load("L")),
            all(wire("W1", "B:+", "F:in"), wire("W2", "F:out", "L:1")),
            "\"parts\": {\"fuses\": {\"mini-10\": {\"ratingA\": 10}}}",
            "\"fitted\": {\"F.f\": \"mini-10\"}");
    assertThat(limit(car, "W2")).isEqualTo(10);
  }

  @Test
  void diodeLetsCurrentThroughOneWay() {
    String diode =
        "\"D\": {\"elements\": {\"d\": {\"kind\": \"diode\", \"a\": \"a\", \"b\": \"k\"}}}";
    Protection car =
        of(
            all(battery("B"), fuse("F1", 10), fuse("F2", 20), diode, load("L")),
            all(
                wire("W1", "B:+", "F1:in"),
                wire("W2", "B:+", "F2:in"),
                wire("W3", "F1:out", "D:a"),
                wire("W4", "D:k", "L:1"),
                wire("W5", "F2:out", "L:1")));
    assertThat(limit(car, "W3")).as("nothing comes back through the diode").isEqualTo(10);
    assertThat(limit(car, "W4")).isEqualTo(20);
    assertThat(limit(car, "W5")).isEqualTo(20);
  }

  @Test
  void returnWireTakesWhatTheFusesOfItsLoadsLetThroughTogether() {
    Protection car =
        of(
            all(battery("B"), fuse("F1", 10), fuse("F2", 15), load("L"), load("M"), load("N")),
            all(
                wire("W1", "B:+", "F1:in"),
                wire("W2", "B:+", "F2:in"),
                wire("W3", "F1:out", "L:1"),
                wire("W4", "F2:out", "M:1"),
                wire("W5", "B:+", "N:1"),
                wire("R1", "L:2", "S"),
                wire("R2", "M:2", "S"),
                wire("R3", "N:2", "S"),
                wire("R4", "S", "B:-"),
                wire("R5", "S", "T")),
            "\"splices\": {\"S\": {}, \"T\": {}}");
    assertThat(back(car, "R1")).isEqualTo(10);
    assertThat(back(car, "R2")).isEqualTo(15);
    assertThat(back(car, "R3")).as("its load has no fuse: another rule's matter").isZero();
    assertThat(back(car, "R4")).isEqualTo(25);
    assertThat(car.returnsUnfusedAlone("R3")).isTrue();
    assertThat(car.returnsUnfusedAlone("R4")).isFalse();
    assertThat(car.returning("R5")).as("leads nowhere").isEmpty();
    assertThat(car.fusesBehind("R4")).extracting(Edge::text).containsExactly("F1.f", "F2.f");
    assertThat(car.loadsBehind("R4", false)).extracting(Edge::text).containsExactly("L.l", "M.l");
    assertThat(car.returning("W1")).isEmpty();
  }

  @Test
  void returnOfSeveralLoadsIsBoundedByTheirCommonFuse() {
    Protection car =
        of(
            all(battery("B"), fuse("F0", 20), fuse("F1", 15), fuse("F2", 15), load("L"), load("M")),
            all(
                wire("W0", "B:+", "F0:in"),
                wire("W1", "F0:out", "F1:in"),
                wire("W2", "F0:out", "F2:in"),
                wire("W3", "F1:out", "L:1"),
                wire("W4", "F2:out", "M:1"),
                wire("R1", "L:2", "S"),
                wire("R2", "M:2", "S"),
                wire("R3", "S", "B:-")));
    assertThat(back(car, "R1")).isEqualTo(15);
    assertThat(back(car, "R3")).isEqualTo(20);
    assertThat(car.fusesBehind("R3")).extracting(Edge::text).containsExactly("F0.f");
  }

  @Test
  void ringOfReturnWiresCarriesTheWholeInEachButMetalLeavesNothingToThem() {
    String block =
        "\"BLOCK\": {\"elements\": {\"l\": {\"kind\": \"link\", \"a\": \"g1\", \"b\": \"g2\"}}}";
    Protection car =
        of(
            all(battery("B"), fuse("F1", 10), fuse("F2", 15), load("L"), load("M"), block),
            all(
                wire("W1", "B:+", "F1:in"),
                wire("W2", "B:+", "F2:in"),
                wire("W3", "F1:out", "L:1"),
                wire("W4", "F2:out", "M:1"),
                wire("R1", "L:2", "BLOCK:g1"),
                wire("R2", "L:2", "BLOCK:g2"),
                wire("R3", "M:2", "BLOCK:g2"),
                wire("R4", "BLOCK:g1", "B:-"),
                wire("R5", "BLOCK:g1", "B:-"),
                wire("R6", "BLOCK:g1", "BLOCK:g2")));
    assertThat(back(car, "R1")).as("M returns through the block").isEqualTo(10);
    assertThat(back(car, "R2")).isEqualTo(10);
    assertThat(back(car, "R3")).isEqualTo(15);
    assertThat(back(car, "R4")).isEqualTo(25);
    assertThat(back(car, "R5")).isEqualTo(25);
    assertThat(car.returning("R6")).as("beside metal").isEmpty();
  }

  private static double back(Protection protection, String wire) {
    return protection.returning(wire).orElseThrow().mostA();
  }

  @Test
  void withoutSourcesOrWiresNothingIsSaid() {
    Protection car = of(load("L"), wire("W1", "L:1", "X:1"));
    assertThat(car.exposures()).isEmpty();
    assertThat(car.returning()).isEmpty();
    assertThat(of("", "").exposures()).isEmpty();
  }
}
