package org.tugtest.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class AwgTableTest {
  private static final double MM2_PER_CIRCULAR_MIL = 5.067075e-4;

  private static String smallest(double amps, double feet) {
    double circularMils = 10.75 * amps * 2 * feet / 1.2;
    for (String awg : List.of("14", "12", "10", "8", "6", "4")) {
      if (AwgTable.areaMm2(awg).orElseThrow().value() / MM2_PER_CIRCULAR_MIL >= circularMils) {
        return awg;
      }
    }
    return "none";
  }

  /**
   * 46 CFR 183.340(p), 2015 annual edition: two conductors, 12 V, 10 % drop, circular mils = 10.75
   * · A · 2 · feet / 1.2. The table is one size larger than its formula in two cells of 55.
   */
  @Test
  void areasGiveTheWireSizesOfTheBoatRules() {
    String[][] table = {
      {"14", "14", "14", "14", "14", "14", "14", "14", "12", "12", "12"},
      {"14", "14", "14", "12", "12", "12", "10", "10", "10", "10", "8"},
      {"14", "14", "12", "10", "10", "10", "8", "8", "8", "8", "8"},
      {"12", "12", "10", "10", "8", "8", "8", "8", "6", "6", "6"},
      {"10", "10", "10", "8", "8", "8", "6", "6", "6", "6", "4"},
    };
    int same = 0;
    for (int row = 0; row < table.length; row++) {
      for (int column = 0; column < table[row].length; column++) {
        same += smallest(5 * (row + 1), 10 + 5 * column).equals(table[row][column]) ? 1 : 0;
      }
    }
    assertThat(same).isEqualTo(53);
    assertThat(smallest(20, 10)).as("printed as 12").isEqualTo("14");
    assertThat(smallest(25, 10)).as("printed as 10").isEqualTo("12");
  }
}
