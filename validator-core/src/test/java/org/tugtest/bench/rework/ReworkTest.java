package org.tugtest.bench.rework;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;

class ReworkTest {
  private static Rework of(Loom is, Loom becomes, Order order) {
    Facts now = is.facts();
    Facts target = becomes.facts();
    return Rework.of(now, target, Matching.byId(now, target), order);
  }

  private static Rework of(String is, String becomes, Order order) {
    Facts now = Judged.facts(Map.of(Judged.ROOT, is));
    Facts target = Judged.facts(Map.of(Judged.ROOT, becomes));
    return Rework.of(now, target, Matching.byId(now, target), order);
  }

  private static List<String> texts(Rework rework) {
    return rework.steps().stream().map(Step::text).toList();
  }

  @ParameterizedTest
  @EnumSource(Order.class)
  void everyStepCanBeDoneAndTheLastOneEndsAtTheTarget(Order order) {
    Random random = new Random(41);
    int steps = 0;
    for (int round = 0; round < 2500; round++) {
      Loom is = Loom.random(random);
      Loom becomes = is.changed(random);
      Rework rework = of(is, becomes, order);
      Replay replay = new Replay(is, becomes);
      replay.play(rework.steps());
      replay.assertDone();
      assertThat(rework.open()).allMatch(line -> line.startsWith("not judged whether"));
      assertThat(replay.waits).isEqualTo(rework.parked());
      steps += rework.steps().size();
    }
    assertThat(steps).isGreaterThan(50_000);
  }

  @ParameterizedTest
  @EnumSource(Order.class)
  void equalLoomsGiveNoSteps(Order order) {
    Random random = new Random(3);
    for (int round = 0; round < 200; round++) {
      Loom loom = Loom.random(random);
      Rework rework = of(loom, loom, order);
      assertThat(rework.steps()).isEmpty();
      assertThat(rework.cautions()).isEmpty();
    }
  }

  /** Up to seven terminals change places: none fewer can wait, by trying every way. */
  @Test
  void asFewWaitAsCan() {
    Random random = new Random(17);
    int most = 0;
    for (int round = 0; round < 1500; round++) {
      List<String> seats =
          new ArrayList<>(
              List.of("A:1", "A:2", "A:3", "A:4", "A:5", "B:1", "B:2", "B:3", "B:7", "C:1"));
      int moves = 1 + random.nextInt(7);
      Collections.shuffle(seats, random);
      List<String> from = new ArrayList<>(seats.subList(0, moves));
      List<String> to =
          new ArrayList<>(random.nextBoolean() ? from : seats.subList(0, Math.min(10, moves + 2)));
      Collections.shuffle(to, random);
      Map<String, Loom.Wire> is = new TreeMap<>();
      Map<String, Loom.Wire> becomes = new TreeMap<>();
      for (int i = 0; i < moves; i++) {
        is.put("W" + i, new Loom.Wire(from.get(i), "S1", "RD"));
        becomes.put("W" + i, new Loom.Wire(to.get(i), "S1", "RD"));
      }
      Map<String, String> housings = Map.of("A", "small", "B", "mixed", "C", "wide");
      Map<String, Boolean> blanks = Map.of("A", false, "B", true, "C", false);
      Loom one = new Loom(is, new TreeMap<>(housings), blanks);
      Loom other = new Loom(becomes, new TreeMap<>(housings), blanks);
      Rework rework = of(one, other, Order.FEWEST_PARKED);
      Replay replay = new Replay(one, other);
      replay.play(rework.steps());
      replay.assertDone();
      int least = leastWaiting(from, to.subList(0, moves));
      assertThat(rework.parked()).as("%s -> %s", from, to).isEqualTo(least);
      most = Math.max(most, least);
    }
    assertThat(most).isEqualTo(3);
  }

  /** 0: in its old seat, 1: waiting, 2: in its new seat; a search by how many wait. */
  private static int leastWaiting(List<String> from, List<String> to) {
    int n = from.size();
    Map<String, Integer> cost = new HashMap<>();
    Deque<int[]> open = new ArrayDeque<>();
    int[] start = new int[n];
    cost.put(Arrays.toString(start), 0);
    open.add(start);
    int best = Integer.MAX_VALUE;
    while (!open.isEmpty()) {
      int[] state = open.remove();
      int sum = cost.get(Arrays.toString(state));
      boolean done = true;
      for (int i = 0; i < n; i++) {
        if (state[i] == 2 || from.get(i).equals(to.get(i))) {
          continue;
        }
        done = false;
        boolean free = true;
        for (int k = 0; k < n; k++) {
          boolean there = state[k] == 0 && from.get(k).equals(to.get(i));
          free &= k == i || !there;
        }
        if (free) {
          push(state, i, 2, sum, cost, open);
        }
        if (state[i] == 0) {
          push(state, i, 1, sum + 1, cost, open);
        }
      }
      best = done ? Math.min(best, sum) : best;
    }
    return best;
  }

  private static void push(
      int[] state, int i, int value, int sum, Map<String, Integer> cost, Deque<int[]> open) {
    int[] next = state.clone();
    next[i] = value;
    if (sum < cost.getOrDefault(Arrays.toString(next), Integer.MAX_VALUE)) {
      cost.put(Arrays.toString(next), sum);
      open.add(next);
    }
  }

  private static final String PLUG =
      """
      "parts": {"housings": {"h": {"side": "socket", "family": "t1.5", "rows": [["1", "2", "3"]], "secondaryLock": true, "terminals": ["t15"]}},
                "terminals": {"t15": {"family": "t1.5", "side": "socket", "areaMinMm2": 0.2, "areaMaxMm2": 2}}},
      "connectors": {"X1": {"housing": "h", "blanked": %s}},
      """;

  private static String swap(String blanked, String first, String second) {
    return "{\"format\": 1, "
        + PLUG.formatted(blanked)
        + """
        "splices": {"S1": {}},
        "wires": {"W1": {"from": "%s", "to": "S1", "colour": "RD", "areaMm2": 0.5}, "W2": {"from": "%s", "to": "S1", "colour": "BU", "areaMm2": 0.5}}}
        """
            .formatted(first, second);
  }

  @Test
  void twoThatChangePlacesArePulledTaggedAndInsertedInFaceOrder() {
    Rework rework =
        of(swap("false", "X1:1", "X1:2"), swap("false", "X1:2", "X1:1"), Order.BY_CONNECTOR);
    assertThat(texts(rework))
        .containsExactly(
            "X1: unplug it; open its secondary lock",
            "X1:1: release W1 (RD, 0.5 mm²); tag it X1:2",
            "X1:2: release W2 (BU, 0.5 mm²); tag it X1:1",
            "X1:1: insert W2 (BU, 0.5 mm²) until it clicks; tug lightly",
            "X1:2: insert W1 (RD, 0.5 mm²) until it clicks; tug lightly",
            "X1: close its secondary lock; if it does not close, a terminal is not home");
  }

  @Test
  void inTheOtherOrderOneWaitsInTheFreeCavityWhoseBlankIsTakenOutAndPutBack() {
    Rework rework =
        of(swap("true", "X1:1", "X1:2"), swap("true", "X1:2", "X1:1"), Order.FEWEST_PARKED);
    assertThat(rework.parked()).isEqualTo(1);
    assertThat(texts(rework))
        .containsExactly(
            "X1: unplug it; open its secondary lock",
            "X1:2: release W2 (BU, 0.5 mm²); tag it X1:1",
            "X1:3: take the blank out",
            "put W2 into X1:3, which is free, until X1:1 is",
            "X1:1: release W1 (RD, 0.5 mm²); tag it X1:2",
            "X1:2: insert W1 (RD, 0.5 mm²) until it clicks; tug lightly",
            "X1:3: release W2 (BU, 0.5 mm²), which waits there; tag it X1:1",
            "X1:1: insert W2 (BU, 0.5 mm²) until it clicks; tug lightly",
            "X1:3: plug it with a blank",
            "X1: close its secondary lock; if it does not close, a terminal is not home");
  }

  @Test
  void twoEndsForOneCavityAreNotPutThere() {
    Rework rework =
        of(swap("false", "X1:1", "X1:2"), swap("false", "X1:1", "X1:1"), Order.BY_CONNECTOR);
    assertThat(rework.open())
        .containsExactly("X1:1 shall hold W1 and W2; it takes one terminal: only W1 is put there");
  }

  private static final String PARTS =
      """
      "parts": {
        "housings": {
          "a": {"side": "socket", "family": "t1.5", "rows": [["1", "2"]], "terminals": ["t15"]},
          "b": {"side": "socket", "family": "t2.8", "rows": [["1", "2"]], "terminals": ["t28"]},
          "c": {"side": "socket", "family": "t1.5", "rows": [["1", "2"]], "sealed": true, "terminals": ["t15"], "seals": ["s15"]}},
        "terminals": {"t15": {"family": "t1.5", "side": "socket", "areaMinMm2": 0.2, "areaMaxMm2": 2},
                      "t28": {"family": "t2.8", "side": "socket", "areaMinMm2": 0.2, "areaMaxMm2": 2}},
        "seals": {"s15": {"family": "t1.5", "insulationMinMm": 1, "insulationMaxMm": 3}},
        "coverings": {"boot": {"kind": "heat-shrink"}, "shrink": {"kind": "heat-shrink"}}},
      "connectors": {"XA": {"housing": "a"}, "XB": {"housing": "b", "boot": "boot", "serviceMm": 20}, "XC": {"housing": "c"}},
      """;

  private static String wires(String lines) {
    return "{\"format\": 1, "
        + PARTS
        + "\"splices\": {\"S1\": {}, \"S2\": {\"coverings\": [\"shrink\"]}}, \"wires\": {"
        + lines
        + "}}";
  }

  private static String wire(String id, String from, String to, String more) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": 0.5%s}"
        .formatted(id, from, to, more);
  }

  private static Rework moved(String now, String wanted) {
    return of(wires(now), wires(wanted), Order.BY_CONNECTOR);
  }

  private static List<String> remarks(Rework rework) {
    return rework.steps().stream().flatMap(step -> step.remarks().stream()).toList();
  }

  @Test
  void terminalOfAnotherFamilyIsANewCrimpAndWhatCannotPassItGoesOnFirst() {
    Rework rework = moved(wire("W1", "XA:1", "S1", ""), wire("W1", "XB:2", "S1", ""));
    assertThat(texts(rework))
        .containsExactly(
            "XA: unplug it",
            "XA:1: release W1 (0.5 mm²); tag it XB:2",
            "XA: see that all terminals stand level across the face",
            "W1: cut terminal t15 off",
            "W1: slide on boot boot before the terminal",
            "W1 (0.5 mm²): crimp t28 on, for XB:2",
            "XB: unplug it",
            "XB:2: insert W1 (0.5 mm²) until it clicks; tug lightly",
            "XB: see that all terminals stand level across the face");
    assertThat(rework.open())
        .containsExactly(
            "not judged whether it reaches, since its present or its wanted length is not told:"
                + " W1");
  }

  @Test
  void sealDoesNotPassATerminalSoItIsANewCrimpToo() {
    assertThat(texts(moved(wire("W1", "XA:1", "S1", ""), wire("W1", "XC:1", "S1", ""))))
        .contains("W1: cut terminal t15 off", "W1: slide on seal s15 before the terminal");
    assertThat(texts(moved(wire("W1", "XC:1", "S1", ""), wire("W1", "XA:1", "S1", ""))))
        .noneMatch(text -> text.contains("cut"));
  }

  /** A new crimp takes 25 mm; XB has 20 mm to spare. */
  @Test
  void lengthIsJudgedBelowAtAndAboveWhatIsLeft() {
    String now = wire("W1", "XA:1", "S1", ", \"cutMm\": 1000");
    assertThat(remarks(moved(now, wire("W1", "XB:1", "S1", ", \"cutMm\": 975"))))
        .containsExactly("W1 still reaches: 975 mm left, 975 mm needed");
    assertThat(remarks(moved(now, wire("W1", "XB:1", "S1", ", \"cutMm\": 995"))))
        .containsExactly(
            "W1 reaches by its spare at the ends: 975 mm left, 995 mm planned, spare 20 mm");
    assertThat(remarks(moved(now, wire("W1", "XB:1", "S1", ", \"cutMm\": 996"))))
        .containsExactly(
            "W1 does not reach: 975 mm left, 996 mm planned; splice a piece in, or fit a new wire");
    assertThat(remarks(moved(now, wire("W1", "XA:2", "S1", ", \"cutMm\": 1000")))).isEmpty();
    assertThat(remarks(moved(now, wire("W1", "XA:2", "S1", ", \"cutMm\": 1001"))))
        .containsExactly(
            "W1 does not reach: 1000 mm left, 1001 mm planned; splice a piece in, or fit a new"
                + " wire");
  }

  @Test
  void bothEndsNewlyCrimpedTakeTwice() {
    assertThat(
            remarks(
                moved(
                    wire("W1", "XA:1", "XA:2", ", \"cutMm\": 1000"),
                    wire("W1", "XB:1", "XB:2", ", \"cutMm\": 950"))))
        .containsExactly(
            "W1 still reaches: 950 mm left, 950 mm needed",
            "W1 still reaches: 950 mm left, 950 mm needed");
  }

  @Test
  void loopThatGoesMayBeAnInterlockAndOneThatMovesElsewhereIsNone() {
    String loop = wire("W1", "XA:1", "XA:2", "");
    assertThat(moved(loop, wire("W2", "XB:1", "S1", "")).cautions())
        .containsExactly(
            "W1 joins XA:1 and XA:2 and nothing else. Such a loop may be an interlock: find out"
                + " what it does before it goes");
    assertThat(moved(loop, wire("W9", "XA:2", "XA:1", "")).cautions()).isEmpty();
    assertThat(moved(wire("W1", "XA:1", "XB:1", ""), "").cautions()).isEmpty();
  }

  /** A bridge in a blanking plug: two wires of the loom, a plug, a wire across. */
  @Test
  void loopThroughASparePlugIsOneOfTheDevice() {
    String car =
        """
        {"format": 1, "parts": {"housings": {"s": {"side": "socket", "rows": [["1", "2"]]}, "p": {"side": "pin", "rows": [["1", "2"]]}}},
         "devices": {"ECU": {"ports": {"A": {"housing": "p", "pins": {"1": "41", "2": "42"}}}}},
         "connectors": {"XE": {"housing": "s", "mates": "ECU"}, "X7": {"housing": "s", "mates": "X8"}, "X8": {"housing": "p"}},
         "wires": {"W1": {"from": "XE:1", "to": "X7:1"}, "W2": {"from": "XE:2", "to": "X7:2"}, "W3": {"from": "X8:1", "to": "X8:2"}}}
        """;
    Rework rework =
        of(
            car,
            car.replace(", \"W3\": {\"from\": \"X8:1\", \"to\": \"X8:2\"}", ""),
            Order.BY_CONNECTOR);
    assertThat(rework.cautions()).hasSize(1);
    assertThat(rework.cautions().get(0))
        .startsWith("W1, W2 and W3 join ECU:41 and ECU:42 and nothing");
  }

  @Test
  void otherColourOrSizeIsAnotherWireAndAnotherLabelIsALabel() {
    String red = wire("W1", "XA:1", "S1", ", \"colour\": \"RD\"");
    assertThat(texts(moved(red, red.replace("RD", "BU"))))
        .contains(
            "draw W1 (old) (RD, 0.5 mm²) out of the loom",
            "W1: measure the way, cut 0.5 mm² BU, lay it in");
    assertThat(texts(moved(red, red.replace("RD\"", "BU\", \"laidInPlace\": true"))))
        .contains("W1: lay 0.5 mm² BU in along its way, and cut it there");
    assertThat(texts(moved(red, red.replace("0.5", "0.75"))))
        .contains("draw W1 (old) (RD, 0.5 mm²) out of the loom");
    assertThat(texts(moved(red, wire("W1", "XA:1", "S1", "")))).isEmpty();
    assertThat(texts(moved(red, red.replace("RD\"", "RD\", \"label\": \"feed\""))))
        .containsExactly(
            "W1: label it \"feed\" at both ends; a sleeve does not pass the terminals, take one"
                + " that wraps round");
  }

  @Test
  void splicesAreMadeWhenTheyGainAndKeptWhenTheyLose() {
    String both = wire("W1", "XA:1", "S2", "") + ", " + wire("W2", "XA:2", "S2", "");
    String three = both + ", " + wire("W3", "XB:1", "S2", "");
    assertThat(texts(moved(both, three)))
        .containsSubsequence(
            "S2: cut W1 (0.5 mm²) out, to be joined again",
            "S2: cut W2 (0.5 mm²) out, to be joined again",
            "W1: slide on shrink for S2 first",
            "S2: join W1, W2 and W3");
    assertThat(texts(moved(three, both)))
        .containsExactly(
            "S2: cut W3 (0.5 mm²) out; tag it OUT",
            "XB: unplug it",
            "XB:1: release W3 (0.5 mm²); tag it OUT",
            "XB: see that all terminals stand level across the face",
            "draw W3 (0.5 mm²) out of the loom");
  }

  @Test
  void renamedWireAndConnectorStayWhatTheyAre() {
    Facts now = Judged.facts(Map.of(Judged.ROOT, wires(wire("W1", "XA:1", "S1", ""))));
    Facts target =
        Judged.facts(
            Map.of(
                Judged.ROOT,
                wires(wire("W7", "S1", "XZ:1", ""))
                    .replace("\"XA\": {", "\"XZ\": {\"label\": \"\", ")));
    Matching matching =
        new Matching(
            Map.of("W1", "W7"),
            Map.of("XA", "XZ", "XB", "XB", "XC", "XC"),
            Map.of("S1", "S1", "S2", "S2"));
    Rework rework = Rework.of(now, target, matching, Order.BY_CONNECTOR);
    assertThat(rework.steps()).extracting(Step::kind).containsExactly(Step.Kind.LABEL);
  }

  @Test
  void connectorThatGoesIsEmptiedAndTakenAwayAndOneThatComesIsFitted() {
    String now = wires(wire("W1", "XA:1", "S1", ""));
    String wanted =
        wires(wire("W1", "XD:1", "S1", "")).replace("\"XA\": {", "\"XD\": {\"blanked\": true, ");
    assertThat(texts(of(now, wanted, Order.FEWEST_PARKED)))
        .containsExactly(
            "XA: unplug it",
            "XA:1: release W1 (0.5 mm²); tag it XD:1",
            "XA is empty: take it away; keep it bagged with its list",
            "take housing a for XD",
            "XD:1: insert W1 (0.5 mm²) until it clicks; tug lightly",
            "XD:2: plug it with a blank",
            "XD: label it \"XD\"",
            "XD: see that all terminals stand level across the face");
  }

  @Test
  void openEndsAreSaid() {
    assertThat(moved("", "\"W1\": {\"from\": \"XA:1\", \"areaMm2\": 0.5}").open())
        .containsExactly("W1 has no \"to\": loose end");
    assertThat(moved("", wire("W1", "XA:1", "XQ:1", "")).open())
        .containsExactly(
            "W1 shall end on XQ:1, which is no place in the loom that is wanted: the end stays"
                + " loose, tagged");
  }

  @Test
  void manyMovesAreWrittenFast() {
    StringBuilder now = new StringBuilder();
    StringBuilder wanted = new StringBuilder();
    int n = 6000;
    for (int i = 0; i < n; i++) {
      String separator = i == 0 ? "" : ", ";
      now.append(separator).append(wire("W" + i, "X" + i % 50 + ":" + i, "S1", ""));
      int next = (i + 50) % n;
      wanted.append(separator).append(wire("W" + i, "X" + next % 50 + ":" + next, "S1", ""));
    }
    String head = "{\"format\": 1, \"sketch\": true, \"splices\": {\"S1\": {}}, \"wires\": {";
    Rework rework = of(head + now + "}}", head + wanted + "}}", Order.FEWEST_PARKED);
    assertThat(rework.parked()).isEqualTo(50);
  }

  @Test
  void housingOrTerminalOfAnotherNameAloneIsTheSame() {
    String now = wires(wire("W1", "XA:1", "S1", ""));
    String renamed = now.replace("\"a\"", "\"plug-a\"").replace("\"t15\"", "\"terminal-15\"");
    assertThat(of(now, renamed, Order.BY_CONNECTOR).steps()).isEmpty();
    String keyed = now.replace("\"a\": {", "\"a\": {\"keying\": \"B\", ");
    assertThat(texts(of(now, keyed, Order.BY_CONNECTOR)))
        .contains("XA:1 of the old housing: release W1 (0.5 mm²); tag it XA:1");
  }
}
