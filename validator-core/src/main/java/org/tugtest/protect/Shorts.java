package org.tugtest.protect;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
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
  private static final int DIODE = 0;

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
    while (found.size() < DeadShort.MOST) {
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

  /**
   * What on the way lies between most loads: each load hangs with either pin on the point of the
   * way that is nearest to it, and lies across the edges between these two points.
   */
  private Edge culprit(Path way, boolean diodes) {
    List<Edge> edges = way.edges();
    int[] across = loadsAcross(way);
    Edge best = edges.get(0);
    int most = -1;
    int sort = Integer.MAX_VALUE;
    for (int i = 0; i < edges.size(); i++) {
      int here = sort(edges.get(i), diodes);
      boolean diode = diodes && here == DIODE;
      boolean better =
          (diodes && (sort == DIODE) != diode)
              ? diode
              : (across[i] > most || (across[i] == most && here < sort));
      if (!isSource(edges.get(i)) && better) {
        best = edges.get(i);
        most = across[i];
        sort = here;
      }
    }
    return best;
  }

  /** For each edge of a way how many loads lie across it. */
  private int[] loadsAcross(Path way) {
    int[] nearest = nearest(way);
    int[] changes = new int[way.edges().size() + 1];
    for (Edge.OfElement load : loads) {
      int one = nearest[network.index(load.a())];
      int other = nearest[network.index(load.b())];
      if (one >= 0 && other >= 0) {
        changes[Math.min(one, other)]++;
        changes[Math.max(one, other)]--;
      }
    }
    Arrays.parallelPrefix(changes, Integer::sum);
    return changes;
  }

  /** For each point of the network the nearest one of a way, by its place there; -1 for none. */
  private int[] nearest(Path way) {
    int[] nearest = new int[network.points().size()];
    Arrays.fill(nearest, -1);
    Deque<Point> open = new ArrayDeque<>();
    List<Point> points = way.points();
    for (int i = 0; i < points.size(); i++) {
      if (nearest[network.index(points.get(i))] < 0) {
        nearest[network.index(points.get(i))] = i;
        open.add(points.get(i));
      }
    }
    while (!open.isEmpty()) {
      Point at = open.remove();
      for (Edge edge : network.edgesAt(at)) {
        Point next = edge.across(at);
        boolean goes = Sides.feeds(edge, at) || Sides.feeds(edge, next);
        if (goes && !out.contains(edge) && nearest[network.index(next)] < 0) {
          nearest[network.index(next)] = nearest[network.index(at)];
          open.add(next);
        }
      }
    }
    return nearest;
  }

  private static boolean isSource(Edge edge) {
    return edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Source;
  }

  /** Which of two edges with as many loads across them is rather the culprit: the lesser. */
  private static int sort(Edge edge, boolean diodes) {
    if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Diode) {
      return diodes ? DIODE : 4;
    }
    if (edge instanceof Edge.OfWire) {
      return 1;
    }
    return edge instanceof Edge.OfElement ? 2 : 3;
  }
}
