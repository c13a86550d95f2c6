package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class VoltageOutOfScopeTest {
  /** Sources S1, S2, .. of these volts ({@code ""} for none), and what joins them. */
  private static Judged judged(List<String> volts, String devices, String wires, String more) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < volts.size(); i++) {
      String given = volts.get(i).isEmpty() ? "" : ", \"volts\": " + volts.get(i);
      all.add(
          """
          "S%d": {"elements": {"c": {"kind": "source", "plus": "+", "minus": "-"%s}}}
          """
              .formatted(i + 1, given));
    }
    if (!devices.isEmpty()) {
      all.add(devices);
    }
    List<String> runs = new ArrayList<>();
    for (String wire : wires.split(" ", -1)) {
      if (!wire.isEmpty()) {
        String[] ends = wire.split(">", -1);
        runs.add(
            "\"W%d\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(runs.size(), ends[0], ends[1]));
      }
    }
    return Judged.of(
        new VoltageOutOfScope(),
        "{\"format\": 1, \"sketch\": true, \"devices\": {"
            + String.join(", ", all)
            + "}, \"wires\": {"
            + String.join(", ", runs)
            + "}"
            + more
            + "}");
  }

  private static Judged joined(String wires, String... volts) {
    return judged(List.of(volts), "", wires, "");
  }

  private static String contact(String fields) {
    return "\"K\": {\"positions\": [\"series\", \"parallel\"], \"elements\": {" + fields + "}}";
  }

  @Test
  void sixtyVoltsAreInScopeAndMoreAreNot() {
    assertThat(joined("", "59.9").messages()).isEmpty();
    assertThat(joined("", "60").messages()).isEmpty();
    Judged over = joined("", "60.001");
    assertThat(over.messages())
        .containsExactly("source S1.c gives 60.001 V; these checks cover at most 60 V DC");
    assertThat(over.findings().get(0).level()).isEqualTo(Level.ERROR);
    assertThat(over.subjects()).containsExactly("devices/S1.c");
  }

  @Test
  void sourceWithoutVoltsIsNotJudged() {
    Judged judged = joined("", "12", "");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
    assertThat(judged.coverage().missing()).containsOnlyKeys("it gives no volts");
  }

  @Test
  void voltsOfAStateCountToo() {
    Judged judged =
        judged(
            List.of("48", ""),
            "",
            "",
            ", \"states\": {\"charge\": {\"volts\": {\"S1\": 61, \"S2.c\": 5}}, \"rest\": {}}");
    assertThat(judged.messages())
        .containsExactly(
            "source S1.c gives 61 V in state charge; these checks cover at most 60 V DC");
    assertThat(judged.findings().get(0).state()).isEqualTo("charge");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void sourcesInARowAddUp() {
    assertThat(joined("S1:+>S2:- S2:+>S3:-", "20", "20", "20").messages()).isEmpty();
    Judged judged = joined("S1:+>S2:- S2:+>S3:-", "20", "20", "20.1");
    assertThat(judged.messages())
        .containsExactly(
            "sources S1.c, S2.c and S3.c are joined so that 60.1 V add up; these checks cover at"
                + " most 60 V DC");
    assertThat(judged.findings().get(0).details())
        .containsExactly("S1.c +20 V", "S2.c +20 V", "S3.c +20.1 V");
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void decimalsAreAddedExactly() {
    assertThat(joined("S1:+>S2:- S2:+>S3:-", "20.1", "19.8", "20.1").messages()).isEmpty();
  }

  @Test
  void sourcesSideBySideDoNotAddUp() {
    assertThat(joined("S1:+>S2:+ S1:->S2:- S3:+>S1:+ S3:->S2:-", "48", "48", "56").messages())
        .isEmpty();
    assertThat(joined("", "48", "48").messages()).as("nothing joins them").isEmpty();
    assertThat(joined("S1:->S2:-", "48", "59").messages()).as("opposed").isEmpty();
  }

  @Test
  void sourcesAgainstEachOtherRoundALoopAddUp() {
    assertThat(joined("S1:+>S2:- S1:->S2:+", "36", "36").messages())
        .containsExactly(
            "sources S1.c and S2.c are joined so that 72 V add up; these checks cover at most 60 V"
                + " DC");
    assertThat(joined("S1:->S2:+", "36", "36").messages()).hasSize(1);
  }

  @Test
  void loadsThatDrawNothingDiodesAndEmptyWaysKeepThemApart() {
    for (String kind : List.of("\"kind\": \"load\"", "\"kind\": \"diode\"", "\"kind\": \"fuse\"")) {
      Judged judged =
          judged(
              List.of("36", "36"),
              "\"D\": {\"elements\": {\"e\": {" + kind + ", \"a\": \"1\", \"b\": \"2\"}}}",
              "S1:+>D:1 D:2>S2:-",
              "");
      assertThat(judged.messages()).as(kind).isEmpty();
    }
  }

  @Test
  void contactsLinksAndFittedFusesJoinThem() {
    for (String kind :
        List.of(
            "\"kind\": \"contact\"",
            "\"kind\": \"contact\", \"closedIn\": [\"x\"]",
            "\"kind\": \"link\"",
            "\"kind\": \"fuse\", \"ratingA\": 30")) {
      Judged judged =
          judged(
              List.of("36", "36"),
              "\"D\": {\"elements\": {\"e\": {" + kind + ", \"a\": \"1\", \"b\": \"2\"}}}",
              "S1:+>D:1 D:2>S2:-",
              "");
      assertThat(judged.messages()).as(kind).hasSize(1);
    }
  }

  @Test
  void positionsOfAChangeOverAreTriedOneByOne() {
    String parallel =
        contact(
            """
            "s": {"kind": "contact", "a": "a", "b": "b", "closedIn": ["series"]},
            "p": {"kind": "contact", "a": "a", "b": "c", "closedIn": ["parallel"]},
            "q": {"kind": "contact", "a": "b", "b": "d", "closedIn": ["parallel"]}
            """);
    String wires = "S1:+>K:a S2:->K:b S2:+>K:c S1:->K:d";
    assertThat(judged(List.of("36", "36"), parallel, wires, "").messages()).hasSize(1);
    assertThat(judged(List.of("28", "28"), parallel, wires, "").messages()).isEmpty();
  }

  @Test
  void twoContactsOfARelayThatAreNeverClosedTogetherJoinNothing() {
    String relay =
        """
        "K": {"elements": {"coil": {"kind": "coil", "a": "85", "b": "86", "ohms": 90},
          "no": {"kind": "contact", "a": "30", "b": "87", "coil": "coil"},
          "nc": {"kind": "contact", "a": "30", "b": "87a", "coil": "coil", "rest": "closed"}}}
        """;
    assertThat(judged(List.of("36", "24"), relay, "S1:+>K:87 S2:->K:30", "").messages()).isEmpty();
    assertThat(judged(List.of("36", "25"), relay, "S1:+>K:87 S2:->K:30", "").messages()).hasSize(1);
  }

  @Test
  void manySourcesInARowAreStillFound() {
    List<String> volts = new ArrayList<>();
    StringBuilder wires = new StringBuilder();
    for (int i = 1; i <= 2_000; i++) {
      volts.add("4");
      wires.append(i == 1 ? "" : " S" + (i - 1) + ":+>S" + i + ":-");
    }
    Judged judged = judged(volts, "", wires.toString(), "");
    assertThat(judged.messages()).hasSize(1);
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("more sources are joined than can be tried in every way");
  }

  @Test
  void withoutSourcesThereIsNothingToJudge() {
    assertThat(joined("A:1>B:1").coverage().subjects()).isZero();
  }

  @Test
  void voltsThatOnlyTheSolvedNetworkHas() {
    String load =
        "\"L\": {\"elements\": {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\","
            + " \"ohms\": 100}}}";
    Judged over = judged(List.of("48", "13"), load, "S1:->L:1 L:2>S2:+", "");
    assertThat(over.messages())
        .containsExactly(
            "S1:+ and S2:- are 61 V apart in state as drawn; these checks cover at most 60 V DC");
    assertThat(over.coverage().judged()).isEqualTo(2);
    assertThat(judged(List.of("48", "12"), load, "S1:->L:1 L:2>S2:+", "").messages()).isEmpty();
  }
}
