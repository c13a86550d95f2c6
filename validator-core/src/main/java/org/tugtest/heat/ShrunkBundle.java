package org.tugtest.heat;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How warm the wires of a bundle become with unequal currents: a closed form that shrinks the
 * bundle to as many wires as are hot. All 186 readings of the bundle chart of MIL-W-5088L
 * (digitised in 2023) lie within 0.969 to 1.039 of it; it has the last word, the {@link
 * HeatNetwork} the second.
 *
 * <p>With u = (I / I of the wire alone)², w = u over the greatest u, σ = Σw: n = σ + 1 − σ/N wires
 * count as hot. They give off their heat over a bundle of 1.2 · root of the sum of squares of their
 * diameters, and the middle is warmer by the heat of the others through a medium of 0.2 W/(m·K). No
 * wire is cooler than alone, and a whole bundle may give off no more than 2.2 times what one wire
 * gives off alone. The two figures are fitted to that chart; beyond 20 wires they are carried on.
 */
public final class ShrunkBundle {
  /** Conductivity of a bundle across its wires, W/(m·K): fitted. */
  private static final double INSIDE = 0.20;

  /** The most a bundle gives off over what one wire gives off alone: fitted. */
  private static final double MOST_HEAT = 2.2;

  private static final double LAID = 1.2;
  private static final double MIDDLE = 1 / (4 * Math.PI * INSIDE);
  private final List<BundledWire> wires;
  private final Envelope envelope;
  private final double airC;
  private final double limitC;
  private final double[] alone;
  private final double[] share;
  private @Nullable Credit credit;
  private double shares;
  private double squares;
  private double made;
  private double greatest;
  private double second;
  private int greatestAt = -1;

  /**
   * A bundle.
   *
   * @param wires all of them, idle ones too
   * @param airC air round it, °C
   * @param freeAir what wires may carry alone
   */
  public ShrunkBundle(
      List<BundledWire> wires, Envelope envelope, double airC, FreeAirAmps freeAir) {
    this.wires = List.copyOf(wires);
    this.envelope = envelope;
    this.airC = airC;
    double lowest = Double.POSITIVE_INFINITY;
    for (BundledWire wire : wires) {
      lowest = Math.min(lowest, wire.limitC());
    }
    this.limitC = lowest;
    this.alone = new double[wires.size()];
    this.share = new double[wires.size()];
    for (int i = 0; i < alone.length; i++) {
      boolean asBefore = i > 0 && wires.get(i).wire().equals(wires.get(i - 1).wire());
      alone[i] = asBefore ? alone[i - 1] : freeAir.of(wires.get(i).wire(), lowest, airC);
      add(i, alone[i] == 0 ? 0 : square(wires.get(i).amps() / alone[i]));
    }
  }

  private void add(int i, double hot) {
    Insulated wire = wires.get(i).wire();
    share[i] = hot;
    shares += hot;
    squares += hot * square(wire.outerMm());
    made += square(wires.get(i).amps()) * wire.ohmPerM(limitC);
    if (greatestAt < 0 || hot > greatest) {
      second = greatest;
      greatest = hot;
      greatestAt = i;
    } else {
      second = Math.max(second, hot);
    }
  }

  private static double square(double value) {
    return value * value;
  }

  /** The lowest class in it, °C, against which its hottest temperature is held. */
  public double limitC() {
    return limitC;
  }

  /** What a wire may carry alone at the lowest class, in amperes. */
  double aloneAmps(int wire) {
    return alone[wire];
  }

  /** How many of its wires count as hot: σ + 1 − σ/N, at most N. */
  double counted() {
    Hot hot = new Hot();
    return hot.sum == 0 ? 0 : hot.grown * hot.sum / greatest;
  }

  /** How warm it becomes for good. */
  public BundleHeat heat() {
    if (!(limitC > airC)) {
      return atOrAboveItsLimit();
    }
    Hot hot = new Hot();
    if (hot.sum == 0) {
      return new BundleHeat(wires.stream().map(wire -> airC).toList(), airC);
    }
    if (airC >= FreeAir.HOTTEST_C || runsAway() || surplus(hot, FreeAir.HOTTEST_C) < 0) {
      return unsteady(wires.stream().map(wire -> FreeAir.HOTTEST_C).toList());
    }
    return at(hot, Root.of(surface -> surplus(hot, surface), airC, FreeAir.HOTTEST_C));
  }

  private static BundleHeat unsteady(List<Double> atMost) {
    return new BundleHeat(atMost, Double.POSITIVE_INFINITY);
  }

  /** Air as warm as the lowest class leaves nothing to share by: every wire alone. */
  private BundleHeat atOrAboveItsLimit() {
    List<Double> celsius = new ArrayList<>();
    double hottest = airC;
    for (BundledWire wire : wires) {
      double own = aloneC(wire);
      celsius.add(own);
      hottest = Math.max(hottest, own);
    }
    return Double.isInfinite(hottest)
        ? unsteady(celsius.stream().map(own -> Math.min(own, FreeAir.HOTTEST_C)).toList())
        : new BundleHeat(celsius, hottest);
  }

  private double aloneC(BundledWire wire) {
    return FreeAir.celsius(wire.wire(), wire.amps(), airC).orElse(Double.POSITIVE_INFINITY);
  }

  private BundleHeat at(Hot hot, double surface) {
    double heat = envelope.wattsPerM(hot.diameter, surface, airC);
    double hottest = airC + (limitC - airC) * hot.grown * hot.sum / MOST_HEAT;
    List<Double> celsius = new ArrayList<>();
    boolean steady = true;
    for (BundledWire wire : wires) {
      double own = noCoolerThanAlone(wire, celsius(wire, surface, heat));
      steady &= own <= FreeAir.HOTTEST_C;
      celsius.add(Math.min(own, FreeAir.HOTTEST_C));
      hottest = wire.amps() == 0 ? hottest : Math.max(hottest, own);
    }
    return steady ? new BundleHeat(celsius, hottest) : unsteady(celsius);
  }

  /** Alone it would be warmer than this if its surface then gave off less than it makes. */
  private double noCoolerThanAlone(BundledWire wire, double celsius) {
    if (wire.amps() == 0) {
      return Math.max(celsius, airC);
    }
    double makes = square(wire.amps()) * wire.wire().ohmPerM(celsius);
    double surface = celsius - makes * wire.wire().insulationKelvin();
    boolean enough =
        surface > airC && Surface.wattsPerM(wire.wire().outerMm(), surface, airC) >= makes;
    return enough ? celsius : Math.max(celsius, aloneC(wire));
  }

  /** Whether some wire's own heating runs away whatever its surface. */
  private boolean runsAway() {
    return wires.stream().anyMatch(wire -> wire.amps() != 0 && !(left(wire) > 0));
  }

  /** What at a surface temperature goes out over what comes in, W/m. */
  private double surplus(Hot hot, double surface) {
    double heat = envelope.wattsPerM(hot.diameter, surface, airC);
    double made = 0;
    for (BundledWire wire : wires) {
      if (wire.amps() != 0) {
        made += square(wire.amps()) * wire.wire().ohmPerM(celsius(wire, surface, heat));
      }
    }
    return heat - hot.grown * made;
  }

  /**
   * Ts + (Q − q)/(4πk) + q · R of the insulation, q being I²R at that temperature: linear in it, as
   * long as its own heating does not run away.
   */
  private double celsius(BundledWire wire, double surface, double heat) {
    double base = surface + middle() * heat;
    double own = wire.wire().insulationKelvin() - middle();
    double cold = square(wire.amps()) * wire.wire().ohmPerM(0);
    double left = left(wire);
    return left <= 0 ? Double.POSITIVE_INFINITY : (base + own * cold) / left;
  }

  private double left(BundledWire wire) {
    double perKelvin = square(wire.amps()) * (wire.wire().ohmPerM(1) - wire.wire().ohmPerM(0));
    return 1 - (wire.wire().insulationKelvin() - middle()) * perKelvin;
  }

  private double middle() {
    return wires.size() == 1 ? 0 : MIDDLE;
  }

  /**
   * The lasting current in amperes that one wire may carry while the others carry theirs: at it the
   * bundle reaches its lowest class, the others being taken as that warm. 0 when they alone bring
   * it there; never more than the wire may carry alone.
   */
  public double allowedAmps(int wire) {
    if (!(limitC > airC)) {
      return 0;
    }
    double most = alone[wire];
    if (passes(wire, most)) {
      return most;
    }
    return passes(wire, 0) ? Root.last(amps -> -left(wire, amps), 0, most) : 0;
  }

  /** Whether one wire may carry a current while the others carry theirs. */
  boolean allows(int wire, double amps) {
    return limitC > airC && (amps == 0 || amps <= alone[wire]) && passes(wire, amps);
  }

  private boolean passes(int number, double amps) {
    return left(number, amps) >= 0;
  }

  /**
   * What is left, in shares of the most, when one wire carries a current and the bundle is at its
   * lowest class: of the heat that a whole bundle may give off, or of what can go out over what is
   * made; below 0 when it is too much. Falls steadily as the current grows.
   */
  double left(int number, double amps) {
    Hot hot = new Hot(number, square(amps / alone[number]));
    double room = 1 - hot.grown * hot.sum / MOST_HEAT;
    if (room < 0) {
      return room;
    }
    BundledWire wire = wires.get(number);
    double own = square(amps) * wire.wire().ohmPerM(limitC);
    double others = made - square(wire.amps()) * wire.wire().ohmPerM(limitC);
    double heat = hot.grown * (own + Math.max(0, others));
    double through = own * wire.wire().insulationKelvin();
    double surface = limitC - through - (heat - own) * middle();
    if (heat == 0) {
      return room;
    }
    double over = surface > airC ? envelope.over(hot.diameter, surface, airC, heat) / heat : -1;
    return Math.min(room, over);
  }

  private Credit credit() {
    Credit made = credit;
    if (made == null) {
      made = new Credit(wires, alone, limitC);
      credit = made;
    }
    return made;
  }

  /** The hot wires, one of them perhaps with another current. */
  private final class Hot {
    final double sum;
    final double grown;
    final double diameter;

    /** As it is. */
    Hot() {
      this(shares, squares, greatest);
    }

    /** With another share of one wire. */
    Hot(int wire, double other) {
      this(
          Math.max(0, shares - share[wire]) + other,
          credit().beside(wire) + other * square(wires.get(wire).wire().outerMm()),
          Math.max(other, wire == greatestAt ? second : greatest));
    }

    private Hot(double sum, double squares, double most) {
      this.sum = sum;
      if (most == 0 || wires.size() == 1) {
        grown = 1;
        diameter = wires.isEmpty() ? 1 : wires.get(0).wire().outerMm();
      } else {
        grown = 1 + most / sum - 1.0 / wires.size();
        diameter = LAID * Math.sqrt(grown * squares / most);
      }
    }
  }
}
