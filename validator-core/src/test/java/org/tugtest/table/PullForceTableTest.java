package org.tugtest.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PullForceTableTest {
  private static double ofGauge(String awg) {
    return PullForceTable.ofGauge(awg).orElseThrow().newton().value();
  }

  /** 114-2157 rev G figure 7 and 114-2161 rev F figure 4, newton and pounds side by side. */
  @Test
  void newtonsAreThePoundsPrintedBesideThem() {
    double newtonPerPound = 4.448;
    Object[][] printed = {
      {"26", 3},
      {"24", 5},
      {"22", 8},
      {"20", 13},
      {"18", 20},
      {"16", 30},
      {"14", 50},
      {"12", 70},
      {"10", 80},
      {"8", 90},
      {"6", 100},
      {"4", 140},
      {"2", 180},
      {"1/0", 250},
      {"2/0", 300}
    };
    for (Object[] row : printed) {
      double pounds = ((Number) row[1]).doubleValue();
      assertThat(ofGauge((String) row[0]))
          .as("AWG " + row[0])
          .isCloseTo(pounds * newtonPerPound, org.assertj.core.data.Percentage.withPercentage(0.5));
    }
  }

  @Test
  void anAreaTakesTheGaugeBelowIt() {
    double area = AwgTable.areaMm2("20").orElseThrow().value();
    assertThat(PullForceTable.ofArea(area).orElseThrow().awg()).isEqualTo("20");
    assertThat(PullForceTable.ofArea(area - 1e-6).orElseThrow().awg()).isEqualTo("22");
    assertThat(PullForceTable.ofArea(area + 1e-6).orElseThrow().awg()).isEqualTo("20");
    assertThat(PullForceTable.ofArea(1000).orElseThrow().awg()).isEqualTo("2/0");
  }

  @Test
  void knowsNothingBelowTheTable() {
    assertThat(PullForceTable.ofArea(0.1)).isEmpty();
    assertThat(PullForceTable.ofArea(0)).isEmpty();
    assertThat(PullForceTable.ofGauge("30")).isEmpty();
  }
}
