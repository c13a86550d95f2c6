package org.tugtest.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tugtest.table.EqualCircleTable;

class CirclePackingTest {
  private static final double[] WIRES = {1.1, 1.3, 1.5, 1.8, 2.0, 2.3, 2.8, 4.4, 9.4};

  private static List<Double> equal(int count, double diameter) {
    return new ArrayList<>(Collections.nCopies(count, diameter));
  }

  private static List<Double> mixed(int count, Random random) {
    List<Double> diameters = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      diameters.add(WIRES[random.nextInt(WIRES.length)]);
    }
    return diameters;
  }

  @Test
  void equalCirclesAreNeverTighterThanPublishedAndWithinSixPercent() {
    for (int count = 1; count <= EqualCircleTable.MOST; count++) {
      double published = EqualCircleTable.ratio(count).orElseThrow().value();
      Packing packing = CirclePacking.of(equal(count, 1.7));
      double ratio = packing.diameterMm() / 1.7;
      // the table is printed to four decimals
      assertThat(ratio).as("%d circles", count).isGreaterThan(published - 6e-5);
      assertThat(ratio).as("%d circles", count).isLessThan(1.06 * published);
      isPacked(packing, equal(count, 1.7));
    }
  }

  /** No circle overlaps another or the bound, checked pair by pair. */
  private static void isPacked(Packing packing, List<Double> diameters) {
    List<Packing.Circle> circles = packing.circles();
    assertThat(circles).hasSameSizeAs(diameters);
    double bound = packing.diameterMm() / 2;
    for (int i = 0; i < circles.size(); i++) {
      Packing.Circle one = circles.get(i);
      assertThat(one.diameterMm()).isEqualTo(diameters.get(i));
      double out = Math.sqrt(one.x() * one.x() + one.y() * one.y()) + one.diameterMm() / 2;
      assertThat(out).isLessThanOrEqualTo(bound * (1 + 1e-9));
      for (int j = i + 1; j < circles.size(); j++) {
        Packing.Circle two = circles.get(j);
        double dx = one.x() - two.x();
        double dy = one.y() - two.y();
        double touch = (one.diameterMm() + two.diameterMm()) / 2;
        assertThat(Math.sqrt(dx * dx + dy * dy)).isGreaterThanOrEqualTo(touch * (1 - 1e-9));
      }
    }
  }

  @Test
  void mixedCirclesUpToThreeHundredDoNotOverlapAndLieClose() {
    Random random = new Random(11);
    for (int count : new int[] {3, 4, 5, 6, 7, 9, 12, 17, 25, 40, 70, 120, 200, 300}) {
      for (int round = 0; round < 3; round++) {
        List<Double> diameters = mixed(count, random);
        Packing packing = CirclePacking.of(diameters);
        isPacked(packing, diameters);
        double squares = diameters.stream().mapToDouble(d -> d * d).sum();
        double loose = 1.3 * Math.sqrt(squares);
        double largest = diameters.stream().sorted().skip(count - 2).mapToDouble(d -> d).sum();
        assertThat(packing.diameterMm()).isLessThan(Math.max(loose, 1.001 * largest));
        assertThat(packing.diameterMm()).isGreaterThanOrEqualTo(largest * (1 - 1e-9));
        assertThat(packing.diameterMm()).isGreaterThan(Math.sqrt(squares));
      }
    }
  }

  @Test
  void theOrderOfTheCirclesChangesNothing() {
    Random random = new Random(3);
    for (int count : new int[] {2, 3, 8, 31, 90}) {
      List<Double> diameters = mixed(count, random);
      List<Double> shuffled = new ArrayList<>(diameters);
      Collections.shuffle(shuffled, random);
      assertThat(CirclePacking.of(shuffled).diameterMm())
          .isEqualTo(CirclePacking.of(diameters).diameterMm());
      assertThat(CirclePacking.of(diameters)).isEqualTo(CirclePacking.of(diameters));
    }
  }

  @Test
  void threeCirclesThatTouchLieInTheCircleOfDescartes() {
    // outer circle of three that touch: 1/R = |sum k - 2 sqrt(k1 k2 + k2 k3 + k3 k1)|
    double[] r = {1.5, 1.2, 1.0};
    double a = 1 / r[0];
    double b = 1 / r[1];
    double c = 1 / r[2];
    double outer = 1 / Math.abs(a + b + c - 2 * Math.sqrt(a * b + b * c + c * a));
    assertThat(CirclePacking.of(List.of(2 * r[0], 2 * r[1], 2 * r[2])).diameterMm())
        .isCloseTo(2 * outer, within(1e-4));
  }

  @Test
  void oneAndTwoAreExactAndALittleOneDoesNotMatter() {
    assertThat(CirclePacking.of(List.of()).diameterMm()).isZero();
    assertThat(CirclePacking.of(List.of(2.5)).diameterMm()).isEqualTo(2.5);
    assertThat(CirclePacking.of(List.of(2.5, 11.0)).diameterMm()).isEqualTo(13.5);
    assertThat(CirclePacking.of(List.of(0.5, 10.0, 10.0)).diameterMm()).isCloseTo(20, within(1e-3));
    assertThat(CirclePacking.of(List.of(1e-6, 1e-6, 50.0)).diameterMm())
        .isCloseTo(50, within(1e-2));
  }

  @Test
  void tooManyAreNotLaidOutButBounded() {
    Packing many = CirclePacking.of(equal(CirclePacking.MOST + 1, 2));
    assertThat(many.circles()).isEmpty();
    // hexagonal lay: density 0.9069
    assertThat(many.diameterMm()).isCloseTo(2 * Math.sqrt(1001 / 0.9069), within(0.01));
    assertThat(CirclePacking.of(equal(CirclePacking.MOST, 2)).circles()).hasSize(1000);
  }
}
