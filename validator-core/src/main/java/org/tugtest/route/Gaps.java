package org.tugtest.route;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.text.NaturalOrder;

/**
 * Looks at where the layout is in pieces. Where no node has coordinates, a gap is told by the nodes
 * of the first wire that asks.
 */
final class Gaps {
  /** Pairs of nodes that are measured; of more, only those the wire has to pass are named. */
  private static final long MOST = 4_000_000;

  private final Harness harness;
  private final Function<String, LoomWays> waysOf;
  private final Map<List<String>, Gap> known = new HashMap<>();

  Gaps(Harness harness, Function<String, LoomWays> waysOf) {
    this.harness = harness;
    this.waysOf = waysOf;
  }

  /** The gap between two nodes for the wires of a loom; the same from either side. */
  Gap between(String loom, String from, String to) {
    LoomWays ways = waysOf.apply(loom);
    Set<String> here = piece(ways, from);
    Set<String> there = piece(ways, to);
    if (NaturalOrder.NATURAL.compare(here.iterator().next(), there.iterator().next()) > 0) {
      return between(loom, /* from= */ to, /* to= */ from);
    }
    List<String> key = List.of(loom, here.iterator().next(), there.iterator().next());
    Gap gap = known.get(key);
    if (gap == null) {
      gap = measured(loom, here, there, from, to);
      known.put(key, gap);
    }
    return gap;
  }

  private static Set<String> piece(LoomWays ways, String node) {
    Set<String> names = new TreeSet<>(NaturalOrder.NATURAL);
    int index = ways.index(node);
    if (index < 0) {
      names.add(node);
    } else {
      ways.together(index).forEach(one -> names.add(ways.node(one)));
    }
    return Collections.unmodifiableSet(names);
  }

  private Gap measured(String loom, Set<String> here, Set<String> there, String from, String to) {
    String nearHere = from;
    String nearThere = to;
    double least = Double.POSITIVE_INFINITY;
    if ((long) here.size() * there.size() <= MOST) {
      for (String one : here) {
        for (String other : there) {
          double apart = apart(one, other);
          if (apart < least) {
            least = apart;
            nearHere = one;
            nearThere = other;
          }
        }
      }
    }
    return new Gap(
        loom,
        here,
        there,
        nearHere,
        nearThere,
        Double.isInfinite(least) ? null : Double.valueOf(least),
        through(loom, from, to));
  }

  private double apart(String one, String other) {
    List<Double> a = xyz(one);
    List<Double> b = xyz(other);
    if (a.size() != 3 || b.size() != 3) {
      return Double.POSITIVE_INFINITY;
    }
    double square = 0;
    for (int i = 0; i < 3; i++) {
      square += (a.get(i) - b.get(i)) * (a.get(i) - b.get(i));
    }
    return Math.sqrt(square);
  }

  private List<Double> xyz(String id) {
    Layout.Node node = harness.layout().nodes().get(id);
    return node == null ? List.of() : node.xyzMm();
  }

  private @Nullable String through(String loom, String from, String to) {
    for (String other : harness.looms().keySet()) {
      if (!other.equals(loom)) {
        LoomWays ways = waysOf.apply(other);
        int a = ways.index(from);
        int b = ways.index(to);
        if (a >= 0 && b >= 0 && ways.joined(a, b)) {
          return other;
        }
      }
    }
    return null;
  }
}
