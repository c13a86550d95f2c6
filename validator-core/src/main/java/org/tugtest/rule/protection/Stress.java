package org.tugtest.rule.protection;

import java.util.List;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.protect.Ratings;

/**
 * What fuses let through a wire.
 *
 * @param amps for ever
 * @param heldA for ten minutes, which is for ever to a thin wire
 * @param cut the fuses, trips and self-limiting sources
 */
record Stress(double amps, double heldA, List<Edge.OfElement> cut) {
  /** A blade fuse may hold this multiple of its rating for 600 s (maker data of ISO 8820-3). */
  static final double HELD = 1.35;

  /** Of one fault, which all fuses of the cut feed. */
  static Stress ofOneFault(double amps, List<Edge.OfElement> cut) {
    return new Stress(amps, melts(cut) ? amps * HELD : amps, cut);
  }

  /** Of a fault that keeps one fuse on the brink while others draw what they do. */
  static Stress besideOthers(double amps, List<Edge.OfElement> cut, Ratings ratings) {
    double greatest =
        cut.stream()
            .filter(Stress::melts)
            .mapToDouble(fuse -> ratings.ofFuse(fuse).orElse(0.0))
            .max()
            .orElse(0);
    return new Stress(amps, amps + (HELD - 1) * greatest, cut);
  }

  /** Of a fuse of another rating in the same place. */
  static Stress ofFuse(double ratingA, Edge.OfElement fuse) {
    return ofOneFault(ratingA, List.of(fuse));
  }

  private static boolean melts(List<Edge.OfElement> cut) {
    return cut.stream().anyMatch(Stress::melts);
  }

  private static boolean melts(Edge.OfElement edge) {
    return edge.element() instanceof Element.Fuse fuse && !fuse.electronic();
  }
}
