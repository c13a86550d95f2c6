package org.tugtest.protect;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BinaryOperator;
import java.util.function.ToDoubleFunction;
import org.tugtest.network.ClosedTogether;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;

/**
 * The limits of all wires over all positions of switches and relays. Only those that stand on a
 * ring of the feed side make a difference; in each part of the network they are tried in every
 * position, together while that are few, else one by one with the others closed in every way.
 */
final class Limits {
  /** So many positions of several switches and relays are tried together. */
  private static final int MOST_TOGETHER = 64;

  private final Network network;
  private final ClosedTogether together;
  private final Collection<Point> starts;
  private final Reach.Step step;
  private final ReturnTree back;
  private final MovedParts parts;
  private final Map<Map<Integer, Integer>, Laid> known = new HashMap<>();

  /**
   * What came of it.
   *
   * @param feed the limit of each wire of the feed side, by its number in the network
   * @param back what faults in loads can send through each block of the return side
   */
  record Found(Map<Integer, Limit> feed, List<Returned> back) {
    Found with(
        Found other, BinaryOperator<Limit> choice, BinaryOperator<Returned> choiceOfReturned) {
      Map<Integer, Limit> limits = new TreeMap<>(feed);
      other.feed.forEach((wire, limit) -> limits.merge(wire, limit, choice));
      List<Returned> returned = new ArrayList<>(back.size());
      for (int i = 0; i < back.size(); i++) {
        returned.add(choiceOfReturned.apply(back.get(i), other.back.get(i)));
      }
      return new Found(limits, returned);
    }
  }

  /**
   * What faults in loads can send through a block.
   *
   * @param amps when they come together
   * @param set how the movers stand then; those that are not in it make no difference
   * @param one when only one comes
   */
  record Returned(double amps, Map<Integer, Integer> set, OneFault one) {
    Returned orGreater(Returned other) {
      Returned greater = other.amps > amps ? other : this;
      return new Returned(greater.amps, greater.set, one.orGreater(other.one));
    }

    Returned orLess(Returned other) {
      Returned less = other.amps < amps ? other : this;
      return new Returned(less.amps, less.set, one.orLess(other.one));
    }
  }

  /**
   * The limits of a network.
   *
   * @param starts the plus of every source
   * @param step what the feed side goes on through
   */
  Limits(
      Network network,
      ClosedTogether together,
      Collection<Point> starts,
      Reach.Step step,
      ReturnTree back) {
    this.network = network;
    this.together = together;
    this.starts = starts;
    this.step = step;
    this.back = back;
    this.parts = new MovedParts(network, together, back.blocks());
  }

  /**
   * The limits with these ratings.
   *
   * @param rating of a fuse, in amperes
   */
  Found with(ToDoubleFunction<Edge.OfElement> rating) {
    Set<Integer> turning = new TreeSet<>();
    Found all = run(Map.of(), rating, turning);
    return turning.isEmpty() ? all : least(all, plans(turning), rating);
  }

  /**
   * What is tried of each part of the network that has movers on rings: one lot of settings, or one
   * for each mover by itself. The greatest of a lot counts, and of lots the least.
   */
  private Map<Integer, List<List<Map<Integer, Integer>>>> plans(Set<Integer> turning) {
    Map<Integer, List<Integer>> moversOf = new TreeMap<>();
    for (int mover : turning) {
      moversOf.computeIfAbsent(parts.ofMover(mover), part -> new ArrayList<>(1)).add(mover);
    }
    Map<Integer, List<List<Map<Integer, Integer>>>> plans = new TreeMap<>();
    moversOf.forEach(
        (part, movers) -> {
          List<Map<Integer, Integer>> settings = settings(movers);
          plans.put(
              part,
              settings.size() <= MOST_TOGETHER
                  ? List.of(settings)
                  : movers.stream().map(mover -> settings(Set.of(mover))).toList());
        });
    return plans;
  }

  /**
   * Tries all parts side by side, as none makes a difference to another; one that has less to try
   * than others repeats its last.
   */
  private Found least(
      Found all,
      Map<Integer, List<List<Map<Integer, Integer>>>> plans,
      ToDoubleFunction<Edge.OfElement> rating) {
    int lots = plans.values().stream().mapToInt(List::size).max().orElse(0);
    Found least = all;
    for (int lot = 0; lot < lots; lot++) {
      List<List<Map<Integer, Integer>>> settings = new ArrayList<>();
      for (List<List<Map<Integer, Integer>>> plan : plans.values()) {
        settings.add(plan.get(Math.min(lot, plan.size() - 1)));
      }
      Found greatest = greatest(settings, rating);
      least =
          lot > 0
              ? least.with(greatest, Limit::orLess, Returned::orLess)
              : first(all, greatest, plans);
    }
    return least;
  }

  /** All that no mover of its part makes a difference to as it is, the rest by the first lot. */
  private Found first(
      Found all, Found greatest, Map<Integer, List<List<Map<Integer, Integer>>>> plans) {
    Map<Integer, Limit> limits = new TreeMap<>();
    all.feed.forEach(
        (wire, limit) -> {
          if (lots(plans, parts.ofEdge(wire)) != 1) {
            limits.put(wire, limit);
          }
        });
    greatest.feed.forEach(
        (wire, limit) -> {
          if (lots(plans, parts.ofEdge(wire)) > 0) {
            limits.merge(wire, limit, Limit::orLess);
          }
        });
    List<Returned> returned = new ArrayList<>(all.back.size());
    for (int block = 0; block < all.back.size(); block++) {
      Returned before = all.back.get(block);
      Returned here = greatest.back.get(block);
      int lots = lots(plans, parts.ofBlock(block));
      returned.add(lots == 0 ? before : lots == 1 ? here : before.orLess(here));
    }
    return new Found(limits, returned);
  }

  private static int lots(Map<Integer, List<List<Map<Integer, Integer>>>> plans, int part) {
    List<List<Map<Integer, Integer>>> plan = plans.get(part);
    return plan == null ? 0 : plan.size();
  }

  private Found greatest(
      List<List<Map<Integer, Integer>>> settings, ToDoubleFunction<Edge.OfElement> rating) {
    int most = settings.stream().mapToInt(List::size).max().orElse(0);
    Found greatest = null;
    for (int i = 0; i < most; i++) {
      Map<Integer, Integer> set = new TreeMap<>();
      for (List<Map<Integer, Integer>> one : settings) {
        set.putAll(one.get(Math.min(i, one.size() - 1)));
      }
      Found one = run(set, rating, new TreeSet<>());
      greatest = greatest == null ? one : greatest.with(one, Limit::orGreater, Returned::orGreater);
    }
    return Objects.requireNonNull(greatest);
  }

  /** Every combination of the settings of these, until they are more than the most. */
  private List<Map<Integer, Integer>> settings(Collection<Integer> movers) {
    List<Map<Integer, Integer>> all = new ArrayList<>(List.of(Map.of()));
    for (int mover : movers) {
      List<Map<Integer, Integer>> more = new ArrayList<>();
      for (int setting : different(mover)) {
        for (Map<Integer, Integer> others : all) {
          Map<Integer, Integer> one = new TreeMap<>(others);
          one.put(mover, setting);
          more.add(one);
        }
      }
      all = more;
      if (all.size() > MOST_TOGETHER) {
        return all;
      }
    }
    return all;
  }

  /** The settings of a mover that close different contacts. */
  private Collection<Integer> different(int mover) {
    Map<Set<Integer>, Integer> first = new HashMap<>();
    for (int setting = 0; setting < together.settings(mover); setting++) {
      Set<Integer> closed = new LinkedHashSet<>();
      for (int contact : parts.contacts(mover)) {
        if (together.closed(contact, setting)) {
          closed.add(contact);
        }
      }
      first.putIfAbsent(closed, setting);
    }
    return new TreeSet<>(first.values());
  }

  /** One run with some movers set; those that stand on a ring are put into {@code turning}. */
  private Found run(
      Map<Integer, Integer> set, ToDoubleFunction<Edge.OfElement> rating, Set<Integer> turning) {
    FeedGraph graph = graph(set, rating);
    SectionLimits sections = new SectionLimits(graph);
    WireLimits wires = new WireLimits(network, graph, sections);
    for (int i = 0; i < network.edges().size(); i++) {
      if (together.mover(i) >= 0 && wires.onRing(i)) {
        turning.add(together.mover(i));
      }
    }
    ReturnLimits limits = new ReturnLimits(back, graph, sections, rating);
    List<Returned> returned = new ArrayList<>();
    for (int block = 0; block < limits.ones().size(); block++) {
      returned.add(new Returned(limits.amps(block), set, limits.ones().get(block)));
    }
    return new Found(wires.limits(), returned);
  }

  private FeedGraph graph(Map<Integer, Integer> set, ToDoubleFunction<Edge.OfElement> rating) {
    BitSet open = new BitSet();
    for (int i = 0; i < network.edges().size() && !set.isEmpty(); i++) {
      Integer setting = together.mover(i) < 0 ? null : set.get(together.mover(i));
      if (setting != null && !together.closed(i, setting)) {
        open.set(i);
      }
    }
    Reach feed =
        Reach.from(
            network,
            together,
            starts,
            (edge, from) -> step.may(edge, from) && !open.get(network.number(edge)));
    return new FeedGraph(network, feed, rating);
  }

  /** The feed side with some movers set. */
  private record Laid(FeedGraph graph, SectionLimits sections) {
    static Laid of(FeedGraph graph) {
      return new Laid(graph, new SectionLimits(graph));
    }
  }

  /** What bounds what faults can send through a block, nearest to them; always with one rating. */
  synchronized List<Edge.OfElement> cutBehind(
      int block, Map<Integer, Integer> set, ToDoubleFunction<Edge.OfElement> rating) {
    Laid laid = known.computeIfAbsent(set, none -> Laid.of(graph(set, rating)));
    FeedGraph graph = laid.graph();
    FaultFlow flow = new FaultFlow(graph, laid.sections());
    ReturnLimits.add(flow, back.through(block), graph);
    return flow.cut();
  }

  /**
   * What faults in some loads can draw together, switches and relays closed in every way; with that
   * rating too.
   *
   * @param still sources that give nothing
   */
  synchronized FaultFlow into(
      List<ReturnTree.Draw> draws,
      ToDoubleFunction<Edge.OfElement> rating,
      Collection<Edge.OfElement> still) {
    Laid laid = known.computeIfAbsent(Map.of(), none -> Laid.of(graph(none, rating)));
    FaultFlow flow = new FaultFlow(laid.graph(), laid.sections(), still);
    ReturnLimits.add(flow, draws, laid.graph());
    return flow;
  }
}
