package org.tugtest.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.tugtest.model.Wire;

class NetsTest {
  @Test
  void harnessWithoutPointsHasNoNets() {
    assertThat(Built.of("\"wires\": {}").nets().all()).isEmpty();
  }

  @Test
  void unusedCavityIsANetOfItsOwn() {
    Built built =
        Built.of(
            "\"parts\": {\"housings\": {\"h\": {\"side\": \"pin\", \"rows\": [[\"1\", \"2\"]]}}}",
            "\"connectors\": {\"X1\": {\"housing\": \"h\"}}");
    assertThat(built.nets().all()).extracting(Net::name).containsExactly("X1:1", "X1:2");
    assertThat(built.nets().joined(built.at("X1:1"), built.at("X1:2"))).isFalse();
  }

  @Test
  void elementsJoinNothing() {
    Built built =
        Built.of(
            """
            "devices": {"D": {"elements": {
              "c": {"kind": "contact", "a": "1", "b": "2"},
              "l": {"kind": "link", "a": "2", "b": "3"},
              "f": {"kind": "fuse", "a": "3", "b": "4", "ratingA": 5}}}}
            """);
    assertThat(built.netsOfSeveral()).isEmpty();
    assertThat(built.nets().all()).hasSize(4);
  }

  @Test
  void wiresSplicesPlugsAndBoltsJoin() {
    Built built =
        Built.of(
            """
            "parts": {"housings": {"s": {"side": "socket", "rows": [["1"]]},
                                   "p": {"side": "pin", "rows": [["1"]]}}},
            "devices": {
              "ALT": {"pins": {"B+": {}}, "boltedTo": {"case": "BLOCK:m8"}},
              "BLOCK": {"pins": {"m8": {}, "m6": {}}},
              "LAMP": {"ports": {"A": {"housing": "p", "pins": {"1": "L"}}}}},
            "connectors": {"X1": {"housing": "s", "mates": "LAMP"}},
            "splices": {"S1": {}},
            "wires": {"W1": {"from": "ALT:B+", "to": "S1"}, "W2": {"from": "X1:1", "to": "S1"},
                      "W3": {"from": "BLOCK:m6", "to": "NOWHERE:1"}}
            """);
    assertThat(built.netsOfSeveral()).containsExactly("ALT:B+ LAMP:L X1:1 S1", "ALT:case BLOCK:m8");
    Net feed = built.nets().of(built.at("S1")).orElseThrow();
    assertThat(feed.name()).isEqualTo("ALT:B+");
    assertThat(feed.wires()).extracting(Wire::id).containsExactly("W1", "W2");
    assertThat(built.nets().of(built.at("BLOCK:m6")).orElseThrow().wires())
        .extracting(Wire::id)
        .containsExactly("W3");
    assertThat(built.network().unplaced()).hasToString("[wires/W3]");
    assertThat(built.nets().of(Point.pin("NO", "1"))).isEmpty();
    assertThat(built.nets().joined(Point.pin("NO", "1"), Point.pin("NO", "1"))).isFalse();
  }

  @Test
  void wireFromAContactToItselfJoinsNothing() {
    Built built = Built.sketch("\"wires\": {\"W1\": {\"from\": \"A:1\", \"to\": \"A:1\"}}");
    assertThat(built.nets().all()).hasSize(1);
    assertThat(built.network().edges()).isEmpty();
    assertThat(built.nets().all().get(0).wires()).hasSize(1);
  }

  @Provide
  Arbitrary<List<int[]>> pairs() {
    Arbitrary<Integer> point = Arbitraries.integers().between(0, 30);
    return point.list().ofSize(2).map(p -> new int[] {p.get(0), p.get(1)}).list().ofMaxSize(40);
  }

  /** Every net is what a plain walk from any of its points finds. */
  @Property(tries = 300)
  void netsAreThoseOfAPlainWalk(@ForAll("pairs") List<int[]> pairs) {
    List<String> wires = new ArrayList<>();
    Map<String, Set<String>> next = new HashMap<>();
    for (int[] pair : pairs) {
      String from = name(pair[0]);
      String to = name(pair[1]);
      wires.add("\"W%d\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(wires.size(), from, to));
      next.computeIfAbsent(from, at -> new HashSet<>()).add(to);
      next.computeIfAbsent(to, at -> new HashSet<>()).add(from);
    }
    Built built = Built.sketch("\"wires\": {" + String.join(", ", wires) + "}");
    Set<String> seen = new HashSet<>();
    for (Net net : built.nets().all()) {
      Set<String> walked = new HashSet<>();
      walk(net.name(), next, walked);
      assertThat(net.points()).extracting(Point::text).containsExactlyInAnyOrderElementsOf(walked);
      assertThat(seen).doesNotContainAnyElementsOf(walked);
      seen.addAll(walked);
    }
    assertThat(seen).isEqualTo(next.keySet());
  }

  /** A third are splices, the rest cavities. */
  private static String name(int number) {
    return number % 3 == 0 ? "S" + number : "X" + number % 3 + ":" + number;
  }

  private static void walk(String at, Map<String, Set<String>> next, Set<String> walked) {
    if (walked.add(at)) {
      next.get(at).forEach(to -> walk(to, next, walked));
    }
  }
}
