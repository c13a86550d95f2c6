package org.tugtest.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SectionShapeTest {
  private static final int DIRECTIONS = 720;

  private static Placed at(double outerMm, double amps, double x, double y) {
    Insulated wire = new Insulated(outerMm * 0.7, outerMm, 3, Insulated.PLASTIC);
    return new Placed(new BundledWire(wire, 125, amps), x, y);
  }

  /** A thick wire flush with thin ones, its middle deeper than theirs. */
  private static List<Placed> thickAmongThin(double amps) {
    List<Placed> wires = new ArrayList<>(List.of(at(7, amps, -2.3, 0)));
    for (int degrees : new int[] {0, 30, 60, 90, 120, 240, 270, 300, 330}) {
      double turn = Math.toRadians(degrees);
      wires.add(at(1.4, 0, 5.3 * Math.cos(turn), 5.3 * Math.sin(turn)));
    }
    return wires;
  }

  @Test
  void aThickWireThatComesOutAmongThinOnesGivesItsHeatOff() {
    SectionShape shape = new SectionShape(thickAmongThin(30));
    assertThat(shape.outsideMm(0)).isGreaterThan(4);
    List<Double> warm = new HeatNetwork(thickAmongThin(30), Envelope.BARE, 40).heat().celsius();
    List<Double> alone =
        new HeatNetwork(List.of(at(7, 30, 0, 0)), Envelope.BARE, 40).heat().celsius();
    assertThat(warm.get(0) - 40).isLessThan(3 * (alone.get(0) - 40));
  }

  /**
   * Held against a band of which every direction is tried: whoever carries it has of the outside.
   */
  @Test
  void whatABandWouldTouchHasOfTheOutside() {
    Random random = new Random(7);
    for (int round = 0; round < 60; round++) {
      List<Placed> wires = scattered(random, 2 + random.nextInt(25));
      SectionShape shape = new SectionShape(wires);
      int[] touched = new int[wires.size()];
      double around = 0;
      for (int i = 0; i < DIRECTIONS; i++) {
        double turn = 2 * Math.PI * (i + 0.5) / DIRECTIONS;
        int most = 0;
        for (int k = 1; k < wires.size(); k++) {
          most = reach(wires.get(k), turn) > reach(wires.get(most), turn) ? k : most;
        }
        touched[most]++;
        around += reach(wires.get(most), turn) * 2 * Math.PI / DIRECTIONS;
      }
      for (int k = 0; k < touched.length; k++) {
        if (touched[k] > 0) {
          assertThat(shape.outsideMm(k)).as("round %d wire %d", round, k).isPositive();
        }
      }
      assertThat(shape.diameterMm() * Math.PI / around).isBetween(0.9, 1.001);
    }
  }

  private static double reach(Placed wire, double turn) {
    return wire.xMm() * Math.cos(turn) + wire.yMm() * Math.sin(turn) + wire.radius();
  }

  private static List<Placed> scattered(Random random, int count) {
    List<Placed> wires = new ArrayList<>();
    for (int tries = 0; wires.size() < count && tries < 5000; tries++) {
      double outer = random.nextInt(4) == 0 ? 7 : 1.4 + random.nextDouble();
      double from = 10 * Math.sqrt(random.nextDouble());
      double turn = 2 * Math.PI * random.nextDouble();
      Placed next = at(outer, 0, from * Math.cos(turn), from * Math.sin(turn));
      if (wires.stream().allMatch(one -> one.distance(next) > one.radius() + next.radius())) {
        wires.add(next);
      }
    }
    return wires;
  }

  @Test
  void aThinWireIsBesideAThickOneOverAGapThatNothingLiesIn() {
    List<Placed> wires = new ArrayList<>(List.of(at(7, 0, 0, 0), at(1.4, 0, 5.6, 0)));
    assertThat(new SectionShape(wires).pairs()).contains(new SectionShape.Pair(0, 1));
    wires.add(at(1.2, 0, 4.2, 0));
    assertThat(new SectionShape(wires).pairs())
        .contains(new SectionShape.Pair(0, 2), new SectionShape.Pair(1, 2))
        .doesNotContain(new SectionShape.Pair(0, 1));
    wires.set(2, at(1.2, 0, 4.2, 3));
    assertThat(new SectionShape(wires).pairs()).contains(new SectionShape.Pair(0, 1));
    List<Placed> apart = List.of(at(7, 0, 0, 0), at(1.4, 0, 8, 0));
    assertThat(new SectionShape(apart).pairs()).isEmpty();
  }
}
