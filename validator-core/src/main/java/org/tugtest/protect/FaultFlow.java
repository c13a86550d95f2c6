package org.tugtest.protect;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.network.Edge;

/**
 * The greatest flow from all sources into several sections at once, one section after another: what
 * faults inside loads there can draw together. What flows already is kept, so that a further
 * section costs no more than the way from it to the sources.
 */
final class FaultFlow {
  private final SectionLimits sections;
  private final int sources;
  private final Set<Edge.OfElement> still;
  private final IdentityHashMap<FeedGraph.Arc, Double> flows = new IdentityHashMap<>();
  private final Set<Integer> into = new TreeSet<>();
  private double amps;

  /** Nothing flows yet. */
  FaultFlow(FeedGraph graph, SectionLimits sections) {
    this(graph, sections, List.of());
  }

  /**
   * Nothing flows yet.
   *
   * @param still sources that give nothing
   */
  FaultFlow(FeedGraph graph, SectionLimits sections, Collection<Edge.OfElement> still) {
    this.still = Set.copyOf(still);
    this.sections = sections;
    this.sources = graph.sources();
  }

  /** The sections it flows into. */
  Collection<Integer> into() {
    return into;
  }

  /** The sum of what flows, in amperes; infinite when nothing bounds it. */
  double amps() {
    return amps;
  }

  /** Lets current into one more section, as much as the others leave. */
  void add(int section) {
    if (!into.add(section)) {
      return;
    }
    Map<Integer, FeedGraph.Arc> way = new HashMap<>();
    while (Double.isFinite(amps) && search(List.of(section), way)) {
      double most = Double.POSITIVE_INFINITY;
      for (int at = sources; at != section; at = across(way, at)) {
        most = Math.min(most, left(way.get(at), at));
      }
      if (Double.isInfinite(most)) {
        amps = most;
        return;
      }
      for (int at = sources; at != section; at = across(way, at)) {
        FeedGraph.Arc arc = way.get(at);
        flows.merge(arc, arc.one() == at ? most : -most, Double::sum);
      }
      amps += most;
    }
  }

  /** The fuses, trips and self-limiting sources that bound it, those nearest to the sections. */
  List<Edge.OfElement> cut() {
    Map<Integer, FeedGraph.Arc> behind = new HashMap<>();
    List<Edge.OfElement> cut = new ArrayList<>();
    if (search(into, behind)) {
      return cut;
    }
    Set<Edge> known = Collections.newSetFromMap(new IdentityHashMap<>());
    Set<Integer> nodes = new HashSet<>(into);
    nodes.addAll(behind.keySet());
    for (int node : nodes.stream().sorted().toList()) {
      for (FeedGraph.Arc arc : sections.arcsInto(node)) {
        int from = arc.one() == node ? arc.other() : arc.one();
        double most = capacity(arc, from);
        if (!nodes.contains(from) && most > 0 && known.add(arc.edge())) {
          cut.add(arc.edge());
        }
      }
    }
    return cut;
  }

  private static int across(Map<Integer, FeedGraph.Arc> way, int node) {
    FeedGraph.Arc arc = way.get(node);
    return arc.one() == node ? arc.other() : arc.one();
  }

  /** What more can flow out of {@code from} through an arc. */
  private double left(FeedGraph.Arc arc, int from) {
    double flow = flows.getOrDefault(arc, 0.0);
    return capacity(arc, from) + (arc.one() == from ? -flow : flow);
  }

  private double capacity(FeedGraph.Arc arc, int from) {
    if (still.contains(arc.edge())) {
      return 0;
    }
    return arc.one() == from ? arc.capacity() : arc.capacityBack();
  }

  /** Goes back from some nodes to the sources; {@code way} says by what each node goes on. */
  private boolean search(Collection<Integer> starts, Map<Integer, FeedGraph.Arc> way) {
    way.clear();
    Set<Integer> seen = new HashSet<>(starts);
    Deque<Integer> open = new ArrayDeque<>(starts);
    while (!open.isEmpty()) {
      int at = open.remove();
      for (FeedGraph.Arc arc : sections.arcsInto(at)) {
        int from = arc.one() == at ? arc.other() : arc.one();
        if (left(arc, from) > 0 && seen.add(from)) {
          way.put(from, arc);
          if (from == sources) {
            return true;
          }
          open.add(from);
        }
      }
    }
    return false;
  }
}
