package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WaiverExpiredTest {
  @Test
  void waiverThatCoversAFindingIsFine() {
    WaiverCheck check = WaiverCheck.of(WaiverCheck.DAY, WaiverCheck.waiver("connectors/R1:3", ""));
    assertThat(check.messages()).isEmpty();
    assertThat(check.coverage("waiver-idle").judged()).isEqualTo(1);
    assertThat(check.coverage("waiver-expired").subjects()).as("it has no date").isZero();
  }

  @Test
  void whatAnExpiredWaiverCoveredStandsAgain() {
    String sections = WaiverCheck.waiver("connectors/R1:3", ", \"until\": \"2026-03-01\"");
    assertThat(WaiverCheck.of(WaiverCheck.DAY, sections).standing())
        .doesNotContain("cavity-doubled");
    assertThat(WaiverCheck.of(WaiverCheck.DAY.plusDays(1), sections).standing())
        .contains("cavity-doubled", "waiver-expired")
        .doesNotContain("waiver-idle");
  }
}
