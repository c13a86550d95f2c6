package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Judged;

class ContactOneSidedTest {
  private static Judged inline(String wires) {
    return inline("", wires);
  }

  private static Judged inline(String more, String wires) {
    return Judged.of(
        new ContactOneSided(),
        """
        {"format": 1, %s "connectors": {"X1": {"mates": "X2"}, "X2": {}}, "wires": %s}
        """
            .formatted(more, wires));
  }

  private static Judged device(String device, String wires) {
    return Judged.of(
        new ContactOneSided(),
        """
        {"format": 1, "parts": {"housings": {"pin": {"side": "pin", "rows": [["3", "2", "1"]]}}},
         "devices": {"LAMP": %s},
         "connectors": {"X1": {"mates": "LAMP"}}, "wires": %s}
        """
            .formatted(device, wires));
  }

  private static final String BULB =
      """
      {"ports": {"plug": {"housing": "pin", "pins": {"1": "56"}}},
       "elements": {"bulb": {"kind": "load", "a": "56", "b": "2", "watts": 5}}}
      """;

  @Test
  void wiredOnBothHalvesIsFineAndCountedOnEach() {
    Judged judged =
        inline(
            """
            {"W1": {"from": "A:1", "to": "X1:1"}, "W2": {"from": "X2:1", "to": "B:1"}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void theEmptyCavityIsNamedAndTheWireIsThePlace() {
    Judged judged = inline("{\"W1\": {\"from\": \"A:1\", \"to\": \"X1:1\"}}");
    assertThat(judged.messages())
        .containsExactly("X1:1 (W1) is wired, but X2:1 on the other half is empty");
    Finding finding = judged.findings().get(0);
    assertThat(finding.level()).isEqualTo(Level.ERROR);
    assertThat(finding.at().get(0).pointer()).isEqualTo("/wires/W1/to");
    assertThat(finding.subjects())
        .containsExactly(
            Subject.connector("X1"),
            Subject.cavity("X1", "1"),
            Subject.cavity("X2", "1"),
            Subject.wire("W1"));
  }

  @Test
  void oneFindingForEachHalfWithItsList() {
    Judged judged =
        inline(
            """
            {"W1": {"from": "A:1", "to": "X1:1"}, "W2": {"from": "A:2", "to": "X1:2"},
             "W3": {"from": "X2:3", "to": "B:1"}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "X1:1 (W1) and X1:2 (W2) are wired, but the cavities that meet them on X2 are empty",
            "X2:3 (W3) is wired, but X1:3 on the other half is empty");
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void aCavityThatTheOtherHalfHasNotIsReported() {
    Judged judged =
        inline(
            """
            "parts": {"housings": {"two": {"side": "pin", "rows": [["1", "2"]]}}},
            """,
            "{\"W1\": {\"from\": \"A:1\", \"to\": \"X1:3\"}}");
    assertThat(judged.messages())
        .containsExactly("X1:3 (W1) is wired, but X2:3 on the other half is empty");
    Judged known =
        Judged.of(
            new ContactOneSided(),
            """
            {"format": 1, "parts": {"housings": {"two": {"side": "pin", "rows": [["1", "2"]]}}},
             "connectors": {"X1": {"mates": "X2"}, "X2": {"housing": "two"}},
             "wires": {"W1": {"from": "A:1", "to": "X1:3"}}}
            """);
    assertThat(known.messages()).containsExactly("X1:3 (W1) is wired, but X2 has no cavity there");
  }

  @Test
  void anAdaptorJoinsWhatItSays() {
    String json =
        """
        {"format": 1,
         "connectors": {"X1": {"mates": "X2", "pinMap": {"1": "A"}}, "X2": {}},
         "wires": {"W1": {"from": "S1", "to": "X1:1"}, "W2": {"from": "X2:%s", "to": "S2"}},
         "splices": {"S1": {}, "S2": {}}}
        """;
    assertThat(Judged.of(new ContactOneSided(), json.formatted("A")).messages()).isEmpty();
    assertThat(Judged.of(new ContactOneSided(), json.formatted("B")).messages())
        .containsExactly(
            "X1:1 (W1) is wired, but X2:A on the other half is empty",
            "X2:B (W2) is wired, but X1:B on the other half is empty");
  }

  @Test
  void aPinThatAnElementUsesIsFineUnderItsOwnName() {
    Judged judged =
        device(
            BULB,
            """
            {"W1": {"from": "S1", "to": "X1:1"}, "W2": {"from": "S1", "to": "X1:2"}}
            """);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void aWireOnAPinThatNothingUsesIsReportedAndUnusedPinsAreNot() {
    Judged judged =
        device(
            BULB,
            """
            {"W1": {"from": "S1", "to": "X1:1"}, "W3": {"from": "S1", "to": "X1:3"}}
            """);
    assertThat(judged.messages())
        .containsExactly("X1:3 (W3) is wired, but no element of the device uses its pin LAMP:3");
  }

  @Test
  void aDeviceThatDescribesNothingIsNotJudged() {
    Judged judged =
        device(
            "{\"ports\": {\"plug\": {\"housing\": \"pin\"}}}",
            "{\"W1\": {\"from\": \"S1\", \"to\": \"X1:1\"}}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsEntry(
            "the device names no elements that could use a pin",
            List.of(Subject.cavity("X1", "1")));
  }

  @Test
  void anUnreadFileMayHoldTheOtherWire() {
    Judged judged =
        inline("\"uses\": [\"b.json\"],", "{\"W1\": {\"from\": \"A:1\", \"to\": \"X1:1\"}}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }

  @Test
  void onALoomAsFoundItIsAWarning() {
    Judged judged =
        inline(
            "\"loom\": {\"id\": \"donor\", \"stage\": \"found\"},",
            "{\"W1\": {\"from\": \"A:1\", \"to\": \"X1:1\"}}");
    assertThat(judged.findings()).extracting(Finding::level).containsExactly(Level.WARNING);
  }

  @Test
  void oneContactMayBeSwitchedOff() {
    Judged judged =
        inline(
            """
            "limits": {"contact-one-sided": {"places": {"connectors/X1:1": {"level": "off"}}}},
            """,
            """
            {"W1": {"from": "A:1", "to": "X1:1"}, "W2": {"from": "A:2", "to": "X1:2"}}
            """);
    assertThat(judged.messages())
        .containsExactly("X1:2 (W2) is wired, but X2:2 on the other half is empty");
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }
}
