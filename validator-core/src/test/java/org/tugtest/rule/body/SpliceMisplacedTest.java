package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class SpliceMisplacedTest {
  /** Splices on s1 (1000 mm, a to b), each joining a wire from A and one to B. */
  private static Judged judged(String fields, String... splices) {
    StringBuilder wires = new StringBuilder(Loom.wire("W", "A:w", "B:w", "w3"));
    StringBuilder map = new StringBuilder();
    for (int i = 0; i < splices.length; i++) {
      String id = "S" + (i + 1);
      map.append(i == 0 ? "" : ", ").append("\"" + id + "\": {" + splices[i] + "}");
      wires
          .append(", \"V%d\": {\"from\": \"A:%d\", \"to\": \"%s\"}".formatted(i, i, id))
          .append(", \"U%d\": {\"from\": \"%s\", \"to\": \"B:%d\"}".formatted(i, id, i));
    }
    return new Loom(Loom.segment("s1", "a", "b", 1000, fields), wires.toString(), "")
        .with("\"splices\": {" + map + "}")
        .judged(new SpliceMisplaced());
  }

  private static String on(double offset) {
    return "\"on\": \"s1\", \"offsetMm\": " + offset;
  }

  @Test
  void fortyMillimetresFromABreakoutAreEnough() {
    assertThat(judged("", on(40)).messages()).isEmpty();
    assertThat(judged("", on(960)).messages()).isEmpty();
    Judged near = judged("", on(39.9));
    assertThat(near.messages())
        .containsExactly(
            "splice S1 is 39.9 mm from the breakout a; at least 40 mm are good practice");
    assertThat(near.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(judged("", on(1000)).messages())
        .containsExactly("splice S1 sits at the breakout b; at least 40 mm are good practice");
    assertThat(judged("", "\"at\": \"a\"").messages()).hasSize(1);
  }

  @Test
  void aNodeThatOnlyPassesTheLoomOnIsNoBreakout() {
    Loom loom =
        new Loom(
            Loom.segment("s1", "a", "x", 500, ""),
            Loom.wire("W1", "A:1", "S1", "w3") + ", " + Loom.wire("W2", "S1", "B:1", "w3"),
            ", \"splices\": {\"S1\": {\"at\": \"x\"}}");
    assertThat(
            loom.and(Loom.segment("s2", "x", "b", 500, ""))
                .judged(new SpliceMisplaced())
                .messages())
        .isEmpty();
    // a branch that a wire takes makes it one, even a little way on
    Loom branched =
        new Loom(
                Loom.segment("s1", "a", "x", 500, ""),
                Loom.wire("W1", "A:1", "S1", "w3")
                    + ", "
                    + Loom.wire("W2", "S1", "B:1", "w3")
                    + ", "
                    + Loom.wire("W3", "A:3", "C:3", "w3"),
                ", \"splices\": {\"S1\": {\"at\": \"x\"}}")
            .and(Loom.segment("s2", "x", "y", 39, ""))
            .and(Loom.segment("s3", "y", "b", 500, ""))
            .and(Loom.segment("s4", "y", "c", 500, ""));
    assertThat(branched.judged(new SpliceMisplaced()).messages())
        .containsExactly(
            "splice S1 is 39 mm from the breakout y; at least 40 mm are good practice");
  }

  @Test
  void thirtyMillimetresBetweenSplicesAreEnough() {
    assertThat(judged("", on(400), on(430)).messages()).isEmpty();
    Judged near = judged("", on(400), on(429.9));
    assertThat(near.messages())
        .containsExactly(
            "splices S1 and S2 sit within 29.9 mm of each other; at least 30 mm from middle to"
                + " middle are good practice");
    assertThat(near.coverage().judged()).isEqualTo(2);
    assertThat(judged("", on(400), on(400)).messages().get(0))
        .startsWith("splices S1 and S2 sit on one spot");
  }

  @Test
  void manyOnOneSpotAreOneFinding() {
    Judged near = judged("", on(400), on(420), on(440), on(600), on(625));
    assertThat(near.messages())
        .containsExactly(
            "splices S1, S2 and S3 sit within 20 mm of each other; at least 30 mm from middle to"
                + " middle are good practice",
            "splices S4 and S5 sit within 25 mm of each other; at least 30 mm from middle to"
                + " middle are good practice");
    assertThat(near.coverage().judged()).isEqualTo(5);
  }

  @Test
  void splicesOnBothSidesOfANodeAreNeighbours() {
    Loom loom =
        new Loom(
                Loom.segment("s1", "a", "x", 500, ""),
                Loom.wire("W1", "A:1", "S1", "w3")
                    + ", "
                    + Loom.wire("W2", "S1", "B:1", "w3")
                    + ", "
                    + Loom.wire("W3", "A:3", "S2", "w3")
                    + ", "
                    + Loom.wire("W4", "S2", "B:4", "w3"),
                ", \"splices\": {\"S1\": {\"on\": \"s1\", \"offsetMm\": 490},"
                    + " \"S2\": {\"on\": \"s2\", \"offsetMm\": 485}}")
            .and(Loom.segment("s2", "b", "x", 500, ""));
    assertThat(loom.judged(new SpliceMisplaced()).messages())
        .containsExactly(
            "splices S1 and S2 sit within 25 mm of each other; at least 30 mm from middle to"
                + " middle are good practice");
  }

  @Test
  void whereItFlexesIsAnError() {
    Judged judged = judged("\"flexes\": true", on(400));
    assertThat(judged.messages()).containsExactly("splice S1 sits on segment s1, which flexes");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.ERROR);
  }

  @Test
  void pastTheEndOfItsSegmentIsAnError() {
    assertThat(judged("", on(1000.5)).messages())
        .containsExactly(
            "splice S1 is to sit 1000.5 mm along segment s1, which is only 1000 mm long");
  }

  @Test
  void anEndCapMaySitAtABreakout() {
    Loom loom =
        new Loom(
            Loom.segment("s1", "a", "b", 500, ""),
            Loom.wire("W1", "A:1", "B:1", "w3") + ", " + Loom.wire("W2", "A:2", "E", "w3"),
            ", \"splices\": {\"E\": {\"at\": \"b\", \"kind\": \"end-cap\"}}");
    assertThat(loom.judged(new SpliceMisplaced()).messages()).isEmpty();
  }

  @Test
  void aSpliceWithoutAPlaceIsNotJudged() {
    assertThat(judged("", "").coverage().missing().keySet())
        .containsExactly("nothing that is known says where along the loom it is");
  }

  @Test
  void severalPastTheEndOfOneSegmentAreOneFindingOnTheSegment() {
    Loom loom =
        new Loom(
            Loom.segment("s1", "a", "b", 300, ""),
            Loom.wire("W1", "A:1", "S1", "w3")
                + ", "
                + Loom.wire("W2", "A:2", "S2", "w3")
                + ", "
                + Loom.wire("W3", "A:3", "S3", "w3"),
            ", \"splices\": {\"S1\": {\"on\": \"s1\", \"offsetMm\": 400}, \"S2\": {\"on\": \"s1\","
                + " \"offsetMm\": 700}, \"S3\": {\"on\": \"s1\", \"offsetMm\": 150}}");
    Judged judged = loom.judged(new SpliceMisplaced());
    assertThat(judged.messages())
        .containsExactly(
            "splices S1 and S2 are to sit up to 700 mm along segment s1, which is only 300 mm"
                + " long");
    assertThat(judged.subjects()).containsExactly("segments/s1");
    assertThat(judged.findings().get(0).remedy())
        .isEqualTo("correct \"lengthMm\" of s1, or their \"offsetMm\", which counts from node a");
    assertThat(judged.coverage().subjects()).isEqualTo(3);
  }
}
