package org.tugtest.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.model.WirePart.Wall;

class OuterDiameterTableTest {
  @Test
  void rowsKeepTheirBasis() {
    Cited read = OuterDiameterTable.ofArea(0.75, Wall.THIN).orElseThrow();
    assertThat(read.value()).isEqualTo(1.9);
    assertThat(read.basis()).isEqualTo(Basis.SOURCE);
    Cited remembered = OuterDiameterTable.ofArea(0.35, Wall.THIN).orElseThrow();
    assertThat(remembered.value()).isEqualTo(1.4);
    assertThat(remembered.basis()).isEqualTo(Basis.MEMORY);
  }

  @Test
  void betweenRowsTheWeakerBasisCounts() {
    Cited between = OuterDiameterTable.ofArea(0.875, Wall.THIN).orElseThrow();
    assertThat(between.value()).isCloseTo(2.0, within(1e-9));
    assertThat(between.basis()).isEqualTo(Basis.DERIVED);
    assertThat(OuterDiameterTable.ofArea(0.4, Wall.THIN).orElseThrow().basis())
        .isEqualTo(Basis.MEMORY);
  }

  @Test
  void outsideTheRowsNothingIsSaid() {
    assertThat(OuterDiameterTable.ofArea(0.05, Wall.THIN)).isEmpty();
    assertThat(OuterDiameterTable.ofArea(500, Wall.THIN)).isEmpty();
    assertThat(OuterDiameterTable.ofGauge("30")).isEmpty();
  }

  @Test
  void gaugesHaveTheDataSheetsDiameter() {
    assertThat(OuterDiameterTable.ofGauge("18").orElseThrow().value()).isEqualTo(2.6);
  }

  /** ASTM B258: d = 0.127 mm · 92^((36 − n) / 39). */
  @Test
  void gaugesHaveTheAreaOfTheFormula() {
    double d = 0.127 * Math.pow(92, (36 - 18) / 39.0);
    assertThat(AwgTable.areaMm2("18").orElseThrow().value())
        .isCloseTo(Math.PI * d * d / 4, within(1e-5));
    assertThat(AwgTable.areaMm2("4/0").orElseThrow().value()).isCloseTo(107.219, within(1e-3));
    assertThat(AwgTable.areaMm2("5/0")).isEmpty();
  }
}
