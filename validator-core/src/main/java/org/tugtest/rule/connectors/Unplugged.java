package org.tugtest.rule.connectors;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;

/**
 * The feed side while one pair is apart. A way of the whole network that does not pass the pair
 * still holds; only where it does pass is another way looked for, backwards from the contact.
 */
final class Unplugged {
  private final Facts facts;
  private final Network network;
  private final String one;
  private final String other;
  private final Set<Point> plus = new HashSet<>();
  private final Set<Point> unlimitedPlus = new HashSet<>();
  private final Set<Point> dead = new HashSet<>();
  private final Set<Point> fused = new HashSet<>();

  /** The network with the connectors {@code one} and {@code other} apart. */
  Unplugged(Facts facts, String one, String other) {
    this.facts = facts;
    this.network = facts.network();
    this.one = one;
    this.other = other;
    for (Edge.OfElement edge : network.sources()) {
      plus.add(edge.a());
      if (edge.element() instanceof Element.Source source
          && !(source.selfLimiting() && source.maxA() != null)) {
        unlimitedPlus.add(edge.a());
      }
    }
  }

  /** A way from plus to a contact, in one line. */
  Optional<String> way(Point contact) {
    return way(contact, facts.sides().feed(), plus, false, dead);
  }

  /** A way from plus to a contact without a fuse in it, in one line. */
  Optional<String> unfusedWay(Point contact) {
    return way(contact, facts.sides().unfused(), unlimitedPlus, true, fused);
  }

  private Optional<String> way(
      Point contact, Reach whole, Set<Point> starts, boolean withoutFuse, Set<Point> never) {
    Path path = whole.path(contact).orElse(null);
    if (path == null) {
      return Optional.empty();
    }
    return path.edges().stream().noneMatch(this::isApart)
        ? Optional.of(path.text())
        : search(contact, starts, withoutFuse, never).map(Path::text);
  }

  private boolean isApart(Edge edge) {
    return edge instanceof Edge.OfMating
        && isOfPair(edge.a().owner())
        && isOfPair(edge.b().owner());
  }

  private boolean isOfPair(String owner) {
    return owner.equals(one) || owner.equals(other);
  }

  /** Goes back from a contact to a source; what is looked at in vain is put into {@code never}. */
  private Optional<Path> search(
      Point contact, Set<Point> starts, boolean withoutFuse, Set<Point> never) {
    Map<Point, Edge> onwards = new HashMap<>();
    Set<Point> seen = new HashSet<>(Set.of(contact));
    Deque<Point> open = new ArrayDeque<>(List.of(contact));
    while (!open.isEmpty()) {
      Point at = open.remove();
      if (starts.contains(at)) {
        return Optional.of(path(at, contact, onwards));
      }
      for (Edge edge : network.edgesAt(at)) {
        Point before = edge.across(at);
        boolean goes =
            !isApart(edge) && Sides.feeds(edge, before) && !(withoutFuse && Sides.isFuse(edge));
        if (goes && !never.contains(before) && seen.add(before)) {
          onwards.put(before, edge);
          open.add(before);
        }
      }
    }
    never.addAll(seen);
    return Optional.empty();
  }

  private static Path path(Point start, Point contact, Map<Point, Edge> onwards) {
    List<Edge> edges = new ArrayList<>();
    Point at = start;
    while (!at.equals(contact)) {
      Edge edge = onwards.get(at);
      if (edge == null) {
        throw new IllegalStateException("no way on from " + at);
      }
      edges.add(edge);
      at = edge.across(at);
    }
    return new Path(start, edges);
  }
}
