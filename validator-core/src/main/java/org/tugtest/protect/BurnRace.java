package org.tugtest.protect;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.tugtest.finding.Basis;
import org.tugtest.heat.Warming;
import org.tugtest.network.Edge;
import org.tugtest.table.OpeningCurve;

/**
 * A wire against the fuses before it, over every current of a fault.
 *
 * <p>A fuse that carries all of the current ends it alone. Fuses that share it have to open one
 * after another, each taking over the shares of those that have opened; that no less flows then is
 * the cautious side.
 *
 * <p>The time of the wire is convex on logarithmic axes and a fuse's straight between its points,
 * so the worst current lies in between at times: each stretch is sampled and narrowed down.
 */
public final class BurnRace {
  private static final double ALL = 0.99;
  private static final int SAMPLES = 12;
  private static final int NARROWINGS = 30;
  private static final int HALVINGS = 8;
  private final List<Runner> runners;
  private final List<List<Runner>> cuts = new ArrayList<>();

  /**
   * A fuse before the wire.
   *
   * @param greatest its greatest opening times
   * @param share of the wire's current that it carries, above 0
   */
  public record Runner(Edge.OfElement fuse, OpeningCurve greatest, double share) {}

  /**
   * Where the fuse does worst against the wire.
   *
   * @param amps through the wire
   * @param wireS seconds until the wire is at its limit
   * @param fuseS greatest time until the current has ended
   * @param fuse that ends it
   * @param extrapolated whether the fuse's time is
   * @param basis of the fuse's time
   */
  public record Worst(
      double amps,
      double wireS,
      double fuseS,
      Edge.OfElement fuse,
      boolean extrapolated,
      Basis basis) {
    /** Whether the wire is at its limit before the current has ended. */
    public boolean burns() {
      return wireS < fuseS;
    }
  }

  /** When the current ends, and what ends it. */
  private record End(double seconds, Runner last, double lastAmps) {}

  /** A race against these, at least one. */
  public BurnRace(List<Runner> runners) {
    this(runners, List.of());
  }

  /**
   * A race against these, at least one.
   *
   * @param cuts fuses that together cut the wire off, with the shares that each has among them
   */
  public BurnRace(List<Runner> runners, List<List<Runner>> cuts) {
    this.runners = List.copyOf(runners);
    List<Runner> sharing = new ArrayList<>();
    for (Runner runner : runners) {
      if (runner.share() >= ALL) {
        this.cuts.add(List.of(runner));
      } else {
        sharing.add(runner);
      }
    }
    if (!sharing.isEmpty()) {
      this.cuts.add(sharing);
    }
    this.cuts.addAll(cuts);
  }

  /** The least current at which the fuses are sure to end it, in amperes; infinite without one. */
  public double surelyEndsA() {
    double least = Double.POSITIVE_INFINITY;
    for (List<Runner> cut : cuts) {
      double last = 0;
      for (Runner runner : cut) {
        last = Math.max(last, runner.greatest().firstAmps() / runner.share());
      }
      least = Math.min(least, last);
    }
    return least;
  }

  /**
   * Whether it is plain that the wire outlasts the fuses at every current between two, in amperes.
   * Both times fall with the current, so a stretch is plain when the fuses at its lower end are
   * faster than the wire at its upper end; one that is not is halved. When this is false, {@link
   * #worst} tells; it always is where fuses share the current, since they may then change places.
   */
  public boolean stands(Warming wire, double fromA, double toA) {
    for (List<Runner> cut : cuts) {
      if (cut.size() > 1) {
        return false;
      }
    }
    return stands(wire, fromA, toA, wire.seconds(toA), HALVINGS);
  }

  private boolean stands(
      Warming wire, double fromA, double toA, double wireSAtTo, int halvingsLeft) {
    double fuseS = end(fromA).seconds();
    if (fuseS <= wireSAtTo) {
      return true;
    }
    double middle = Math.sqrt(fromA * toA);
    return halvingsLeft > 0
        && fuseS <= wire.seconds(fromA)
        && stands(wire, middle, toA, wireSAtTo, halvingsLeft - 1)
        && stands(wire, fromA, middle, wire.seconds(middle), halvingsLeft - 1);
  }

  /**
   * The worst current between two, in amperes; the wire's time there over the fuses' is least.
   *
   * @param fromA not below {@link #surelyEndsA}
   * @param toA not below {@code fromA}
   */
  public Worst worst(Warming wire, double fromA, double toA) {
    TreeSet<Double> stops = new TreeSet<>(List.of(fromA, toA));
    for (List<Runner> cut : cuts) {
      for (Runner runner : cut) {
        for (OpeningCurve.Point point : runner.greatest().points()) {
          double amps = point.amps() / runner.share();
          if (amps > fromA && amps < toA) {
            stops.add(amps);
          }
        }
      }
    }
    List<Double> samples = new ArrayList<>();
    Double before = null;
    for (double stop : stops) {
      for (int i = 1; before != null && i < SAMPLES; i++) {
        samples.add(before * Math.pow(stop / before, (double) i / SAMPLES));
      }
      samples.add(stop);
      before = stop;
    }
    int best = 0;
    for (int i = 1; i < samples.size(); i++) {
      best = margin(wire, samples.get(i)) < margin(wire, samples.get(best)) ? i : best;
    }
    double low = samples.get(Math.max(0, best - 1));
    double high = samples.get(Math.min(samples.size() - 1, best + 1));
    double amps = narrowed(wire, low, high);
    double chosen = margin(wire, amps) < margin(wire, samples.get(best)) ? amps : samples.get(best);
    End end = end(chosen);
    return new Worst(
        chosen,
        wire.seconds(chosen),
        end.seconds(),
        end.last().fuse(),
        end.last().greatest().extrapolated(end.lastAmps()),
        end.last().greatest().basis(end.lastAmps()));
  }

  private double narrowed(Warming wire, double from, double to) {
    double low = from;
    double high = to;
    for (int i = 0; i < NARROWINGS; i++) {
      double one = low + (high - low) / 3;
      double other = high - (high - low) / 3;
      if (margin(wire, one) < margin(wire, other)) {
        high = other;
      } else {
        low = one;
      }
    }
    return (low + high) / 2;
  }

  /** The wire's time over the fuses'; infinite where the wire stands it for ever. */
  private double margin(Warming wire, double amps) {
    double seconds = wire.seconds(amps);
    return Double.isInfinite(seconds) ? seconds : seconds / end(amps).seconds();
  }

  private End end(double amps) {
    End soonest = new End(OpeningCurve.NEVER, runners.get(0), amps);
    for (List<Runner> cut : cuts) {
      End end = oneAfterAnother(amps, cut);
      soonest = end.seconds() < soonest.seconds() ? end : soonest;
    }
    return soonest;
  }

  /** By one fuse that carries its share. */
  private static End alone(double amps, Runner runner) {
    double share = runner.share();
    double own = amps * share * share / share;
    double seconds = runner.greatest().seconds(own);
    return new End(seconds, runner, seconds < OpeningCurve.NEVER ? own : 0);
  }

  private static End oneAfterAnother(double amps, List<Runner> cut) {
    if (cut.size() == 1) {
      return alone(amps, cut.get(0));
    }
    List<Runner> closed = new ArrayList<>(cut);
    double elapsed = 0;
    double whole = cut.stream().mapToDouble(Runner::share).sum();
    while (true) {
      double left = closed.stream().mapToDouble(Runner::share).sum();
      Runner soonest = closed.get(0);
      double least = OpeningCurve.NEVER;
      double its = 0;
      for (Runner runner : closed) {
        double own = amps * runner.share() * whole / left;
        double seconds = runner.greatest().seconds(own);
        if (seconds < least) {
          least = seconds;
          soonest = runner;
          its = own;
        }
      }
      elapsed += least;
      closed.remove(soonest);
      if (closed.isEmpty() || Double.isInfinite(elapsed)) {
        return new End(elapsed, soonest, its);
      }
    }
  }
}
