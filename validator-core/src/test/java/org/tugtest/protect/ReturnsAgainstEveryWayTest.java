package org.tugtest.protect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Limits of return wires against every simple way and every set of fuses, on random cars. */
class ReturnsAgainstEveryWayTest {
  private static final int CARS = 300;

  /** A fused feed tree or mesh with loads, and a random net of return wires on pins of its own. */
  private static RandomCar car(Random random) {
    int feed = 4 + random.nextInt(4);
    int back = 3 + random.nextInt(4);
    RandomCar car = new RandomCar(feed + back);
    int minus = feed;
    car.add("source", 0, minus, 0, 0);
    if (random.nextInt(3) == 0) {
      car.add("source", random.nextInt(feed), feed + 1, 20, 0);
    }
    for (int i = 0; i < 2 + random.nextInt(4); i++) {
      double rating = RandomCar.RATINGS[random.nextInt(RandomCar.RATINGS.length)];
      car.add("fuse", random.nextInt(feed), random.nextInt(feed), rating, 0);
    }
    for (int i = 0; i < random.nextInt(3); i++) {
      car.add("wire", random.nextInt(feed), random.nextInt(feed), 0, 0);
    }
    for (int i = 0; i < back + random.nextInt(4); i++) {
      car.add("wire", feed + random.nextInt(back), feed + random.nextInt(back), 0, 0);
    }
    for (int i = 0; i < 1 + random.nextInt(5); i++) {
      car.add("load", random.nextInt(feed), feed + random.nextInt(back), 0, 0);
    }
    return car;
  }

  /**
   * To the battery: what all fuses before the loads that return there through the wire let through.
   * To a source that limits itself: no more than that source gives. What a source that limits
   * itself gives into faults on its own side of a wire, which is the only way to the battery, comes
   * back to it without the wire.
   */
  @Test
  void everyLimitIsTheLeastSumOfFusesThatPartsItsLoadsFromAllSources() {
    int several = 0;
    int less = 0;
    int apart = 0;
    for (int seed = 0; seed < CARS; seed++) {
      RandomCar car = car(new Random(seed));
      TryEverything oracle = new TryEverything(car);
      Protection protection = car.facts().protection();
      for (RandomCar.Link wire : car.of("wire")) {
        String where = "seed " + seed + " wire " + wire.name() + "\n" + car.json();
        Set<Integer> fused = new HashSet<>();
        Set<Integer> toBattery = new HashSet<>();
        boolean any = false;
        for (RandomCar.Link load : car.of("load")) {
          boolean fed = oracle.isFed(load.a()) && !oracle.fedByItsOwnSourceAlone(load);
          if (fed && oracle.returnsThrough(load.b(), wire)) {
            any = true;
            if (Double.isFinite(oracle.limit(null, Set.of(load.a())))) {
              fused.add(load.a());
              if (oracle.returnsThrough(load.b(), wire, false)) {
                toBattery.add(load.a());
              }
            }
          }
        }
        Exposure exposure = protection.returning(wire.name()).orElse(null);
        assertThat(exposure != null).as(where).isEqualTo(any);
        if (exposure != null) {
          double all = fused.isEmpty() ? 0 : oracle.limit(null, fused);
          boolean still = oracle.isOnlyWay(wire) && limitedLiesBeyond(car, oracle, wire);
          double battery =
              toBattery.isEmpty()
                  ? 0
                  : still ? oracle.limitOfStrong(toBattery) : oracle.limit(null, toBattery);
          double limited = car.of("source").stream().mapToDouble(RandomCar.Link::amps).sum();
          double expected = Math.max(battery, Math.min(all, limited));
          less += expected < all ? 1 : 0;
          apart += still && !toBattery.isEmpty() ? 1 : 0;
          assertThat(exposure.mostA()).as(where).isEqualTo(expected);
          assertThat(protection.returnsUnfusedAlone(wire.name()))
              .as(where)
              .isEqualTo(fused.isEmpty());
          double sum =
              protection.fusesBehind(wire.name()).stream()
                  .mapToDouble(
                      edge ->
                          car.links.stream()
                              .filter(link -> link.name().equals(edge.name()))
                              .mapToDouble(RandomCar.Link::amps)
                              .sum())
                  .sum();
          assertThat(sum).as(where).isEqualTo(expected);
          several += fused.size() > 1 ? 1 : 0;
        }
      }
    }
    assertThat(several).isGreaterThan(80);
    assertThat(less).isGreaterThan(10);
    assertThat(apart).isGreaterThan(3);
  }

  private static boolean limitedLiesBeyond(
      RandomCar car, TryEverything oracle, RandomCar.Link wire) {
    return car.of("source").stream()
        .filter(source -> source.amps() > 0)
        .allMatch(source -> oracle.returnsThrough(source.b(), wire, false));
  }
}
