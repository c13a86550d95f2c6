package org.tugtest.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Layout;

/**
 * The shortest way between two stands, of which either may lie along a segment: the best of the
 * ways over the ends of their segments and, on one segment, of the straight one.
 */
final class LegWays {
  private final LoomWays ways;
  private final PairWays pairs;

  /** A node by which a stand is left, and how far it is. */
  private record Exit(int node, int rank, long offset, boolean atFrom) {}

  /**
   * A leg of a route.
   *
   * @param unknown a segment on it that gives no length; null when all do
   * @param other segments of another way of the same length; empty when there is none
   */
  record Leg(List<Piece> pieces, @Nullable String unknown, List<String> other) {}

  /** One candidate, as segments by rank with what is covered of the first and the last. */
  private record Candidate(Way way, Exit from, Exit to, boolean straight) {
    long cost() {
      return way.cost();
    }

    int[] ranks() {
      return way.ranks();
    }
  }

  LegWays(PairWays pairs) {
    this.pairs = pairs;
    this.ways = pairs.ways();
  }

  /** Asks for all that a leg may need. */
  void ask(Stand from, Stand to) {
    for (Exit a : exits(from)) {
      for (Exit b : exits(to)) {
        pairs.ask(a.node(), b.node());
      }
    }
  }

  /** Whether the loom can reach where something stands. */
  boolean reaches(Stand stand) {
    return exits(stand).stream().anyMatch(exit -> exit.node() >= 0);
  }

  private List<Exit> exits(Stand stand) {
    if (stand instanceof Stand.AtNode at) {
      return List.of(new Exit(ways.index(at.node()), -1, 0, true));
    }
    Stand.OnSegment on = (Stand.OnSegment) stand;
    int rank = ways.rank(on.segment());
    if (rank < 0) {
      return List.of();
    }
    Layout.Segment segment = ways.segment(rank);
    long offset = LoomWays.thousandths(on.offsetMm());
    int from = ways.index(String.valueOf(segment.from()));
    int to = ways.index(String.valueOf(segment.to()));
    return List.of(
        new Exit(from, rank, offset, true), new Exit(to, rank, ways.length(rank) - offset, false));
  }

  /** The leg between two stands; empty when there is no way. */
  Optional<Leg> leg(Stand from, Stand to) {
    if (from.equals(to)) {
      return Optional.of(new Leg(List.of(), null, List.of()));
    }
    List<Candidate> all = candidates(from, to);
    Candidate best = all.stream().min(LegWays::compare).orElse(null);
    if (best == null) {
      return Optional.empty();
    }
    int[] second = null;
    for (Candidate candidate : all) {
      if (candidate.cost() == best.cost()) {
        second = second(best, candidate.ranks(), second);
        second = second(best, candidate.way().other(), second);
      }
    }
    return Optional.of(new Leg(pieces(best), unknown(best), names(second)));
  }

  /** Of ways as short as the best, other than that, the first. */
  private static int @Nullable [] second(
      Candidate best, int @Nullable [] ranks, int @Nullable [] second) {
    if (ranks == null || Way.compare(ranks, best.ranks()) == 0) {
      return second;
    }
    return second == null || Way.compare(ranks, second) < 0 ? ranks : second;
  }

  private List<Candidate> candidates(Stand from, Stand to) {
    List<Candidate> all = new ArrayList<>();
    if (from instanceof Stand.OnSegment a
        && to instanceof Stand.OnSegment b
        && a.segment().equals(b.segment())
        && ways.rank(a.segment()) >= 0) {
      int rank = ways.rank(a.segment());
      long at = LoomWays.thousandths(a.offsetMm());
      long end = LoomWays.thousandths(b.offsetMm());
      all.add(
          new Candidate(
              new Way(new int[] {rank}, pairs.cost(rank, Math.abs(end - at)), null),
              new Exit(-1, rank, at, true),
              new Exit(-1, rank, end, true),
              true));
    }
    for (Exit a : exits(from)) {
      for (Exit b : exits(to)) {
        pairs
            .way(a.node(), b.node())
            .ifPresent(way -> all.add(new Candidate(whole(a, way, b), a, b, false)));
      }
    }
    return all;
  }

  /** A way with what lies before and after it on the segments of its stands. */
  private Way whole(Exit from, Way way, Exit to) {
    int[] other = way.other();
    return new Way(
        ranks(from, way.ranks(), to),
        cost(from) + way.cost() + cost(to),
        other == null ? null : ranks(from, other, to));
  }

  private long cost(Exit exit) {
    return exit.offset() == 0 ? 0 : pairs.cost(exit.rank(), exit.offset());
  }

  /** All segments of a candidate; a stand at the very end of its segment does not use it. */
  private static int[] ranks(Exit from, int[] way, Exit to) {
    List<Integer> ranks = new ArrayList<>();
    if (from.offset() > 0) {
      ranks.add(from.rank());
    }
    for (int rank : way) {
      ranks.add(rank);
    }
    if (to.offset() > 0) {
      ranks.add(to.rank());
    }
    return ranks.stream().mapToInt(Integer::intValue).toArray();
  }

  private static int compare(Candidate one, Candidate other) {
    int byCost = Long.compare(one.cost(), other.cost());
    return byCost != 0 ? byCost : Way.compare(one.ranks(), other.ranks());
  }

  private List<Piece> pieces(Candidate taken) {
    List<Piece> pieces = new ArrayList<>();
    if (taken.straight()) {
      int rank = taken.from().rank();
      pieces.add(piece(rank, taken.from().offset(), taken.to().offset()));
      return pieces;
    }
    Exit from = taken.from();
    Exit to = taken.to();
    if (from.offset() > 0) {
      long length = ways.length(from.rank());
      pieces.add(
          from.atFrom()
              ? piece(from.rank(), from.offset(), 0)
              : piece(from.rank(), length - from.offset(), length));
    }
    int at = from.node();
    for (int rank : pairs.way(from.node(), to.node()).orElse(Way.NONE).ranks()) {
      boolean along = ways.index(String.valueOf(ways.segment(rank).from())) == at;
      long length = ways.length(rank);
      pieces.add(along ? piece(rank, 0, length) : piece(rank, length, 0));
      Layout.Segment segment = ways.segment(rank);
      at = ways.index(String.valueOf(along ? segment.to() : segment.from()));
    }
    if (to.offset() > 0) {
      long length = ways.length(to.rank());
      pieces.add(
          to.atFrom()
              ? piece(to.rank(), 0, to.offset())
              : piece(to.rank(), length, length - to.offset()));
    }
    return pieces;
  }

  private Piece piece(int rank, long from, long to) {
    return new Piece(ways.segment(rank).id(), from / 1000.0, to / 1000.0);
  }

  private @Nullable String unknown(Candidate taken) {
    for (int rank : taken.ranks()) {
      if (!ways.known(rank)) {
        return ways.segment(rank).id();
      }
    }
    return null;
  }

  private List<String> names(int @Nullable [] ranks) {
    List<String> names = new ArrayList<>();
    if (ranks != null) {
      for (int rank : ranks) {
        names.add(ways.segment(rank).id());
      }
    }
    return names;
  }
}
