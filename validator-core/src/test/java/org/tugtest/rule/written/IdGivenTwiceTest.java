package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class IdGivenTwiceTest {
  private static final String HOUSINGS =
      """
      "parts": {"housings": {"p2": {"side": "pin", "rows": [["1", "2"]]},
                             "p8": {"side": "pin", "rows": [["1", "2", "3", "4", "5", "6", "7"]]}}}
      """;

  private static Judged device(String fields) {
    return Judged.of(
        new IdGivenTwice(),
        "{\"format\": 1, " + HOUSINGS + ", \"devices\": {\"ECU\": {" + fields + "}}}");
  }

  @Test
  void sameIdInNamespacesOfTheirOwnIsFine() {
    Judged judged =
        Judged.of(
            new IdGivenTwice(),
            """
            {"format": 1, "sketch": true, "devices": {"A": {}}, "zones": {"A": {}},
             "layout": {"nodes": {"A": {}}}, "states": {"A": {}}}
            """);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void idInTwoFilesShowsBothPlaces() {
    Judged judged =
        Judged.of(
            new IdGivenTwice(),
            Map.of(
                Judged.ROOT,
                "{\"format\": 1, \"uses\": [\"r.json\"], \"splices\": {\"S1\": {}}}",
                "r.json",
                "{\"format\": 1, \"splices\": {\"S1\": {}}}"));
    assertThat(judged.subjects()).containsExactly("splices/S1");
    assertThat(judged.findings().get(0).at())
        .extracting(place -> place.file())
        .containsExactly("r.json", Judged.ROOT);
  }

  @Test
  void idsOfTwoSectionsThatShareThemAndIdsThatDifferInCaseAreReported() {
    assertThat(
            Judged.of(
                    new IdGivenTwice(),
                    "{\"format\": 1, \"splices\": {\"S1\": {}}, \"devices\": {\"S1\": {}}}")
                .findings())
        .hasSize(1);
    assertThat(
            Judged.of(new IdGivenTwice(), "{\"format\": 1, \"splices\": {\"S1\": {}, \"s1\": {}}}")
                .findings())
        .hasSize(1);
  }

  @Test
  void pinsOfPortsWithNamesOfTheirOwnAreFine() {
    assertThat(device("\"ports\": {\"A\": {\"housing\": \"p2\"}}").findings()).isEmpty();
    assertThat(
            device(
                    "\"ports\": {\"A\": {\"housing\": \"p2\"}, \"B\": {\"housing\": \"p2\","
                        + " \"pins\": {\"1\": \"b1\", \"2\": \"b2\"}}}, \"pins\": {\"stud\": {}}")
                .findings())
        .isEmpty();
  }

  @Test
  void twoCavitiesThatAreBothLedToOnePinAreMeant() {
    assertThat(
            device(
                    "\"ports\": {\"A\": {\"housing\": \"p2\","
                        + " \"pins\": {\"1\": \"30\", \"2\": \"30\"}}}")
                .findings())
        .isEmpty();
  }

  @Test
  void pinsOfTwoPortsWithOneNameAreOneFinding() {
    Judged judged =
        device("\"ports\": {\"A\": {\"housing\": \"p8\"}, \"B\": {\"housing\": \"p8\"}}");
    assertThat(judged.messages())
        .containsExactly("ECU has pins 1, 2, 3, 4, 5, 6 and 1 more twice: in port A and in port B");
    assertThat(judged.findings().get(0).details()).containsExactly("pins 1, 2, 3, 4, 5, 6 and 7");
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void renamedPinMayNotTakeTheNameOfAnother() {
    assertThat(
            device("\"ports\": {\"A\": {\"housing\": \"p2\", \"pins\": {\"1\": \"2\"}}}")
                .messages())
        .containsExactly("ECU has a pin 2 twice: both in port A");
    assertThat(
            device("\"pins\": {\"1\": {}}, \"ports\": {\"A\": {\"housing\": \"p2\"}}").messages())
        .containsExactly("ECU has a pin 1 twice: under \"pins\" and in port A");
  }

  @Test
  void typeIsReportedOnceForAllItsDevices() {
    Judged judged =
        Judged.of(
            new IdGivenTwice(),
            """
            {"format": 1,
             "parts": {"housings": {"p1": {"side": "pin", "rows": [["1"]]}},
                       "deviceTypes": {"ecu": {"ports": {"A": {"housing": "p1"},
                                                         "B": {"housing": "p1"}}}}},
             "devices": {"E1": {"type": "ecu"}, "E2": {"type": "ecu"}}}
            """);
    assertThat(judged.subjects()).containsExactly("parts/deviceTypes/ecu");
  }
}
