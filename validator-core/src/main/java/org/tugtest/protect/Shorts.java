package org.tugtest.protect;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tugtest.model.Element;
import org.tugtest.network.ClosedTogether;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;

/**
 * Where plus and minus meet: ways from the plus of a source to its minus through wires, plugged
 * contacts, fuses, links and contacts that can be closed together, and through other sources from
 * minus to plus, so that two batteries side by side or in a row are no short. Once a way is found
 * its culprit is taken out and the search goes on, so that each of several shorts is found.
 */
final class Shorts {
  /** So many are told; who puts them right sees the rest. */
  private static final int MOST = 20;

  /** So many edges of a way are tried as its culprit. */
  private static final int MOST_TRIED = 60;

  private final Network network;
  private final ClosedTogether together;
  private final Set<String> sourceDevices = new HashSet<>();
  private final List<Edge.OfElement> loads = new ArrayList<>();
  private final Set<Edge> out = Collections.newSetFromMap(new IdentityHashMap<>());
  private final List<DeadShort> plain = new ArrayList<>();
  private final List<DeadShort> throughDiodes = new ArrayList<>();

  /** The shorts of a network. */
  Shorts(Network network, ClosedTogether together) {
    this.network = network;
    this.together = together;
    network.sources().forEach(source -> sourceDevices.add(source.device()));
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfElement inside && isLoad(inside.element())) {
        loads.add(inside);
      }
    }
    for (Edge.OfElement source : network.sources()) {
      find(source, false, plain);
    }
    for (Edge.OfElement source : network.sources()) {
      find(source, true, throughDiodes);
    }
  }

  private static boolean isLoad(Element element) {
    return element instanceof Element.Load || element instanceof Element.Coil;
  }

  /** Those that need no diode but one in the device of a source, such as a rectifier. */
  List<DeadShort> plain() {
    return List.copyOf(plain);
  }

  /** Those through other diodes. */
  List<DeadShort> throughDiodes() {
    return List.copyOf(throughDiodes);
  }

  /** What has to be taken out so that no short is left. */
  Set<Edge> culprits() {
    return Collections.unmodifiableSet(out);
  }

  private void find(Edge.OfElement source, boolean diodes, List<DeadShort> found) {
    while (found.size() < MOST) {
      Optional<Path> way =
          Reach.from(
                  network,
                  together,
                  List.of(source.a()),
                  (edge, from) -> edge != source && goesOn(edge, from, diodes))
              .path(source.b());
      if (way.isEmpty()) {
        return;
      }
      Edge culprit = culprit(way.get(), diodes);
      out.add(culprit);
      found.add(new DeadShort(source, way.get(), culprit));
    }
  }

  private boolean goesOn(Edge edge, Point from, boolean diodes) {
    if (out.contains(edge)) {
      return false;
    }
    if (edge instanceof Edge.OfElement inside) {
      if (inside.element() instanceof Element.Source) {
        return from.equals(edge.b());
      }
      if (inside.element() instanceof Element.Diode && !diodes) {
        return sourceDevices.contains(inside.device()) && Sides.feeds(edge, from);
      }
    }
    return Sides.feeds(edge, from);
  }

  /** Taking the culprit out leaves most loads with one end on plus and the other on minus. */
  private Edge culprit(Path way, boolean diodes) {
    List<Edge> candidates =
        way.edges().stream()
            .filter(edge -> !isSource(edge))
            .sorted(Comparator.comparingInt(edge -> sort(edge, diodes)))
            .limit(MOST_TRIED)
            .toList();
    Edge best = candidates.isEmpty() ? way.edges().get(0) : candidates.get(0);
    int most = -1;
    for (Edge candidate : candidates) {
      int between = loads.isEmpty() ? 0 : loadsBetween(candidate);
      if (between > most && (!diodes || most < 0 || isDiode(candidate) || !isDiode(best))) {
        best = candidate;
        most = between;
      }
    }
    return best;
  }

  private static boolean isSource(Edge edge) {
    return edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Source;
  }

  private static boolean isDiode(Edge edge) {
    return edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Diode;
  }

  private static int sort(Edge edge, boolean diodes) {
    if (isDiode(edge)) {
      return diodes ? 0 : 4;
    }
    if (edge instanceof Edge.OfWire) {
      return 1;
    }
    return edge instanceof Edge.OfElement ? 2 : 3;
  }

  private int loadsBetween(Edge without) {
    Reach feed = side(without, true);
    Reach back = side(without, false);
    int count = 0;
    for (Edge.OfElement load : loads) {
      boolean forth = only(feed, back, load.a()) && only(back, feed, load.b());
      boolean reverse = only(feed, back, load.b()) && only(back, feed, load.a());
      count += forth || reverse ? 1 : 0;
    }
    return count;
  }

  private static boolean only(Reach in, Reach notIn, Point point) {
    return in.reaches(point) && !notIn.reaches(point);
  }

  private Reach side(Edge without, boolean plus) {
    Collection<Point> starts =
        network.sources().stream().map(source -> plus ? source.a() : source.b()).toList();
    return Reach.from(
        network,
        together,
        starts,
        (edge, from) ->
            edge != without
                && !out.contains(edge)
                && (plus ? Sides.feeds(edge, from) : Sides.feeds(edge, edge.across(from))));
  }
}
