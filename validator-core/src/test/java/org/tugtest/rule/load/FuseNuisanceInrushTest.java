package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Judged;

class FuseNuisanceInrushTest {
  /** A fuse of 10 A that may melt at 100 A²s from 20 A on, and after 10 s at 12 A. */
  private static final String OWN =
      "\"ratingA\": 10, \"times\": [{\"multiple\": 1.2, \"leastS\": 10, \"greatestS\": 600},"
          + " {\"multiple\": 2, \"leastS\": 0.25, \"greatestS\": 5}]";

  private static Judged judged(String fuse, String motor, String fan, String more) {
    return Judged.of(
        new FuseNuisanceInrush(),
        """
        {"format": 1, "sketch": true,
         "parts": {"fuses": {"f": {%s}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.001}}},
           "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}}},
           "PUMP": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", %s}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", %s}}}},
         "fitted": {"FB.f1": "f"},
         "wires": {"W1": {"from": "BAT:+", "to": "FB:in"}, "W2": {"from": "FB:1", "to": "S1"},
                   "W3": {"from": "S1", "to": "PUMP:1"}, "W4": {"from": "S1", "to": "FAN:1"},
                   "W5": {"from": "PUMP:2", "to": "BAT:-"}, "W6": {"from": "FAN:2", "to": "BAT:-"}}%s}
        """
            .formatted(fuse, motor, fan, more));
  }

  private static String inrush(double amps, double seconds) {
    return "\"amps\": 2, \"inrushA\": " + amps + ", \"inrushS\": " + seconds;
  }

  /** 40 A melt it in 100 / 1600 s at the least; 0.22 of that are 13.75 ms. */
  @Test
  void theLimitIsAShareOfTheLeastMeltingEnergy() {
    String still = "\"amps\": 0";
    assertThat(judged(OWN, inrush(40, 0.0137), still, "").findings()).isEmpty();
    assertThat(judged(OWN, inrush(40, 0.0137), still, "").coverage().judged()).isEqualTo(1);
    assertThat(judged(OWN, inrush(40, 0.01375), still, "").findings()).isEmpty();
    Judged over = judged(OWN, inrush(40, 0.0139), still, "");
    assertThat(over.messages())
        .containsExactly(
            "fuse FB.f1 (10 A) takes 22.2 A²s when PUMP.motor starts in state as drawn; at most 22"
                + " A²s, 0.22 of what may melt it");
    Finding finding = over.findings().get(0);
    assertThat(finding.level()).isEqualTo(Level.WARNING);
    assertThat(finding.basis()).isNotEqualTo(Basis.MEMORY);
    assertThat(finding.subjects()).contains(Subject.element("PUMP", "motor"));
  }

  /** 20 A each for 10 ms: alone 4 A²s, together 16; with 2 A less after 5 ms in one of them. */
  @Test
  void whatStartsTogetherIsAdded() {
    assertThat(judged(OWN, inrush(20, 0.013), "\"amps\": 2", "").findings()).isEmpty();
    Judged both = judged(OWN, inrush(20, 0.015), inrush(20, 0.015), "");
    assertThat(both.messages().get(0))
        .contains("24 A²s when FAN.motor and PUMP.motor start together");
    assertThat(judged(OWN, inrush(20, 0.015), inrush(20, 0.005), "").findings()).isEmpty();
  }

  @Test
  void whatDrewBeforeDoesNotStart() {
    String states =
        ", \"states\": {\"one\": {\"on\": [\"PUMP\"]}, \"both\": {\"on\": [\"PUMP\", \"FAN\"]%s}}";
    String own = "\"use\": \"internal\", ";
    Judged cold =
        judged(OWN, own + inrush(20, 0.015), own + inrush(20, 0.015), states.formatted(""));
    assertThat(cold.findings()).hasSize(1);
    assertThat(cold.findings().get(0).state()).isEqualTo("both");
    Judged after =
        judged(
            OWN,
            own + inrush(20, 0.015),
            own + inrush(20, 0.015),
            states.formatted(", \"from\": \"one\""));
    assertThat(after.findings()).isEmpty();
  }

  /** A long inrush under its rating wears nothing; at 12 A the fuse may open after 10 s. */
  @Test
  void aLongWeakInrushIsHeldAgainstTheTimeAtItsCurrent() {
    String times =
        OWN.replace("\"times\": [", "\"times\": [{\"multiple\": 1.1, \"leastS\": 360000}, ");
    assertThat(judged(times, inrush(9, 60), "\"amps\": 0", "").findings()).isEmpty();
    assertThat(judged(times, inrush(12, 2.1), "\"amps\": 0", "").findings()).isEmpty();
    assertThat(judged(times, inrush(12, 2.3), "\"amps\": 0", "").findings()).hasSize(1);
  }

  /** 3 milliohm of fuse and joints in the way of a big capacitor. */
  @Test
  void aCapacitorChargesThroughTheResistanceOfItsWay() {
    String none = "\"amps\": 2, \"capacitanceUf\": 100";
    String big = "\"amps\": 2, \"capacitanceUf\": 20000";
    assertThat(judged(OWN, none, "\"amps\": 0", "").findings()).isEmpty();
    assertThat(judged(OWN, big, "\"amps\": 0", "").findings()).hasSize(1);
  }

  @Test
  void whatIsNotKnownIsNotJudged() {
    Judged noTime = judged(OWN, "\"amps\": 2, \"inrushA\": 40", "\"amps\": 1", "");
    assertThat(noTime.findings()).isEmpty();
    assertThat(noTime.coverage().toString()).contains("a load gives inrushA and no inrushS");
    Judged noBand = judged("\"ratingA\": 10", inrush(40, 0.1), "\"amps\": 1", "");
    assertThat(noBand.coverage().toString()).contains("its least opening times are not known");
    assertThat(judged(OWN, "\"amps\": 2", "\"amps\": 1", "").coverage().subjects()).isZero();
  }

  @Test
  void timesFromMemoryMakeAWarningAndATeamMaySetTheShare() {
    String mini = "\"ratingA\": 10, \"style\": \"blade-mini\"";
    Judged judged = judged(mini, inrush(60, 0.01), "\"amps\": 0", "");
    assertThat(judged.findings()).hasSize(1);
    assertThat(judged.findings().get(0).basis()).isEqualTo(Basis.MEMORY);
    String half = ", \"limits\": {\"fuse-nuisance-inrush\": {\"share\": 0.6}}";
    assertThat(judged(mini, inrush(60, 0.01), "\"amps\": 0", half).findings()).isEmpty();
  }
}
