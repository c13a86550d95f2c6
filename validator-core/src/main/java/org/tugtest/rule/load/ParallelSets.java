package org.tugtest.rule.load;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Joined;
import org.tugtest.network.Network;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.solve.Branch;

/**
 * What runs side by side between the same two junctions in one state. A strand is wires, contacts
 * and fuses in a row with nothing else on them; dead ends do not count. Near linear.
 */
final class ParallelSets {
  private final OperatingPoint state;
  private final List<Edge> edges;
  private final int[] from;
  private final int[] to;
  private final boolean[] passive;
  private final boolean[] gone;
  private final List<List<Integer>> at = new ArrayList<>();

  /** Strands between the same two junctions, at least two. */
  static List<List<List<Edge>>> in(Network network, OperatingPoint state) {
    ParallelSets sets = new ParallelSets(network, state);
    sets.dropDeadEnds();
    return sets.sets();
  }

  private ParallelSets(Network network, OperatingPoint state) {
    this.state = state;
    this.edges = network.edges();
    Joined joined = new Joined(network.points().size());
    for (int i = 0; i < edges.size(); i++) {
      if (isMetal(edges.get(i))) {
        joined.join(network.indexOfA(i), network.indexOfB(i));
      }
    }
    int count = edges.size();
    from = new int[count];
    to = new int[count];
    passive = new boolean[count];
    gone = new boolean[count];
    for (int i = 0; i < network.points().size(); i++) {
      at.add(new ArrayList<>());
    }
    for (int i = 0; i < count; i++) {
      Edge edge = edges.get(i);
      from[i] = joined.find(network.indexOfA(i));
      to[i] = joined.find(network.indexOfB(i));
      passive[i] = isPassive(edge);
      gone[i] = from[i] == to[i] || !state.conducts(edge);
      if (!gone[i]) {
        at.get(from[i]).add(i);
        at.get(to[i]).add(i);
      }
    }
  }

  /** A bar without resistance: its ends are one junction. */
  private boolean isMetal(Edge edge) {
    return edge instanceof Edge.OfElement inside
        && inside.element() instanceof Element.Link
        && state.resistance(edge).ohms() < Branch.LEAST_OHMS;
  }

  private static boolean isPassive(Edge edge) {
    if (!(edge instanceof Edge.OfElement inside)) {
      return true;
    }
    Element element = inside.element();
    return element instanceof Element.Contact
        || element instanceof Element.Link
        || element instanceof Element.Fuse;
  }

  private void dropDeadEnds() {
    int[] degree = new int[at.size()];
    Deque<Integer> ends = new ArrayDeque<>();
    for (int node = 0; node < degree.length; node++) {
      degree[node] = at.get(node).size();
      if (degree[node] == 1) {
        ends.add(node);
      }
    }
    while (!ends.isEmpty()) {
      int node = ends.remove();
      for (int edge : at.get(node)) {
        if (!gone[edge]) {
          gone[edge] = true;
          int other = across(edge, node);
          degree[node]--;
          if (--degree[other] == 1) {
            ends.add(other);
          }
        }
      }
    }
    at.forEach(here -> here.removeIf(edge -> gone[edge]));
  }

  private int across(int edge, int node) {
    return from[edge] == node ? to[edge] : from[edge];
  }

  /** Whether a strand goes on through a node: two parts meet there and neither is a user. */
  private boolean goesOn(int node) {
    List<Integer> here = at.get(node);
    return here.size() == 2 && passive[here.get(0)] && passive[here.get(1)];
  }

  private List<List<List<Edge>>> sets() {
    Map<Long, List<List<Edge>>> between = new LinkedHashMap<>();
    boolean[] seen = new boolean[edges.size()];
    for (int start = 0; start < at.size(); start++) {
      if (goesOn(start)) {
        continue;
      }
      for (int first : at.get(start)) {
        if (passive[first] && !seen[first]) {
          List<Edge> strand = new ArrayList<>();
          int end = walk(start, first, strand, seen);
          if (end != start) {
            long pair = ((long) Math.min(start, end) << Integer.SIZE) | Math.max(start, end);
            between.computeIfAbsent(pair, none -> new ArrayList<>()).add(strand);
          }
        }
      }
    }
    Collection<List<List<Edge>>> all = between.values();
    return all.stream().filter(strands -> strands.size() > 1).toList();
  }

  private int walk(int start, int first, List<Edge> strand, boolean[] seen) {
    int node = start;
    int edge = first;
    while (true) {
      seen[edge] = true;
      strand.add(edges.get(edge));
      node = across(edge, node);
      if (!goesOn(node)) {
        return node;
      }
      List<Integer> here = at.get(node);
      edge = here.get(0) == edge ? here.get(1) : here.get(0);
    }
  }
}
