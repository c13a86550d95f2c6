package org.tugtest.operate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tugtest.heat.BundleHeat;
import org.tugtest.heat.BundledWire;
import org.tugtest.heat.Envelope;
import org.tugtest.heat.FreeAir;
import org.tugtest.heat.FreeAirAmps;
import org.tugtest.heat.Insulated;
import org.tugtest.heat.LoomWarmth;
import org.tugtest.heat.ShrunkBundle;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;

class HeatLoopTest {
  private static final String BATTERY =
      "\"BAT\": {\"at\": \"a\", \"elements\": {\"cell\": {\"kind\": \"source\", \"plus\": \"+\","
          + " \"minus\": \"-\", \"volts\": 12.6, \"ohms\": 0.01}}}";
  private static final double SEGMENT = 2000;

  private static Wire wire(Operated car, String id) {
    return ((Edge.OfWire) car.edge(id)).wire();
  }

  private static double hottest(Operated car, String state, String wire) {
    return car.in(state).warmth().orElseThrow().hottest(wire).orElseThrow().celsius();
  }

  /** Two wires of 1 mm2 at so many amperes, each alone. */
  private static Operated alone(String load, String states) {
    return Operated.of(
        """
        "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 105, "milliohmPerM": 18.5, "outerMm": 2.1,
                                  "conductorMm": 1.25}}},
        "devices": {%s, "L": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", %s}}}},
        "wires": {"W1": {"from": "BAT:+", "to": "L:1", "part": "w", "cutMm": 1000},
                  "W2": {"from": "L:2", "to": "BAT:-", "part": "w", "cutMm": 1000}}%s
        """
            .formatted(BATTERY, load, states));
  }

  /**
   * One wire by hand: 1 mm2, 2.1 mm over 1.25 mm, k 0.2, 18.5 mohm/m, 10 A, air 20 °C. At 35.42 °C
   * it makes 100 · 0.0185 · (1 + 0.00393 · 15.42) = 1.962 W/m; through its insulation that is 1.962
   * · ln(2.1 / 1.25) / (2π · 0.2) = 0.810 K, so its surface is 14.61 K over the air and gives off
   * 1.962 / (π · 0.0021 · 14.61) = 20.4 W/(m²·K), 5.5 of it by radiation, 14.8 by convection after
   * Churchill and Chu. Here with another set of air figures than the one in use.
   */
  @Test
  void oneWireByHand() {
    Operated car = alone("\"amps\": 10", "");
    double celsius = car.only().celsius(wire(car, "W1"));
    double watts = 100 * 0.0185 * (1 + 0.00393 * (celsius - 20));
    double surface = celsius - watts * Math.log(2.1 / 1.25) / (2 * Math.PI * 0.2);
    double film = 273.15 + (surface + 20) / 2;
    double conductivity = 2.3340e-3 * Math.pow(film, 1.5) / (164.54 + film);
    double density = 351.99 / film + 344.88 / film / film;
    double viscosity = 1.4592e-6 * Math.pow(film, 1.5) / (109.10 + film) / density;
    double prandtl = 0.71;
    double rayleigh =
        9.81 / film * (surface - 20) * Math.pow(0.0021, 3) * prandtl / viscosity / viscosity;
    double bracket = Math.pow(1 + Math.pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
    double nusselt = Math.pow(0.60 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / bracket, 2);
    double kelvin = surface + 273.15;
    double radiated = 0.9 * 5.670374e-8 * (Math.pow(kelvin, 4) - Math.pow(293.15, 4));
    double given = Math.PI * 0.0021 * (nusselt * conductivity / 0.0021 * (surface - 20) + radiated);
    assertThat(given).isCloseTo(watts, within(0.02 * watts));
    assertThat(celsius).isCloseTo(35.42, within(0.05));
  }

  @Test
  void withoutCurrentAndInABriefStateAWireIsAsWarmAsTheAir() {
    Operated car =
        alone(
            "\"amps\": 10, \"use\": \"internal\"",
            ", \"states\": {\"off\": {}, \"on\": {\"on\": [\"L\"]},"
                + " \"crank\": {\"on\": [\"L\"], \"brief\": true}}");
    assertThat(car.in("off").celsius(wire(car, "W1"))).isEqualTo(20);
    assertThat(hottest(car, "off", "W1")).isEqualTo(20);
    assertThat(car.in("on").celsius(wire(car, "W1"))).isGreaterThan(35);
    assertThat(car.in("crank").celsius(wire(car, "W1"))).isEqualTo(20);
    assertThat(car.in("crank").warmth()).isEmpty();
  }

  @Test
  void aLoadThatDrawsAQuarterOfTheTimeHeatsByTheRootMeanSquare() {
    Operated car = alone("\"amps\": 10, \"dutyPercent\": 25", "");
    OperatingPoint point = car.only();
    assertThat(point.amps(car.edge("W1"))).isCloseTo(10, within(1e-9));
    assertThat(point.meanAmps(car.edge("W1"))).isCloseTo(2.5, within(1e-9));
    assertThat(point.heatAmps(car.edge("W1"))).isCloseTo(5, within(1e-9));
    Operated half = alone("\"amps\": 5", "");
    assertThat(point.celsius(wire(car, "W1")))
        .isCloseTo(half.only().celsius(wire(half, "W1")), within(0.01));
  }

  @Test
  void whatHasNoSteadyTemperatureIsAnAnswer() {
    Operated car = alone("\"amps\": 90", "");
    LoomWarmth.Hottest hottest = car.only().warmth().orElseThrow().hottest("W1").orElseThrow();
    assertThat(hottest.steady()).isFalse();
    assertThat(hottest.celsius()).isEqualTo(FreeAir.HOTTEST_C);
    assertThat(car.only().warmthSettled()).isTrue();
    assertThat(car.only().celsius(wire(car, "W1"))).isEqualTo(FreeAir.HOTTEST_C);
  }

  /**
   * A wire that is its own load takes less the warmer it is; whole steps would swing. Where it
   * comes to rest its watts are what it gives off.
   */
  @Test
  void aWireAcrossTheBatteryComesToRest() {
    for (double metres : new double[] {4, 8, 12, 16, 20, 25, 30, 40, 60}) {
      Operated car =
          Operated.of(
              "\"parts\": {\"wires\": {\"w\": {\"areaMm2\": 1, \"maxC\": 105, \"milliohmPerM\":"
                  + " 18.5, \"outerMm\": 2.1, \"conductorMm\": 1.25}}}, \"devices\": {"
                  + BATTERY
                  + "}, \"wires\": {\"W\": {\"from\": \"BAT:+\", \"to\": \"BAT:-\", \"part\":"
                  + " \"w\", \"cutMm\": "
                  + 1000 * metres
                  + "}}");
      OperatingPoint point = car.only();
      double celsius = point.celsius(wire(car, "W"));
      double amps = point.amps(car.edge("W"));
      assertThat(point.warmthSettled()).as("%s m", metres).isTrue();
      double own = FreeAir.celsius(new Insulated(1.25, 2.1, 18.5, 0.2), amps, 20).orElse(250);
      assertThat(celsius).as("%s m at %s A", metres, amps).isCloseTo(own, within(0.1));
      assertThat(point.solution().powerResidual()).isLessThan(1e-9);
    }
  }

  /** So many loads at the far end of one segment, with feeds and returns of random size. */
  private static String loom(Random random, int loads, List<Insulated> forms) {
    StringBuilder parts = new StringBuilder();
    StringBuilder devices = new StringBuilder(BATTERY);
    StringBuilder wires = new StringBuilder();
    for (int i = 0; i < loads; i++) {
      double area = 0.5 + 2 * random.nextDouble();
      double core = 1.2 * Math.sqrt(area);
      Insulated form = new Insulated(core, core + 0.8, 18.5 / area, 0.2);
      forms.add(form);
      forms.add(form);
      String kind =
          switch (random.nextInt(4)) {
            case 0 -> "\"amps\": " + 8 * random.nextDouble() * area;
            case 1 -> "\"ohms\": " + (1.5 + 3 * random.nextDouble()) / area;
            case 2 -> "\"watts\": " + 60 * random.nextDouble() * area;
            default -> "\"amps\": 0";
          };
      parts.append(
          String.format(
              Locale.ROOT,
              "%s\"w%d\": {\"areaMm2\": %s, \"maxC\": 105, \"milliohmPerM\": %s, \"outerMm\": %s,"
                  + " \"conductorMm\": %s}",
              i == 0 ? "" : ", ",
              i,
              area,
              form.milliohmPerM(),
              form.outerMm(),
              form.conductorMm()));
      devices.append(
          ", \"L%d\": {\"at\": \"b\", \"elements\": {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", %s}}}"
              .formatted(i, kind));
      wires.append(
          "%s\"F%d\": {\"from\": \"BAT:+\", \"to\": \"L%d:1\", \"part\": \"w%d\"}, \"R%d\": {\"from\": \"L%d:2\", \"to\": \"BAT:-\", \"part\": \"w%d\"}"
              .formatted(i == 0 ? "" : ", ", i, i, i, i, i, i));
    }
    return "\"parts\": {\"wires\": {"
        + parts
        + "}}, \"devices\": {"
        + devices
        + "}, \"wires\": {"
        + wires
        + "}, \"layout\": {\"nodes\": {\"a\": {}, \"b\": {}}, \"segments\": {\"s\": {\"from\":"
        + " \"a\", \"to\": \"b\", \"lengthMm\": "
        + SEGMENT
        + "}}}";
  }

  /**
   * The same by a slow iteration of its own: currents at fixed temperatures, the closed form of the
   * whole bundle and of each end alone, a fifth of the way each time, three hundred times.
   */
  @Test
  void aSlowIterationComesToTheSameRest() {
    Random random = new Random(20261128);
    for (int run = 0; run < 12; run++) {
      List<Insulated> forms = new ArrayList<>();
      int loads = 1 + random.nextInt(6);
      Operated car = Operated.of(loom(random, loads, forms));
      List<String> ids = new ArrayList<>();
      for (int i = 0; i < loads; i++) {
        ids.addAll(List.of("F" + i, "R" + i));
      }
      Map<String, Double> mean = new HashMap<>();
      ids.forEach(id -> mean.put(id, 20.0));
      BundleHeat bundle = BundleHeat.NONE;
      for (int i = 0; i < 300; i++) {
        OperatingPoint point =
            Operating.of(
                    car.facts().harness(),
                    car.facts().network(),
                    car.facts().operating().resistances(),
                    wire -> mean.getOrDefault(wire.id(), 20.0))
                .all()
                .get(0);
        List<BundledWire> wires = new ArrayList<>();
        for (int k = 0; k < ids.size(); k++) {
          double amps = Math.abs(point.amps(car.edge(ids.get(k))));
          wires.add(new BundledWire(forms.get(k), 105, amps));
        }
        bundle = new ShrunkBundle(wires, Envelope.BARE, 20, new FreeAirAmps()).heat();
        for (int k = 0; k < ids.size(); k++) {
          double free = FreeAir.celsius(forms.get(k), wires.get(k).amps(), 20).orElse(250);
          double inside = bundle.celsius().get(k);
          double next = (SEGMENT * inside + 192 * free) / (SEGMENT + 192);
          double before = mean.getOrDefault(ids.get(k), 20.0);
          mean.put(ids.get(k), before + 0.2 * (next - before));
        }
      }
      OperatingPoint point = car.only();
      assertThat(point.warmthSettled()).isTrue();
      assertThat(point.solution().currentResidual()).isLessThan(1e-9);
      assertThat(point.solution().powerResidual()).isLessThan(1e-9);
      for (int k = 0; k < ids.size(); k++) {
        assertThat(point.celsius(wire(car, ids.get(k))))
            .as("run %s, %s", run, ids.get(k))
            .isCloseTo(mean.getOrDefault(ids.get(k), 0.0), within(0.1));
        if (bundle.steady()) {
          assertThat(hottest(car, "as drawn", ids.get(k)))
              .isGreaterThanOrEqualTo(bundle.celsius().get(k) - 0.1)
              .isLessThanOrEqualTo(bundle.hottestC() + 0.1);
        }
      }
    }
  }
}
