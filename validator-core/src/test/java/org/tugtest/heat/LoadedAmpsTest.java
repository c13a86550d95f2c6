package org.tugtest.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.model.Wire;
import org.tugtest.rule.Judged;
import org.tugtest.rule.load.WireOverheats;

/** What wires stand beside others at their solved currents. */
class LoadedAmpsTest {
  private record Feed(double area, double maxC, String draw) {
    Feed(double area, double maxC, double amps) {
      this(area, maxC, "\"amps\": " + amps);
    }

    Insulated form() {
      double core = 1.25 * Math.sqrt(area);
      return new Insulated(core, core + 0.85, 18.5 / area, 0.2);
    }
  }

  /** Feeds F1, F2, .. and returns R1, R2, .. along one segment of 1 m. */
  private static String json(String segment, String more, List<Feed> feeds) {
    StringBuilder parts = new StringBuilder();
    StringBuilder devices = new StringBuilder();
    StringBuilder wires = new StringBuilder();
    for (int i = 1; i <= feeds.size(); i++) {
      Feed feed = feeds.get(i - 1);
      String comma = i == 1 ? "" : ", ";
      parts.append(
          String.format(
              Locale.ROOT,
              "%s\"p%d\": {\"areaMm2\": %s, \"maxC\": %s, \"milliohmPerM\": %s, \"outerMm\": %s,"
                  + " \"conductorMm\": %s}",
              comma,
              i,
              feed.area(),
              feed.maxC(),
              feed.form().milliohmPerM(),
              feed.form().outerMm(),
              feed.form().conductorMm()));
      devices.append(
          ", \"L%d\": {\"at\": \"b\", \"elements\": {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\"%s}}}"
              .formatted(i, feed.draw().isEmpty() ? "" : ", " + feed.draw()));
      wires.append(
          "%s\"F%d\": {\"from\": \"BAT:+\", \"to\": \"L%d:1\", \"part\": \"p%d\"}, \"R%d\": {\"from\": \"L%d:2\", \"to\": \"BAT:-\", \"part\": \"p%d\"}"
              .formatted(comma, i, i, i, i, i, i));
    }
    return """
    {"format": 1, "sketch": true, "defaults": {"ambientC": 40},
     "parts": {"wires": {%s}, "coverings": {
       "tube": {"kind": "split-conduit", "innerMm": 25, "wallMm": 1},
       "sleeve": {"kind": "braided-sleeve", "innerMinMm": 1, "innerMaxMm": 30, "wallMm": 0.5}}},
     "devices": {"BAT": {"at": "a", "elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}}%s},
     "wires": {%s},
     "layout": {"nodes": {"a": {}, "b": {}},
                "segments": {"s": {"from": "a", "to": "b", "lengthMm": 1000%s}}}%s}
    """
        .formatted(parts, devices, wires, segment, more);
  }

  private static Ampacity of(String json, String wire) {
    Facts facts = Judged.facts(Map.of(Judged.ROOT, json));
    Wire its = Objects.requireNonNull(facts.harness().wires().get(wire));
    return facts.ampacity().of(its).orElseThrow();
  }

  private static ShrunkBundle bundle(List<Feed> feeds) {
    List<BundledWire> wires = new ArrayList<>();
    for (Feed feed : feeds) {
      double amps = Double.parseDouble(feed.draw().substring("\"amps\": ".length()));
      wires.add(new BundledWire(feed.form(), feed.maxC(), amps));
      wires.add(new BundledWire(feed.form(), feed.maxC(), amps));
    }
    return new ShrunkBundle(wires, Envelope.BARE, 40, new FreeAirAmps());
  }

  private static List<Feed> random(Random random, int count) {
    List<Feed> feeds = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double area = 0.5 + Math.rint(random.nextDouble() * 30) / 10;
      double amps = random.nextInt(3) == 0 ? 0 : Math.rint(60 * area * random.nextDouble()) / 10;
      feeds.add(new Feed(area, 85 + 20 * random.nextInt(4), amps));
    }
    return feeds;
  }

  /** The closed form, put together by hand from the wires of the one segment. */
  @Test
  void itIsWhatTheClosedFormAllows() {
    Random random = new Random(7);
    for (int run = 0; run < 20; run++) {
      List<Feed> feeds = random(random, 2 + random.nextInt(5));
      String json = json("", "", feeds);
      boolean flows = feeds.stream().anyMatch(feed -> !feed.draw().endsWith(" 0.0"));
      if (!flows) {
        continue;
      }
      for (int i = 0; i < feeds.size(); i++) {
        Feed feed = feeds.get(i);
        double free = FreeAir.amps(feed.form(), feed.maxC(), 40);
        double allowed = Math.min(free, bundle(feeds).allowedAmps(2 * i));
        Ampacity ampacity = of(json, "F" + (i + 1));
        assertThat(ampacity.amps()).isCloseTo(allowed, within(1e-3 * free));
        assertThat(ampacity.factor()).isCloseTo(allowed / free, within(1e-3));
        assertThat(ampacity.basis()).isEqualTo(Basis.DERIVED);
        assertThat(ampacity.sureAmps()).isEqualTo(ampacity.amps());
      }
    }
  }

  @Test
  void theSentenceNamesNeighboursStateAirAndFactor() {
    List<Feed> feeds = List.of(new Feed(1, 105, 8), new Feed(1, 105, 8), new Feed(1, 85, 0));
    Ampacity ampacity = of(json("", "", feeds), "F1");
    assertThat(ampacity.how())
        .matches(
            "with 5 other wires, one of class 85 °C, at their currents of state as drawn in still"
                + " air of 40 °C, factor 0\\.\\d+");
  }

  /** No more in hotter air, under a lower class, beside more current, in a tighter place. */
  @Test
  void itGoesTheRightWay() {
    Random random = new Random(11);
    for (int run = 0; run < 15; run++) {
      List<Feed> feeds = random(random, 3);
      feeds.set(0, new Feed(1, 105, 3));
      double base = of(json("", "", feeds), "F1").amps();
      String hot = json("", "", feeds).replace("\"ambientC\": 40", "\"ambientC\": 55");
      assertThat(of(hot, "F1").amps()).isLessThanOrEqualTo(base);
      List<Feed> more = new ArrayList<>(feeds);
      more.set(1, new Feed(feeds.get(1).area(), feeds.get(1).maxC(), 6 * feeds.get(1).area()));
      List<Feed> less = new ArrayList<>(feeds);
      less.set(1, new Feed(feeds.get(1).area(), feeds.get(1).maxC(), 0));
      double loaded = of(json("", "", more), "F1").amps();
      assertThat(loaded).isLessThanOrEqualTo(of(json("", "", less), "F1").amps() * 1.01);
      List<Feed> lower = new ArrayList<>(feeds);
      lower.set(0, new Feed(1, 70, 3));
      assertThat(of(json("", "", lower), "F1").amps()).isLessThanOrEqualTo(base);
      double tube = of(json(", \"coverings\": [\"tube\"]", "", feeds), "F1").amps();
      assertThat(tube).isLessThanOrEqualTo(base);
      double sleeve = of(json(", \"coverings\": [\"sleeve\"]", "", feeds), "F1").amps();
      assertThat(sleeve).isLessThanOrEqualTo(base * (1 + 1e-9));
    }
  }

  @Test
  void whatOnlyACoveringTakesIsNotSure() {
    List<Feed> feeds = List.of(new Feed(1, 105, 8), new Feed(1, 105, 8));
    Ampacity bare = of(json("", "", feeds), "F1");
    Ampacity tube = of(json(", \"coverings\": [\"tube\"]", "", feeds), "F1");
    assertThat(tube.amps()).isLessThan(0.97 * bare.amps());
    assertThat(tube.basis()).isEqualTo(Basis.MEMORY);
    assertThat(tube.sureAmps()).isCloseTo(bare.amps(), within(1e-6));
    assertThat(tube.sureBasis()).isEqualTo(Basis.DERIVED);
    assertThat(tube.how()).contains("inside a covering");
  }

  /** A load that says nothing of what it draws: no more than the chart for six at 20 %. */
  @Test
  void whereACurrentIsNotKnownTheChartBoundsIt() {
    List<Feed> feeds = List.of(new Feed(1, 105, 1), new Feed(1, 105, 1), new Feed(1, 105, ""));
    Ampacity ampacity = of(json("", "", feeds), "F1");
    double free = FreeAir.amps(feeds.get(0).form(), 105, 40);
    double chart = org.tugtest.table.BundleFactorTable.factor(6, 20).value();
    assertThat(ampacity.amps())
        .isCloseTo(Math.min(chart * free, ampacity.amps()), within(1e-9))
        .isLessThanOrEqualTo(chart * free);
    List<Feed> none = List.of(new Feed(1, 105, ""), new Feed(1, 105, ""), new Feed(1, 105, ""));
    Ampacity unknown = of(json("", "", none), "F1");
    assertThat(unknown.amps()).isCloseTo(chart * free, within(1e-9));
    assertThat(unknown.how()).contains("used to 20 % as not all their currents are known");
  }

  /** The state that leaves least counts, whatever the wire carries in it; brief ones do not. */
  @Test
  void theWorstLastingStateCounts() {
    String states =
        ", \"states\": {\"day\": {\"on\": [\"L1\"]}, \"night\": {\"on\": [\"L2\"]},"
            + " \"crank\": {\"on\": [\"L1\", \"L2\", \"L3\"], \"brief\": true}}";
    List<Feed> feeds =
        List.of(
            new Feed(1, 105, "\"use\": \"internal\", \"amps\": 5"),
            new Feed(1, 105, "\"use\": \"internal\", \"amps\": 14"),
            new Feed(1, 105, "\"use\": \"internal\", \"amps\": 30"));
    Ampacity ampacity = of(json("", states, feeds), "F1");
    assertThat(ampacity.how()).contains("state night");
    List<Feed> night = List.of(new Feed(1, 105, 0), new Feed(1, 105, 14), new Feed(1, 105, 0));
    assertThat(ampacity.amps()).isCloseTo(bundle(night).allowedAmps(0), within(1e-3));
  }

  /** At what it stands its temperature is not over the class; a little more and it is. */
  @Test
  void theTemperatureAgreesWithIt() {
    Random random = new Random(3);
    for (int run = 0; run < 15; run++) {
      List<Feed> feeds = random(random, 3);
      feeds.set(0, new Feed(1, 85, 2));
      String json = json("", "", feeds);
      Facts facts = Judged.facts(Map.of(Judged.ROOT, json));
      Wire wire = Objects.requireNonNull(facts.harness().wires().get("F1"));
      double amps = facts.ampacity().of(wire).orElseThrow().amps();
      assertThat(amps).isPositive();
      double below = facts.ampacity().steadyCelsius(wire, 0.999 * amps).orElseThrow();
      assertThat(below).isLessThanOrEqualTo(85 + 1e-6);
      double above = facts.ampacity().steadyCelsius(wire, 1.001 * amps).orElseThrow();
      assertThat(above).isGreaterThanOrEqualTo(85 - 1e-6);
    }
  }

  /** Loads at what their wires stand are not too hot; a tenth more and wire-overheats says so. */
  @Test
  void itAgreesWithWireOverheats() {
    for (double others : new double[] {0, 4, 8}) {
      List<Feed> feeds = new ArrayList<>(List.of(new Feed(1, 105, 3), new Feed(1.5, 105, others)));
      double amps = 3;
      for (int i = 0; i < 60; i++) {
        feeds.set(0, new Feed(1, 105, amps));
        amps = (amps + of(json("", "", feeds), "F1").amps()) / 2;
      }
      feeds.set(0, new Feed(1, 105, 0.99 * amps));
      assertThat(Judged.of(new WireOverheats(), json("", "", feeds)).findings()).isEmpty();
      feeds.set(0, new Feed(1, 105, 1.1 * amps));
      assertThat(Judged.of(new WireOverheats(), json("", "", feeds)).findings()).isNotEmpty();
    }
  }
}
