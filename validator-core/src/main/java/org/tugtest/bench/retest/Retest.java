package org.tugtest.bench.retest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.bench.rework.Matching;
import org.tugtest.bench.rework.Touched;
import org.tugtest.bench.ringout.Apart;
import org.tugtest.bench.ringout.Blind;
import org.tugtest.bench.ringout.Neighbours;
import org.tugtest.bench.ringout.Probe;
import org.tugtest.bench.ringout.RingOut;
import org.tugtest.bench.ringout.Scope;
import org.tugtest.facts.Facts;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;

/**
 * What is measured and tried again after a change: the pairs that run over what it touched, the new
 * neighbours of each cavity it filled, what it parted, and the functions that hang on it.
 *
 * @param looms a list for each loom that is touched
 * @param functions what is switched on and looked at, sorted
 */
public record Retest(List<OfLoom> looms, List<Function> functions) {
  public Retest {
    looms = List.copyOf(looms);
    functions = List.copyOf(functions);
  }

  /**
   * The list for one loom.
   *
   * @param joined pairs that must be joined
   * @param apart pairs that must be apart
   * @param blind touched wires whose break the pairs cannot show
   */
  public record OfLoom(Scope scope, List<Probe> joined, List<Apart> apart, List<Blind> blind) {
    public OfLoom {
      joined = List.copyOf(joined);
      apart = List.copyOf(apart);
      blind = List.copyOf(blind);
    }
  }

  /** The list after the change from one harness to another. */
  public static Retest of(Facts before, Facts after, Matching matching) {
    Touched touched = Touched.of(before, after, matching);
    List<OfLoom> looms = new ArrayList<>();
    for (Scope scope : Scope.all(after)) {
      OfLoom loom = ofLoom(after, scope, touched, matching);
      if (!loom.joined().isEmpty() || !loom.apart().isEmpty() || !loom.blind().isEmpty()) {
        looms.add(loom);
      }
    }
    return new Retest(looms, Functions.of(after, touched));
  }

  private static OfLoom ofLoom(Facts after, Scope scope, Touched touched, Matching matching) {
    RingOut all = RingOut.of(after, scope);
    List<Probe> joined = new ArrayList<>();
    for (Probe probe : all.joined()) {
      if (probe.wires().stream().anyMatch(touched.wires()::contains)) {
        joined.add(probe.numbered(joined.size() + 1));
      }
    }
    List<Blind> blind =
        all.blind().stream()
            .filter(spot -> spot.fault() == Blind.Fault.OPEN)
            .filter(spot -> touched.wires().contains(spot.what().id()))
            .toList();
    return new OfLoom(scope, joined, apart(after, scope, touched, matching), blind);
  }

  private static List<Apart> apart(Facts after, Scope scope, Touched touched, Matching matching) {
    List<Apart> apart = new ArrayList<>();
    Set<String> owners = new TreeSet<>(org.tugtest.text.NaturalOrder.NATURAL);
    touched.points().stream()
        .filter(point -> point.kind() == Point.Kind.CAVITY && scope.probes().contains(point))
        .forEach(point -> owners.add(point.owner()));
    for (String connector : owners) {
      for (Neighbours.Pair pair : Neighbours.in(after, connector)) {
        boolean fresh =
            touched.points().contains(pair.one()) || touched.points().contains(pair.other());
        if (fresh && canBeHeldApart(after, scope, pair.one(), pair.other())) {
          String why = "side by side in " + connector;
          apart.add(new Apart(apart.size() + 1, pair.one(), pair.other(), why));
        }
      }
    }
    for (Wire gone : touched.gone().values()) {
      Optional<Point> from = point(after, gone.from(), matching);
      Optional<Point> to = point(after, gone.to(), matching);
      if (from.isPresent()
          && to.isPresent()
          && canBeHeldApart(after, scope, from.get(), to.get())) {
        String why = "were joined by " + gone.id() + ", which is gone";
        apart.add(new Apart(apart.size() + 1, from.get(), to.get(), why));
      }
    }
    return apart;
  }

  private static boolean canBeHeldApart(Facts after, Scope scope, Point one, Point other) {
    return scope.probes().contains(one)
        && scope.probes().contains(other)
        && !scope.meter().joined(one, other)
        && !after.nets().joined(one, other);
  }

  private static Optional<Point> point(Facts after, @Nullable Ref ref, Matching matching) {
    if (ref == null) {
      return Optional.empty();
    }
    String owner = matching.connectors().getOrDefault(ref.owner(), ref.owner());
    return after.wiring().pointOf(new Ref(owner, ref.pin(), ref.member()));
  }
}
