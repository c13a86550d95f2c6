package org.tugtest.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ShrunkBundleTest {
  static final Insulated AWG20 = new Insulated(0.97, 1.47, 32.41, 0.24);
  static final Insulated AWG12 = new Insulated(2.16, 2.74, 6.627, 0.24);
  private static final FreeAirAmps FREE_AIR = new FreeAirAmps();

  private static BundledWire wire(Insulated wire, double amps) {
    return new BundledWire(wire, 200, amps);
  }

  private static List<BundledWire> wires(Insulated wire, double... amps) {
    List<BundledWire> all = new ArrayList<>();
    for (double each : amps) {
      all.add(wire(wire, each));
    }
    return all;
  }

  private static ShrunkBundle bare(List<BundledWire> wires) {
    return new ShrunkBundle(wires, Envelope.BARE, 60, FREE_AIR);
  }

  /** The hottest temperature of the reference's step tables, to 0.1 % of the rise. */
  @Test
  void theHottestTemperatureIsThatOfTheReference() {
    assertRise(bare(wires(AWG20, 10)).heat().hottestC(), 91.639);
    assertRise(bare(wires(AWG20, 10, 10, 10)).heat().hottestC(), 120.999);
    assertRise(bare(wires(AWG20, 8, 8, 8, 8, 8, 8, 8)).heat().hottestC(), 129.690);
    assertRise(bare(wires(AWG20, 12, 0, 0, 0, 0, 0, 0)).heat().hottestC(), 122.798);
  }

  private static void assertRise(double actual, double reference) {
    assertThat(actual).isCloseTo(reference, within(1e-3 * (reference - 60)));
  }

  /** AWG 12 at 25 A, AWG 20 at 5 A, AWG 20 idle: 96.341, 97.505, 97.634; hottest 97.505. */
  @Test
  void mixedWiresAreThoseOfTheReference() {
    BundleHeat heat = bare(List.of(wire(AWG12, 25), wire(AWG20, 5), wire(AWG20, 0))).heat();
    assertRise(heat.celsius().get(0), 96.341);
    assertRise(heat.celsius().get(1), 97.505);
    assertRise(heat.celsius().get(2), 97.634);
    assertRise(heat.hottestC(), 97.505);
  }

  /** The allowed factor of the reference's table, reached by hot wires among idle ones. */
  @ParameterizedTest
  @CsvSource({
    "20, 5, 1, 0.8560",
    "20, 3, 3, 0.7158",
    "20, 7, 7, 0.5345",
    "20, 12, 12, 0.4282",
    "12, 7, 7, 0.5294",
    "12, 19, 19, 0.3403"
  })
  void theAllowedFactorIsThatOfTheReference(int awg, int count, int hot, double factor) {
    assertThat(factor(awg, count, hot)).isCloseTo(factor, within(1e-3 * factor));
  }

  /** The scale of the currents alone at which the hottest wire is at 200 °C. */
  private static double factor(int awg, int count, double hot) {
    Insulated kind = awg == 20 ? AWG20 : AWG12;
    double alone = FreeAir.amps(kind, 200, 60);
    double low = 0;
    double high = 1;
    for (int i = 0; i < 16; i++) {
      double scale = (low + high) / 2;
      List<BundledWire> wires = new ArrayList<>();
      for (int k = 0; k < count; k++) {
        double share = Math.max(0, Math.min(1, hot - k));
        wires.add(wire(kind, scale * alone * Math.sqrt(share)));
      }
      if (bare(wires).heat().hottestC() <= 200) {
        low = scale;
      } else {
        high = scale;
      }
    }
    return low;
  }

  /**
   * The bundle chart of MIL-W-5088L as digitised in 2023: so many wires full as the loading says
   * and the others idle. Never more than 4 % over it, and within 5 % where that is a wire or more.
   */
  @ParameterizedTest
  @CsvFileSource(resources = "bundle_published.csv", numLinesToSkip = 1)
  void thePublishedChartIsMet(
      String series, int awg, int count, double loading, String reading, double published) {
    double hot = count * loading / 100;
    double ratio = factor(awg, count, Math.max(1, hot)) / published;
    assertThat(ratio).as("%s wires at %s %%", count, loading).isLessThan(1.041);
    if (hot >= 1) {
      assertThat(ratio).as("%s wires at %s %%", count, loading).isGreaterThan(0.95);
    }
  }

  /**
   * With one wire full and each other at the loading's share of its heat, the other reading of the
   * chart, it errs to the safe side alone.
   */
  @ParameterizedTest
  @CsvFileSource(resources = "bundle_published.csv", numLinesToSkip = 1)
  void theOtherReadingIsOnTheSafeSide(
      String series, int awg, int count, double loading, String reading, double published) {
    Insulated kind = awg == 20 ? AWG20 : AWG12;
    double alone = FreeAir.amps(kind, 200, 60) * 1.041 * published;
    List<BundledWire> wires = new ArrayList<>(List.of(wire(kind, alone)));
    for (int i = 1; i < count; i++) {
      wires.add(wire(kind, alone * Math.sqrt(loading / 100)));
    }
    assertThat(bare(wires).heat().hottestC()).isGreaterThan(200);
  }

  /** What one wire may carry beside the others is what brings the bundle to its class. */
  @Test
  void theAllowedCurrentIsWhereTheBundleReachesItsClass() {
    List<BundledWire> wires = new ArrayList<>(wires(AWG20, 9, 9, 9, 0));
    double allowed = bare(wires).allowedAmps(3);
    assertThat(allowed).isBetween(16.0, 16.5);
    wires.set(3, wire(AWG20, 0.999 * allowed));
    assertThat(bare(wires).heat().celsius().get(3)).isBetween(185.0, 200.0);
    List<BundledWire> equal = wires(AWG20, 1, 1, 1, 1, 1, 1, 1);
    double factor = factor(20, 7, 7);
    double alone = FreeAir.amps(AWG20, 200, 60);
    List<BundledWire> full = new ArrayList<>();
    equal.forEach(wire -> full.add(wire.withAmps(alone * factor)));
    assertThat(bare(full).allowedAmps(0)).isCloseTo(alone * factor, within(1e-3 * alone));
  }

  @Test
  void oneWireAndIdleOnesAndWarmAirAreTaken() {
    assertThat(bare(wires(AWG20, 0, 0)).heat().celsius()).containsExactly(60.0, 60.0);
    assertThat(bare(wires(AWG20, 10)).allowedAmps(0)).isEqualTo(FreeAir.amps(AWG20, 200, 60));
    assertThat(bare(wires(AWG20, 100, 0)).heat().steady()).isFalse();
    assertThat(bare(wires(AWG20, 15, 15, 15, 15, 15)).allowedAmps(0)).isZero();
    ShrunkBundle hot = new ShrunkBundle(wires(AWG20, 5, 0), Envelope.BARE, 205, new FreeAirAmps());
    assertThat(hot.allowedAmps(0)).isZero();
    assertThat(hot.heat().hottestC()).isBetween(205.0, 215.0);
    ShrunkBundle far =
        new ShrunkBundle(wires(AWG20, 1e9, 0), Envelope.BARE, 260, new FreeAirAmps());
    assertThat(far.heat().steady()).isFalse();
    assertThat(bare(List.of()).heat().celsius()).isEmpty();
  }

  /**
   * Laws: warmer with air and with any current, cooler as a thicker wire; order does not matter.
   */
  @Test
  void itGoesTheRightWay() {
    Random random = new Random(5);
    for (int run = 0; run < 200; run++) {
      int count = 2 + random.nextInt(12);
      List<BundledWire> wires = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        double area = 0.35 + 5 * random.nextDouble();
        double amps = random.nextInt(3) == 0 ? 0 : 4 * area * random.nextDouble();
        wires.add(new BundledWire(round(area), 90 + 10 * random.nextInt(6), amps));
      }
      double air = 20 + 50 * random.nextDouble();
      FreeAirAmps known = new FreeAirAmps();
      BundleHeat heat = new ShrunkBundle(wires, Envelope.BARE, air, known).heat();
      assertThat(new ShrunkBundle(wires, Envelope.BARE, air + 5, known).heat().hottestC())
          .isGreaterThanOrEqualTo(heat.hottestC());
      List<BundledWire> turned = new ArrayList<>(wires);
      Collections.reverse(turned);
      assertThat(new ShrunkBundle(turned, Envelope.BARE, air, known).heat().hottestC())
          .isCloseTo(heat.hottestC(), within(1e-6));
      double least = heat.celsius().stream().mapToDouble(each -> each).min().orElseThrow();
      assertThat(least).isGreaterThanOrEqualTo(air);
      int at = random.nextInt(count);
      ShrunkBundle bundle = new ShrunkBundle(wires, Envelope.BARE, air, known);
      double allowed = bundle.allowedAmps(at);
      assertThat(allowed).isLessThanOrEqualTo(known.of(wires.get(at).wire(), bundle.limitC(), air));
      List<BundledWire> more = new ArrayList<>(wires);
      int other = (at + 1) % count;
      more.set(other, more.get(other).withAmps(1 + 1.5 * more.get(other).amps()));
      assertThat(new ShrunkBundle(more, Envelope.BARE, air, known).allowedAmps(at))
          .isLessThanOrEqualTo(
              allowed + 0.01 * known.of(wires.get(at).wire(), bundle.limitC(), air));
      assertThat(new ShrunkBundle(wires, Envelope.BARE, air + 5, known).allowedAmps(at))
          .isLessThanOrEqualTo(allowed);
      List<BundledWire> larger = new ArrayList<>(wires);
      Insulated own = wires.get(at).wire();
      Insulated thick =
          new Insulated(
              1.1 * own.conductorMm(),
              own.outerMm() + 0.1 * own.conductorMm(),
              own.milliohmPerM() / 1.21,
              own.insulation());
      larger.set(at, new BundledWire(thick, wires.get(at).limitC(), wires.get(at).amps()));
      assertThat(new ShrunkBundle(larger, Envelope.BARE, air, known).allowedAmps(at))
          .isGreaterThanOrEqualTo(allowed);
      List<BundledWire> better = new ArrayList<>();
      wires.forEach(one -> better.add(new BundledWire(one.wire(), one.limitC() + 10, one.amps())));
      assertThat(new ShrunkBundle(better, Envelope.BARE, air, known).allowedAmps(at))
          .isGreaterThanOrEqualTo(allowed);
    }
  }

  static Insulated round(double area) {
    double conductor = 1.25 * Math.sqrt(area);
    return new Insulated(conductor, conductor + 0.7, 18.1 / area, Insulated.PLASTIC);
  }
}
