package org.tugtest.bench.ringout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.NearestPairs;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Shown;
import org.tugtest.network.WireLength;
import org.tugtest.rule.built.ReadingLimit;

/**
 * The least list of readings that proves a loom: that every net is joined, by one pair fewer than
 * it has points to probe, and that no two nets touch. What the list cannot show is said.
 *
 * @param scope what is measured
 * @param joined pairs that must be joined, net by net, the nearest first
 * @param apart pairs of nets that could touch, which a meter can part one by one
 * @param supply all feeds against all returns, then those that share a covering; empty when there
 *     are not both
 * @param ties insulation readings that part every net from every other: as many as the number of
 *     nets has bits
 * @param blind what stays unseen
 */
public record RingOut(
    Scope scope,
    List<Probe> joined,
    List<Apart> apart,
    List<Tie> supply,
    List<Tie> ties,
    List<Blind> blind) {
  private static final double UNKNOWN_MM = 1000;
  private static final double PER_OHM = 1000;

  public RingOut {
    joined = List.copyOf(joined);
    apart = List.copyOf(apart);
    supply = List.copyOf(supply);
    ties = List.copyOf(ties);
    blind = List.copyOf(blind);
  }

  /** The list for each loom, and for the wires of no loom. */
  public static List<RingOut> all(Facts facts) {
    return Scope.all(facts).stream().map(scope -> of(facts, scope)).toList();
  }

  /** The list for one scope; near linear in its size. */
  public static RingOut of(Facts facts, Scope scope) {
    BenchNets nets = BenchNets.of(scope);
    Separation separation = new Separation(facts, scope, nets);
    return new RingOut(
        scope,
        joined(facts, scope, nets),
        separation.neighbours(),
        separation.supply(),
        separation.ties(),
        BlindSpots.of(facts, scope, nets));
  }

  private static List<Probe> joined(Facts facts, Scope scope, BenchNets nets) {
    ReadingLimit limit = ReadingLimit.of(facts.harness());
    List<NearestPairs.Pair> pairs =
        new ArrayList<>(scope.meter().nearest(scope.probes(), edge -> length(facts, edge)));
    pairs.sort(Comparator.comparingInt(pair -> nets.number(pair.one())));
    List<Probe> joined = new ArrayList<>();
    for (NearestPairs.Pair pair : pairs) {
      joined.add(probe(joined.size() + 1, pair.one(), pair.other(), scope, nets, limit));
    }
    return joined;
  }

  private static Probe probe(
      int number, Point from, Point to, Scope scope, BenchNets nets, ReadingLimit limit) {
    Shown shown = scope.meter().between(from, to).orElseThrow();
    List<String> wires =
        scope.meter().path(from, to).map(Path::edges).orElse(List.of()).stream()
            .filter(edge -> edge instanceof Edge.OfWire)
            .map(Edge::text)
            .toList();
    Double milliohm = shown.milliohm();
    Double ohms = milliohm == null ? null : milliohm / PER_OHM;
    return new Probe(
        number,
        from,
        to,
        nets.first(from),
        wires,
        ohms,
        ohms == null ? null : limit.greatest(ohms),
        shown.basis(),
        shown.atMost() ? "may be less: many ways in parallel" : shown.missing());
  }

  /** How far the hand goes; a wire whose length is not known counts as a metre. */
  private static double length(Facts facts, Edge edge) {
    if (!(edge instanceof Edge.OfWire wire)) {
      return 0;
    }
    Optional<WireLength> length = facts.lengths().of(wire.wire());
    return length.map(WireLength::mm).orElse(UNKNOWN_MM);
  }

  /** The wires that are proven whole by the pairs that must be joined. */
  public List<Wire> proven() {
    List<String> unseen =
        blind.stream()
            .filter(spot -> spot.fault() == Blind.Fault.OPEN)
            .map(spot -> spot.what().id())
            .toList();
    Set<String> ids = Set.copyOf(unseen);
    return scope.wires().stream().filter(wire -> !ids.contains(wire.id())).toList();
  }
}
