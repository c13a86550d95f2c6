package org.tugtest.report.html.circuits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.report.html.SampleCar;
import org.tugtest.rule.Judged;

class CircuitsRoomTest {
  private static final String LAMP =
      """
      {"format": 1,
       "parts": {"fuses": {"f10": {"ratingA": 10, "coldMilliohm": 7}}},
       "devices": {
         "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.1}}},
         "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}}},
         "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "ohms": 5}}},
         "DEAD": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "ohms": 5}}}},
       "fitted": {"FB.f1": "f10"},
       "wires": {
         "W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 1, "cutMm": 1000, "colour": "RD/WH"},
         "W2": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 1, "cutMm": 1000},
         "W3": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 1, "cutMm": 2000},
         "W4": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 1000, "colour": "BK"}}}
      """;

  private static Facts facts(String json) {
    return Judged.facts(Map.of(Judged.ROOT, json));
  }

  @Test
  void goesFromTheSourceThroughTheFuseToTheLoadAndBack() {
    Circuit lamp = circuit(CircuitsRoom.of(facts(LAMP)), "LAMP.bulb");
    assertThat(lamp.steps())
        .extracting(Circuit.Step::name, Circuit.Step::to)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("BAT.cell", "BAT:+"),
            org.assertj.core.groups.Tuple.tuple("W1", "FB:in"),
            org.assertj.core.groups.Tuple.tuple("FB.f1", "FB:1"),
            org.assertj.core.groups.Tuple.tuple("W2", "LAMP:1"),
            org.assertj.core.groups.Tuple.tuple("LAMP.bulb", "LAMP:2"),
            org.assertj.core.groups.Tuple.tuple("W4", "BAT:-"));
    assertThat(lamp.says().get(2)).isEqualTo("through FB.f1 (fuse 10 A)");
    assertThat(lamp.steps().get(1).swatch()).isNotNull();
    // Two wires side by side, one twice as long: it takes a third, the chosen one two thirds.
    assertThat(lamp.besides()).hasSize(1);
    assertThat(lamp.besides().get(0)).contains("through W3 into LAMP:1");
  }

  private static Circuit circuit(CircuitsRoom room, String load) {
    return room.circuits().stream()
        .filter(circuit -> circuit.load().equals(load))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void saysThatNothingFeedsALoad() {
    Circuit dead = circuit(CircuitsRoom.of(facts(LAMP)), "DEAD.bulb");
    assertThat(dead.says()).containsExactly("fed by nothing");
    assertThat(dead.steps()).isEmpty();
    assertThat(dead.drawing()).isNull();
  }

  @Test
  void showsTheWayWhereNoStateGivesCurrent() {
    Facts facts = facts(LAMP.replaceFirst("\"ohms\": 5", "\"amps\": 0"));
    Circuit lamp = circuit(CircuitsRoom.of(facts), "LAMP.bulb");
    assertThat(lamp.note()).startsWith("No state gives it current");
    assertThat(lamp.steps())
        .extracting(Circuit.Step::name)
        .containsExactly("BAT.cell", "W1", "FB.f1", "W2", "LAMP.bulb", "W4");
    assertThat(lamp.steps()).extracting(Circuit.Step::amps).containsOnly("");
  }

  @Test
  void followsTheCurrentOfEveryLoadOfTheSampleRoundToASource() {
    Facts facts = SampleCar.facts();
    int followed = 0;
    for (OperatingPoint point : facts.operating().all()) {
      for (Edge edge : facts.network().edges()) {
        if (edge instanceof Edge.OfElement load
            && load.element() instanceof Element.Load
            && point.draws(load)) {
          Way way = Way.ofCurrent(facts, point, load);
          List<Leg> all = new ArrayList<>(way.feed());
          Point in = point.amps(load) > 0 ? load.a() : load.b();
          all.add(new Leg(load, in, load.across(in)));
          all.addAll(way.back());
          double volts = 0;
          for (int i = 0; i < all.size(); i++) {
            Leg leg = all.get(i);
            assertThat(i == 0 || leg.from().equals(all.get(i - 1).to())).isTrue();
            double sign = leg.from().equals(leg.edge().a()) ? 1 : -1;
            assertThat(sign * point.amps(leg.edge())).as(leg.edge().text()).isPositive();
            volts += sign * point.across(leg.edge());
          }
          assertThat(isSource(all.get(0))).as(load.text()).isTrue();
          assertThat(isSource(all.get(all.size() - 1))).as(load.text()).isTrue();
          if (all.get(0).edge().equals(all.get(all.size() - 1).edge())) {
            // Once round, the volts add up to nothing; the source was counted at both ends.
            double source = point.across(all.get(0).edge());
            assertThat(volts + source).as(load.text()).isCloseTo(0, within(1e-6));
            followed++;
          }
        }
      }
    }
    assertThat(followed).isGreaterThan(50);
  }

  private static boolean isSource(Leg leg) {
    return leg.edge() instanceof Edge.OfElement inside
        && inside.element() instanceof Element.Source;
  }

  @Test
  void keepsManyLoadsShort() {
    StringBuilder loads = new StringBuilder();
    for (int i = 0; i < 2400; i++) {
      loads
          .append(i == 0 ? "" : ", ")
          .append("\"l" + i + "\": {\"kind\": \"load\", \"a\": \"+\", \"b\": \"-\", \"ohms\": ")
          .append(10_000 - i + "}");
    }
    CircuitsRoom room =
        CircuitsRoom.of(
            facts(
                "{\"format\": 1, \"devices\": {\"BAT\": {\"elements\": {\"cell\": {\"kind\":"
                    + " \"source\", \"plus\": \"+\", \"minus\": \"-\", \"volts\": 12}, "
                    + loads
                    + "}}}}"));
    assertThat(room.circuits()).hasSize(24);
    assertThat(room.circuits()).extracting(Circuit::load).contains("BAT.l2399");
    assertThat(room.others().shown()).hasSize(400);
    assertThat(room.others().said()).isEqualTo("and 1,976 more");
    assertThat(room.count()).isEqualTo(2400);
  }
}
