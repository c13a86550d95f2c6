package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class SegmentTooShortTest {
  /** Nodes a and b are 500 mm apart: 300, 400, 0. */
  private static Judged judged(String mm) {
    return layout(
        "\"a\": {\"xyzMm\": [0, 0, 0]}, \"b\": {\"xyzMm\": [300, -400, 0]}",
        "\"s1\": {\"from\": \"a\", \"to\": \"b\", \"lengthMm\": " + mm + "}");
  }

  private static Judged layout(String nodes, String segments) {
    return layout(nodes, segments, "");
  }

  private static Judged layout(String nodes, String segments, String limits) {
    return Judged.of(
        new SegmentTooShort(),
        "{\"format\": 1, \"sketch\": true, %s \"layout\": {\"nodes\": {%s}, \"segments\": {%s}}}"
            .formatted(limits, nodes, segments));
  }

  @ParameterizedTest
  @ValueSource(strings = {"480", "480.1", "500", "501", "90000"})
  void asLongAsTheLineLessWhatMeasuringAllowsOrLongerIsFine(String mm) {
    Judged judged = judged(mm);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void shorterThanTheLineIsNoticed() {
    Judged judged = judged("479.9");
    assertThat(judged.messages())
        .containsExactly(
            "segment s1 is 479.9 mm long, but a and b are 500 mm apart in a straight line (480 mm"
                + " with 20 mm for measuring)");
    Finding finding = judged.findings().get(0);
    assertThat(finding.level()).isEqualTo(Level.WARNING);
    assertThat(finding.subjects())
        .extracting(subject -> subject.place())
        .containsExactly("segments/s1", "nodes/a", "nodes/b");
  }

  @Test
  void theTeamSaysHowWellItMeasures() {
    String nodes = "\"a\": {\"xyzMm\": [0, 0, 0]}, \"b\": {\"xyzMm\": [0, 0, 500]}";
    String segment = "\"s1\": {\"from\": \"a\", \"to\": \"b\", \"lengthMm\": %s}";
    String exact = "\"limits\": {\"segment-too-short\": {\"mm\": 0}},";
    assertThat(layout(nodes, segment.formatted("500"), exact).messages()).isEmpty();
    assertThat(layout(nodes, segment.formatted("499.9"), exact).messages())
        .containsExactly(
            "segment s1 is 499.9 mm long, but a and b are 500 mm apart in a straight line");
    String off =
        "\"limits\": {\"segment-too-short\": {\"places\": {\"segments/s1\": {\"level\":"
            + " \"off\"}}}},";
    assertThat(layout(nodes, segment.formatted("1"), off).messages()).isEmpty();
  }

  @Test
  void aNodeInTheWrongPlaceIsOneFinding() {
    String nodes =
        "\"a\": {\"xyzMm\": [0, 0, 0]}, \"b\": {\"xyzMm\": [5000, 0, 0]},"
            + " \"c\": {\"xyzMm\": [1000, 0, 0]}, \"d\": {\"xyzMm\": [1000, 300, 0]}";
    String segments =
        "\"s1\": {\"from\": \"a\", \"to\": \"b\", \"lengthMm\": 500},"
            + " \"s2\": {\"from\": \"b\", \"to\": \"c\", \"lengthMm\": 500},"
            + " \"s3\": {\"from\": \"c\", \"to\": \"d\", \"lengthMm\": 300}";
    Judged judged = layout(nodes, segments);
    assertThat(judged.messages())
        .containsExactly(
            "segments s1 and s2 are too short for where node b is: s1 is 500 mm long, but a and b"
                + " are 5000 mm apart in a straight line (4980 mm with 20 mm for measuring)");
    assertThat(judged.subjects()).containsExactly("nodes/b");
    assertThat(judged.findings().get(0).details())
        .containsExactly(
            "s2 is 500 mm long, but b and c are 4000 mm apart in a straight line (3980 mm with 20"
                + " mm for measuring)");
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void aSegmentInALoopOfItsOwnHasNoLineToBeShorterThan() {
    assertThat(
            layout(
                    "\"a\": {\"xyzMm\": [9, 9, 9]}",
                    "\"s1\": {\"from\": \"a\", \"to\": \"a\", \"lengthMm\": 1}")
                .messages())
        .isEmpty();
  }

  @Test
  void withoutCoordinatesOfBothNodesItIsNotJudged() {
    for (String nodes :
        new String[] {
          "", "\"a\": {}, \"b\": {}", "\"a\": {\"xyzMm\": [0, 0, 0]}, \"b\": {}",
        }) {
      Judged judged = layout(nodes, "\"s1\": {\"from\": \"a\", \"to\": \"b\", \"lengthMm\": 1}");
      assertThat(judged.messages()).isEmpty();
      assertThat(judged.coverage().missing())
          .containsOnlyKeys("its nodes do not both say where they are (xyzMm)");
    }
  }

  @Test
  void withoutALengthItIsNotJudged() {
    Judged judged =
        layout(
            "\"a\": {\"xyzMm\": [0, 0, 0]}, \"b\": {\"xyzMm\": [300, -400, 0]}",
            "\"s1\": {\"from\": \"a\", \"to\": \"b\"}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isZero();
  }
}
