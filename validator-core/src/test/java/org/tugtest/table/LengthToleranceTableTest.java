package org.tugtest.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;

class LengthToleranceTableTest {
  @Test
  void theBandsAreThoseOfTheTable() {
    // IPC/WHMA-A-620 table 11-1, draft B: to 0.3 m 25 mm, 1.5 m 50, 3 m 100, 7.5 m 150, then 5 %
    double[][] rows = {
      {0, 25},
      {300, 25},
      {300.1, 50},
      {1500, 50},
      {1500.1, 100},
      {3000, 100},
      {3000.1, 150},
      {7500, 150},
      {8000, 400},
      {20000, 1000}
    };
    for (double[] row : rows) {
      assertThat(LengthToleranceTable.plusMm(row[0]).value()).as("%s mm", row[0]).isEqualTo(row[1]);
    }
    assertThat(LengthToleranceTable.plusMm(1).basis()).isEqualTo(Basis.SOURCE);
  }
}
