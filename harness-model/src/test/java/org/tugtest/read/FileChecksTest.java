package org.tugtest.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FileChecksTest {
  private static final String NO_GAUGE =
      "wire W1 gives none of part, areaMm2 and awg. Add one of them, or write \"sketch\": true in"
          + " the root while sizes are not known.";

  private static List<String> said(String rest) {
    return Said.problems("{\"format\": 1, " + rest + "}");
  }

  @Test
  void asksForASizeUnlessItIsASketch() {
    assertThat(said("\"wires\": {\"W1\": {}}")).containsExactly("1:25 " + NO_GAUGE);
    assertThat(said("\"sketch\": false, \"wires\": {\"W1\": {}}"))
        .containsExactly("1:42 " + NO_GAUGE);
    assertThat(said("\"sketch\": true, \"wires\": {\"W1\": {}}")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"part\": \"w\"", "\"areaMm2\": 1", "\"awg\": \"20\""})
  void isContentWithOneSize(String size) {
    assertThat(said("\"wires\": {\"W1\": {" + size + "}}")).isEmpty();
  }

  @Test
  void refusesTwoSizesEvenInASketch() {
    assertThat(said("\"sketch\": true, \"wires\": {\"W1\": {\"part\": \"w\", \"awg\": \"20\"}}"))
        .containsExactly(
            "1:48 wire W1 gives part and awg; one of them says it all. Keep one of them.");
  }

  @Test
  void doesNotCallMissingWhatIsWrong() {
    assertThat(said("\"wires\": {\"W1\": {\"areaMm2\": \"x\"}}"))
        .singleElement()
        .asString()
        .contains("it must be a number");
  }

  @Test
  void asksForHousingsUnlessItIsASketch() {
    String rest =
        "\"connectors\": {\"X1\": {}}, \"devices\": {\"D\": {\"ports\": {\"A\": {}}}}, \"parts\":"
            + " {\"deviceTypes\": {\"t\": {\"ports\": {\"B\": {}}}}}";
    assertThat(said(rest))
        .extracting(line -> line.substring(0, line.indexOf('.')))
        .containsExactly(
            "1:30 connector X1 gives no housing",
            "1:69 port A of devices/D gives no housing",
            "1:123 port B of parts/deviceTypes/t gives no housing");
    assertThat(said("\"sketch\": true, " + rest)).isEmpty();
  }

  @Test
  void refusesACavityNamedTwice() {
    assertThat(
            said(
                "\"parts\": {\"housings\": {\"h\": {\"side\": \"pin\", \"rows\": [[\"1\", \"\"],"
                    + " [\"\", \"1\"]]}}}"))
        .containsExactly(
            "1:84 rows of parts/housings/h name the cavity 1 twice. Give every cavity a name of its"
                + " own; \"\" is a gap.");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1})
  void allowsALeastUpToTheGreatest(double least) {
    assertThat(said(seal(least))).isEmpty();
  }

  @Test
  void refusesALeastOverTheGreatest() {
    assertThat(said(seal(1.01)))
        .containsExactly(
            "1:75 insulationMinMm of parts/seals/s is 1.01, more than its insulationMaxMm, 1."
                + " Correct one of the two.");
    assertThat(
            said(
                "\"parts\": {\"terminals\": {\"t\": {\"family\": \"f\", \"side\": \"pin\","
                    + " \"areaMinMm2\": 2, \"areaMaxMm2\": 1}}, \"splices\": {\"s\":"
                    + " {\"areaMinMm2\": 2, \"areaMaxMm2\": 1, \"maxWires\": 2}}, \"coverings\":"
                    + " {\"c\": {\"kind\": \"tape\", \"innerMinMm\": 2, \"innerMaxMm\": 1}}}"))
        .hasSize(3)
        .allMatch(line -> line.contains(" is 2, more than its "));
  }

  private static String seal(double least) {
    return "\"parts\": {\"seals\": {\"s\": {\"family\": \"t\", \"insulationMinMm\": "
        + least
        + ", \"insulationMaxMm\": 1}}}";
  }

  @Test
  void usesTheFirstOfANameGivenTwice() {
    ReadHarness read =
        Said.read(
            """
            {"format": 1, "sketch": true,
            "wires": {"W1": {"label": "a", "cutMm": 1, "label": [{}]},
            "W1": {"label": "b"}, "W2": {"cutMm": -1}}}\
            """);
    assertThat(Said.problems(read))
        .containsExactly(
            "2:44 \"label\" is given twice in wires/W1, both in line 2; only the first is used."
                + " Delete or rename one of the two.",
            "3:1 \"W1\" is given twice in wires of this file, in line 2 and in line 3; only the"
                + " first is used. Delete or rename one of the two.",
            "3:39 cutMm of wires/W2 is -1 mm; it must be at least 0 mm. Correct the figure. A"
                + " length in millimetres.");
    assertThat(read.harness().wires().get("W1").label()).isEqualTo("a");
    assertThat(read.harness().wires()).containsOnlyKeys("W1", "W2");
    assertThat(read.problems().get(0).subject()).isEqualTo("wires/W1");
  }

  @Test
  void usesTheRestOfAnEntryWithAWrongField() {
    ReadHarness read =
        Said.read(
            "{\"format\": 1, \"sketch\": true, \"wires\": {\"W1\": {\"cutMm\": -5, \"colour\":"
                + " \"RD\", \"from\": 3, \"via\": [\"a\", 1, \"b\"], \"label\": \"\"}}}");
    assertThat(read.problems()).hasSize(3);
    assertThat(read.harness().wires().get("W1"))
        .satisfies(
            wire -> {
              assertThat(wire.cutMm()).isNull();
              assertThat(wire.from()).isNull();
              assertThat(wire.colour()).isEqualTo("RD");
              assertThat(wire.via()).containsExactly("a", "b");
              assertThat(wire.labelText()).isEmpty();
            });
  }

  @Test
  void showsAtMostFiveHundredOfAFile() {
    assertThat(said("\"wires\": {" + wires(500, "1") + "}")).hasSize(500);
    assertThat(said("\"wires\": {" + wires(700, "1") + "}"))
        .hasSize(501)
        .last()
        .asString()
        .contains("car.harness.json has 200 more such places.");
    assertThat(said("\"wires\": {" + wires(700, "{}") + "}")).hasSize(501);
  }

  private static String wires(int count, String value) {
    StringBuilder wires = new StringBuilder();
    for (int i = 0; i < count; i++) {
      wires.append(i == 0 ? "" : ", ").append("\"W").append(i).append("\": ").append(value);
    }
    return wires.toString();
  }

  @Test
  void aWireIsNoThinnerThanItsCopper() {
    String part =
        "{\"format\": 1, \"parts\": {\"wires\": {\"w\": {\"areaMm2\": 2.5, \"maxC\": 105,"
            + " \"outerMm\": %s}}}}";
    // a round of 2.5 mm2 is 1.7841 mm thick
    assertThat(Said.read(part.formatted("1.79")).problems()).isEmpty();
    assertThat(Said.problems(Said.read(part.formatted("1.78"))))
        .singleElement()
        .asString()
        .endsWith(
            "outerMm of parts/wires/w is 1.78, less than 2.5 mm2 of copper alone are thick. Correct"
                + " one of the two.");
  }
}
