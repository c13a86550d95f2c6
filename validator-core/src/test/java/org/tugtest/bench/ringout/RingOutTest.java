package org.tugtest.bench.ringout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.network.Point;
import org.tugtest.rule.Judged;

class RingOutTest {
  private static final String LAMP =
      """
      {"format": 1, "title": "Work lamp",
       "parts": {
        "wires": {"w1.0": {"areaMm2": 1.0, "maxC": 125}},
        "housings": {
          "lamp-skt": {"side": "socket", "family": "t2.8", "rows": [["1", "2"]], "matesWith": ["lamp-pin"]},
          "lamp-pin": {"side": "pin", "family": "t2.8", "rows": [["2", "1"]]}}},
       "devices": {
        "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6, "ohms": 0.01}}},
        "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}}},
        "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
        "LAMP": {"ports": {"plug": {"housing": "lamp-pin"}}, "elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
       "connectors": {"X1": {"housing": "lamp-skt", "mates": "LAMP"}},
       "wires": {
        "W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 2.5, "cutMm": 150},
        "W2": {"from": "FB:1", "to": "SW:1", "part": "w1.0", "cutMm": 1000},
        "W3": {"from": "SW:2", "to": "X1:1", "part": "w1.0", "cutMm": 20000},
        "W4": {"from": "X1:2", "to": "BAT:-", "part": "w1.0"}}}
      """;

  private static Facts facts(String json) {
    return Judged.facts(Map.of(Judged.ROOT, json));
  }

  private static Facts sketch(String... wires) {
    return facts(
        "{\"format\": 1, \"sketch\": true, \"wires\": {" + String.join(", ", wires) + "}}");
  }

  private static RingOut loose(Facts facts) {
    return RingOut.of(facts, Scope.ofLoose(facts));
  }

  private static List<String> pairs(RingOut list) {
    return list.joined().stream().map(p -> p.from() + " " + p.to() + " " + p.wires()).toList();
  }

  private static List<String> blind(RingOut list) {
    return list.blind().stream().map(b -> b.what() + " " + b.fault() + ": " + b.why()).toList();
  }

  @Test
  void aWireIsProvenFromEndToEndWithinItsLimit() {
    RingOut list = loose(facts(LAMP));
    assertThat(list.scope().title()).isEqualTo("all wires");
    assertThat(pairs(list))
        .containsExactly("BAT:+ FB:in [W1]", "BAT:- X1:2 [W4]", "FB:1 SW:1 [W2]", "SW:2 X1:1 [W3]");
    // 1.0 mm2: 19.5 ohm/km, IEC 60228 class 5; a crimp 0.5 milliohm, default of the format
    Probe small = list.joined().get(2);
    assertThat(small.ohms()).isCloseTo(0.0195 + 2 * 0.0005, within(1e-9));
    assertThat(small.limitOhms()).as("50 milliohm more").isCloseTo(0.0705, within(1e-9));
    Probe large = list.joined().get(3);
    assertThat(large.limitOhms()).as("a fifth more").isCloseTo(1.2 * 0.391, within(1e-9));
    Probe unknown = list.joined().get(1);
    assertThat(unknown.ohms()).isNull();
    assertThat(unknown.limitOhms()).isNull();
    assertThat(unknown.remark()).isEqualTo("W4 gives no length");
    assertThat(list.blind()).isEmpty();
  }

  @Test
  void theTeamsLimitIsTaken() {
    String own = "\"limits\": {\"reading-high\": {\"percent\": 50, \"ohms\": 0.001}}, \"parts\"";
    RingOut list = loose(facts(LAMP.replace("\"parts\"", own)));
    assertThat(list.joined().get(2).limitOhms()).isCloseTo(1.5 * 0.0205, within(1e-9));
  }

  @Test
  void neighboursFeedAndReturnAndAllNetsAreHeldApart() {
    RingOut list = loose(facts(LAMP));
    assertThat(list.apart())
        .extracting(a -> a.from() + " " + a.to() + " " + a.why())
        .containsExactly("X1:1 X1:2 side by side in X1");
    assertThat(list.supply()).hasSize(1);
    Tie supply = list.supply().get(0);
    assertThat(supply.one()).extracting(Point::text).containsExactly("BAT:+", "FB:1", "SW:2");
    assertThat(supply.other()).extracting(Point::text).containsExactly("BAT:-");
    assertThat(list.ties()).hasSize(2);
  }

  @Test
  void nearestPointsAreTakenRoundASplice() {
    Facts facts =
        facts(
            """
            {"format": 1, "sketch": true, "splices": {"S1": {}}, "wires": {
              "W1": {"from": "A:1", "to": "S1", "areaMm2": 1, "cutMm": 100},
              "W2": {"from": "S1", "to": "B:1", "areaMm2": 1, "cutMm": 5000},
              "W3": {"from": "S1", "to": "C:1", "areaMm2": 1, "cutMm": 300}}}
            """);
    assertThat(pairs(loose(facts))).containsExactly("A:1 C:1 [W1, W3]", "A:1 B:1 [W1, W2]");
  }

  @Test
  void parallelWiresDeadEndsAndOpenEndsAreSaid() {
    RingOut list =
        loose(
            facts(
                """
                {"format": 1, "sketch": true, "splices": {"S1": {}, "S2": {}, "S3": {}, "E1": {"kind": "end-cap"}},
                 "connectors": {"C": {"housing": "none"}},
                 "wires": {
                  "W1": {"from": "A:1", "to": "B:1"}, "W2": {"from": "A:1", "to": "B:1"},
                  "W3": {"from": "A:2", "to": "E1"},
                  "W4": {"from": "S2", "to": "S3"},
                  "W5": {"from": "A:3", "to": "A:3"},
                  "W6": {"from": "A:4"},
                  "W7": {"from": "B:2", "to": "S1"}, "W8": {"from": "S1", "to": "B:3"}, "W9": {"from": "B:2", "to": "B:3"}}}
                """));
    assertThat(blind(list))
        .containsExactly(
            "wires/W1 OPEN: it lies in parallel with W2",
            "wires/W2 OPEN: it lies in parallel with W1",
            "wires/W3 OPEN: nothing can be probed beyond it",
            "wires/W4 OPEN: nothing can be probed beyond it",
            "wires/W5 OPEN: both its ends sit on one contact",
            "wires/W6 OPEN: an end of it names nothing known",
            "wires/W7 OPEN: the same points are joined through W9, W8",
            "wires/W8 OPEN: the same points are joined through W7, W9",
            "wires/W9 OPEN: the same points are joined through W7, W8",
            "splices/S2 JOINED: no probe reaches S2, S3");
    assertThat(list.proven()).isEmpty();
  }

  @Test
  void eachLoomIsMeasuredAloneAndUnplugged() {
    Map<String, String> files =
        Map.of(
            Judged.ROOT,
            """
            {"format": 1, "uses": ["a.json", "b.json"],
             "devices": {"E": {"pins": {"g": {"family": "stud-m6"}, "k": {"family": "stud-m6"}},
                               "elements": {"bar": {"kind": "link", "a": "g", "b": "k"}}}},
             "wires": {"P1": {"from": "E:g", "to": "E:k"}},
             "parts": {"housings": {"s": {"side": "socket", "rows": [["1", "2"]]}, "p": {"side": "pin", "rows": [["1", "2"]]}}}}
            """,
            "a.json",
            """
            {"format": 1, "loom": {"id": "a", "revision": "C"}, "connectors": {"XA": {"housing": "s", "mates": "XB"}},
             "wires": {"A1": {"from": "XA:1", "to": "E:g"}, "A2": {"from": "XA:2", "to": "E:g"}}}
            """,
            "b.json",
            """
            {"format": 1, "loom": {"id": "b"}, "connectors": {"XB": {"housing": "p"}},
             "wires": {"B1": {"from": "XB:1", "to": "XB:2"}}}
            """);
    Facts facts = Judged.facts(files);
    List<RingOut> all = RingOut.all(facts);
    assertThat(all)
        .extracting(list -> list.scope().title())
        .containsExactly("a, revision C", "b", "loose wires");
    assertThat(pairs(all.get(0))).containsExactly("E:g XA:1 [A1]", "E:g XA:2 [A2]");
    assertThat(pairs(all.get(1))).containsExactly("XB:1 XB:2 [B1]");
    assertThat(all.get(1).apart()).as("the plan joins them").isEmpty();
    RingOut plugged = RingOut.of(facts, Scope.plugged(facts));
    assertThat(pairs(plugged))
        .containsExactly(
            "XA:1 XB:1 []", "XA:2 XB:2 []", "E:g E:k [P1]", "E:g XA:1 [A1]", "E:g XA:2 [A2]");
    assertThat(blind(plugged)).hasSize(3);
  }

  @Test
  void feedsAndReturnsThatShareACoveringAreHeldApartThere() {
    String layout =
        "\"layout\": {\"nodes\": {\"a\": {}, \"b\": {}, \"c\": {}}, \"segments\": {\"s1\":"
            + " {\"from\": \"a\", \"to\": \"b\", \"lengthMm\": 500, \"coverings\":"
            + " [\"sleeve\"]},\"s2\": {\"from\": \"b\", \"to\": \"c\", \"lengthMm\": 500}}},"
            + " \"parts\"";
    String at =
        LAMP.replace("\"parts\"", layout)
            .replace("\"BAT\": {", "\"BAT\": {\"at\": \"a\", ")
            .replace("\"FB\": {", "\"FB\": {\"at\": \"c\", ")
            .replace("\"SW\": {", "\"SW\": {\"at\": \"b\", ")
            .replace("\"LAMP\": {", "\"LAMP\": {\"at\": \"b\", ");
    assertThat(loose(facts(at)).supply())
        .extracting(tie -> tie.number() + " " + tie.what() + ": " + tie.one() + " " + tie.other())
        .containsExactly(
            "1 every feed from every return: [BAT:+, FB:1, SW:2] [BAT:-]",
            "2 feeds from returns inside sleeve on s1: [BAT:+] [BAT:-]");
  }

  @Test
  void nothingToMeasureIsAnEmptyList() {
    Facts facts = facts("{\"format\": 1}");
    assertThat(RingOut.all(facts)).isEmpty();
    RingOut list = loose(facts);
    assertThat(list.joined()).isEmpty();
    assertThat(list.ties()).isEmpty();
    assertThat(list.supply()).isEmpty();
  }

  @Test
  void tiesAreAsManyAsTheNumberOfNetsHasBits() {
    for (int n = 0; n <= 40; n++) {
      String[] wires = new String[n];
      for (int i = 0; i < n; i++) {
        wires[i] = "\"W%d\": {\"from\": \"A:%d\", \"to\": \"B:%d\"}".formatted(i, i, i);
      }
      RingOut list = loose(sketch(wires));
      int least = 0;
      while (1 << least < n) {
        least++;
      }
      assertThat(list.ties()).as("%d nets", n).hasSize(least);
    }
  }

  /**
   * Every single break and every single touch in random looms is shown by the list or said to stay
   * unseen, and what is said to stay unseen does.
   */
  @Test
  void everySingleFaultIsShownOrSaidToStayUnseen() {
    Random random = new Random(7);
    int opens = 0;
    int joins = 0;
    for (int round = 0; round < 800; round++) {
      List<String[]> wires = randomLoom(random);
      RingOut list = loose(facts(json(wires)));
      Set<String> unseen =
          list.blind().stream()
              .filter(b -> b.fault() == Blind.Fault.OPEN)
              .map(b -> b.what().id())
              .collect(Collectors.toSet());
      Map<String, Integer> nets = nets(wires, -1, null);
      assertThat(shown(list, nets)).as("a good loom passes").isFalse();
      for (int i = 0; i < wires.size(); i++) {
        boolean shown = shown(list, nets(wires, i, null));
        assertThat(shown)
            .as("break of %s", wires.get(i)[0])
            .isNotEqualTo(unseen.contains(wires.get(i)[0]));
        opens++;
      }
      List<String> points = new ArrayList<>(nets.keySet());
      Set<String> hidden =
          list.blind().stream()
              .filter(b -> b.fault() == Blind.Fault.JOINED)
              .map(b -> b.what().id())
              .collect(Collectors.toSet());
      for (String one : points) {
        for (String other : points) {
          if (nets.get(one) < nets.get(other)) {
            boolean said =
                points.stream()
                    .filter(hidden::contains)
                    .anyMatch(
                        p ->
                            nets.get(p).equals(nets.get(one))
                                || nets.get(p).equals(nets.get(other)));
            boolean shown = shown(list, nets(wires, -1, new String[] {one, other}));
            assertThat(shown).as("%s touches %s", one, other).isNotEqualTo(said);
            joins++;
          }
        }
      }
      assertThat(list.joined()).hasSize(leastCount(nets));
    }
    assertThat(opens).isGreaterThan(1000);
    assertThat(joins).isGreaterThan(5000);
  }

  /** For each net its points to probe but one. */
  private static int leastCount(Map<String, Integer> nets) {
    Map<Integer, Integer> counts = new HashMap<>();
    nets.forEach((point, net) -> counts.merge(net, point.startsWith("S") ? 0 : 1, Integer::sum));
    return counts.values().stream().mapToInt(n -> Math.max(0, n - 1)).sum();
  }

  /** Whether a reading of the list comes out wrong on a loom with these nets. */
  private static boolean shown(RingOut list, Map<String, Integer> nets) {
    boolean open =
        list.joined().stream()
            .anyMatch(p -> !nets.get(p.from().text()).equals(nets.get(p.to().text())));
    boolean joined =
        list.ties().stream()
            .anyMatch(
                tie -> {
                  Set<Integer> one = new HashSet<>();
                  tie.one().forEach(p -> one.add(nets.get(p.text())));
                  return tie.other().stream().anyMatch(p -> one.contains(nets.get(p.text())));
                });
    return open || joined;
  }

  private static List<String[]> randomLoom(Random random) {
    List<String> points =
        List.of("A:1", "A:2", "A:3", "B:1", "B:2", "B:3", "C:1", "S1", "S2", "S3", "S4");
    List<String[]> wires = new ArrayList<>();
    int count = 1 + random.nextInt(9);
    for (int i = 0; i < count; i++) {
      wires.add(
          new String[] {
            "W" + i,
            points.get(random.nextInt(points.size())),
            points.get(random.nextInt(points.size()))
          });
    }
    return wires;
  }

  private static String json(List<String[]> wires) {
    return wires.stream()
        .map(w -> "\"%s\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(w[0], w[1], w[2]))
        .collect(
            Collectors.joining(
                ", ",
                "{\"format\": 1, \"sketch\": true, \"splices\": {\"S1\": {}, \"S2\": {}, \"S3\":"
                    + " {}, \"S4\": {}}, \"wires\": {",
                "}}"));
  }

  /** The nets by colouring points again and again, without one wire, with one touch. */
  private static Map<String, Integer> nets(List<String[]> wires, int without, String[] touch) {
    Map<String, Integer> nets = new HashMap<>();
    List<String[]> pairs = new ArrayList<>();
    for (int i = 0; i < wires.size(); i++) {
      String[] wire = wires.get(i);
      nets.putIfAbsent(wire[1], nets.size());
      nets.putIfAbsent(wire[2], nets.size());
      if (i != without) {
        pairs.add(new String[] {wire[1], wire[2]});
      }
    }
    if (touch != null) {
      pairs.add(touch);
    }
    for (boolean more = true; more; ) {
      more = false;
      for (String[] pair : pairs) {
        int least = Math.min(nets.get(pair[0]), nets.get(pair[1]));
        more |= nets.put(pair[0], least) != least;
        more |= nets.put(pair[1], least) != least;
      }
    }
    return nets;
  }
}
