package org.tugtest.expect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.tugtest.model.Element;
import org.tugtest.model.Ref;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.operate.FedWay;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.text.Quoted;

/**
 * {@code fed}: a load has the volts it works with, a contact is live. {@code dead}: there are no
 * volts, that is under {@value #NONE} V; a sensor line leaks less.
 */
final class FedOrDead {
  private static final double NONE = 0.5;
  private static final double HALF = 0.5;

  private FedOrDead() {}

  static Verdict judge(Stated stated, boolean fed) {
    String in = stated.expectation().in();
    Ref at = stated.expectation().at();
    if (at == null) {
      return stated.notJudged("it does not say where");
    }
    List<OperatingPoint> states = new ArrayList<>();
    if (in == null) {
      states.addAll(stated.facts().operating().all());
    } else {
      stated.facts().operating().in(in).ifPresent(states::add);
    }
    if (states.isEmpty()) {
      return stated.notJudged("there is no state " + in);
    }
    List<Edge.OfElement> loads = stated.users(at);
    List<Point> points = at.member() == null && loads.isEmpty() ? stated.points(at) : List.of();
    if (loads.isEmpty() && points.isEmpty()) {
      return stated.notJudged(at.text() + " names no load and no contact of this harness");
    }
    for (OperatingPoint state : states) {
      for (Edge.OfElement load : loads) {
        Verdict verdict = ofLoad(stated, state, load, fed);
        if (verdict.answer() != Verdict.Answer.HOLDS) {
          return verdict;
        }
      }
      for (Point point : points) {
        Verdict verdict = ofPoint(stated, state, point, fed);
        if (verdict.answer() != Verdict.Answer.HOLDS) {
          return verdict;
        }
      }
    }
    return stated.holds(
        at.text()
            + (fed ? " is fed" : " is dead")
            + (in == null ? " in every state" : " in state " + in));
  }

  private static Verdict ofLoad(
      Stated stated, OperatingPoint state, Edge.OfElement load, boolean fed) {
    double volts = Math.abs(state.across(load));
    double least = fed ? leastVolts(stated, load) : NONE;
    return answer(
        stated,
        load.text(),
        state,
        volts,
        least,
        fed,
        Stated.ends(load),
        () -> FedWay.to(stated.facts().network(), state, load),
        new Lacking.Volts(load, state.state()));
  }

  private static Verdict ofPoint(Stated stated, OperatingPoint state, Point point, boolean fed) {
    OptionalDouble live = state.volts(point);
    double volts = live.isPresent() ? Math.abs(live.getAsDouble()) : 0;
    Double minV = stated.expectation().minV();
    double least = fed ? (minV == null ? NONE : minV) : NONE;
    return answer(
        stated,
        point.text(),
        state,
        volts,
        least,
        fed,
        List.of(point.subject()),
        () -> FedWay.to(stated.facts().network(), state, point, null),
        new Lacking.Plus(point, state.state()));
  }

  private static Verdict answer(
      Stated stated,
      String what,
      OperatingPoint state,
      double volts,
      double least,
      boolean fed,
      List<org.tugtest.finding.Subject> things,
      Supplier<Optional<Path>> way,
      Lacking lacking) {
    boolean holds = fed ? volts >= least : volts < least;
    String seen = what + " has " + shown(volts, least) + " V in state " + state.state();
    if (holds) {
      return stated.holds(seen);
    }
    String fedBy = fed ? "" : way.get().map(path -> "; fed by " + path.text()).orElse("");
    Verdict fails =
        stated.fails(
            seen
                + (fed ? ", at least " : ", less than ")
                + Quoted.number(least)
                + " V wanted"
                + fedBy,
            things);
    return fed ? fails.lacks(lacking) : fails;
  }

  /** The least volts that count as fed: as expected, else the load's own, else half of nominal. */
  private static double leastVolts(Stated stated, Edge.OfElement load) {
    Double minV = stated.expectation().minV();
    if (minV == null && load.element() instanceof Element.Load its) {
      minV = its.minV();
    }
    return minV == null ? HALF * stated.facts().lowSupplies().nominalV(load) : minV;
  }

  /** Two decimals, more where two would stand on the other side of the limit. */
  private static String shown(double volts, double limit) {
    for (int decimals = 2; decimals < 9; decimals++) {
      String text = String.format(Locale.ROOT, "%." + decimals + "f", volts);
      if (Double.compare(Double.parseDouble(text), limit) == Double.compare(volts, limit)) {
        return text;
      }
    }
    return Double.toString(volts);
  }
}
