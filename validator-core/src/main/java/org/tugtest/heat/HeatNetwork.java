package org.tugtest.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.solve.Factor;
import org.tugtest.solve.Structure;
import org.tugtest.table.Copper;

/**
 * How warm each wire of a packed section becomes: a network of heat from conductor to conductor and
 * from those outside to the air. Needs places that nobody knows and is fitted by one figure to the
 * bundle chart of MIL-W-5088L (0.83 to 1.05 of its readings), so it is the picture of a section and
 * a second opinion beside the {@link ShrunkBundle}.
 */
public final class HeatNetwork {
  /** By how much laid wires lie farther apart than packed ones: fits 1.2 · root of N · D. */
  public static final double SPREAD = 1.12;

  /** Conductivity of the gaps over that of air: fitted to one reading of the chart. */
  private static final double GAP = 0.5;

  private static final int MOST_ROUNDS = 60;
  private static final double SETTLED = 1e-7;
  private final List<Placed> wires;
  private final SectionShape shape;
  private final Envelope envelope;
  private final double airC;

  /**
   * A section.
   *
   * @param wires with their places, already spread apart by {@link #SPREAD}
   * @param airC air round it, °C
   */
  public HeatNetwork(List<Placed> wires, Envelope envelope, double airC) {
    this.wires = List.copyOf(wires);
    this.shape = new SectionShape(wires);
    this.envelope = envelope instanceof NoCooler covering ? covering.inside() : envelope;
    this.airC = airC;
  }

  /**
   * What one round of the iteration came to.
   *
   * @param celsius of each conductor
   * @param surfaceC of each wire; that of its conductor for one inside
   * @param wallC inside of the covering; that of the air without one
   * @param outWatts what each wire gives off outwards, W/m
   */
  record Round(List<Double> celsius, List<Double> surfaceC, double wallC, List<Double> outWatts) {}

  /** How warm each conductor becomes for good, and the hottest of them. */
  public BundleHeat heat() {
    Optional<Round> last = solve();
    if (last.isEmpty()) {
      return BundleHeat.NONE;
    }
    double hottest = last.get().celsius().stream().mapToDouble(each -> each).max().orElse(airC);
    return new BundleHeat(last.get().celsius(), hottest);
  }

  /** The last round; empty when there is no steady temperature up to the hottest that counts. */
  Optional<Round> solve() {
    if (wires.isEmpty()) {
      return Optional.of(new Round(List.of(), List.of(), airC, List.of()));
    }
    for (double start = 50; airC + start <= 2 * FreeAir.HOTTEST_C; start *= 2) {
      Optional<Round> found = solveFrom(start);
      if (found.isPresent()) {
        return found.filter(
            round -> round.celsius().stream().allMatch(each -> each <= FreeAir.HOTTEST_C));
      }
    }
    return Optional.empty();
  }

  private Optional<Round> solveFrom(double rise) {
    double[] celsius = filled(airC + rise);
    double[] surface = filled(airC + 0.8 * rise);
    Round round = null;
    for (int i = 0; i < MOST_ROUNDS; i++) {
      Optional<Round> next = next(celsius, surface);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      round = next.get();
      double moved = 0;
      for (int k = 0; k < celsius.length; k++) {
        moved = Math.max(moved, Math.abs(round.celsius().get(k) - celsius[k]));
        celsius[k] = round.celsius().get(k);
        surface[k] = round.surfaceC().get(k);
      }
      if (moved <= SETTLED) {
        break;
      }
    }
    return Optional.ofNullable(round);
  }

  private double[] filled(double celsius) {
    double[] all = new double[wires.size()];
    Arrays.fill(all, celsius);
    return all;
  }

  /** What a hull wire gives off, in steps from its conductor outwards. */
  private record Way(int wire, double insulation, double surface) {
    double through() {
      return 1 / (1 / insulation + 1 / surface);
    }
  }

  /**
   * The temperatures that the conductances at these temperatures lead to; the resistance's own rise
   * with the temperature is part of the equations, so that there is no answer where it runs away.
   */
  private Optional<Round> next(double[] celsius, double[] surface) {
    int count = wires.size();
    Outside outside = new Outside(surface);
    List<Way> ways = new ArrayList<>();
    int wall = count;
    int ground = count + 1;
    List<int[]> ends = new ArrayList<>();
    List<Double> conductance = new ArrayList<>();
    double gap = GAP * Air.conductivity(Arrays.stream(celsius).average().orElse(airC) + Air.ZERO_C);
    for (SectionShape.Pair pair : shape.pairs()) {
      Placed one = wires.get(pair.one());
      Placed other = wires.get(pair.other());
      ends.add(new int[] {pair.one(), pair.other()});
      conductance.add(
          PairConductance.of(one.wire().wire(), other.wire().wire(), one.distance(other), gap));
    }
    for (int i = 0; i < count; i++) {
      if (shape.outsideMm(i) > 0) {
        Insulated wire = wires.get(i).wire().wire();
        double insulation =
            shape.exposed(i) * wire.insulation() / Math.log(wire.outerMm() / wire.conductorMm());
        Way way = new Way(i, insulation, outside.conductance(i, surface[i]));
        ways.add(way);
        ends.add(new int[] {i, wall});
        conductance.add(way.through());
      }
    }
    ends.add(new int[] {wall, ground});
    conductance.add(outside.beyond());
    double[] watts = new double[count + 2];
    for (int i = 0; i < count; i++) {
      double squared = wires.get(i).wire().amps() * wires.get(i).wire().amps();
      double cold = wires.get(i).wire().wire().ohmPerM(20);
      watts[i] = squared * cold * (1 + Copper.ALPHA_20 * (airC - 20));
      if (squared > 0) {
        ends.add(new int[] {i, ground});
        conductance.add(-squared * cold * Copper.ALPHA_20);
      }
    }
    return rises(ends, conductance, watts).map(rise -> round(rise, ways));
  }

  private Optional<double[]> rises(List<int[]> ends, List<Double> conductance, double[] watts) {
    int ground = wires.size() + 1;
    boolean[] grounded = new boolean[ground + 1];
    grounded[ground] = true;
    int[] a = ends.stream().mapToInt(end -> end[0]).toArray();
    int[] b = ends.stream().mapToInt(end -> end[1]).toArray();
    double[] all = conductance.stream().mapToDouble(each -> each).toArray();
    Optional<Factor> factor = Structure.of(ground + 1, a, b, grounded).factor(all);
    return factor.map(found -> found.solve(watts));
  }

  private Round round(double[] rise, List<Way> ways) {
    int wall = wires.size();
    List<Double> celsius = new ArrayList<>();
    List<Double> surface = new ArrayList<>();
    List<Double> out = new ArrayList<>();
    for (int i = 0; i < wires.size(); i++) {
      celsius.add(airC + rise[i]);
      surface.add(airC + rise[i]);
      out.add(0.0);
    }
    for (Way way : ways) {
      double watts = way.through() * (rise[way.wire()] - rise[wall]);
      out.set(way.wire(), watts);
      surface.set(way.wire(), airC + rise[way.wire()] - watts / way.insulation());
    }
    return new Round(celsius, surface, airC + rise[wall], out);
  }

  /** What lies outside of the wires, at the surface temperatures of the last round. */
  private final class Outside {
    private final double meanC;
    private final double diameter = shape.diameterMm();
    private final Conduit.@Nullable Passing passing;
    private final double transfer;

    Outside(double[] surface) {
      double sum = 0;
      double weight = 0;
      for (int i = 0; i < surface.length; i++) {
        sum += surface[i] * shape.outsideMm(i);
        weight += shape.outsideMm(i);
      }
      meanC = sum / weight;
      passing =
          envelope instanceof Conduit conduit
              ? conduit.passing(diameter, Math.max(meanC, airC + 1e-3), airC)
              : null;
      transfer = Surface.convection(diameter, meanC, airC);
    }

    /** W/(m·K) from the surface of a hull wire to the inside of the covering, or to the air. */
    double conductance(int wire, double surfaceC) {
      double metres = shape.outsideMm(wire) / 1000;
      if (passing == null || !(envelope instanceof Conduit conduit)) {
        return metres * (transfer + Surface.radiation(surfaceC, airC));
      }
      double wall = Math.min(passing.wallC(), meanC - 1e-3);
      return metres * Math.min(1e6, conduit.gapTransfer(diameter, meanC, wall));
    }

    /** W/(m·K) from the inside of the covering to the air. */
    double beyond() {
      return passing == null ? 1e9 : passing.watts() / Math.max(1e-9, passing.wallC() - airC);
    }
  }
}
