package org.tugtest.protect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tugtest.network.Edge;

/** Whether plus and minus meet, against trying every position of every switch. */
class ShortsAgainstEveryPositionTest {
  private static RandomCar car(Random random) {
    int pins = 4 + random.nextInt(6);
    RandomCar car = new RandomCar(pins);
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      car.add("source", random.nextInt(pins), random.nextInt(pins), 0, 0);
    }
    for (int i = 0; i < random.nextInt(pins); i++) {
      car.add("wire", random.nextInt(pins), random.nextInt(pins), 0, 0);
    }
    for (int i = 0; i < random.nextInt(6); i++) {
      car.add("contact", random.nextInt(pins), random.nextInt(pins), 0, random.nextInt(2));
    }
    for (int i = 0; i < random.nextInt(3); i++) {
      car.add("diode", random.nextInt(pins), random.nextInt(pins), 0, 0);
    }
    for (int i = 0; i < random.nextInt(3); i++) {
      car.add("load", random.nextInt(pins), random.nextInt(pins), 0, 0);
    }
    return car;
  }

  /** Whether some source can send current round from its plus to its minus in some position. */
  private static boolean meets(RandomCar car, boolean diodes, Set<String> out) {
    for (int position = 0; position < 2; position++) {
      for (RandomCar.Link source : car.of("source")) {
        if (!out.contains(source.name()) && leads(car, source, position, diodes, out)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean leads(
      RandomCar car, RandomCar.Link source, int position, boolean diodes, Set<String> out) {
    Set<Integer> seen = new HashSet<>(Set.of(source.a()));
    List<Integer> open = new ArrayList<>(seen);
    for (int i = 0; i < open.size(); i++) {
      for (RandomCar.Link link : car.links) {
        boolean both =
            link.kind().equals("wire")
                || (link.kind().equals("contact") && link.position() == position);
        boolean forth = both || (link.kind().equals("diode") && diodes);
        boolean back = both || (link.kind().equals("source") && !link.equals(source));
        if (out.contains(link.name())) {
          continue;
        }
        if (forth && link.a() == open.get(i) && seen.add(link.b())) {
          open.add(link.b());
        }
        if (back && link.b() == open.get(i) && seen.add(link.a())) {
          open.add(link.a());
        }
      }
    }
    return seen.contains(source.b());
  }

  /** Diodes of a device with a source count as wire; here all of them are in one device. */
  @Test
  void aShortIsFoundWhenThereIsOneAndNoneIsLeftWithoutTheCulprits() {
    int shorted = 0;
    int whole = 0;
    for (int seed = 0; seed < 400; seed++) {
      RandomCar car = car(new Random(seed));
      Protection protection = car.facts().protection();
      boolean expected = meets(car, true, Set.of());
      String where = "seed " + seed + "\n" + car.json();
      assertThat(!protection.shorts().isEmpty()).as(where).isEqualTo(expected);
      assertThat(protection.shortsThroughDiodes()).as(where).isEmpty();
      Set<String> out = new HashSet<>();
      for (DeadShort found : protection.shorts()) {
        assertThat(found.way().start()).isEqualTo(found.source().a());
        assertThat(found.way().end()).isEqualTo(found.source().b());
        assertThat(found.way().edges()).as(where).contains(found.culprit());
        Edge culprit = found.culprit();
        out.add(culprit instanceof Edge.OfElement inside ? inside.name() : culprit.text());
      }
      assertThat(meets(car, true, out)).as(where).isFalse();
      shorted += expected ? 1 : 0;
      whole += expected ? 0 : 1;
    }
    assertThat(shorted).isGreaterThan(100);
    assertThat(whole).isGreaterThan(100);
  }
}
