package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class LoadBackfedTest {
  private static Judged judged(String devices, String wires, String states) {
    return Judged.of(
        new LoadBackfed(),
        """
        {"format": 1, "defaults": {"crimpMilliohm": 0},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.000001}}},
           "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}}, %s},
         "wires": {%s}, "states": {%s}}
        """
            .formatted(devices, wires, states));
  }

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": 1, \"cutMm\": 1}"
        .formatted(id, from, to);
  }

  private static String load(String id, String figures) {
    return "\"%s\": {\"elements\": {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", %s}}}"
        .formatted(id, figures);
  }

  /** An unwanted load in a divider: it sees its own share of 12 V. */
  private static Judged divider(double ohms, String more) {
    return judged(
        load("A", "\"ohms\": 1000, \"use\": \"free\"")
            + ", "
            + load("B", "\"ohms\": " + ohms + more),
        String.join(
            ", ", wire("W1", "BAT:+", "A:1"), wire("W2", "A:2", "B:1"), wire("W3", "B:2", "BAT:-")),
        "\"day\": {}");
  }

  @Test
  void tenPercentOfNominalIsTheLimit() {
    assertThat(divider(1000.0 / 9 - 0.5, "").findings()).as("just under 1.2 V").isEmpty();
    assertThat(divider(1000.0 / 9 + 0.5, "").messages()).hasSize(1);
    assertThat(divider(1000.0 / 9 + 0.5, "").messages().get(0))
        .startsWith("B.l sees 1.20")
        .endsWith("in state day, which does not want it; at most 1.2 V");
  }

  @Test
  void theWayThroughTheOtherLoadIsSpelledOut() {
    assertThat(divider(500, "").findings().get(0).details())
        .containsExactly("fed by BAT:+ -W1- A:1 -A.l- A:2 -W2- B:1");
  }

  @Test
  void freeAndInternalLoadsAreLeftOut() {
    assertThat(divider(500, ", \"use\": \"free\"").coverage().subjects()).isZero();
    assertThat(divider(500, ", \"use\": \"internal\"").coverage().subjects()).isZero();
  }

  @Test
  void electronicsStandFiveVolts() {
    String unit =
        "\"U\": {\"elements\": {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", \"ohms\":"
            + " %s}, \"s\": {\"kind\": \"signal\", \"pin\": \"3\", \"type\": \"digital\"}}}, "
            + load("A", "\"ohms\": 700, \"use\": \"free\"");
    String wires =
        String.join(
            ", ", wire("W1", "BAT:+", "A:1"), wire("W2", "A:2", "U:1"), wire("W3", "U:2", "BAT:-"));
    assertThat(judged(unit.formatted("499"), wires, "\"day\": {}").findings()).isEmpty();
    assertThat(judged(unit.formatted("501"), wires, "\"day\": {}").messages()).hasSize(1);
  }

  @Test
  void aCoilThatIsHeldThroughALampIsFoundAndOneThatWorksIsNot() {
    String relay =
        "\"K1\": {\"elements\": {\"coil\": {\"kind\": \"coil\", \"a\": \"86\", \"b\": \"85\","
            + " \"ohms\": 80, \"dropOutV\": 1.2}, \"contact\": {\"kind\": \"contact\", \"a\":"
            + " \"30\", \"b\": \"87\", \"coil\": \"coil\", \"rest\": \"open\"}}}";
    String lamp = load("LAMP", "\"ohms\": 20");
    String held =
        String.join(
            ", ",
            wire("W1", "BAT:+", "LAMP:1"),
            wire("W2", "LAMP:2", "K1:86"),
            wire("W3", "K1:85", "BAT:-"));
    Judged sneak = judged(relay + ", " + lamp, held, "\"day\": {}");
    assertThat(sneak.subjects()).containsExactlyInAnyOrder("devices/K1.coil", "devices/LAMP.l");
    String works =
        String.join(
            ", ",
            wire("W1", "BAT:+", "SW:1"),
            wire("W2", "SW:2", "K1:86"),
            wire("W3", "K1:85", "BAT:-"),
            wire("W4", "BAT:+", "K1:30"),
            wire("W5", "K1:87", "LAMP:1"),
            wire("W6", "LAMP:2", "BAT:-"));
    Judged working =
        judged(
            relay + ", " + lamp, works, "\"day\": {\"set\": {\"SW\": \"on\"}, \"on\": [\"LAMP\"]}");
    assertThat(working.findings()).isEmpty();
    Judged idle =
        judged(
            relay,
            String.join(", ", wire("W1", "BAT:+", "K1:86"), wire("W2", "K1:85", "BAT:-")),
            "\"day\": {}");
    assertThat(idle.subjects()).containsExactly("devices/K1.coil");
  }

  @Test
  void aSneakPathThroughASharedEarthIsFound() {
    String wires =
        String.join(
            ", ",
            wire("W1", "BAT:+", "A:1"),
            wire("W2", "A:2", "S1"),
            wire("W3", "S1", "B:2"),
            wire("W4", "B:1", "C:1"),
            wire("W5", "C:2", "BAT:-"));
    Judged judged =
        Judged.of(
            new LoadBackfed(),
            """
            {"format": 1,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}}, %s},
             "splices": {"S1": {}}, "wires": {%s}, "states": {"day": {"on": ["A"]}}}
            """
                .formatted(
                    String.join(
                        ", ",
                        load("A", "\"ohms\": 10"),
                        load("B", "\"ohms\": 10"),
                        load("C", "\"ohms\": 10")),
                    wires));
    assertThat(judged.subjects())
        .as("the earth of the splice is missing: the current goes back through B and C")
        .containsExactlyInAnyOrder("devices/B.l", "devices/C.l");
  }

  /** A relay that the ignition pulls, whose pump is joined or not, and fused or not. */
  private static Judged relay(String wires, String rating) {
    return Judged.of(
        new LoadBackfed(),
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"%s}}},
           "K": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80},
                              "no": {"kind": "contact", "a": "30", "b": "87", "coil": "coil"}}},
           "SW": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2"}}},
           "PUMP": {"elements": {"m": {"kind": "load", "a": "1", "b": "2", "amps": 5}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "FB:in"}, "W2": {"from": "BAT:+", "to": "K:86"},
                   "W3": {"from": "K:85", "to": "BAT:-"}, "W4": {"from": "FB:1", "to": "K:30"},
                   "W5": {"from": "PUMP:2", "to": "BAT:-"}%s},
         "states": {"on": {"on": ["PUMP"]}}}
        """
            .formatted(rating, wires));
  }

  @Test
  void aCoilWhosePumpLacksItsWireOrFuseIsNotTheFault() {
    String rated = ", \"ratingA\": 10";
    String wire = ", \"W6\": {\"from\": \"K:87\", \"to\": \"PUMP:1\"}";
    assertThat(relay(wire, rated).findings()).isEmpty();
    for (Judged judged : List.of(relay("", rated), relay(wire, ""))) {
      assertThat(judged.findings()).isEmpty();
      assertThat(judged.coverage().missing())
          .containsKey("its contacts lie between no source and no load, so that it moves nothing");
    }
    String open =
        ", \"W6\": {\"from\": \"K:87\", \"to\": \"SW:1\"}, \"W7\": {\"from\": \"SW:2\","
            + " \"to\": \"PUMP:1\"}";
    assertThat(relay(open, rated).messages())
        .as("a switch behind it that is open is a matter of the state")
        .containsExactly("K.coil sees 12 V in state on, which does not want it; at most 1.8 V");
  }
}
