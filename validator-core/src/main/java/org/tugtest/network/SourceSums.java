package org.tugtest.network;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.tugtest.model.Element;

/**
 * What sources add up to along a way or round a loop: their open volts, each with the sign that it
 * has in the direction of the way, through wires, plugged contacts, splices, bolted metal, fitted
 * fuses, links and closed contacts. Loads, coils and diodes are not passed.
 */
public final class SourceSums {
  /** So many steps are tried; what is found by then stands, and is said not to be all. */
  private static final int MOST_STEPS = 200_000;

  /** So many sources in a row are followed. */
  private static final int LONGEST = 500;

  private final List<List<Move>> movesFrom = new ArrayList<>();
  private final List<Move> way = new ArrayList<>();
  private final boolean[] passed;
  private int steps;
  private Sum best = Sum.NOTHING;

  /** A source between two clusters of points, from minus to plus. */
  private record Arc(Edge.OfElement source, BigDecimal volts, int minus, int plus) {}

  /** One way through an arc; the two ways have the same number. */
  private record Move(Step step, int number, int to) {}

  /**
   * A source on a way.
   *
   * @param volts what it adds, with its sign
   */
  public record Step(Edge.OfElement source, BigDecimal volts) {}

  /**
   * The greatest sum.
   *
   * @param volts never negative
   * @param steps the sources on the way, in order
   * @param complete whether all ways were tried
   */
  public record Sum(BigDecimal volts, List<Step> steps, boolean complete) {
    static final Sum NOTHING = new Sum(BigDecimal.ZERO, List.of(), true);

    public Sum {
      steps = List.copyOf(steps);
    }
  }

  private SourceSums(List<Arc> arcs, int clusters) {
    this.passed = new boolean[clusters];
    for (int i = 0; i < clusters; i++) {
      movesFrom.add(new ArrayList<>(2));
    }
    for (int i = 0; i < arcs.size(); i++) {
      Arc arc = arcs.get(i);
      Step rise = new Step(arc.source(), arc.volts());
      Step fall = new Step(arc.source(), arc.volts().negate());
      movesFrom.get(arc.minus()).add(new Move(rise, i, arc.plus()));
      movesFrom.get(arc.plus()).add(new Move(fall, i, arc.minus()));
    }
  }

  /**
   * The greatest sum of these sources.
   *
   * @param volts open volts of each source; those without are left out
   * @param closed which contacts count as closed
   */
  public static Sum greatest(
      Network network, Map<Edge.OfElement, Double> volts, Predicate<Edge.OfElement> closed) {
    return new Metal(network).greatest(volts, closed);
  }

  /** What conducts whichever contacts are closed, looked at once. */
  public static final class Metal {
    private final Network network;
    private final Map<Integer, Integer> ends = new HashMap<>();
    private final List<Edge.OfElement> contacts = new ArrayList<>();
    private final List<int[]> joins = new ArrayList<>();
    private final int[] plus;
    private final int[] minus;

    /** The metal of a network. */
    public Metal(Network network) {
      this.network = network;
      Joined joined = new Joined(network.points().size());
      for (int i = 0; i < network.edges().size(); i++) {
        if (conducts(network.edges().get(i))) {
          joined.join(network.indexOfA(i), network.indexOfB(i));
        }
      }
      for (int i = 0; i < network.edges().size(); i++) {
        if (network.edges().get(i) instanceof Edge.OfElement inside
            && inside.element() instanceof Element.Contact) {
          contacts.add(inside);
          int a = number(ends, joined.find(network.indexOfA(i)));
          joins.add(new int[] {a, number(ends, joined.find(network.indexOfB(i)))});
        }
      }
      plus = new int[network.sources().size()];
      minus = new int[plus.length];
      for (int i = 0; i < plus.length; i++) {
        Edge.OfElement source = network.sources().get(i);
        plus[i] = number(ends, joined.find(network.index(source.a())));
        minus[i] = number(ends, joined.find(network.index(source.b())));
      }
    }

    /**
     * The greatest sum of these sources.
     *
     * @param volts open volts of each source; those without are left out
     * @param closed which contacts count as closed
     */
    public Sum greatest(Map<Edge.OfElement, Double> volts, Predicate<Edge.OfElement> closed) {
      Joined joined = new Joined(ends.size());
      for (int i = 0; i < contacts.size(); i++) {
        if (closed.test(contacts.get(i))) {
          joined.join(joins.get(i)[0], joins.get(i)[1]);
        }
      }
      Map<Integer, Integer> clusters = new HashMap<>();
      List<Arc> arcs = new ArrayList<>();
      for (int i = 0; i < plus.length; i++) {
        Edge.OfElement source = network.sources().get(i);
        Double open = volts.get(source);
        if (open != null) {
          int high = number(clusters, joined.find(plus[i]));
          int low = number(clusters, joined.find(minus[i]));
          arcs.add(new Arc(source, BigDecimal.valueOf(open), low, high));
        }
      }
      SourceSums sums = new SourceSums(outermost(arcs), clusters.size());
      for (int start = 0; start < clusters.size(); start++) {
        sums.walk(start, start, BigDecimal.ZERO);
      }
      boolean complete = sums.steps < MOST_STEPS;
      return new Sum(sums.best.volts(), sums.best.steps(), complete);
    }
  }

  private static boolean conducts(Edge edge) {
    return !(edge instanceof Edge.OfElement inside)
        || inside.element() instanceof Element.Link
        || (inside.element() instanceof Element.Fuse && inside.fitted());
  }

  private static int number(Map<Integer, Integer> clusters, int root) {
    Integer known = clusters.get(root);
    if (known == null) {
      known = clusters.size();
      clusters.put(root, known);
    }
    return known;
  }

  /** Of several sources between the same two clusters only the least and the greatest count. */
  private static List<Arc> outermost(List<Arc> arcs) {
    record Pair(int low, int high) {}
    Map<Pair, List<Arc>> between =
        new TreeMap<>(Comparator.comparingInt(Pair::low).thenComparingInt(Pair::high));
    for (Arc arc : arcs) {
      Pair pair = new Pair(Math.min(arc.minus(), arc.plus()), Math.max(arc.minus(), arc.plus()));
      between.computeIfAbsent(pair, none -> new ArrayList<>(1)).add(arc);
    }
    List<Arc> kept = new ArrayList<>();
    between.forEach(
        (pair, parallel) -> {
          Comparator<Arc> byRise = Comparator.comparing(arc -> rise(arc, pair.low()));
          Arc least = parallel.stream().min(byRise).orElseThrow();
          Arc greatest = parallel.stream().max(byRise).orElseThrow();
          kept.add(least);
          if (!greatest.equals(least)) {
            kept.add(greatest);
          }
        });
    return kept;
  }

  /** The volts an arc adds on the way out of {@code from}. */
  private static BigDecimal rise(Arc arc, int from) {
    return arc.minus() == from ? arc.volts() : arc.volts().negate();
  }

  private void walk(int start, int at, BigDecimal sum) {
    if (steps >= MOST_STEPS || way.size() >= LONGEST) {
      steps = MOST_STEPS;
      return;
    }
    passed[at] = true;
    for (Move move : movesFrom.get(at)) {
      steps++;
      boolean used = way.stream().anyMatch(taken -> taken.number() == move.number());
      boolean round = move.to() == start && !used;
      if (round || (!used && !passed[move.to()])) {
        way.add(move);
        BigDecimal there = sum.add(move.step().volts());
        if (there.compareTo(best.volts()) > 0) {
          best = new Sum(there, way.stream().map(Move::step).toList(), true);
        }
        if (!round) {
          walk(start, move.to(), there);
        }
        way.remove(way.size() - 1);
      }
    }
    passed[at] = false;
  }

  /** All sources together, without sign: no way can add up to more. */
  public static BigDecimal most(Map<Edge.OfElement, Double> volts) {
    return volts.values().stream()
        .map(value -> BigDecimal.valueOf(Math.abs(value)))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
