package org.tugtest.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class HeatNetworkTest {
  private static final Insulated AWG20 = ShrunkBundleTest.AWG20;
  private static final Insulated AWG12 = ShrunkBundleTest.AWG12;
  private static final Percentage TENTH = Percentage.withPercentage(0.1);

  private static BundledWire wire(Insulated wire, double amps) {
    return new BundledWire(wire, 200, amps);
  }

  /** Wires of one kind, laid hexagonally about the first, and spread. */
  private static List<Placed> cluster(Insulated kind, double... amps) {
    List<Placed> placed = new ArrayList<>();
    Arrays.stream(amps).forEach(each -> placed.add(new Placed(wire(kind, each), 0, 0)));
    return Cluster.of(placed, HeatNetwork.SPREAD);
  }

  private static HeatNetwork bare(List<Placed> wires) {
    return new HeatNetwork(wires, Envelope.BARE, 60);
  }

  private static void assertRises(HeatNetwork network, double... reference) {
    List<Double> celsius = network.heat().celsius();
    for (int i = 0; i < reference.length; i++) {
      assertThat(celsius.get(i)).isCloseTo(reference[i], within(1e-3 * (reference[i] - 60)));
    }
  }

  /** Conductance of single pairs, from the reference's step tables. */
  @ParameterizedTest
  @CsvSource({
    "20, 20, 1.6464, 0.02, 0.052675", "20, 20, 1.6464, 0.03, 0.072426",
    "20, 20, 1.6464, 0.04, 0.089175", "20, 20, 1.47, 0.02, 0.165537",
    "20, 20, 1.47, 0.04, 0.202026", "12, 12, 3.0688, 0.03, 0.081114",
    "12, 20, 2.3576, 0.02, 0.042307", "20, 12, 2.3576, 0.04, 0.073597"
  })
  void pairsConductAsInTheReference(int one, int other, double apart, double gap, double watts) {
    Insulated first = one == 20 ? AWG20 : AWG12;
    Insulated second = other == 20 ? AWG20 : AWG12;
    assertThat(PairConductance.of(first, second, apart, gap)).isCloseTo(watts, TENTH);
  }

  /** Perimeter, angle, neighbours of the reference's step tables. */
  @Test
  void theShapeIsThatOfTheReference() {
    SectionShape one = new SectionShape(cluster(AWG20, 10));
    assertThat(one.diameterMm()).isCloseTo(1.47, TENTH);
    SectionShape three = new SectionShape(cluster(AWG20, 10, 10, 10));
    assertThat(three.pairs()).hasSize(3);
    assertThat(three.diameterMm()).isCloseTo(3.0422, TENTH);
    assertThat(three.outsideMm(0)).isCloseTo(3.1858, TENTH);
    assertThat(Math.toDegrees(three.exposed(2))).isCloseTo(240, within(1e-6));
    SectionShape seven = new SectionShape(cluster(AWG20, 8, 8, 8, 8, 8, 8, 8));
    assertThat(seven.pairs()).hasSize(12);
    assertThat(seven.outsideMm(0)).isZero();
    assertThat(seven.outsideMm(3)).isCloseTo(2.4161, TENTH);
    assertThat(Math.toDegrees(seven.exposed(3))).isCloseTo(180, within(1e-6));
    SectionShape row =
        new SectionShape(
            List.of(
                new Placed(wire(AWG20, 0), 0, 0),
                new Placed(wire(AWG20, 0), 2, 2),
                new Placed(wire(AWG20, 0), 1, 1)));
    assertThat(row.outsideMm(2)).isCloseTo(2 * Math.sqrt(2), within(1e-9));
    assertThat(row.diameterMm() * Math.PI)
        .isCloseTo(Math.PI * 1.47 + 4 * Math.sqrt(2), within(1e-9));
  }

  /** Temperatures of the reference's step tables, to 0.1 % of the rise. */
  @Test
  void temperaturesAreThoseOfTheReference() {
    assertRises(bare(cluster(AWG20, 10)), 91.639);
    assertRises(bare(cluster(AWG20, 10, 10, 10)), 117.711, 117.711, 117.711);
    assertRises(bare(cluster(AWG20, 8, 8, 8, 8, 8, 8, 8)), 134.442, 123.452, 123.452);
    assertRises(bare(cluster(AWG20, 12, 0, 0, 0, 0, 0, 0)), 107.845, 83.132);
    List<Placed> mixed =
        List.of(
            new Placed(wire(AWG12, 25), 0, 0),
            new Placed(wire(AWG20, 5), 2.3576, 0),
            new Placed(wire(AWG20, 0), 1.7827, 1.5428));
    assertRises(bare(mixed), 95.983, 79.760, 74.379);
  }

  /** Seven wires of 8 A in a tube of 6 mm bore and 0.5 mm wall, from the reference. */
  @Test
  void theTubeIsThatOfTheReference() {
    Conduit tube = Conduit.plastic(6, 0.5);
    HeatNetwork network = new HeatNetwork(cluster(AWG20, 8, 8, 8, 8, 8, 8, 8), tube, 60);
    assertRises(network, 145.886, 134.782);
    assertThat(network.solve().orElseThrow().wallC()).isCloseTo(110.994, within(0.06));
    assertThat(tube.gapTransfer(4.6144, 132.838, 110.994)).isCloseTo(66.823, TENTH);
    assertThat(tube.gapRadiation(4.6144, 132.838, 110.994)).isCloseTo(11.697, TENTH);
    Conduit.Passing passing = tube.passing(4.6144, 132.838, 60);
    assertThat(passing.wallC()).isCloseTo(110.994, within(0.06));
    assertThat(passing.outsideC()).isCloseTo(108.399, within(0.06));
  }

  /** The chart of MIL-W-5088L with the checked wire full and each other at a share of its heat. */
  @ParameterizedTest
  @CsvFileSource(resources = "bundle_published.csv", numLinesToSkip = 1)
  void thePublishedChartIsNearlyMet(
      String series, int awg, int count, double loading, String reading, double published) {
    Insulated kind = awg == 20 ? AWG20 : AWG12;
    double alone = FreeAir.amps(kind, 200, 60);
    double low = 0;
    double high = 1;
    for (int i = 0; i < 12; i++) {
      double scale = (low + high) / 2;
      double[] amps = new double[count];
      Arrays.fill(amps, scale * alone * Math.sqrt(loading / 100));
      amps[0] = scale * alone;
      if (bare(cluster(kind, amps)).heat().hottestC() <= 200) {
        low = scale;
      } else {
        high = scale;
      }
    }
    assertThat(low / published)
        .as("%s wires of %s at %s %%", count, awg, loading)
        .isBetween(awg == 20 ? 0.88 : 0.81, 1.06);
  }

  /** Laws: one wire is the single wire; heat in is heat out; nothing is cooler than the air. */
  @Test
  void itGoesTheRightWay() {
    double alone = FreeAir.celsius(AWG20, 12, 60).orElseThrow();
    assertThat(bare(cluster(AWG20, 12)).heat().celsius().get(0)).isCloseTo(alone, within(1e-5));
    Random random = new Random(9);
    for (int run = 0; run < 60; run++) {
      List<Placed> loose = new ArrayList<>();
      int count = 1 + random.nextInt(25);
      for (int i = 0; i < count; i++) {
        double area = 0.35 + 4 * random.nextDouble();
        double amps = random.nextInt(3) == 0 ? 0 : 3 * area * random.nextDouble();
        loose.add(new Placed(new BundledWire(ShrunkBundleTest.round(area), 125, amps), 0, 0));
      }
      List<Placed> wires = Cluster.of(loose, HeatNetwork.SPREAD);
      Envelope around = run % 2 == 0 ? Envelope.BARE : Conduit.plastic(20, 0.5);
      HeatNetwork network = new HeatNetwork(wires, around, 40);
      HeatNetwork.Round round = network.solve().orElseThrow();
      double in = 0;
      for (int i = 0; i < count; i++) {
        BundledWire wire = wires.get(i).wire();
        in += wire.amps() * wire.amps() * wire.wire().ohmPerM(round.celsius().get(i));
      }
      double out = round.outWatts().stream().mapToDouble(each -> each).sum();
      assertThat(out).isCloseTo(in, within(1e-6 * Math.max(1, in)));
      assertThat(round.celsius()).allMatch(each -> each >= 40 - 1e-6);
      List<Placed> more = new ArrayList<>(wires);
      int at = random.nextInt(count);
      BundledWire raised = more.get(at).wire();
      more.set(
          at,
          new Placed(raised.withAmps(raised.amps() + 1), more.get(at).xMm(), more.get(at).yMm()));
      assertThat(new HeatNetwork(more, around, 40).heat().hottestC())
          .isGreaterThanOrEqualTo(network.heat().hottestC() - 1e-6);
    }
  }

  @Test
  void whatRunsAwayHasNoSteadyTemperature() {
    assertThat(bare(cluster(AWG20, 60, 60, 60)).heat()).isEqualTo(BundleHeat.NONE);
    assertThat(bare(cluster(AWG20, 1e6)).heat().steady()).isFalse();
    assertThat(bare(List.of()).heat().steady()).isTrue();
    assertThat(bare(cluster(AWG20, 0, 0)).heat().hottestC()).isCloseTo(60, within(1e-6));
  }

  /** A thin wire so far from all others that it lies beside none, and not at the outside. */
  @Test
  void aWireThatLiesBesideNoneGivesItsHeatToTheNearest() {
    for (double amps : new double[] {0, 1}) {
      List<Placed> wires = new ArrayList<>();
      wires.add(new Placed(wire(AWG20, amps), 0, 0));
      for (int[] at : new int[][] {{-1, -1}, {-1, 1}, {1, -1}, {1, 1}}) {
        wires.add(new Placed(wire(AWG12, 15), 8 * at[0], 8 * at[1]));
      }
      List<Double> celsius = bare(wires).heat().celsius();
      assertThat(celsius).hasSize(5);
      double nearest = celsius.get(1);
      assertThat(nearest).isGreaterThan(65);
      if (amps == 0) {
        assertThat(celsius.get(0)).isCloseTo(nearest, within(1e-6));
      } else {
        assertThat(celsius.get(0)).isGreaterThan(nearest + 0.1);
      }
    }
  }

  /** Two such wires beside each other: both are joined, by the one that is nearer. */
  @Test
  void wiresThatLieBesideEachOtherAloneAreJoinedOnce() {
    List<Placed> wires = new ArrayList<>();
    wires.add(new Placed(wire(AWG20, 1), -0.7, 0));
    wires.add(new Placed(wire(AWG20, 1), 0.8, 0));
    for (int[] at : new int[][] {{-1, -1}, {-1, 1}, {1, -1}, {1, 1}}) {
      wires.add(new Placed(wire(AWG12, 15), 9 * at[0], 9 * at[1]));
    }
    assertThat(new SectionShape(wires).pairs())
        .contains(new SectionShape.Pair(0, 1))
        .filteredOn(pair -> pair.one() < 2 && pair.other() >= 2)
        .hasSize(1);
    assertThat(bare(wires).heat().celsius()).hasSize(6);
  }
}
