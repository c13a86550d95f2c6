package org.tugtest.protect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.heat.Cooling;
import org.tugtest.heat.Warming;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.table.FuseTimeTable;
import org.tugtest.table.OpeningCurve;

class BurnRaceTest {
  private static Edge.OfElement fuse(String id) {
    Element.Fuse element = new Element.Fuse("a", "b", 10.0, null, false);
    return new Edge.OfElement(id, "f", element, true, Point.pin(id, "a"), Point.pin(id, "b"), 0);
  }

  private static BurnRace.Runner blade(String id, double rating, double share) {
    OpeningCurve curve = FuseTimeTable.of("blade-mini", rating).orElseThrow().greatest();
    return new BurnRace.Runner(fuse(id), curve, share);
  }

  private static Warming wire(double areaMm2) {
    Cooling air = celsius -> 0.1 * Math.sqrt(areaMm2) * (celsius - 40);
    return new Warming(areaMm2, 18.5 / areaMm2, air, 100, 150);
  }

  /** Brute force over many currents finds nothing worse. */
  @Test
  void noCurrentIsWorseThanTheOneFound() {
    Random random = new Random(17);
    int burnt = 0;
    for (int run = 0; run < 80; run++) {
      List<BurnRace.Runner> runners = new ArrayList<>();
      int count = 1 + random.nextInt(3);
      for (int i = 0; i < count; i++) {
        double share = random.nextInt(2) == 0 ? 1 : 0.2 + 0.5 * random.nextDouble();
        runners.add(blade("F" + i, 5 + random.nextInt(25), share));
      }
      BurnRace race = new BurnRace(runners);
      Warming wire = wire(0.2 + 3 * random.nextDouble());
      double from = race.surelyEndsA();
      double to = from * (1 + 30 * random.nextDouble());
      BurnRace.Worst worst = race.worst(wire, from, to);
      burnt += worst.burns() ? 1 : 0;
      for (int i = 0; i <= 250; i++) {
        double amps = from * Math.pow(to / from, i / 250.0);
        BurnRace.Worst here = race.worst(wire, amps, amps);
        assertThat(here.fuseS()).isFinite();
        if (Double.isFinite(here.wireS())) {
          assertThat(worst.wireS() / worst.fuseS())
              .isLessThanOrEqualTo(here.wireS() / here.fuseS() * 1.002);
        }
      }
    }
    assertThat(burnt).isBetween(8, 72);
  }

  /** What is called plain never burns, and most of what does not burn is plain. */
  @Test
  void whatPlainlyStandsBurnsAtNoCurrent() {
    Random random = new Random(18);
    int plain = 0;
    int standing = 0;
    for (int run = 0; run < 300; run++) {
      List<BurnRace.Runner> runners = new ArrayList<>();
      int count = 1 + random.nextInt(2);
      for (int i = 0; i < count; i++) {
        double share = random.nextInt(4) > 0 ? 1 : 0.2 + 0.5 * random.nextDouble();
        runners.add(blade("F" + i, 5 + random.nextInt(25), share));
      }
      BurnRace race = new BurnRace(runners);
      Warming wire = wire(0.2 + 3 * random.nextDouble());
      double from = race.surelyEndsA();
      double to = from * (1 + 30 * random.nextDouble());
      boolean burns = race.worst(wire, from, to).burns();
      boolean stands = race.stands(wire, from, to);
      assertThat(stands && burns).isFalse();
      standing += burns ? 0 : 1;
      plain += stands ? 1 : 0;
    }
    assertThat(plain).isGreaterThan(standing * 3 / 4);
  }

  @Test
  void theSmallerOfFusesInARowEndsIt() {
    BurnRace race = new BurnRace(List.of(blade("G", 30, 1), blade("F", 10, 1)));
    assertThat(race.surelyEndsA()).isCloseTo(13.5, within(1e-9));
    BurnRace.Worst at = race.worst(wire(1), 60, 60);
    assertThat(at.fuse().device()).isEqualTo("F");
    assertThat(at.fuseS()).isCloseTo(0.1, within(1e-9));
    assertThat(at.basis()).isEqualTo(Basis.MEMORY);
    assertThat(at.extrapolated()).isFalse();
    assertThat(race.worst(wire(1), 61, 61).extrapolated()).isTrue();
  }

  /** Two that share equally: the first opens at half, then the other takes all. */
  @Test
  void fusesSideBySideOpenOneAfterAnother() {
    BurnRace race = new BurnRace(List.of(blade("F", 10, 0.5), blade("G", 10, 0.5)));
    assertThat(race.surelyEndsA()).isCloseTo(27, within(1e-9));
    assertThat(race.worst(wire(1), 40, 40).fuseS())
        .isCloseTo(
            5 + FuseTimeTable.of("blade-mini", 10).orElseThrow().greatest().seconds(40),
            within(1e-9));
  }

  @Test
  void aThickWireOutlastsTheFuseAndAThinOneDoesNot() {
    BurnRace race = new BurnRace(List.of(blade("F", 20, 1)));
    assertThat(race.worst(wire(4), 27, 600).burns()).isFalse();
    assertThat(race.worst(wire(0.35), 27, 600).burns()).isTrue();
  }

  /** A ring of two behind a greater fuse, a second source beside: the two alone end it. */
  @Test
  void fusesThatCutItOffEndItThoughOthersCarrySomeToo() {
    BurnRace.Runner one = blade("F", 5, 0.5);
    BurnRace.Runner other = blade("G", 5, 0.5);
    List<BurnRace.Runner> all = List.of(blade("M", 30, 1), blade("A", 30, 0.1), one, other);
    assertThat(new BurnRace(all).surelyEndsA()).isCloseTo(40.5, within(1e-9));
    BurnRace race = new BurnRace(all, List.of(List.of(one, other)));
    assertThat(race.surelyEndsA()).isCloseTo(13.5, within(1e-9));
    assertThat(race.worst(wire(1), 40, 40).fuseS())
        .isCloseTo(new BurnRace(List.of(one, other)).worst(wire(1), 40, 40).fuseS(), within(1e-9));
    assertThat(race.worst(wire(1), 13.5, 400).burns()).isFalse();
    assertThat(new BurnRace(all).worst(wire(1), 40.5, 400).burns()).isTrue();
  }
}
