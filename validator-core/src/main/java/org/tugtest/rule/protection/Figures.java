package org.tugtest.rule.protection;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.protect.Ratings;
import org.tugtest.text.Series;

/** Figures and fuses in the words of the findings. */
final class Figures {
  private static final int NAMED = 4;

  private Figures() {}

  /** A number without needless zeros. */
  static String shown(double value) {
    BigDecimal plain = BigDecimal.valueOf(value).stripTrailingZeros();
    return (plain.scale() < 0 ? plain.setScale(0, RoundingMode.UNNECESSARY) : plain)
        .toPlainString();
  }

  /** Amperes to two decimals at most, with the unit. */
  static String amps(double value) {
    return shown(BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN).doubleValue())
        + " A";
  }

  /** What a wire stands, cut off to a tenth so that it never seems more. */
  static double cutOff(double amps) {
    return BigDecimal.valueOf(amps).setScale(1, RoundingMode.FLOOR).doubleValue();
  }

  /** Fuses, trips and sources with what they hold: {@code FB.f1 (10 A)}. */
  static String fuses(List<Edge.OfElement> cut, Ratings ratings) {
    return Series.and(cut.stream().map(edge -> fuse(edge, ratings)).toList(), NAMED);
  }

  private static String fuse(Edge.OfElement edge, Ratings ratings) {
    if (edge.element() instanceof Element.Source source) {
      Double most = source.maxA();
      return edge.text() + (most == null ? "" : " (limits itself to " + amps(most) + ")");
    }
    return edge.text()
        + ratings.ofFuse(edge).map(rating -> " (" + amps(rating) + ")").orElse(" (no rating)");
  }
}
