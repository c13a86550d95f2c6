package org.tugtest.protect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.State;
import org.tugtest.network.Edge;

/**
 * A source as a fault sees it.
 *
 * @param volts open volts, above 0
 * @param ohms inner resistance when giving, above 0
 * @param chargeOhms the same when taking; infinite for a generator
 * @param mostA greatest current; infinite when it has no such limit
 * @param basis the weakest of these
 */
record FaultSource(
    Edge.OfElement edge, double volts, double ohms, double chargeOhms, double mostA, Basis basis) {
  private static final double OHMS = 0.01;
  private static final double CHARGE_TIMES = 20;

  /** The source of an edge in a corner; empty when it gives nothing. */
  static Optional<FaultSource> of(Harness harness, Edge.OfElement edge, FaultCorner corner) {
    if (!(edge.element() instanceof Element.Source source)) {
      return Optional.empty();
    }
    List<Double> volts = volts(harness, edge, source);
    boolean given = !volts.isEmpty();
    double chosen =
        volts.stream()
            .reduce(corner == FaultCorner.LEAST ? Math::min : Math::max)
            .orElse(harness.defaults().nominalV());
    if (!(chosen > 0)) {
      return Optional.empty();
    }
    double ohms = some(source.ohms(), OHMS);
    double charge =
        source.generator()
            ? Double.POSITIVE_INFINITY
            : some(source.chargeOhms(), CHARGE_TIMES * ohms);
    boolean known = given && source.ohms() != null;
    return Optional.of(
        new FaultSource(
            edge,
            chosen,
            ohms,
            charge,
            some(source.maxA(), Double.POSITIVE_INFINITY),
            known ? Basis.GIVEN : Basis.COMMON_PRACTICE));
  }

  boolean generator() {
    return edge.element() instanceof Element.Source source && source.generator();
  }

  private static double some(@Nullable Double value, double otherwise) {
    return value != null && value > 0 ? value : otherwise;
  }

  /** Its open volts in all states that last, each as it says or as the source does. */
  private static List<Double> volts(Harness harness, Edge.OfElement edge, Element.Source source) {
    List<Double> volts = new ArrayList<>();
    boolean own = harness.states().isEmpty();
    for (State state : harness.states().values()) {
      Double here = null;
      for (var entry : state.volts().entrySet()) {
        String ref = entry.getKey().text();
        here =
            ref.equals(edge.text()) || (here == null && ref.equals(edge.device()))
                ? entry.getValue()
                : here;
      }
      own |= here == null;
      if (here != null && !state.brief()) {
        volts.add(here);
      }
    }
    if (source.volts() != null && (own || volts.isEmpty())) {
      volts.add(source.volts());
    }
    return volts;
  }
}
