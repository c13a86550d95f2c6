package org.tugtest.bench.retest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.bench.rework.Matching;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;

class RetestTest {
  /** A fuse box, a relay, two lamps, a sender; six wires in a plug of two rows. */
  private static final String CAR =
      """
      {"format": 1,
       "parts": {"housings": {"h": {"side": "socket", "rows": [["1", "2", "3"], ["4", "5", "6"]]}}},
       "devices": {
        "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
        "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}, "f2": {"kind": "fuse", "a": "in", "b": "2", "ratingA": 10}}},
        "K": {"elements": {"c": {"kind": "coil", "a": "86", "b": "85", "ohms": 80}, "s": {"kind": "contact", "a": "30", "b": "87", "coil": "c"}}},
        "L1": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 21}}},
        "L2": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 21}}},
        "ECU": {"pins": {"t": {}}, "elements": {"temp": {"kind": "signal", "pin": "t", "type": "analog"}}},
        "SND": {"pins": {"t": {}}}},
       "connectors": {"X1": {"housing": "h", "parked": "open"}},
       "wires": {
        "W1": {"from": "BAT:+", "to": "FB:in"},
        "W2": {"from": "FB:1", "to": "K:30"}, "W3": {"from": "FB:2", "to": "K:86"},
        "W4": {"from": "K:85", "to": "BAT:-"},
        "W5": {"from": "K:87", "to": "L1:1"}, "W6": {"from": "L1:2", "to": "BAT:-"},
        "W7": {"from": "FB:2", "to": "L2:1"}, "W8": {"from": "L2:2", "to": "BAT:-"},
        "W9": {"from": "ECU:t", "to": "SND:t"},
        "A1": {"from": "X1:1", "to": "K:30"}, "A2": {"from": "X1:2", "to": "K:85"}, "A6": {"from": "X1:6", "to": "L2:2"}},
       "states": {"both": {"on": ["L1", "L2.bulb"]}, "dark": {}}}
      """;

  private static Facts facts(String json) {
    return Judged.facts(Map.of(Judged.ROOT, json));
  }

  private static Retest after(String from, String to) {
    Facts before = facts(CAR);
    String changed = CAR.replace(from, to);
    assertThat(changed).isNotEqualTo(CAR);
    Facts after = facts(changed);
    return Retest.of(before, after, Matching.byId(before, after));
  }

  private static List<String> joined(Retest retest) {
    return retest.looms().stream()
        .flatMap(loom -> loom.joined().stream())
        .map(p -> p.number() + " " + p.from() + " " + p.to() + " " + p.wires())
        .toList();
  }

  private static List<String> apart(Retest retest) {
    return retest.looms().stream()
        .flatMap(loom -> loom.apart().stream())
        .map(a -> a.from() + " " + a.to() + " " + a.why())
        .toList();
  }

  private static List<String> functions(Retest retest) {
    return retest.functions().stream()
        .map(f -> f.element() + " " + f.why() + " " + f.states())
        .toList();
  }

  @Test
  void nothingChangedNothingToTest() {
    Retest retest = Retest.of(facts(CAR), facts(CAR), Matching.byId(facts(CAR), facts(CAR)));
    assertThat(retest.looms()).isEmpty();
    assertThat(retest.functions()).isEmpty();
  }

  @Test
  void movedEndIsMeasuredWithItsNewNeighbours() {
    Retest retest = after("\"X1:6\"", "\"X1:5\"");
    assertThat(joined(retest)).containsExactly("1 L2:2 X1:5 [A6]");
    assertThat(apart(retest)).containsExactly("X1:1 X1:5 side by side in X1");
    assertThat(functions(retest)).isEmpty();
  }

  @Test
  void neighbourOfTheSameNetIsNotHeldApart() {
    assertThat(apart(after("\"X1:6\", \"to\": \"L2:2\"", "\"X1:5\", \"to\": \"K:85\"")))
        .containsExactly("X1:1 X1:5 side by side in X1");
  }

  @Test
  void functionsBehindAWireAreTried() {
    assertThat(
            functions(
                after("\"to\": \"L2:1\"", "\"to\": \"L2:1\", \"areaMm2\": 2, \"colour\": \"RD\"")))
        .as("size and colour come to be known of a wire that stays")
        .isEmpty();
    assertThat(functions(after("\"W7\": {", "\"W70\": {"))).containsExactly("L2.bulb [W70] [both]");
    assertThat(functions(after("\"W1\": {", "\"W10\": {")))
        .containsExactly("K.c [W10] []", "L1.bulb [W10] [both]", "L2.bulb [W10] [both]");
  }

  @Test
  void whatACoilSwitchesIsTriedToo() {
    assertThat(functions(after("\"W3\": {", "\"W30\": {")))
        .containsExactly("K.c [W30] []", "L1.bulb [K.c] [both]");
  }

  @Test
  void signalsOnATouchedNetAreTried() {
    assertThat(functions(after("\"W9\": {", "\"W90\": {"))).containsExactly("ECU.temp [W90] []");
  }

  @Test
  void whatAWireJoinedThatIsGoneIsHeldApart() {
    assertThat(apart(after(", \"A6\": {\"from\": \"X1:6\", \"to\": \"L2:2\"}", ""))).isEmpty();
    Retest retest =
        after(
            "\"W9\": {\"from\": \"ECU:t\", \"to\": \"SND:t\"}",
            "\"W9\": {\"from\": \"ECU:t\", \"to\": \"K:87\"}, \"Z\": {\"from\": \"SND:t\", \"to\":"
                + " \"L1:2\"}");
    assertThat(joined(retest)).containsExactly("1 L1:2 SND:t [Z]", "2 ECU:t K:87 [W9]");
    String cut =
        CAR.replace(
            "\"W9\": {\"from\": \"ECU:t\", \"to\": \"SND:t\"}",
            "\"Y\": {\"from\": \"ECU:t\", \"to\": \"K:87\"}, \"Z\": {\"from\": \"SND:t\", \"to\":"
                + " \"L1:2\"}");
    assertThat(apart(Retest.of(facts(CAR), facts(cut), Matching.byId(facts(CAR), facts(cut)))))
        .containsExactly("ECU:t SND:t were joined by W9, which is gone");
  }

  @Test
  void touchedWireWhoseBreakIsNotShownIsSaid() {
    Retest retest =
        after("\"W8\": {", "\"W8b\": {\"from\": \"L2:2\", \"to\": \"BAT:-\"}, \"W8\": {");
    assertThat(retest.looms().get(0).blind())
        .extracting(blind -> blind.what().id() + ": " + blind.why())
        .containsExactly("W8b: it lies in parallel with W8");
  }
}
