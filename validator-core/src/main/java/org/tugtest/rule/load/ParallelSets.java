package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Collection;
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
  private final int[] firstAt;
  private final int[] edgesAt;
  private final int[] degree;

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
    degree = new int[network.points().size()];
    for (int i = 0; i < count; i++) {
      Edge edge = edges.get(i);
      from[i] = joined.find(network.indexOfA(i));
      to[i] = joined.find(network.indexOfB(i));
      passive[i] = isPassive(edge);
      gone[i] = from[i] == to[i] || !state.conducts(edge);
      if (!gone[i]) {
        degree[from[i]]++;
        degree[to[i]]++;
      }
    }
    firstAt = new int[degree.length + 1];
    for (int node = 0; node < degree.length; node++) {
      firstAt[node + 1] = firstAt[node] + degree[node];
    }
    int[] next = firstAt.clone();
    edgesAt = new int[firstAt[degree.length]];
    for (int i = 0; i < count; i++) {
      if (!gone[i]) {
        edgesAt[next[from[i]]++] = i;
        edgesAt[next[to[i]]++] = i;
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
    int[] ends = new int[degree.length];
    int last = 0;
    for (int node = 0; node < degree.length; node++) {
      if (degree[node] == 1) {
        ends[last++] = node;
      }
    }
    for (int next = 0; next < last; next++) {
      int node = ends[next];
      for (int i = firstAt[node]; i < firstAt[node + 1]; i++) {
        int edge = edgesAt[i];
        if (!gone[edge]) {
          gone[edge] = true;
          int other = across(edge, node);
          degree[node]--;
          if (--degree[other] == 1) {
            ends[last++] = other;
          }
        }
      }
    }
  }

  private int across(int edge, int node) {
    return from[edge] == node ? to[edge] : from[edge];
  }

  /** Whether a strand goes on through a node: two parts meet there and neither is a user. */
  private boolean goesOn(int node) {
    if (degree[node] != 2) {
      return false;
    }
    for (int i = firstAt[node]; i < firstAt[node + 1]; i++) {
      if (!gone[edgesAt[i]] && !passive[edgesAt[i]]) {
        return false;
      }
    }
    return true;
  }

  /** The other one of two parts that meet in a node. */
  private int goingOn(int node, int edge) {
    for (int i = firstAt[node]; i < firstAt[node + 1]; i++) {
      if (!gone[edgesAt[i]] && edgesAt[i] != edge) {
        return edgesAt[i];
      }
    }
    throw new IllegalStateException("a strand goes on where it ends");
  }

  private List<List<List<Edge>>> sets() {
    Map<Long, List<List<Edge>>> between = new LinkedHashMap<>();
    boolean[] seen = new boolean[edges.size()];
    for (int start = 0; start < degree.length; start++) {
      if (goesOn(start)) {
        continue;
      }
      for (int i = firstAt[start]; i < firstAt[start + 1]; i++) {
        int first = edgesAt[i];
        if (!gone[first] && passive[first] && !seen[first]) {
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
      edge = goingOn(node, edge);
    }
  }
}
