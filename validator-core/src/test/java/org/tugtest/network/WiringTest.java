package org.tugtest.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WiringTest {
  private static final String HOUSINGS =
      """
      "parts": {"housings": {"h3": {"side": "socket", "rows": [["1", "2", ""], ["3"]]},
                             "p2": {"side": "pin", "rows": [["1", "2"]]}}}
      """;

  @Test
  void ownerThatNothingDefinesIsUnknown() {
    Built built = Built.of("\"wires\": {\"W1\": {\"from\": \"R9:1\", \"to\": \"S9\"}}");
    assertThat(built.resolved("R9:1")).isEqualTo(new Resolution.OwnerUnknown("R9"));
    assertThat(built.resolved("S9")).isEqualTo(new Resolution.OwnerUnknown("S9"));
    assertThat(built.resolved("R9.A")).isEqualTo(new Resolution.OwnerUnknown("R9"));
    assertThat(built.wiring().ends()).isEmpty();
  }

  @Test
  void cavityThatTheHousingLacksIsUnknownAlsoInASketch() {
    String connectors = "\"connectors\": {\"R1\": {\"housing\": \"h3\"}}";
    for (Built built :
        new Built[] {Built.of(HOUSINGS, connectors), Built.sketch(HOUSINGS, connectors)}) {
      assertThat(built.resolved("R1:3")).isInstanceOf(Resolution.Found.class);
      assertThat(built.resolved("R1:4"))
          .isEqualTo(new Resolution.PinUnknown(Point.Kind.CAVITY, "R1", "4"));
      assertThat(built.wiring().cavitiesOf("R1")).containsExactly("1", "2", "3");
    }
  }

  @Test
  void gapInTheRowsIsNoCavity() {
    Built built = Built.of(HOUSINGS, "\"connectors\": {\"R1\": {\"housing\": \"h3\"}}");
    assertThat(built.resolved("R1:")).isInstanceOf(Resolution.NoContact.class);
  }

  @Test
  void everyCavityIsTakenWhereTheHousingIsNotKnown() {
    Built built =
        Built.of(
            HOUSINGS,
            "\"connectors\": {\"R1\": {\"housing\": \"none-such\"}}",
            "\"wires\": {\"W1\": {\"from\": \"R1:10\", \"to\": \"R1:9\"}}");
    assertThat(built.resolved("R1:10"))
        .isEqualTo(new Resolution.Found(Point.cavity("R1", "10"), false));
    assertThat(built.wiring().cavitiesOf("R1")).containsExactly("9", "10");
  }

  @Test
  void bareConnectorDeviceOrElementIsNoContact() {
    Built built =
        Built.of(
            HOUSINGS,
            "\"connectors\": {\"R1\": {\"housing\": \"h3\"}}",
            "\"devices\": {\"LAMP\": {\"elements\": {\"bulb\": {\"kind\": \"load\", \"a\": \"1\","
                + " \"b\": \"2\"}}}}",
            "\"splices\": {\"S1\": {}}");
    for (String ref : new String[] {"R1", "R1.A", "LAMP", "LAMP.bulb", "LAMP:", "S1:1", "", ":1"}) {
      assertThat(built.resolved(ref)).as(ref).isInstanceOf(Resolution.NoContact.class);
    }
    assertThat(built.resolved("S1")).isEqualTo(new Resolution.Found(Point.splice("S1"), false));
  }

  @Test
  void pinsAreThoseThatElementsNameWhenNoneAreListed() {
    Built built =
        Built.of(
            "\"devices\": {\"LAMP\": {\"elements\": {\"bulb\": {\"kind\": \"load\", \"a\": \"1\","
                + " \"b\": \"2\"}}}, \"BARE\": {}}");
    assertThat(built.wiring().pinsOf("LAMP")).containsExactly("1", "2");
    assertThat(built.resolved("LAMP:2"))
        .isEqualTo(new Resolution.Found(Point.pin("LAMP", "2"), false));
    assertThat(built.resolved("LAMP:3"))
        .isEqualTo(new Resolution.PinUnknown(Point.Kind.PIN, "LAMP", "3"));
    assertThat(built.resolved("BARE:1"))
        .isEqualTo(new Resolution.PinUnknown(Point.Kind.PIN, "BARE", "1"));
  }

  @Test
  void listedPinsAreAllThereAreEvenWhenAnElementNamesMore() {
    Built built =
        Built.sketch(
            "\"devices\": {\"D\": {\"pins\": {\"1\": {}}, \"elements\": {\"l\": {\"kind\":"
                + " \"load\", \"a\": \"1\", \"b\": \"x\"}}}}");
    assertThat(built.wiring().pinsComplete("D")).isTrue();
    assertThat(built.resolved("D:x"))
        .isEqualTo(new Resolution.PinUnknown(Point.Kind.PIN, "D", "x"));
  }

  @Test
  void deviceOfAnUnknownTypeTakesEveryPin() {
    Built built =
        Built.of(
            "\"devices\": {\"D\": {\"type\": \"none-such\"}}",
            "\"wires\": {\"W1\": {\"from\": \"D:a\", \"to\": \"D:b\"}}");
    assertThat(built.resolved("D:a")).isInstanceOf(Resolution.Found.class);
    assertThat(built.wiring().pinsOf("D")).containsExactly("a", "b");
    assertThat(built.wiring().pinsComplete("D")).isFalse();
  }

  @Test
  void noWireEndsOnAPinInsideOrBehindAPort() {
    Built built =
        Built.of(
            HOUSINGS,
            "\"devices\": {\"D\": {\"pins\": {\"star\": {\"inside\": true}, \"stud\": {}},"
                + " \"ports\": {\"A\": {\"housing\": \"p2\", \"pins\": {\"1\": \"30\"}}}}}",
            "\"connectors\": {\"X1\": {\"housing\": \"h3\", \"mates\": \"D\"}}");
    assertThat(built.resolved("D:star")).isInstanceOf(Resolution.NoContact.class);
    assertThat(((Resolution.NoContact) built.resolved("D:30")).remedy())
        .isEqualTo("end the wire in connector X1, which mates D.A");
    assertThat(built.resolved("D:2")).isInstanceOf(Resolution.NoContact.class);
    assertThat(built.resolved("D:1"))
        .isEqualTo(new Resolution.PinUnknown(Point.Kind.PIN, "D", "1"));
    assertThat(built.resolved("D:stud")).isInstanceOf(Resolution.Found.class);
    assertThat(built.wiring().pinsOf("D")).containsExactly("2", "30", "star", "stud");
  }

  @Test
  void referenceMayNameAPinThatNoWireReaches() {
    Built built =
        Built.of(
            HOUSINGS,
            "\"devices\": {\"D\": {\"pins\": {\"star\": {\"inside\": true}},"
                + " \"ports\": {\"A\": {\"housing\": \"p2\"}}}}");
    assertThat(built.at("D:star")).isEqualTo(Point.pin("D", "star"));
    assertThat(built.at("D:2")).isEqualTo(Point.pin("D", "2"));
    assertThat(built.wiring().pointOf(org.tugtest.model.Ref.parse("D:9"))).isEmpty();
    assertThat(built.wiring().pointOf(null)).isEmpty();
  }

  @Test
  void portWithoutAKnownHousingLeavesThePinsOpen() {
    Built built =
        Built.of(
            "\"devices\": {\"D\": {\"ports\": {\"A\": {\"housing\": \"none-such\"}}, \"elements\":"
                + " {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\"}}}}",
            "\"connectors\": {\"X1\": {\"housing\": \"none-such\", \"mates\": \"D.A\"}}",
            "\"wires\": {\"W1\": {\"from\": \"X1:1\", \"to\": \"X1:7\"}}");
    assertThat(built.wiring().pinsComplete("D")).isFalse();
    assertThat(built.wiring().pinsOf("D")).containsExactly("1", "2", "7");
    assertThat(built.meets("X1:1")).isEqualTo("D:1");
    assertThat(built.meets("D:7")).isEqualTo("X1:7");
  }

  @Test
  void inASketchWhatWiresNameIsThere() {
    Built built =
        Built.sketch(
            "\"wires\": {\"W1\": {\"from\": \"R1:1\", \"to\": \"S1\"},"
                + " \"W2\": {\"from\": \"S1\", \"to\": \"R2:10\"},"
                + " \"W3\": {\"from\": \"R2:9\", \"to\": \"LAMP:1\"}}",
            "\"devices\": {\"LAMP\": {}}",
            "\"connectors\": {\"R2\": {\"cavities\": {\"9\": {}}}}");
    assertThat(built.resolved("R1:1"))
        .isEqualTo(new Resolution.Found(Point.cavity("R1", "1"), true));
    assertThat(built.resolved("S1")).isEqualTo(new Resolution.Found(Point.splice("S1"), true));
    assertThat(built.resolved("R2:9"))
        .isEqualTo(new Resolution.Found(Point.cavity("R2", "9"), false));
    assertThat(built.resolved("LAMP:1"))
        .isEqualTo(new Resolution.Found(Point.pin("LAMP", "1"), true));
    assertThat(built.wiring().connectors()).containsExactly("R1", "R2");
    assertThat(built.wiring().splices()).containsExactly("S1");
    assertThat(Built.texts(List.copyOf(built.wiring().implied())))
        .containsExactly("LAMP:1", "R1:1", "R2:10", "S1");
    assertThat(built.wiring().cavitiesOf("R2")).containsExactly("9", "10");
    assertThat(built.resolved("R3:1")).isEqualTo(new Resolution.OwnerUnknown("R3"));
  }

  @Test
  void nameThatAWireUsesAsAConnectorIsNoSpliceForAnother() {
    Built built =
        Built.sketch(
            "\"wires\": {\"W1\": {\"from\": \"R1\", \"to\": \"R2:1\"},"
                + " \"W2\": {\"from\": \"R1:3\", \"to\": \"R2:2\"}}");
    assertThat(built.resolved("R1")).isInstanceOf(Resolution.NoContact.class);
    assertThat(built.wiring().splices()).isEmpty();
  }

  @Test
  void wireOrGroupOrElementNameImpliesNothing() {
    Built built =
        Built.sketch(
            "\"wires\": {\"W1\": {\"from\": \"W2:1\", \"to\": \"G1\"},"
                + " \"W2\": {\"from\": \"ECU.A\", \"to\": \"R2:1\"}}",
            "\"groups\": {\"G1\": {\"kind\": \"twisted\", \"wires\": [\"W1\", \"W2\"]}}");
    assertThat(built.resolved("W2:1")).isEqualTo(new Resolution.OwnerUnknown("W2"));
    assertThat(built.resolved("G1")).isEqualTo(new Resolution.OwnerUnknown("G1"));
    assertThat(built.resolved("ECU.A")).isEqualTo(new Resolution.OwnerUnknown("ECU"));
  }

  @Test
  void endsOnAPointStandInNaturalOrderOfTheWires() {
    Built built =
        Built.sketch(
            "\"wires\": {\"W10\": {\"from\": \"R1:1\", \"to\": \"R1:2\"},"
                + " \"W9\": {\"from\": \"R1:3\", \"to\": \"R1:1\"}}");
    assertThat(built.wiring().endsAt(built.at("R1:1")))
        .extracting(end -> end.wire().id() + "." + end.field())
        .containsExactly("W9.to", "W10.from");
    assertThat(built.wiring().endsAt(Point.cavity("R1", "7"))).isEmpty();
  }
}
