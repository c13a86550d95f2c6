package org.tugtest.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.finding.Basis;
import org.tugtest.model.FusePart;

class FuseTimeTableTest {
  private static FuseBand mini(double ratingA) {
    return FuseTimeTable.of("blade-mini", ratingA).orElseThrow();
  }

  /** The points as the fuses' own standards and sheets print them, one of each column. */
  @ParameterizedTest
  @CsvSource({
    "blade-regular, 20, 1.35, 0.75, 600",
    "blade-regular, 20, 1.6, 0.25, 50",
    "blade-regular, 3, 2, 0.15, 5",
    "blade-regular, 40, 3.5, 0.04, 0.5",
    "blade-regular, 20, 6, 0.02, 0.1",
    "blade-mini, 7.5, 1.35, 0.75, 600",
    "blade-mini, 2, 2, 0.15, 5",
    "blade-mini, 30, 6, 0.02, 0.1",
    "blade-maxi, 80, 1.35, 60, 1800",
    "blade-maxi, 20, 2, 2, 60",
    "blade-maxi, 50, 3.5, 0.2, 7",
    "blade-maxi, 50, 6, 0.04, 1",
    "bolt-m5, 125, 2, 1, 15",
    "bolt-m5, 23, 3.5, 0.3, 5",
    "bolt-m8, 500, 1.35, 120, 1800",
    "bolt-m8, 40, 6, 0.1, 1"
  })
  void thePointsAreReproduced(
      String style, double rating, double multiple, double least, double greatest) {
    FuseBand band = FuseTimeTable.of(style, rating).orElseThrow();
    double amps = multiple * rating;
    assertThat(band.least().seconds(amps)).isCloseTo(least, within(1e-9 * least));
    assertThat(band.greatest().seconds(amps)).isCloseTo(greatest, within(1e-9 * greatest));
    assertThat(band.greatest().extrapolated(amps)).isFalse();
  }

  @Test
  void belowTheFirstGuaranteedMultipleItNeverOpensForCertain() {
    FuseBand band = mini(10);
    assertThat(band.greatest().seconds(13.49)).isInfinite();
    assertThat(band.greatest().seconds(13.5)).isEqualTo(600);
    assertThat(band.greatest().seconds(13.51)).isFinite();
    assertThat(band.surelyOpensA()).isCloseTo(13.5, within(1e-12));
    assertThat(band.least().seconds(11)).isEqualTo(360_000);
    assertThat(band.least().seconds(5)).isEqualTo(360_000);
  }

  /** Half way on both logarithmic axes between 5 s at 20 A and 0.5 s at 35 A. */
  @Test
  void betweenPointsItIsAPowerLaw() {
    double amps = Math.sqrt(20 * 35.0);
    assertThat(mini(10).greatest().seconds(amps)).isCloseTo(Math.sqrt(5 * 0.5), within(1e-9));
  }

  @Test
  void pastTheLastPointTheEnergyStaysAndItSaysSo() {
    OpeningCurve greatest = mini(10).greatest();
    assertThat(greatest.seconds(600)).isCloseTo(0.1 / 100, within(1e-12));
    assertThat(greatest.extrapolated(60)).isFalse();
    assertThat(greatest.extrapolated(60.1)).isTrue();
  }

  @Test
  void aTimeRestsOnTheWeakerOfItsPoints() {
    OpeningCurve greatest = mini(10).greatest();
    assertThat(greatest.basis(13.5)).isEqualTo(Basis.SOURCE);
    assertThat(greatest.basis(14)).isEqualTo(Basis.MEMORY);
    assertThat(greatest.basis(16)).isEqualTo(Basis.MEMORY);
    assertThat(greatest.basis(600)).isEqualTo(Basis.MEMORY);
  }

  @Test
  void ratingsAndStylesOutsideTheTableHaveNoBand() {
    assertThat(FuseTimeTable.of("blade-mini", 1)).isEmpty();
    assertThat(FuseTimeTable.of("blade-mini", 40)).isEmpty();
    assertThat(FuseTimeTable.of("cartridge", 10)).isEmpty();
  }

  @Test
  void aPartsOwnTimesAreGiven() {
    FuseBand band =
        FuseBand.of(
            10,
            List.of(
                new FusePart.Time(6, 0.01, 0.08),
                new FusePart.Time(1.1, 100_000.0, null),
                new FusePart.Time(2, null, 4.0)));
    assertThat(band.greatest().seconds(20)).isEqualTo(4);
    assertThat(band.greatest().seconds(60)).isEqualTo(0.08);
    assertThat(band.greatest().basis(20)).isEqualTo(Basis.GIVEN);
    assertThat(band.greatest().basis(30)).isEqualTo(Basis.DERIVED);
    assertThat(band.surelyOpensA()).isEqualTo(20);
    assertThat(band.least().points()).hasSize(2);
  }

  @Test
  void timesOfWhichOneIsNothingOrIsGivenTwiceStayUsable() {
    FuseBand band =
        FuseBand.of(
            10,
            List.of(
                new FusePart.Time(2, 0.0, 0.0),
                new FusePart.Time(2, 0.5, 5.0),
                new FusePart.Time(4, 0.1, 9.0)));
    assertThat(band.greatest().seconds(20)).isEqualTo(5);
    assertThat(band.greatest().seconds(40)).isEqualTo(5);
    assertThat(band.greatest().seconds(80)).isPositive();
    assertThat(band.least().seconds(20)).isEqualTo(0.1);
    assertThat(FuseBand.of(10, List.of()).greatest().seconds(1000)).isInfinite();
    assertThat(FuseBand.of(10, List.of()).least().seconds(1000)).isZero();
  }

  /** A law: whatever a part says, more current never opens a fuse later. */
  @Test
  void moreCurrentNeverTakesLonger() {
    Random random = new Random(7);
    for (int run = 0; run < 300; run++) {
      List<FusePart.Time> times =
          random
              .ints(1 + random.nextInt(5), 0, 6)
              .mapToObj(
                  i -> new FusePart.Time(1 + i / 2.0, random.nextDouble(), 5 * random.nextDouble()))
              .toList();
      FuseBand band = FuseBand.of(10, times);
      double least = Double.POSITIVE_INFINITY;
      double greatest = Double.POSITIVE_INFINITY;
      for (double amps = 1; amps < 400; amps *= 1.07) {
        assertThat(band.least().seconds(amps)).isLessThanOrEqualTo(least * (1 + 1e-12));
        assertThat(band.greatest().seconds(amps)).isLessThanOrEqualTo(greatest * (1 + 1e-12));
        least = band.least().seconds(amps);
        greatest = band.greatest().seconds(amps);
      }
    }
  }

  /** ISO 8820-3:2015 scope: blade fuses break 1000 A. */
  @Test
  void bladesBreakAThousandAmperes() {
    Cited blade = FuseBreakingTable.breakingCapacityA("blade-maxi").orElseThrow();
    assertThat(blade.value()).isEqualTo(1000);
    assertThat(blade.basis()).isEqualTo(Basis.SOURCE);
    assertThat(FuseBreakingTable.breakingCapacityA("bolt-m8").orElseThrow().basis())
        .isEqualTo(Basis.MEMORY);
    assertThat(FuseBreakingTable.breakingCapacityA("home-made")).isEmpty();
  }
}
