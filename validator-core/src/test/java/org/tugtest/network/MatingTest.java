package org.tugtest.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class MatingTest {
  private static final String PARTS =
      """
      "parts": {"housings": {
        "s2": {"side": "socket", "rows": [["1", "2"]]},
        "s3": {"side": "socket", "rows": [["1", "2", "3"]]},
        "p2": {"side": "pin", "rows": [["2", "1"]]},
        "p3": {"side": "pin", "rows": [["3", "2", "1"]]}}}
      """;
  private static final String ECU =
      """
      "devices": {"ECU": {"ports": {
        "A": {"housing": "p3", "pins": {"1": "30", "2": "31"}},
        "B": {"housing": "p2", "pins": {"1": "b1", "2": "b2"}}}}}
      """;

  private static Built built(String connectors) {
    return Built.of(PARTS, ECU, "\"connectors\": {" + connectors + "}");
  }

  private static List<String> conflicts(Built built) {
    return built.wiring().mating().conflicts().stream()
        .map(c -> c.refused() + " claims " + c.mate().text() + ", kept " + c.kept())
        .toList();
  }

  private static String mate(Built built, String connector) {
    return built.wiring().mating().mateOf(connector).map(Mate::text).orElse("");
  }

  @Test
  void connectorThatSaysNothingMatesNothing() {
    Built built = built("\"X1\": {\"housing\": \"s3\"}");
    assertThat(mate(built, "X1")).isEmpty();
    assertThat(built.meets("X1:1")).isEmpty();
    assertThat(built.meets("ECU:30")).isEmpty();
    assertThat(built.wiring().mating().connectorAt("ECU", "A")).isEmpty();
  }

  @Test
  void whatCannotBeMatedIsNotMated() {
    for (String mates :
        new String[] {"ECU", "ECU.C", "ECU:30", "X1", "X1:1", "NONE", "X2.A", "X2:1", ".A"}) {
      Built built =
          built(
              "\"X1\": {\"housing\": \"s3\", \"mates\": \"%s\"}, \"X2\": {\"housing\": \"p3\"}"
                  .formatted(mates));
      assertThat(mate(built, "X1")).as(mates).isEmpty();
      assertThat(conflicts(built)).as(mates).isEmpty();
    }
  }

  @Test
  void saidOnceItIsTrueOfBoth() {
    for (String connectors :
        new String[] {
          "\"X1\": {\"housing\": \"s3\", \"mates\": \"X2\"}, \"X2\": {\"housing\": \"p3\"}",
          "\"X1\": {\"housing\": \"s3\"}, \"X2\": {\"housing\": \"p3\", \"mates\": \"X1\"}",
          "\"X1\": {\"housing\": \"s3\", \"mates\": \"X2\"},"
              + " \"X2\": {\"housing\": \"p3\", \"mates\": \"X1\"}"
        }) {
      Built built = built(connectors);
      assertThat(mate(built, "X1")).isEqualTo("X2");
      assertThat(mate(built, "X2")).isEqualTo("X1");
      assertThat(conflicts(built)).isEmpty();
      assertThat(built.meets("X1:3")).isEqualTo("X2:3");
      assertThat(built.meets("X2:1")).isEqualTo("X1:1");
    }
  }

  @Test
  void cavityWithoutACounterpartMeetsNothing() {
    Built built =
        built("\"X1\": {\"housing\": \"s3\", \"mates\": \"X2\"}, \"X2\": {\"housing\": \"p2\"}");
    assertThat(built.meets("X1:2")).isEqualTo("X2:2");
    assertThat(built.meets("X1:3")).isEmpty();
  }

  @Test
  void portMeetsByCavityAndThePinHasTheNameItIsGiven() {
    Built built = built("\"X1\": {\"housing\": \"s3\", \"mates\": \"ECU.A\"}");
    assertThat(built.meets("X1:1")).isEqualTo("ECU:30");
    assertThat(built.meets("X1:2")).isEqualTo("ECU:31");
    assertThat(built.meets("X1:3")).isEqualTo("ECU:3");
    assertThat(built.meets("ECU:30")).isEqualTo("X1:1");
    assertThat(built.meets("ECU:3")).isEqualTo("X1:3");
    assertThat(built.meets("ECU:b1")).isEmpty();
    assertThat(built.wiring().mating().connectorAt("ECU", "A")).contains("X1");
  }

  @Test
  void twoCavitiesMayLeadToOnePin() {
    Built built =
        Built.of(
            PARTS,
            "\"devices\": {\"D\": {\"ports\": {\"A\": {\"housing\": \"p3\","
                + " \"pins\": {\"1\": \"30\", \"2\": \"30\"}}}}}",
            "\"connectors\": {\"X1\": {\"housing\": \"s3\", \"mates\": \"D\"}}");
    assertThat(built.meets("X1:1")).isEqualTo("D:30");
    assertThat(built.meets("X1:2")).isEqualTo("D:30");
    assertThat(built.meets("D:30")).isEqualTo("X1:1");
    assertThat(built.netsOfSeveral()).containsExactly("D:3 X1:3", "D:30 X1:1 X1:2");
  }

  @Test
  void pinMapOfEitherHalfCrossesContacts() {
    for (String connectors :
        new String[] {
          "\"X1\": {\"housing\": \"s3\", \"mates\": \"X2\", \"pinMap\": {\"1\": \"2\", \"2\": \"1\"}},"
              + " \"X2\": {\"housing\": \"p3\"}",
          "\"X1\": {\"housing\": \"s3\", \"mates\": \"X2\"},"
              + " \"X2\": {\"housing\": \"p3\", \"pinMap\": {\"1\": \"2\", \"2\": \"1\"}}",
        }) {
      Built built = built(connectors);
      assertThat(built.meets("X1:1")).isEqualTo("X2:2");
      assertThat(built.meets("X1:2")).isEqualTo("X2:1");
      assertThat(built.meets("X2:2")).isEqualTo("X1:1");
      assertThat(built.meets("X1:3")).isEqualTo("X2:3");
    }
  }

  @Test
  void cavityWhoseNamesakeIsMappedToAnotherMeetsNothing() {
    Built built =
        built(
            "\"X1\": {\"housing\": \"s3\", \"mates\": \"X2\", \"pinMap\": {\"1\": \"2\"}},"
                + " \"X2\": {\"housing\": \"p3\"}");
    assertThat(built.meets("X1:1")).isEqualTo("X2:2");
    assertThat(built.meets("X1:2")).isEmpty();
    assertThat(built.meets("X2:1")).isEmpty();
  }

  @Test
  void pinMapTowardsAPortNamesItsCavities() {
    Built built =
        built("\"X1\": {\"housing\": \"s3\", \"mates\": \"ECU.B\", \"pinMap\": {\"3\": \"1\"}}");
    assertThat(built.meets("X1:3")).isEqualTo("ECU:b1");
    assertThat(built.meets("X1:1")).isEmpty();
    assertThat(built.meets("ECU:b1")).isEqualTo("X1:3");
    assertThat(built.meets("ECU:b2")).isEqualTo("X1:2");
  }

  @Test
  void ofTwoClaimsOnOnePortTheLaterLoses() {
    Built built =
        built(
            "\"X10\": {\"housing\": \"s3\", \"mates\": \"ECU.A\"},"
                + " \"X9\": {\"housing\": \"s3\", \"mates\": \"ECU.A\"}");
    assertThat(mate(built, "X9")).isEqualTo("ECU.A");
    assertThat(mate(built, "X10")).isEmpty();
    assertThat(conflicts(built)).containsExactly("X10 claims ECU.A, kept X9");
  }

  @Test
  void whatTwoSayOfEachOtherWinsOverAThird() {
    Built built =
        built(
            "\"X1\": {\"housing\": \"s3\", \"mates\": \"X2\"},"
                + " \"X2\": {\"housing\": \"p3\", \"mates\": \"X3\"},"
                + " \"X3\": {\"housing\": \"s3\", \"mates\": \"X2\"}");
    assertThat(mate(built, "X2")).isEqualTo("X3");
    assertThat(mate(built, "X1")).isEmpty();
    assertThat(conflicts(built)).containsExactly("X1 claims X2, kept X3");
  }

  @Test
  void connectorThatIsClaimedAndClaimsAnotherIsAConflict() {
    Built built =
        built(
            "\"X1\": {\"housing\": \"s3\", \"mates\": \"X2\"},"
                + " \"X2\": {\"housing\": \"p3\", \"mates\": \"ECU.A\"}");
    assertThat(mate(built, "X1")).isEqualTo("X2");
    assertThat(conflicts(built)).containsExactly("X2 claims X2, kept X1");
  }

  @Test
  void inASketchConnectorsThatWiresNameCanBeMated() {
    Built built =
        Built.sketch(
            "\"connectors\": {\"X1\": {\"mates\": \"X2\"}, \"X5\": {\"mates\": \"ECU\"}}",
            "\"devices\": {\"ECU\": {\"ports\": {\"A\": {}}}}",
            "\"wires\": {\"W1\": {\"from\": \"F1:1\", \"to\": \"X1:4\"},"
                + " \"W2\": {\"from\": \"X2:4\", \"to\": \"X5:30\"},"
                + " \"W3\": {\"from\": \"X1:5\", \"to\": \"F1:2\"}}");
    assertThat(mate(built, "X2")).isEqualTo("X1");
    assertThat(built.meets("X1:4")).isEqualTo("X2:4");
    assertThat(built.meets("X1:5")).isEqualTo("X2:5");
    assertThat(built.meets("X5:30")).isEqualTo("ECU:30");
    assertThat(built.netsOfSeveral())
        .containsExactly("ECU:30 F1:1 X1:4 X2:4 X5:30", "F1:2 X1:5 X2:5");
  }

  @Test
  void aSketchDoesNotImplyWhatNoWireNames() {
    Built built =
        Built.json(
            """
            {"format": 1, "sketch": true, "connectors": {"X1": {"mates": "X9"}},
             "wires": {"W1": {"from": "X1:1", "to": "S9"}}}
            """);
    assertThat(built.wiring().mating().mateOf("X1")).isEmpty();
  }

  @Test
  void aConnectorStandsWhereItSaysElseWhereItsMateStands() {
    Built built =
        Built.json(
            """
            {"format": 1,
             "devices": {"LAMP": {"at": "nose", "ports": {"p": {}}}},
             "connectors": {"A": {"mates": "B", "at": "dash"}, "B": {},
                            "C": {"mates": "LAMP"}, "D": {"mates": "LAMP", "at": "roof"},
                            "E": {}}}
            """);
    assertThat(built.wiring().mating().nodeOf("A")).contains("dash");
    assertThat(built.wiring().mating().nodeOf("B")).contains("dash");
    assertThat(built.wiring().mating().nodeOf("C")).contains("nose");
    assertThat(built.wiring().mating().nodeOf("D")).contains("roof");
    assertThat(built.wiring().mating().nodeOf("E")).isEmpty();
    assertThat(built.wiring().mating().nodeOf("F")).isEmpty();
  }
}
