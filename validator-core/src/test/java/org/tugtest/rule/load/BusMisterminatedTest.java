package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class BusMisterminatedTest {
  private static String unit(String id, String more) {
    return "\""
        + id
        + "\": {\"elements\": {\"can-h\": {\"kind\": \"signal\", \"pin\": \"1\", \"type\":"
        + " \"can-high\"}, \"can-l\": {\"kind\": \"signal\", \"pin\": \"2\", \"type\":"
        + " \"can-low\"}"
        + more
        + "}}";
  }

  private static String end(double ohms) {
    return ", \"end\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", \"ohms\": "
        + ohms
        + ", \"use\": \"free\"}";
  }

  private static Judged judged(String one, String other, String wires) {
    return Judged.of(
        new BusMisterminated(),
        "{\"format\": 1, \"sketch\": true, \"devices\": {"
            + unit("ECU", one)
            + ", "
            + unit("DASH", other)
            + "}, \"wires\": {"
            + wires
            + "}}");
  }

  private static final String STRAIGHT =
      "\"W1\": {\"from\": \"ECU:1\", \"to\": \"DASH:1\"}, \"W2\": {\"from\": \"ECU:2\", \"to\":"
          + " \"DASH:2\"}";

  @Test
  void twoEndsOf120OhmAreFine() {
    Judged judged = judged(end(120), end(120), STRAIGHT);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void theLimitsAre54And66Ohm() {
    assertThat(judged(end(108), end(108), STRAIGHT).findings()).isEmpty();
    assertThat(judged(end(107.9), end(107.9), STRAIGHT).messages())
        .containsExactly(
            "the CAN bus of DASH and ECU measures 53.95 ohm between its two wires; 60 are wanted,"
                + " at least 54");
    assertThat(judged(end(132), end(132), STRAIGHT).findings()).isEmpty();
    assertThat(judged(end(132.1), end(132.1), STRAIGHT).messages())
        .containsExactly(
            "the CAN bus of DASH and ECU measures 66.05 ohm between its two wires; 60 are wanted,"
                + " at most 66");
  }

  @Test
  void oneEndAloneAndNoEndAreFound() {
    assertThat(judged(end(120), "", STRAIGHT).messages())
        .containsExactly(
            "the CAN bus of DASH and ECU measures 120 ohm between its two wires; 60 are wanted, at"
                + " most 66");
    assertThat(judged("", "", STRAIGHT).messages())
        .containsExactly("the CAN bus of DASH and ECU has no resistor between its two wires");
  }

  @Test
  void anEndInTwoHalvesCountsAsOne() {
    String split =
        ", \"r1\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"mid\", \"ohms\": 60, \"use\":"
            + " \"free\"}, \"r2\": {\"kind\": \"load\", \"a\": \"mid\", \"b\": \"2\", \"ohms\": 60,"
            + " \"use\": \"free\"}";
    assertThat(judged(split, end(120), STRAIGHT).findings()).isEmpty();
  }

  @Test
  void joinedAndExchangedWiresAreFound() {
    String joined = STRAIGHT + ", \"W3\": {\"from\": \"ECU:1\", \"to\": \"DASH:2\"}";
    assertThat(judged(end(120), end(120), joined).messages())
        .containsExactly("CAN high and CAN low of DASH and ECU are one circuit");
    String crossed =
        "\"W1\": {\"from\": \"ECU:1\", \"to\": \"DASH:2\"}, \"W2\": {\"from\": \"ECU:2\", \"to\":"
            + " \"DASH:1\"}";
    assertThat(judged(end(120), end(120), crossed).messages())
        .containsExactly("ECU has CAN high and CAN low the other way round than DASH");
  }

  @Test
  void aBusWithoutWiresIsNotJudged() {
    Judged judged = judged(end(120), end(120), "\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\"}");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(2);
  }

  @Test
  void twoBusesOfOneDeviceAreToldApartByName() {
    String second =
        end(120)
            + ", \"can2-h\": {\"kind\": \"signal\", \"pin\": \"3\", \"type\": \"can-high\"},"
            + " \"can2-l\": {\"kind\": \"signal\", \"pin\": \"4\", \"type\": \"can-low\"}";
    String wires =
        STRAIGHT
            + ", \"W3\": {\"from\": \"ECU:3\", \"to\": \"LOG:1\"}, \"W4\": {\"from\": \"ECU:4\","
            + " \"to\": \"LOG:2\"}";
    Judged judged = judged(second, end(120), wires);
    assertThat(judged.messages())
        .containsExactly("the CAN bus of ECU has no resistor between its two wires");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }
}
