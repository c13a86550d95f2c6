package org.tugtest.compare.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.check.RuleCatalog;
import org.tugtest.compare.Compared;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.change.Change;

class ThreeWayTest {
  private static final String BASE =
      """
      {"format": 1,
       "parts": {
        "wires": {"w1": {"areaMm2": 1.0, "maxC": 125}},
        "fuses": {"f10": {"ratingA": 10, "style": "blade-mini"}},
        "housings": {
         "skt": {"side": "socket", "rows": [["1", "2", "3", "4"]], "matesWith": ["pin"]},
         "pin": {"side": "pin", "rows": [["4", "3", "2", "1"]]}}},
       "devices": {
        "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
        "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}}},
        "A": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 3}}},
        "B": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 3}}},
        "C": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 3}}},
        "BOX": {"ports": {"p": {"housing": "pin"}}, "elements": {
          "x": {"kind": "load", "a": "1", "b": "2", "amps": 1},
          "y": {"kind": "load", "a": "3", "b": "4", "amps": 1}}}},
       "fitted": {"FB.f1": "f10"},
       "connectors": {"X1": {"housing": "skt", "mates": "BOX"}},
       "splices": {"S1": {}, "S2": {}},
       "wires": {
        "W0": {"from": "BAT:+", "to": "FB:in", "part": "w1", "cutMm": 100},
        "W1": {"from": "FB:1", "to": "S1", "part": "w1", "cutMm": 100},
        "W2": {"from": "S2", "to": "BAT:-", "part": "w1", "cutMm": 100},
        "A1": {"from": "S1", "to": "A:1", "part": "w1", "cutMm": 100},
        "A2": {"from": "S2", "to": "A:2", "part": "w1", "cutMm": 100}}}
      """;

  private static String wires(String... wires) {
    return BASE.replace(
        "\"W0\"", String.join(", ", wires) + (wires.length == 0 ? "" : ", ") + "\"W0\"");
  }

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"part\": \"w1\", \"cutMm\": 100}"
        .formatted(id, from, to);
  }

  private static ThreeWay merged(String ours, String theirs, String merge) {
    return ThreeWay.of(
        Compared.snapshot("base", BASE),
        Compared.snapshot("ours", ours),
        Compared.snapshot("theirs", theirs),
        Compared.snapshot("merge", merge),
        RuleCatalog.standard(),
        400);
  }

  private static Meeting only(ThreeWay threeWay, String rule) {
    return threeWay.meetings().stream()
        .filter(meeting -> meeting.finding().rule().equals(rule))
        .findFirst()
        .orElseThrow(() -> new AssertionError(threeWay.meetings()));
  }

  private static List<String> sentences(List<Change> changes) {
    return changes.stream().map(Change::sentence).toList();
  }

  /** Git merges these without a conflict: each adds a line of its own. */
  @Test
  void twoWiresMeetInOneCavity() {
    String p1 = wire("P1", "S1", "X1:1");
    String q1 = wire("Q1", "S2", "X1:1");
    String ours = wires(p1, wire("P2", "S1", "B:1"), wire("P3", "S2", "B:2"));
    String theirs = wires(q1, wire("Q2", "S2", "X1:2"));
    Meeting meeting =
        only(
            merged(
                ours,
                theirs,
                wires(
                    p1,
                    wire("P2", "S1", "B:1"),
                    wire("P3", "S2", "B:2"),
                    q1,
                    wire("Q2", "S2", "X1:2"))),
            "cavity-doubled");
    assertThat(sentences(meeting.ours()))
        .containsExactly("Wire P1 from S1 to X1:1 (1 mm2) is new.");
    assertThat(sentences(meeting.theirs()))
        .containsExactly("Wire Q1 from S2 to X1:1 (1 mm2) is new.");
    assertThat(meeting.where()).isEqualTo("cavity X1:1");
    assertThat(meeting.sentence()).endsWith("They meet at cavity X1:1.");
  }

  @Test
  void twoLoadsMeetInOneFuse() {
    String[] mine = {wire("P1", "S1", "B:1"), wire("P2", "S2", "B:2")};
    String[] other = {wire("Q1", "S1", "C:1"), wire("Q2", "S2", "C:2")};
    Meeting meeting =
        only(
            merged(wires(mine), wires(other), wires(mine[0], mine[1], other[0], other[1])),
            "fuse-near-rating");
    assertThat(sentences(meeting.ours())).allMatch(sentence -> sentence.contains("Wire P"));
    assertThat(sentences(meeting.theirs())).allMatch(sentence -> sentence.contains("Wire Q"));
    assertThat(meeting.ours()).isNotEmpty();
    assertThat(meeting.theirs()).isNotEmpty();
    assertThat(meeting.where()).isEqualTo("fuse FB.f1");
  }

  @Test
  void whatAParentHasAlreadyIsNoMeeting() {
    String doubled = wires(wire("P1", "S1", "X1:1"), wire("P2", "S2", "X1:1"));
    assertThat(merged(doubled, wires(wire("Q1", "S2", "B:2")), doubled).meetings())
        .noneMatch(meeting -> meeting.finding().rule().equals("cavity-doubled"));
  }

  /** Ours takes the connector away, theirs puts a wire into it. */
  @Test
  void removalMeetsUse() {
    String ours = BASE.replace("\"X1\": {\"housing\": \"skt\", \"mates\": \"BOX\"}", "");
    String theirs = wires(wire("Q1", "S1", "X1:1"), wire("Q2", "S2", "X1:2"));
    String merge = theirs.replace("\"X1\": {\"housing\": \"skt\", \"mates\": \"BOX\"}", "");
    Meeting meeting = only(merged(ours, theirs, merge), "reference-unresolved");
    assertThat(sentences(meeting.ours())).containsExactly("Connector X1 (skt), on BOX, is gone.");
    assertThat(sentences(meeting.theirs())).isNotEmpty();
    assertThat(meeting.where()).isEqualTo("connector X1");
  }

  @Test
  void whatTheMergeItselfBringsIsSaid() {
    String merge = wires(wire("P1", "S1", "X1:1"), wire("P2", "S2", "X1:1"));
    Meeting meeting = only(merged(wires(wire("P1", "S1", "X1:1")), BASE, merge), "cavity-doubled");
    assertThat(meeting.ours()).isEmpty();
    assertThat(meeting.sentence()).startsWith("In the merge alone, and not by what either side");
  }

  @Test
  void modelMergeTakesBoth() {
    Comparison ours = Compared.json(BASE, wires(wire("P1", "S1", "X1:1"))).comparison();
    Comparison theirs =
        Compared.json(
                BASE,
                BASE.replace(
                    "\"A:1\", \"part\": \"w1\", \"cutMm\": 100",
                    "\"A:1\", \"part\": \"w1\", \"cutMm\": 700"))
            .comparison();
    ModelMerge merge =
        ModelMerge.of(ours.before().harness(), ours.after().harness(), theirs.after().harness());
    assertThat(merge.conflicts()).isEmpty();
    assertThat(merge.harness().wires()).containsKey("P1");
    assertThat(merge.harness().wires().get("A1").cutMm()).isEqualTo(700);
    assertThat(merge.harness())
        .isEqualTo(
            ModelMerge.of(ours.before().harness(), theirs.after().harness(), ours.after().harness())
                .harness());
  }

  @Test
  void modelMergeNamesConflicts() {
    String a1 = "\"A:1\", \"part\": \"w1\", \"cutMm\": 100";
    Comparison ours = Compared.json(BASE, BASE.replace(a1, a1.replace("100", "200"))).comparison();
    Comparison theirs =
        Compared.json(BASE, BASE.replace(a1, a1.replace("100", "300"))).comparison();
    ModelMerge merge =
        ModelMerge.of(ours.before().harness(), ours.after().harness(), theirs.after().harness());
    assertThat(merge.conflicts()).containsExactly("wires/A1 cutMm");
    assertThat(merge.harness().wires().get("A1").cutMm()).isEqualTo(200);
    Comparison removed =
        Compared.json(
                BASE,
                BASE.replace(
                    "\"A1\": {\"from\": \"S1\", \"to\": \"A:1\", \"part\": \"w1\", \"cutMm\":"
                        + " 100},",
                    ""))
            .comparison();
    ModelMerge kept =
        ModelMerge.of(ours.before().harness(), removed.after().harness(), ours.after().harness());
    assertThat(kept.conflicts()).containsExactly("wires/A1 cutMm");
    assertThat(kept.harness().wires().get("A1").cutMm()).isEqualTo(200);
  }
}
