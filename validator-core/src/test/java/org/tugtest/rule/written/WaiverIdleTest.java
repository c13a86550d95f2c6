package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tugtest.check.Selection;
import org.tugtest.finding.Finding;

class WaiverIdleTest {
  @Test
  void waiverAtAnotherPlaceIsIdle() {
    WaiverCheck check = WaiverCheck.of(WaiverCheck.DAY, WaiverCheck.waiver("wires/W1", ""));
    assertThat(check.messages())
        .containsExactly("waiver w covers nothing: cavity-doubled finds nothing at wires/W1");
    assertThat(check.found())
        .extracting(Finding::remedy)
        .containsExactly(
            "delete it, or correct its \"at\"; what the rule finds is at connectors/R1:3");
  }

  @Test
  void waiverForAStateInWhichNothingIsFoundIsIdle() {
    assertThat(
            WaiverCheck.of(
                    WaiverCheck.DAY,
                    WaiverCheck.waiver("connectors/R1:3", ", \"state\": \"night\"")
                        + ", \"states\": {\"night\": {}}")
                .messages())
        .containsExactly(
            "waiver w covers nothing: cavity-doubled finds nothing at connectors/R1:3 in state"
                + " night, only in others");
  }

  @Test
  void secondWaiverForTheSameIsIdle() {
    assertThat(
            WaiverCheck.of(
                    WaiverCheck.DAY,
                    """
                "waivers": {
                  "a": {"rule": "cavity-doubled", "at": "connectors/R1:3", "reason": "as found it"},
                  "b": {"rule": "cavity-doubled", "at": "connectors/R1:3", "reason": "as found it"}}
                """)
                .messages())
        .containsExactly(
            "waiver b covers nothing: cavity-doubled finds nothing at connectors/R1:3 that no"
                + " other waiver covers");
  }

  @Test
  void waiverOfARuleThatDidNotRunIsNotJudged() {
    WaiverCheck check =
        WaiverCheck.of(
            WaiverCheck.DAY,
            new Selection(Set.of(), Set.of("cavity-doubled")),
            WaiverCheck.waiver("connectors/R1:9", ""));
    assertThat(check.messages()).isEmpty();
    assertThat(check.coverage("waiver-idle").missing()).containsOnlyKeys("its rule did not run");
  }

  @Test
  void waiverAtAPlaceThatItsRuleCouldNotJudgeIsNotJudged() {
    WaiverCheck check =
        WaiverCheck.of(
            WaiverCheck.DAY,
            """
            "waivers": {"w": {"rule": "cavity-doubled", "at": "connectors/R1:3",
                              "reason": "as the donor has it"}},
            "limits": {"cavity-doubled": {"places": {"connectors/R1:3": {"level": "off"}}}}
            """);
    assertThat(check.messages()).isEmpty();
    assertThat(check.coverage("waiver-idle").missing())
        .containsOnlyKeys("its rule could not judge its place");
  }

  @Test
  void waiverBesideAnUnreadFileIsNotJudged() {
    WaiverCheck check =
        WaiverCheck.of(
            WaiverCheck.DAY, WaiverCheck.waiver("wires/W1", "") + ", \"uses\": [\"gone.json\"]");
    assertThat(check.messages()).isEmpty();
  }

  @Test
  void waiverWithoutAReasonCoversNothingAndIsAnotherRulesMatter() {
    WaiverCheck check =
        WaiverCheck.of(
            WaiverCheck.DAY,
            "\"waivers\": {\"w\": {\"rule\": \"cavity-doubled\", \"at\": \"connectors/R1:3\"}}");
    assertThat(check.messages()).isEmpty();
    assertThat(check.standing()).contains("cavity-doubled", "shape-wrong");
  }
}
