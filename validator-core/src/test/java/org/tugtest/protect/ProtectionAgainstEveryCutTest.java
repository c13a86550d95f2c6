package org.tugtest.protect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Limits of wires against the least of all sets of fuses, on seeded random networks. */
class ProtectionAgainstEveryCutTest {
  private static final int NETWORKS = 300;

  @Test
  void everyLimitIsTheLeastSumOfFusesThatPartsTheWireFromAllSources() {
    int bounded = 0;
    int onRings = 0;
    for (int seed = 0; seed < NETWORKS; seed++) {
      RandomCar car = RandomCar.feed(new Random(seed));
      TryEverything oracle = new TryEverything(car);
      Protection protection = car.facts().protection();
      for (RandomCar.Link wire : car.of("wire")) {
        String where = "seed " + seed + " wire " + wire.name() + "\n" + car.json();
        double expected = oracle.limit(wire);
        Exposure exposure = protection.exposure(wire.name()).orElse(null);
        if (!oracle.isFed(wire.a()) && !oracle.isFed(wire.b())) {
          assertThat(exposure).as(where).isNull();
          continue;
        }
        assertThat(exposure).as(where).isNotNull();
        assertThat(exposure.mostA()).as(where).isEqualTo(expected);
        assertThat(exposure.leastA()).as(where).isEqualTo(expected);
        assertThat(exposure.unbounded()).as(where).isEqualTo(Double.isInfinite(expected));
        if (Double.isFinite(expected)) {
          bounded++;
          double sum = exposure.cut().stream().mapToDouble(edge -> amps(car, edge.name())).sum();
          assertThat(sum).as(where).isEqualTo(expected);
          onRings += exposure.cut().size() > 1 ? 1 : 0;
        }
      }
    }
    assertThat(bounded).isGreaterThan(200);
    assertThat(onRings).isGreaterThan(50);
  }

  private static double amps(RandomCar car, String name) {
    return car.links.stream()
        .filter(link -> link.name().equals(name))
        .findFirst()
        .orElseThrow()
        .amps();
  }
}
