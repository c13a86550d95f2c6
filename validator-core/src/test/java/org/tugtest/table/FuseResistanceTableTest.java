package org.tugtest.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;

class FuseResistanceTableTest {
  /** Maker data for a regular blade as quoted: 10 A, 7.7 mohm cold, 109 mV at its rating. */
  @Test
  void aRowAsPrinted() {
    assertThat(FuseResistanceTable.coldMilliohm(10, "blade-regular").value()).isEqualTo(7.7);
    assertThat(FuseResistanceTable.loadedMilliohm(10, "blade-regular").value() * 10)
        .isCloseTo(109, within(1e-9));
    assertThat(FuseResistanceTable.loadedMilliohm(1, "blade-regular").basis())
        .isEqualTo(Basis.SOURCE);
  }

  /** W14: a workshop page gives 130 mA a millivolt for a regular blade of 10 A. */
  @Test
  void w14CurrentFromMillivolts() {
    assertThat(1 / FuseResistanceTable.coldMilliohm(10, "blade-regular").value())
        .isCloseTo(0.130, within(1e-3));
  }

  /** The maker's own figure of a mini of 7.5 A, 10.85 mohm, agrees with the regular's line. */
  @Test
  void aStyleWithAFigureOfItsOwn() {
    assertThat(FuseResistanceTable.coldMilliohm(7.5, "blade-mini").value()).isEqualTo(10.85);
    assertThat(FuseResistanceTable.coldMilliohm(7.5, null).value()).isCloseTo(10.85, within(0.1));
  }

  @Test
  void beyondTheRowsItGoesWithOneOverTheRating() {
    assertThat(FuseResistanceTable.loadedMilliohm(100, "bolt-m8").value())
        .isCloseTo(1.09, within(1e-9));
    assertThat(FuseResistanceTable.coldMilliohm(0.5, null).value()).isCloseTo(246, within(1e-9));
    assertThat(FuseResistanceTable.loadedMilliohm(100, "bolt-m8").basis()).isEqualTo(Basis.DERIVED);
  }

  /** At its rating every fuse up to 100 A drops 0.109 to 0.18 V. */
  @Test
  void dropAtTheRating() {
    for (double rating = 1; rating <= 100; rating *= 1.1) {
      double millivolts = FuseResistanceTable.loadedMilliohm(rating, "blade-mini").value() * rating;
      assertThat(millivolts).isBetween(108.9, 180.0);
    }
  }
}
