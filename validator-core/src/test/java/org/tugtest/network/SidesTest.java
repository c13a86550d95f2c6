package org.tugtest.network;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SidesTest {
  private static final String BATTERY =
      "\"BAT\": {\"elements\": {\"cell\": {\"kind\": \"source\", \"plus\": \"+\", \"minus\": \"-\","
          + " \"volts\": 12}}}";

  private static Built car(String devices, String wires, String... more) {
    String[] sections = new String[more.length + 2];
    sections[0] = "\"devices\": {" + BATTERY + ", " + devices + "}";
    sections[1] = "\"wires\": {" + wires + "}";
    System.arraycopy(more, 0, sections, 2, more.length);
    return Built.of(sections);
  }

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(id, from, to);
  }

  private static String element(String kind, String more) {
    return "\"D\": {\"elements\": {\"e\": {\"kind\": \"%s\", \"a\": \"1\", \"b\": \"2\"%s}}}"
        .formatted(kind, more);
  }

  private static Built between(String kind, String more, String... sections) {
    return car(
        element(kind, more),
        wire("W1", "BAT:+", "D:1") + ", " + wire("W2", "D:2", "BAT:-"),
        sections);
  }

  @Test
  void withoutASourceNothingIsOnASide() {
    Built built = Built.sketch("\"wires\": {\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\"}}");
    assertThat(built.sides().feed().points()).isEmpty();
    assertThat(built.sides().back().points()).isEmpty();
    assertThat(built.sides().feed().path(built.at("A:1"))).isEmpty();
    assertThat(built.sides().feed().reaches(Point.splice("NO"))).isFalse();
  }

  @Test
  void loadsAndCoilsAndSourcesAreNotCrossed() {
    for (String kind : new String[] {"load", "coil"}) {
      Built built = between(kind, ", \"ohms\": 3");
      assertThat(Built.texts(built.sides().feed().points())).containsExactly("BAT:+", "D:1");
      assertThat(Built.texts(built.sides().back().points())).containsExactly("BAT:-", "D:2");
    }
  }

  @Test
  void linksAndContactsOfEveryRestAreCrossed() {
    for (String more : new String[] {"", ", \"coil\": \"c\"", ", \"closedIn\": [\"x\"]"}) {
      Built built = between("contact", more);
      assertThat(built.sides().feed().reaches(built.at("BAT:-"))).isTrue();
      assertThat(built.sides().back().reaches(built.at("BAT:+"))).isTrue();
    }
    assertThat(between("link", "").sides().feed().reaches(Point.pin("D", "2"))).isTrue();
  }

  @Test
  void diodesAreCrossedOneWay() {
    Built along = between("diode", "");
    assertThat(along.sides().feed().reaches(along.at("BAT:-"))).isTrue();
    assertThat(along.sides().back().reaches(along.at("BAT:+"))).isTrue();
    Built against =
        car(element("diode", ""), wire("W1", "BAT:+", "D:2") + ", " + wire("W2", "D:1", "BAT:-"));
    assertThat(against.sides().feed().reaches(against.at("D:1"))).isFalse();
    assertThat(against.sides().back().reaches(against.at("D:2"))).isFalse();
  }

  @Test
  void emptyWayIsOpenAndAFusedOneIsNot() {
    assertThat(between("fuse", "").sides().feed().reaches(Point.pin("D", "2"))).isFalse();
    for (Built built :
        new Built[] {
          between("fuse", ", \"ratingA\": 5"),
          between("fuse", ", \"electronic\": true"),
          between("fuse", "", "\"fitted\": {\"D.e\": \"mini-5\"}"),
        }) {
      assertThat(built.sides().feed().reaches(built.at("D:2"))).isTrue();
      assertThat(built.sides().unfused().reaches(built.at("D:1"))).isTrue();
      assertThat(built.sides().unfused().reaches(built.at("D:2"))).isFalse();
    }
  }

  @Test
  void wayRoundTheFuseLeavesWhatIsBehindItUnfused() {
    Built built =
        car(
            element("fuse", ", \"ratingA\": 5") + ", \"L\": {\"pins\": {\"1\": {}}}",
            wire("W1", "BAT:+", "D:1")
                + ", "
                + wire("W2", "D:2", "L:1")
                + ", "
                + wire("W3", "BAT:+", "L:1"));
    assertThat(built.sides().unfused().path(built.at("D:2")).orElseThrow().text())
        .isEqualTo("BAT:+ -W3- L:1 -W2- D:2");
    assertThat(built.sides().feed().path(built.at("D:2")).orElseThrow().end())
        .isEqualTo(built.at("D:2"));
  }

  @Test
  void selfLimitingSourceCountsAsFused() {
    for (String limit : new String[] {", \"maxA\": 5", ""}) {
      Built built =
          Built.of(
              """
              "devices": {"PSU": {"elements": {"out": {"kind": "source", "plus": "+",
                "minus": "-", "volts": 5, "selfLimiting": true%s}}}}
              """
                  .formatted(limit));
      assertThat(built.sides().feed().reaches(built.at("PSU:+"))).isTrue();
      assertThat(built.sides().unfused().reaches(built.at("PSU:+"))).isEqualTo(limit.isEmpty());
    }
  }

  @Test
  void pathNamesWiresPlugsBoltsAndElements() {
    Built built =
        Built.of(
            """
            "parts": {"housings": {"s": {"side": "socket", "rows": [["1"]]},
                                   "p": {"side": "pin", "rows": [["1"]]}}},
            "devices": {%s,
              "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}}},
              "LAMP": {"ports": {"A": {"housing": "p", "pins": {"1": "L"}}},
                       "boltedTo": {"L": "ROD:x"}},
              "ROD": {"pins": {"x": {}}}},
            "connectors": {"X1": {"housing": "s", "mates": "LAMP"}},
            "wires": {"W1": {"from": "BAT:+", "to": "FB:in"}, "W2": {"from": "X1:1", "to": "FB:1"}}
            """
                .formatted(BATTERY));
    Path path = built.sides().feed().path(built.at("ROD:x")).orElseThrow();
    assertThat(path.text()).isEqualTo("BAT:+ -W1- FB:in -FB.f1- FB:1 -W2- X1:1 = LAMP:L = ROD:x");
    assertThat(Built.texts(path.points()))
        .containsExactly("BAT:+", "FB:in", "FB:1", "X1:1", "LAMP:L", "ROD:x");
    assertThat(path.edges())
        .extracting(edge -> edge.subject().place())
        .containsExactly(
            "wires/W1", "devices/FB.f1", "wires/W2", "connectors/X1:1", "devices/LAMP:L");
  }

  @Test
  void elementOnAPinThatIsNotThereIsLeftOut() {
    Built built =
        Built.of(
            """
            "devices": {"D": {"pins": {"1": {}}, "elements": {
              "l": {"kind": "load", "a": "1", "b": "x"},
              "s": {"kind": "signal", "pin": "1", "type": "analog"}}}}
            """);
    assertThat(built.network().edges()).isEmpty();
    assertThat(built.network().unplaced()).hasToString("[devices/D.l]");
  }
}
