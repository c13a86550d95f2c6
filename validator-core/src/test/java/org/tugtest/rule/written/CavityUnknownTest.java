package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.rule.Judged;

class CavityUnknownTest {
  private static Judged judged(String wires) {
    return Judged.of(
        new CavityUnknown(),
        """
        {"format": 1, "sketch": true,
         "parts": {"housings": {
           "h3": {"side": "socket", "rows": [["1", "2"], ["3", ""]]},
           "big": {"side": "socket", "rows": [["A1", "A2", "A3", "A4", "A5", "A6", "A7"],
                                              ["B1", "B2", "B3", "B4", "B5", "B6", "B7"]]},
           "bad": {"side": "socket", "rows": [["1", 2]]}}},
         "connectors": {"R1": {"housing": "h3"}, "R2": {"housing": "big"},
                        "R3": {"housing": "gone"}, "R4": {"housing": "bad"}},
         "devices": {"BAT": {"pins": {"+": {}, "-": {}}}, "LAMP": {}, "ECU": {"type": "gone"}},
         "wires": {%s}}
        """
            .formatted(wires));
  }

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(id, from, to);
  }

  @Test
  void whatIsListedOrCannotBeKnownIsFine() {
    Judged judged =
        judged(
            String.join(
                ", ",
                wire("W1", "R1:3", "BAT:+"),
                wire("W2", "R3:99", "LAMP:7"),
                wire("W3", "ECU:1", "R2:B7")));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void cavityThatTheHousingLacksIsReportedWithThoseItHas() {
    Judged judged = judged(wire("W1", "R1:4", "BAT:+"));
    assertThat(judged.messages())
        .containsExactly("wire W1 ends in cavity 4 of R1, but its housing h3 has no such cavity");
    Finding finding = judged.findings().get(0);
    assertThat(finding.remedy())
        .isEqualTo("did you mean 1, 2 or 3? R1 has the cavities 1, 2 and 3");
    assertThat(finding.at())
        .extracting(place -> place.pointer())
        .containsExactly("/wires/W1/from", "/parts/housings/h3/rows");
  }

  @Test
  void ofABigHousingOnlyTheNearestAreShown() {
    assertThat(judged(wire("W1", "R2:B77", "BAT:+")).findings().get(0).remedy())
        .isEqualTo("did you mean B7?");
    assertThat(judged(wire("W1", "R2:119", "BAT:+")).findings().get(0).remedy())
        .isEqualTo("R2 has the cavities A1 to B7");
  }

  @Test
  void pinThatTheDeviceLacksIsOneFindingForAllWires() {
    Judged judged = judged(wire("W1", "R1:1", "BAT:x") + ", " + wire("W2", "BAT:x", "R1:2"));
    assertThat(judged.messages())
        .containsExactly("wires W1 and W2 end on pin x of BAT, which has no such pin");
    assertThat(judged.subjects()).containsExactly("wires/W1");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void endThatIsNoContactIsNotJudgedHere() {
    Judged judged = judged(wire("W1", "R1:1", "BAT") + ", \"W2\": {\"from\": \"R1:2\"}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(2);
  }

  @Test
  void housingThatIsNotWrittenRightlyProvesNothing() {
    Judged judged = judged(wire("W1", "R4:2", "BAT:+"));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("what it ends on is not written rightly");
  }
}
