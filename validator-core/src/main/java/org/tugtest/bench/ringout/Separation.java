package org.tugtest.bench.ringout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tugtest.facts.Facts;
import org.tugtest.model.Layout;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.route.Piece;
import org.tugtest.route.Route;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** Proves that nets are apart: neighbours one by one, feed from return, and all from all. */
final class Separation {
  private final Facts facts;
  private final Scope scope;
  private final BenchNets nets;

  Separation(Facts facts, Scope scope, BenchNets nets) {
    this.facts = facts;
    this.scope = scope;
    this.nets = nets;
  }

  /** Each two nets that lie side by side in a plug, once, at the first place where they do. */
  List<Apart> neighbours() {
    Map<Long, Apart> pairs = new LinkedHashMap<>();
    Set<String> owners = new TreeSet<>(NaturalOrder.NATURAL);
    for (Point point : scope.probes()) {
      if (point.kind() == Point.Kind.CAVITY) {
        owners.add(point.owner());
      }
    }
    for (String connector : owners) {
      for (Neighbours.Pair pair : Neighbours.in(facts, connector)) {
        Optional<Integer> one = nets.of(pair.one());
        Optional<Integer> other = nets.of(pair.other());
        if (one.isPresent() && other.isPresent() && mayBeApart(pair.one(), pair.other())) {
          long low = Math.min(one.get(), other.get());
          long key = low * Integer.MAX_VALUE + Math.max(one.get(), other.get());
          pairs.computeIfAbsent(
              key,
              none ->
                  new Apart(
                      pairs.size() + 1, pair.one(), pair.other(), "side by side in " + connector));
        }
      }
    }
    return List.copyOf(pairs.values());
  }

  /** Whether the plan wants two points apart, plugged together too. */
  private boolean mayBeApart(Point one, Point other) {
    return !scope.meter().joined(one, other) && !facts.nets().joined(one, other);
  }

  /**
   * All nets on the feed side alone against all on the return side alone; then the same for those
   * that share a covering, segment by segment, each set once.
   */
  List<Tie> supply() {
    Set<Integer> all = new TreeSet<>();
    for (int i = 0; i < nets.count(); i++) {
      all.add(i);
    }
    List<Tie> ties = new ArrayList<>();
    Set<List<List<Point>>> seen = new HashSet<>();
    addSupply(ties, seen, "every feed from every return", all);
    Map<String, Set<Integer>> covered = new TreeMap<>(NaturalOrder.NATURAL);
    for (Wire wire : scope.wires()) {
      for (Piece piece : facts.routes().of(wire.id()).map(Route::pieces).orElse(List.of())) {
        Layout.Segment segment = facts.harness().layout().segments().get(piece.segment());
        if (segment != null && !segment.coverings().isEmpty()) {
          netOf(wire)
              .ifPresent(
                  net -> covered.computeIfAbsent(segment.id(), none -> new TreeSet<>()).add(net));
        }
      }
    }
    covered.forEach(
        (segment, its) ->
            addSupply(
                ties,
                seen,
                "feeds from returns inside "
                    + Series.and(facts.harness().layout().segments().get(segment).coverings())
                    + " on "
                    + segment,
                its));
    return ties;
  }

  private void addSupply(
      List<Tie> ties, Set<List<List<Point>>> seen, String what, Set<Integer> numbers) {
    List<Point> feeds = new ArrayList<>();
    List<Point> returns = new ArrayList<>();
    for (int i : numbers) {
      boolean feed = nets.probes(i).stream().anyMatch(facts.sides().feed()::reaches);
      boolean back = nets.probes(i).stream().anyMatch(facts.sides().back()::reaches);
      if (feed != back) {
        (feed ? feeds : returns).add(nets.probes(i).get(0));
      }
    }
    if (!feeds.isEmpty() && !returns.isEmpty() && seen.add(List.of(feeds, returns))) {
      ties.add(new Tie(ties.size() + 1, what, feeds, returns));
    }
  }

  private Optional<Integer> netOf(Wire wire) {
    return facts
        .wiring()
        .pointOf(wire.from())
        .flatMap(nets::of)
        .or(() -> facts.wiring().pointOf(wire.to()).flatMap(nets::of));
  }

  /**
   * Nets are numbered; in the k-th reading those whose number has the k-th bit are tied to one
   * lead, the rest to the other. Two different numbers differ in a bit, so each two nets are parted
   * by a reading.
   */
  List<Tie> ties() {
    List<Tie> ties = new ArrayList<>();
    int bits = nets.count() < 2 ? 0 : Integer.SIZE - Integer.numberOfLeadingZeros(nets.count() - 1);
    for (int bit = 0; bit < bits; bit++) {
      List<Point> one = new ArrayList<>();
      List<Point> other = new ArrayList<>();
      for (int i = 0; i < nets.count(); i++) {
        ((i >> bit & 1) == 1 ? one : other).add(nets.probes(i).get(0));
      }
      ties.add(new Tie(bit + 1, "bit " + (bit + 1) + " of the net's number", one, other));
    }
    return ties;
  }
}
