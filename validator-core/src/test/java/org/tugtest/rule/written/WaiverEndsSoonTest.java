package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WaiverEndsSoonTest {
  @Test
  void lastDayIsTheOneThatIsNamed() {
    String sections = WaiverCheck.waiver("connectors/R1:3", ", \"until\": \"2026-03-01\"");
    assertThat(WaiverCheck.of(WaiverCheck.DAY.minusDays(15), sections).messages()).isEmpty();
    assertThat(WaiverCheck.of(WaiverCheck.DAY.minusDays(14), sections).messages())
        .containsExactly(
            "waiver w for cavity-doubled at connectors/R1:3 ends on 2026-03-01, in 14 days");
    assertThat(WaiverCheck.of(WaiverCheck.DAY.minusDays(1), sections).messages())
        .containsExactly(
            "waiver w for cavity-doubled at connectors/R1:3 ends on 2026-03-01, in 1 day");
    assertThat(WaiverCheck.of(WaiverCheck.DAY, sections).messages())
        .containsExactly(
            "waiver w for cavity-doubled at connectors/R1:3 ends on 2026-03-01, today");
    assertThat(WaiverCheck.of(WaiverCheck.DAY.plusDays(1), sections).messages())
        .containsExactly(
            "waiver w for cavity-doubled at connectors/R1:3 ended on 2026-03-01, 1 day ago");
  }

  @Test
  void noticeIsASetting() {
    String sections =
        WaiverCheck.waiver("connectors/R1:3", ", \"until\": \"2026-03-01\"")
            + ", \"limits\": {\"waiver-ends-soon\": {\"days\": 3}}";
    assertThat(WaiverCheck.of(WaiverCheck.DAY.minusDays(4), sections).messages()).isEmpty();
    assertThat(WaiverCheck.of(WaiverCheck.DAY.minusDays(3), sections).messages()).hasSize(1);
  }
}
