package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class CoilUnsuppressedTest {
  private static Judged judged(String elements, String wires) {
    return Judged.of(
        new CoilUnsuppressed(),
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "ECU": {"elements": {"drive": {"kind": "contact", "a": "A1", "b": "A2", "closedIn": ["on"]},
                                "pump-way": {"kind": "fuse", "a": "B1", "b": "B2", "ratingA": 5, "electronic": true},
                                "sense": {"kind": "signal", "pin": "C1", "type": "digital"}}},
           "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
           "K1": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80}%s}}},
         "wires": {"W1": {"from": "BAT:-", "to": "ECU:A2"}, "W2": {"from": "BAT:+", "to": "ECU:B1"}, %s}}
        """
            .formatted(elements, wires));
  }

  private static final String LOW_SIDE =
      "\"W3\": {\"from\": \"BAT:+\", \"to\": \"K1:86\"}, \"W4\": {\"from\": \"K1:85\", \"to\":"
          + " \"ECU:A1\"}";

  @Test
  void aCoilOnAnOutputIsFound() {
    Judged judged = judged("", LOW_SIDE);
    assertThat(judged.messages())
        .containsExactly(
            "coil K1.coil hangs on the electronic output ECU.drive and nothing across it takes its"
                + " surge");
    assertThat(judged.subjects()).containsExactly("devices/K1.coil");
  }

  @Test
  void aCoilOnAnElectronicFuseIsFound() {
    String highSide =
        "\"W3\": {\"from\": \"ECU:B2\", \"to\": \"K1:86\"}, \"W4\": {\"from\": \"K1:85\", \"to\":"
            + " \"BAT:-\"}";
    assertThat(judged("", highSide).messages()).hasSize(1);
  }

  @Test
  void aDiodeOrAResistorAcrossItIsFineWhereverItSits() {
    assertThat(
            judged(", \"d\": {\"kind\": \"diode\", \"a\": \"85\", \"b\": \"86\"}", LOW_SIDE)
                .findings())
        .isEmpty();
    assertThat(
            judged(
                    ", \"r\": {\"kind\": \"load\", \"a\": \"85\", \"b\": \"86\", \"ohms\": 680,"
                        + " \"use\": \"free\"}",
                    LOW_SIDE)
                .findings())
        .isEmpty();
    assertThat(
            judged(
                    ", \"r\": {\"kind\": \"load\", \"a\": \"85\", \"b\": \"86\", \"watts\": 3}",
                    LOW_SIDE)
                .findings())
        .hasSize(1);
  }

  @Test
  void aCoilOnASwitchIsFineAlthoughItSharesTheOutputsEarth() {
    String bySwitch =
        "\"W3\": {\"from\": \"BAT:+\", \"to\": \"SW:1\"}, \"W4\": {\"from\": \"SW:2\", \"to\":"
            + " \"K1:86\"}, \"W5\": {\"from\": \"K1:85\", \"to\": \"BAT:-\"}";
    Judged judged = judged("", bySwitch);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void anEndThatIsNoPinIsNotJudged() {
    Judged judged =
        Judged.of(
            new CoilUnsuppressed(),
            """
            {"format": 1, "devices": {"K1": {"pins": {"86": {}},
              "elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80}}}}}
            """);
    assertThat(judged.findings()).isEmpty();
  }
}
