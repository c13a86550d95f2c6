package org.tugtest.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BundleFactorTableTest {
  /** FAA AC 43.13-1B page 11-27, example 2: 8 wires at 60 % of capacity, read as 0.6. */
  @Test
  void worksTheExampleOfTheCircular() {
    assertThat(BundleFactorTable.factor(8, 60).value()).isCloseTo(0.6, within(0.01));
    double amps = 47 * 0.91 * BundleFactorTable.factor(8, 60).value();
    assertThat(amps).as("published 26 A").isCloseTo(26, within(0.6));
  }

  /** FAA AC 43.13-1B paragraph 11-69 example 2: 12 wires fully loaded, 0.43. */
  @Test
  void twelveWiresFullyLoaded() {
    assertThat(BundleFactorTable.factor(12, 100).value()).isCloseTo(0.43, within(1e-9));
  }

  @Test
  void oneWireIsFreeAndMoreAreLess() {
    assertThat(BundleFactorTable.factor(1, 20).value()).isEqualTo(1);
    assertThat(BundleFactorTable.factor(0, 20).value()).isEqualTo(1);
    assertThat(BundleFactorTable.factor(27, 20).value()).isBetween(0.52, 0.615);
    assertThat(BundleFactorTable.factor(500, 20).value()).isEqualTo(0.52);
    assertThat(BundleFactorTable.lastRead()).isEqualTo(20);
    assertThatThrownBy(() -> BundleFactorTable.factor(3, 33))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
