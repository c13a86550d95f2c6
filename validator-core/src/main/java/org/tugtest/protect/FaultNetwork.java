package org.tugtest.protect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Resistance;

/**
 * Feed side and return side as one {@link FaultGrid}. A point has a node on each side that it is
 * on; the sides meet in the sources alone, so that a contact that is on both, as that of a
 * change-over, joins nothing.
 */
final class FaultNetwork {
  private final Network network;
  private final Reach feed;
  private final Reach back;
  private final FaultParts parts;
  private final @Nullable FaultGrid grid;
  private final Basis[] basisAbove;
  private final String[] missingAbove;
  private final int[] degrees;

  /** The network of these parts. */
  FaultNetwork(Network network, Protection protection, FaultParts parts) {
    this.network = network;
    this.feed = protection.feed();
    this.back = protection.back();
    this.parts = parts;
    this.grid = FaultGrid.of(parts.nodes(), parts.conductors(), parts.arms()).orElse(null);
    this.basisAbove = new Basis[parts.nodes()];
    this.missingAbove = new String[parts.nodes()];
    this.degrees = new int[parts.nodes()];
    Arrays.fill(basisAbove, Basis.GIVEN);
    Arrays.fill(missingAbove, "");
    for (Conductor conductor : parts.conductors()) {
      degrees[conductor.a()]++;
      degrees[conductor.b()]++;
    }
    for (Arm arm : parts.arms()) {
      degrees[arm.from()]++;
      degrees[arm.to()]++;
    }
    if (grid != null) {
      sumUp(grid);
    }
  }

  private void sumUp(FaultGrid made) {
    for (int node : made.order()) {
      int by = node < parts.nodes() ? made.by(node) : -1;
      if (by >= 0) {
        int up = made.parent(node);
        Resistance figure = parts.figure(by);
        basisAbove[node] = basisAbove[up].weaker(figure.basis());
        boolean known = figure.known() || !missingAbove[up].isEmpty();
        missingAbove[node] =
            known ? missingAbove[up] : figure.missing() + " of " + parts.edge(by).text();
      }
    }
  }

  /** The node of a point on the feed side; -1 when it is not on it. */
  int feedNode(Point point) {
    return feed.reaches(point) ? network.index(point) : -1;
  }

  /** The node of a point on the return side; -1 when it is not on it. */
  int returnNode(Point point) {
    return back.reaches(point) ? parts.nodes() / 2 + network.index(point) : -1;
  }

  /** The minus of a source that feeds a node of the feed side, of its own part first; or -1. */
  int minusOf(int from) {
    FaultGrid made = grid;
    int other = -1;
    for (int number : made == null ? List.<Integer>of() : made.arms(made.island(from))) {
      Edge.OfElement edge = parts.armEdge(number);
      if (edge != null && edge.element() instanceof Element.Source) {
        Arm arm = parts.arms().get(number);
        if (made.part(arm.to()) == made.part(from)) {
          return arm.from();
        }
        other = other < 0 ? arm.from() : other;
      }
    }
    return other;
  }

  /** Why no fault can be laid between two nodes; empty when one can. */
  Optional<String> refused(int from, int to) {
    FaultGrid made = grid;
    if (made == null) {
      return Optional.of("its network cannot be computed");
    }
    int island = made.island(from);
    if (island != made.island(to) || made.arms(island).isEmpty()) {
      return Optional.of("no source feeds it");
    }
    return made.canTake(island)
        ? Optional.empty()
        : Optional.of("more sources and rings of fuses feed it than are reckoned with");
  }

  /** Lays a fault. */
  RunningFault lay(int from, int to) {
    FaultGrid made = Objects.requireNonNull(grid);
    Basis basis = basisAbove[from].weaker(basisAbove[to]);
    for (int number : made.arms(made.island(from))) {
      basis = basis.weaker(parts.armBasis(number));
    }
    String missing = missingAbove[from].isEmpty() ? missingAbove[to] : missingAbove[from];
    return new RunningFault(parts, made, from, to, basis, missing);
  }

  /** The edges between two nodes and the sources, those with the greatest ohms first. */
  List<Faults.OnWay> way(int from, int to) {
    FaultGrid made = Objects.requireNonNull(grid);
    List<Faults.OnWay> way = new ArrayList<>();
    for (int start : new int[] {from, to}) {
      for (int node = start; made.by(node) >= 0; node = made.parent(node)) {
        int by = made.by(node);
        way.add(new Faults.OnWay(parts.edge(by), parts.conductors().get(by).ohms()));
      }
    }
    way.sort(Comparator.comparingDouble(Faults.OnWay::ohms).reversed());
    return way;
  }

  /** How many edges end in a node. */
  int degree(int node) {
    return degrees[node];
  }

  /** The edge by which a node hangs on the way to the sources; null at a source. */
  @Nullable Edge by(int node) {
    FaultGrid made = Objects.requireNonNull(grid);
    return made.by(node) < 0 ? null : parts.edge(made.by(node));
  }
}
