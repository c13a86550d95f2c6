package org.tugtest.bench.rework;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;

/** The steps as a person reads them, and what is said beside them. */
class ReworkTest {
  private static Rework of(String is, String becomes, Order order) {
    Facts now = Judged.facts(Map.of(Judged.ROOT, is));
    Facts target = Judged.facts(Map.of(Judged.ROOT, becomes));
    return Rework.of(now, target, Matching.byId(now, target), order);
  }

  private static List<String> texts(Rework rework) {
    return rework.steps().stream().map(Step::text).toList();
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
