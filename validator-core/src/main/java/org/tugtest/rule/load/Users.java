package org.tugtest.rule.load;

import java.util.List;
import java.util.Locale;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;

/** The loads of a harness and what they want. */
final class Users {
  private static final double HALF = 0.5;

  private Users() {}

  /** All loads that lie between two points, in the order of the network. */
  static List<Edge.OfElement> loads(Facts facts) {
    return facts.network().edges().stream()
        .filter(edge -> edge instanceof Edge.OfElement in && in.element() instanceof Element.Load)
        .map(Edge.OfElement.class::cast)
        .toList();
  }

  /** The device that a load is in. */
  static Subject device(Edge.OfElement load) {
    return Subject.device(load.device());
  }

  /**
   * The volts below which a load stops working: as given, else half of nominal, or of the volts of
   * the source of far less that alone feeds it.
   */
  static double leastVolts(Facts facts, Edge.OfElement user) {
    Double own = user.element() instanceof Element.Load load ? load.minV() : null;
    return own == null ? HALF * facts.lowSupplies().nominalV(user) : own;
  }

  /** {@code 8.31 V}. */
  static String volts(double volts) {
    return String.format(Locale.ROOT, "%.2f V", volts);
  }
}
