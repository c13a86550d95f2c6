package org.tugtest.protect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;
import org.tugtest.report.html.SampleCar;
import org.tugtest.rule.Judged;

class OutagesTest {
  private static final String RELAY =
      """
      {"format": 1, "devices": {
        "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
        "FB": {"elements": {
          "f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 3},
          "f2": {"kind": "fuse", "a": "in", "b": "2", "ratingA": 20},
          "f3": {"kind": "fuse", "a": "in", "b": "3", "ratingA": 5},
          "f4": {"kind": "fuse", "a": "in", "b": "3", "ratingA": 5}}},
        "K": {"elements": {
          "coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 85},
          "contact": {"kind": "contact", "a": "30", "b": "87", "coil": "coil", "rest": "open"},
          "rest": {"kind": "contact", "a": "30", "b": "87a", "coil": "coil", "rest": "closed"}}},
        "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 5}}},
        "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
        "TWO": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
       "wires": {
        "W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 1},
        "W2": {"from": "FB:1", "to": "K:86", "areaMm2": 1},
        "W3": {"from": "FB:2", "to": "K:30", "areaMm2": 1},
        "W4": {"from": "K:87", "to": "FAN:1", "areaMm2": 1},
        "W5": {"from": "K:87a", "to": "LAMP:1", "areaMm2": 1},
        "W6": {"from": "FB:3", "to": "TWO:1", "areaMm2": 1},
        "W7": {"from": "K:85", "to": "BAT:-", "areaMm2": 1},
        "W8": {"from": "FAN:2", "to": "BAT:-", "areaMm2": 1},
        "W9": {"from": "LAMP:2", "to": "FAN:2", "areaMm2": 1},
        "W10": {"from": "TWO:2", "to": "BAT:-", "areaMm2": 1}}}
      """;

  private static Outages.Outage without(String... names) {
    Facts facts = Judged.facts(Map.of(Judged.ROOT, RELAY));
    List<Edge> edges =
        facts.network().edges().stream()
            .filter(edge -> List.of(names).contains(edge.text()))
            .toList();
    assertThat(edges).hasSize(names.length);
    return Outages.of(facts.network()).without(edges);
  }

  private static List<String> users(Outages.Outage outage) {
    return outage.users().stream().map(Edge::text).toList();
  }

  private static List<String> wires(Outages.Outage outage) {
    return outage.wires().stream().map(Edge::text).toList();
  }

  @Test
  void losesWhatHangsOnAFuse() {
    Outages.Outage outage = without("FB.f2");
    assertThat(users(outage)).containsExactly("FAN.motor", "LAMP.bulb");
    assertThat(wires(outage)).containsExactly("W3", "W4", "W5");
  }

  @Test
  void losesWhatADeadRelayLeavesDead() {
    assertThat(users(without("FB.f1"))).containsExactly("FAN.motor", "K.coil");
    assertThat(wires(without("FB.f1"))).containsExactly("W2", "W4");
  }

  @Test
  void losesNothingWhereAnotherFuseFeeds() {
    assertThat(users(without("FB.f3"))).isEmpty();
    assertThat(users(without("FB.f3", "FB.f4"))).containsExactly("TWO.bulb");
  }

  @Test
  void losesWhatAReturnWireCarries() {
    Outages.Outage outage = without("W8");
    assertThat(users(outage)).containsExactly("FAN.motor", "LAMP.bulb");
    assertThat(outage.wires()).isEmpty();
  }

  @Test
  void losesEverythingWithTheSupply() {
    assertThat(users(without("W1")))
        .containsExactly("FAN.motor", "K.coil", "LAMP.bulb", "TWO.bulb");
  }

  @Test
  void agreesWithReachingEverythingAnewInTheSample() {
    Network network = SampleCar.facts().network();
    Outages outages = Outages.of(network);
    for (Edge edge : network.edges()) {
      assertThat(Set.copyOf(outages.without(List.of(edge)).users()))
          .as(edge.text())
          .isEqualTo(anew(network, edge));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void agreesWithReachingEverythingAnew(int seed) {
    Random random = new Random(seed);
    StringBuilder wires = new StringBuilder();
    for (int i = 0; i < 60; i++) {
      wires.append(i == 0 ? "" : ", ").append("\"W" + i + "\": {\"from\": \"" + end(random));
      wires.append("\", \"to\": \"" + end(random) + "\", \"areaMm2\": 1}");
    }
    StringBuilder devices = new StringBuilder();
    for (int i = 0; i < 12; i++) {
      devices.append(", \"K" + i + "\": {\"elements\": {");
      devices.append("\"coil\": {\"kind\": \"coil\", \"a\": \"1\", \"b\": \"2\", \"ohms\": 80}, ");
      devices.append(
          "\"c\": {\"kind\": \"contact\", \"a\": \"3\", \"b\": \"4\", \"coil\": \"coil\", \"rest\":"
              + " \"");
      devices.append(i % 4 == 0 ? "closed" : "open").append("\"}, ");
      devices.append("\"d\": {\"kind\": \"diode\", \"a\": \"4\", \"b\": \"5\"}, ");
      devices.append("\"l\": {\"kind\": \"load\", \"a\": \"5\", \"b\": \"2\", \"amps\": 1}}}");
    }
    Network network =
        Judged.facts(
                Map.of(
                    Judged.ROOT,
                    "{\"format\": 1, \"devices\": {\"BAT\": {\"elements\": {\"cell\": {\"kind\":"
                        + " \"source\", \"plus\": \"+\", \"minus\": \"-\", \"volts\": 12}}}"
                        + devices
                        + "}, \"wires\": {"
                        + wires
                        + "}}"))
            .network();
    Outages outages = Outages.of(network);
    for (Edge edge : network.edges()) {
      assertThat(Set.copyOf(outages.without(List.of(edge)).users()))
          .as(edge.text())
          .isEqualTo(anew(network, edge));
    }
  }

  private static String end(Random random) {
    int device = random.nextInt(14);
    return device > 11
        ? device == 12 ? "BAT:+" : "BAT:-"
        : "K" + device + ":" + (1 + random.nextInt(5));
  }

  /** Users that are fed with everything there, less those that are without one edge. */
  private static Set<Edge> anew(Network network, Edge taken) {
    Set<Edge> lost = fed(network, Set.of());
    lost.removeAll(fed(network, Set.of(taken)));
    return lost;
  }

  private static Set<Edge> fed(Network network, Set<Edge> taken) {
    Set<Edge> open = new HashSet<>(taken);
    while (true) {
      List<Point> plus = new ArrayList<>();
      List<Point> minus = new ArrayList<>();
      network.sources().forEach(source -> plus.add(source.a()));
      network.sources().forEach(source -> minus.add(source.b()));
      Reach feed =
          Reach.from(
              network, plus, (edge, from) -> !open.contains(edge) && Sides.feeds(edge, from));
      Reach back =
          Reach.from(
              network,
              minus,
              (edge, from) -> !open.contains(edge) && Sides.feeds(edge, edge.across(from)));
      Set<Edge> fed = new HashSet<>();
      Set<String> live = new HashSet<>();
      for (Edge edge : network.edges()) {
        boolean user =
            edge instanceof Edge.OfElement in
                && (in.element() instanceof Element.Load || in.element() instanceof Element.Coil);
        if (user
            && ((feed.reaches(edge.a()) && back.reaches(edge.b()))
                || (feed.reaches(edge.b()) && back.reaches(edge.a())))) {
          fed.add(edge);
          live.add(edge.text());
        }
      }
      int before = open.size();
      for (Edge edge : network.edges()) {
        if (edge instanceof Edge.OfElement in
            && in.element() instanceof Element.Contact contact
            && contact.coil() != null
            && !contact.restClosed()
            && !live.contains(in.device() + "." + contact.coil())) {
          open.add(edge);
        }
      }
      if (open.size() == before) {
        return fed;
      }
    }
  }
}
