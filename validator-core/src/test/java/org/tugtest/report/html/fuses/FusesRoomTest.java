package org.tugtest.report.html.fuses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.report.html.SampleCar;
import org.tugtest.report.html.circuits.CircuitsRoom;
import org.tugtest.rule.Judged;

class FusesRoomTest {
  private static final String TWO_LAMPS =
      """
      {"format": 1,
       "parts": {"fuses": {"f5": {"ratingA": 5, "style": "blade-mini", "coldMilliohm": 20}}},
       "devices": {
         "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
         "FB": {"elements": {
           "f1": {"kind": "fuse", "a": "in", "b": "1"},
           "f2": {"kind": "fuse", "a": "in", "b": "2"},
           "trip": {"kind": "fuse", "a": "in", "b": "3", "ratingA": 2, "electronic": true}}},
         "ONE": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "ohms": 3}}},
         "TWO": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "ohms": 60}}}},
       "fitted": {"FB.f1": "f5"},
       "wires": {
         "W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 1, "cutMm": 100},
         "W2": {"from": "FB:1", "to": "ONE:1", "areaMm2": 1, "cutMm": 100},
         "W3": {"from": "FB:3", "to": "TWO:1", "areaMm2": 1, "cutMm": 100},
         "W4": {"from": "ONE:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 100},
         "W5": {"from": "TWO:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 100}}}
      """;

  @Test
  void saysOfEachFuseWhatItCarriesAndWhatGoesDead() {
    var facts = Judged.facts(Map.of(Judged.ROOT, TWO_LAMPS));
    FusesRoom room = FusesRoom.of(facts, CircuitsRoom.of(facts).circuits());
    assertThat(room.count()).isEqualTo(2);
    assertThat(room.empty().shown()).containsExactly("FB.f2");
    FusesRoom.Row f1 = room.fuses().shown().get(0);
    assertThat(f1.fuse()).isEqualTo("FB.f1");
    assertThat(f1.rating()).isEqualTo("5 A");
    assertThat(f1.part()).isEqualTo("f5, blade-mini");
    // A little under 12 V / 3 ohm.
    assertThat(f1.carries()).matches("3\\.9\\d A in as drawn \\(7[89] % of its rating\\)");
    assertThat(f1.near()).isTrue();
    assertThat(f1.users().shown()).containsExactly(new FusesRoom.User("ONE.bulb", 1));
    assertThat(f1.wires().shown()).containsExactly("W2");
    FusesRoom.Row trip = room.fuses().shown().get(1);
    assertThat(trip.rating()).isEqualTo("2 A, electronic");
    assertThat(trip.near()).isFalse();
    assertThat(trip.users().shown()).containsExactly(new FusesRoom.User("TWO.bulb", 2));
  }

  @Test
  void leavesOnlyTheBatteryLeadLiveInTheSample() {
    IsolationCard card = IsolationCard.of(SampleCar.facts());
    assertThat(card.isolators()).containsExactly("ISO.control", "ISO.generator", "ISO.supply");
    IsolationCard.OfSource battery = source(card, "BAT.cell");
    assertThat(battery.wires().shown()).containsExactly("P001");
    assertThat(battery.users().count()).isZero();
    IsolationCard.OfSource alternator = source(card, "ALT.gen");
    assertThat(alternator.generator()).isTrue();
    assertThat(alternator.users().count()).isZero();
    assertThat(alternator.free().shown()).containsExactly("ALT.field", "DUMP.resistor");
  }

  private static IsolationCard.OfSource source(IsolationCard card, String name) {
    return card.sources().stream()
        .filter(source -> source.source().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void findsWhatIsWiredRoundTheIsolator() {
    String json =
        """
        {"format": 1, "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "ISO": {"elements": {"main": {"kind": "contact", "a": "1", "b": "2", "isolator": true}}},
           "RADIO": {"elements": {"supply": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
           "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
         "wires": {
           "W1": {"from": "BAT:+", "to": "ISO:1", "areaMm2": 1, "cutMm": 100},
           "W2": {"from": "ISO:2", "to": "LAMP:1", "areaMm2": 1, "cutMm": 100},
           "W3": {"from": "ISO:1", "to": "RADIO:1", "areaMm2": 1, "cutMm": 100},
           "W4": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 100},
           "W5": {"from": "RADIO:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 100}}}
        """;
    IsolationCard card = IsolationCard.of(Judged.facts(Map.of(Judged.ROOT, json)));
    assertThat(card.sources()).hasSize(1);
    assertThat(card.sources().get(0).users().shown()).containsExactly("RADIO.supply");
    assertThat(card.sources().get(0).wires().shown()).containsExactly("W1", "W3");
    assertThat(card.sources().get(0).points().shown()).containsExactly("ISO:1", "RADIO:1");
  }

  @Test
  void saysWhenNothingIsMarkedAsIsolator() {
    IsolationCard card = IsolationCard.of(Judged.facts(Map.of(Judged.ROOT, TWO_LAMPS)));
    assertThat(card.isolators()).isEmpty();
    assertThat(card.sources())
        .extracting(IsolationCard.OfSource::source)
        .isEqualTo(List.of("BAT.cell"));
  }
}
