package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class SupportSpanLongTest {
  private static Judged one(double length, String fields) {
    return new Loom(
            Loom.segment("s1", "a", "b", length, fields), Loom.wire("W1", "A:1", "B:1", "w3"), "")
        .judged(new SupportSpanLong());
  }

  @Test
  void threeHundredMillimetresAreFine() {
    assertThat(one(900, "\"supports\": 2").messages()).isEmpty();
    assertThat(one(300, "\"supports\": 0").messages()).isEmpty();
    Judged judged = one(900.3, "\"supports\": 2");
    assertThat(judged.messages())
        .containsExactly("segment s1 hangs free over 300.1 mm; at most 300 mm is good practice");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(judged.findings().get(0).remedy())
        .isEqualTo(
            "add clips until there are 3 to s1 so that none of its stretches is longer than 300"
                + " mm");
  }

  @Test
  void overSixHundredAndTenIsAnError() {
    assertThat(one(610, "\"supports\": 0").findings().get(0).level()).isEqualTo(Level.WARNING);
    Judged judged = one(611, "\"supports\": 0");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.ERROR);
    assertThat(judged.messages())
        .containsExactly(
            "segment s1 hangs free over 611 mm; at most 610 mm may be without support");
  }

  @Test
  void whereItFlexesOrIsNearMovingPartsHalfOfThat() {
    assertThat(one(150, "\"supports\": 0, \"flexes\": true").messages()).isEmpty();
    assertThat(one(151, "\"supports\": 0, \"flexes\": true").messages())
        .containsExactly("segment s1 hangs free over 151 mm; at most 150 mm where it flexes");
    assertThat(
            new Loom(
                    Loom.segment("s1", "a", "b", 151, "\"supports\": 0, \"zone\": \"z\""),
                    Loom.wire("W1", "A:1", "B:1", "w3"),
                    ", \"zones\": {\"z\": {\"near\": [\"moving\"]}}")
                .judged(new SupportSpanLong())
                .messages())
        .containsExactly("segment s1 hangs free over 151 mm; at most 150 mm near moving parts");
  }

  @Test
  void aTieIsNoSupport() {
    Judged judged = one(900, "\"supports\": 8, \"supportPart\": \"tie\"");
    assertThat(judged.messages().get(0)).contains("hangs free over 900 mm");
    assertThat(judged.findings().get(0).details().get(0)).startsWith("its 8 ties are not counted");
    assertThat(one(900, "\"supports\": 8, \"supportPart\": \"clip\"").messages()).isEmpty();
  }

  @Test
  void stretchesThatMeetAtANodeThatIsNotHeldAreOne() {
    Loom loom =
        new Loom(
                Loom.segment("s1", "a", "b", 400, "\"supports\": 1"),
                Loom.wire("W1", "A:1", "C:1", "w3"),
                "")
            .and(Loom.segment("s2", "b", "c", 400, "\"supports\": 1"));
    assertThat(loom.judged(new SupportSpanLong()).messages()).isEmpty();
    Judged judged = loom.judged(new SupportSpanLong(), "\"b\": {\"held\": false}");
    assertThat(judged.messages())
        .containsExactly(
            "segments s1 and s2 hang free over 400 mm; at most 300 mm is good practice; node b is"
                + " not held");
    assertThat(judged.coverage().judged()).isEqualTo(2);
    assertThat(judged.findings().get(0).remedy()).isEqualTo("hold node b, or add clips near it");
  }

  @Test
  void aStretchGoesThroughSegmentsWithoutSupports() {
    Loom loom =
        new Loom(
                Loom.segment("s1", "a", "b", 400, "\"supports\": 3"),
                Loom.wire("W1", "A:1", "C:1", "w3"),
                "")
            .and(Loom.segment("s2", "b", "x", 150, "\"supports\": 0"))
            .and(Loom.segment("s3", "x", "c", 400, "\"supports\": 3"));
    Judged judged =
        loom.judged(new SupportSpanLong(), "\"b\": {\"held\": false}, \"x\": {\"held\": false}");
    // 100 + 150 + 100
    assertThat(judged.messages())
        .containsExactly(
            "segments s1, s2 and s3 hang free over 350 mm; at most 300 mm is good practice; nodes b"
                + " and x are not held");
  }

  @Test
  void aRingOfNodesThatAreNotHeldEnds() {
    Loom loom =
        new Loom(
                Loom.segment("s1", "a", "b", 100, "\"supports\": 0"),
                Loom.wire("W1", "A:1", "B:1", "w3")
                    + ", "
                    + Loom.wire("W2", "B:2", "C:2", "w3")
                    + ", "
                    + Loom.wire("W3", "C:3", "A:3", "w3"),
                "")
            .and(Loom.segment("s2", "b", "c", 100, "\"supports\": 0"))
            .and(Loom.segment("s3", "c", "a", 100, "\"supports\": 0"));
    String free = "\"a\": {\"held\": false}, \"b\": {\"held\": false}, \"c\": {\"held\": false}";
    Judged judged = loom.judged(new SupportSpanLong(), free);
    assertThat(judged.messages()).hasSizeLessThanOrEqualTo(1);
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void aNodeThatIsNotHeldIsOneFindingHoweverManyBranchesMeetThere() {
    Loom loom =
        new Loom(
                Loom.segment("s1", "a", "b", 400, "\"supports\": 1"),
                Loom.wire("W1", "A:1", "C:1", "w3") + ", " + Loom.wire("W2", "A:2", "D:2", "w3"),
                "")
            .and(Loom.segment("s2", "b", "c", 240, "\"supports\": 1"))
            .and(Loom.segment("s3", "b", "d", 420, "\"supports\": 1"));
    Judged judged = loom.judged(new SupportSpanLong(), "\"b\": {\"held\": false}");
    assertThat(judged.messages())
        .containsExactly(
            "segments s1 and s3 hang free over 410 mm; at most 300 mm is good practice; node b is"
                + " not held");
    assertThat(judged.findings().get(0).subjects())
        .extracting(subject -> subject.place())
        .containsExactly("nodes/b", "segments/s1", "segments/s3", "segments/s2");
    assertThat(judged.findings().get(0).details())
        .containsExactly(
            "segments s2 and s3 hang free over 330 mm; at most 300 mm is good practice");
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void twoNodesFarApartAreTwoFindings() {
    Loom loom =
        new Loom(
                Loom.segment("s1", "a", "b", 400, "\"supports\": 1"),
                Loom.wire("W1", "A:1", "E:1", "w3"),
                "")
            .and(Loom.segment("s2", "b", "c", 400, "\"supports\": 1"))
            .and(Loom.segment("s3", "c", "d", 600, "\"supports\": 2"))
            .and(Loom.segment("s4", "d", "e", 400, "\"supports\": 1"));
    Judged judged =
        loom.judged(new SupportSpanLong(), "\"b\": {\"held\": false}, \"d\": {\"held\": false}");
    assertThat(judged.subjects()).containsExactly("nodes/b", "nodes/d");
  }

  @Test
  void whatCannotBeJudgedSaysWhy() {
    assertThat(one(900, "").coverage().missing().keySet())
        .containsExactly("it gives no count of supports");
    Loom loom =
        new Loom(
                Loom.segment("s1", "a", "b", 200, "\"supports\": 0"),
                Loom.wire("W1", "A:1", "C:1", "w3"),
                "")
            .and(Loom.segment("s2", "b", "c", 400, ""));
    assertThat(
            loom.judged(new SupportSpanLong(), "\"b\": {\"held\": false}")
                .coverage()
                .missing()
                .keySet())
        .containsExactly(
            "a segment beyond a node that is not held gives no supports",
            "it gives no count of supports");
  }
}
