package org.tugtest.route;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.text.NaturalOrder;

/**
 * The shortest ways between places for things that may use the segments of several looms. All are
 * asked for first, so that those from one node share a search.
 */
public final class ShortWays {
  private final Harness harness;
  private final SegmentGraph segments;
  private final Map<Set<String>, Asked> byLooms = new HashMap<>();

  private record Asked(PairWays pairs, LegWays legs) {}

  /**
   * A way.
   *
   * @param mm its length
   * @param nodes the nodes it passes and ends at, in natural order
   */
  public record ShortWay(double mm, Set<String> nodes) {}

  /** Ways along the layout of a harness. */
  public ShortWays(Harness harness) {
    this.harness = harness;
    this.segments = new SegmentGraph(harness.layout());
  }

  /**
   * Asks for a way.
   *
   * @param looms whose segments may be used besides those of no loom
   */
  public void ask(Stand from, Stand to, Set<String> looms) {
    asked(looms).legs().ask(from, to);
  }

  private Asked asked(Set<String> looms) {
    Asked known = byLooms.get(looms);
    if (known != null) {
      return known;
    }
    return byLooms.computeIfAbsent(
        Set.copyOf(looms),
        key -> {
          PairWays pairs = new PairWays(segments.ways(key));
          return new Asked(pairs, new LegWays(pairs));
        });
  }

  /** Finds all that was asked for. */
  public void find() {
    byLooms.values().forEach(asked -> asked.pairs().find());
  }

  /** A way that was asked for; empty when there is none, or a segment on it gives no length. */
  public Optional<ShortWay> way(Stand from, Stand to, Set<String> looms) {
    return asked(looms)
        .legs()
        .leg(from, to)
        .filter(leg -> leg.unknown() == null)
        .map(leg -> way(from, to, leg.pieces()));
  }

  private ShortWay way(Stand from, Stand to, List<Piece> pieces) {
    Set<String> nodes = new TreeSet<>(NaturalOrder.NATURAL);
    for (Stand stand : List.of(from, to)) {
      if (stand instanceof Stand.AtNode at) {
        nodes.add(at.node());
      }
    }
    double mm = 0;
    for (Piece piece : pieces) {
      mm += piece.lengthMm();
      Layout.Segment segment = harness.layout().segments().get(piece.segment());
      Double length = segment == null ? null : LoomWays.length(segment);
      if (segment != null && length != null) {
        if (piece.lowMm() <= 0 && segment.from() != null) {
          nodes.add(segment.from());
        }
        if (piece.highMm() >= length && segment.to() != null) {
          nodes.add(segment.to());
        }
      }
    }
    return new ShortWay(mm, nodes);
  }
}
