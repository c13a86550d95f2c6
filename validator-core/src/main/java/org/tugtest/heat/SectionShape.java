package org.tugtest.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jgrapht.alg.util.UnionFind;

/** Which wires of a section lie beside each other, and how much of the outside each one has. */
final class SectionShape {
  /** A wire this near to the hull, in shares of its radius, belongs to it. */
  private static final double NEAR = 0.05;

  private static final double FACING = Math.PI / 3;
  private final List<Placed> wires;
  private final double[] outside;
  private final int[] neighbours;
  private final List<Pair> pairs = new ArrayList<>();

  /** Two wires beside each other. */
  record Pair(int one, int other) {}

  SectionShape(List<Placed> wires) {
    this.wires = wires;
    this.outside = new double[wires.size()];
    this.neighbours = new int[wires.size()];
    findPairs();
    List<Integer> hull = hull();
    for (int i = 0; i < hull.size(); i++) {
      int at = hull.get(i);
      int before = hull.get((i + hull.size() - 1) % hull.size());
      int after = hull.get((i + 1) % hull.size());
      outside[at] += turn(before, at, after) * wires.get(at).radius();
      outside[at] += (apart(before, at) + apart(at, after)) / 2;
    }
    joinLost(hull);
  }

  /**
   * Wires that lie beside none that leads to the outside, such as the cores in a thick jacket, give
   * their heat to the nearest that does.
   */
  private void joinLost(List<Integer> hull) {
    UnionFind<Integer> joined = new UnionFind<>(Set.of());
    for (int i = 0; i < wires.size(); i++) {
      joined.addElement(i);
    }
    hull.forEach(one -> joined.union(hull.get(0), one));
    pairs.forEach(pair -> joined.union(pair.one(), pair.other()));
    while (!hull.isEmpty() && joined.numberOfSets() > 1) {
      Pair nearest = null;
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < wires.size(); i++) {
        boolean lost = !joined.inSameSet(i, hull.get(0));
        for (int k = 0; lost && k < wires.size(); k++) {
          double gap = apart(i, k) - wires.get(i).radius() - wires.get(k).radius();
          if (joined.inSameSet(k, hull.get(0)) && gap < least) {
            least = gap;
            nearest = new Pair(Math.min(i, k), Math.max(i, k));
          }
        }
      }
      if (nearest == null) {
        return;
      }
      pairs.add(nearest);
      joined.union(nearest.one(), nearest.other());
    }
  }

  private double apart(int one, int other) {
    return wires.get(one).distance(wires.get(other));
  }

  private void findPairs() {
    Integer[] byX = new Integer[wires.size()];
    Arrays.setAll(byX, i -> i);
    Arrays.sort(byX, Comparator.comparingDouble(i -> wires.get(i).xMm()));
    double widest = wires.stream().mapToDouble(Placed::radius).max().orElse(0);
    for (int i = 0; i < byX.length; i++) {
      Placed one = wires.get(byX[i]);
      for (int k = i + 1; k < byX.length; k++) {
        Placed other = wires.get(byX[k]);
        if (other.xMm() - one.xMm() > 2 * one.radius() + widest) {
          break;
        }
        double gap = one.distance(other) - one.radius() - other.radius();
        if (gap <= Math.min(one.radius(), other.radius()) * (1 + 1e-9)) {
          pairs.add(new Pair(Math.min(byX[i], byX[k]), Math.max(byX[i], byX[k])));
          neighbours[byX[i]]++;
          neighbours[byX[k]]++;
        }
      }
    }
  }

  /** Round the hull once, against the clock; where all lie in a row, there and back. */
  private List<Integer> hull() {
    Integer[] order = new Integer[wires.size()];
    Arrays.setAll(order, i -> i);
    Arrays.sort(
        order,
        Comparator.<Integer>comparingDouble(i -> wires.get(i).xMm())
            .thenComparingDouble(i -> wires.get(i).yMm()));
    if (order.length < 2) {
      return List.of(order);
    }
    List<Integer> hull = new ArrayList<>(chain(order));
    Integer[] back = order.clone();
    for (int i = 0; i < back.length; i++) {
      back[i] = order[order.length - 1 - i];
    }
    hull.remove(hull.size() - 1);
    hull.addAll(chain(back));
    hull.remove(hull.size() - 1);
    return hull;
  }

  /** One half of the hull; points near to it stay. */
  private List<Integer> chain(Integer[] order) {
    List<Integer> corners = new ArrayList<>();
    for (int next : order) {
      while (corners.size() > 1
          && left(corners.get(corners.size() - 2), corners.get(corners.size() - 1), next) <= 0) {
        corners.remove(corners.size() - 1);
      }
      corners.add(next);
    }
    List<Integer> chain = new ArrayList<>(List.of(corners.get(0)));
    for (int i = 1; i < corners.size(); i++) {
      int from = corners.get(i - 1);
      int to = corners.get(i);
      double length = apart(from, to);
      for (int between : order) {
        boolean inside =
            between != from
                && between != to
                && along(from, to, between) > 0
                && along(from, to, between) < length;
        if (inside && left(from, to, between) / length <= NEAR * wires.get(between).radius()) {
          chain.add(between);
        }
      }
      chain.add(to);
    }
    return chain;
  }

  /** Twice the area of a triangle; above 0 when the third point lies left of the way. */
  private double left(int from, int to, int point) {
    Placed a = wires.get(from);
    Placed b = wires.get(to);
    Placed c = wires.get(point);
    return (b.xMm() - a.xMm()) * (c.yMm() - a.yMm()) - (b.yMm() - a.yMm()) * (c.xMm() - a.xMm());
  }

  private double along(int from, int to, int point) {
    Placed a = wires.get(from);
    Placed b = wires.get(to);
    Placed c = wires.get(point);
    double length = apart(from, to);
    return ((b.xMm() - a.xMm()) * (c.xMm() - a.xMm()) + (b.yMm() - a.yMm()) * (c.yMm() - a.yMm()))
        / length;
  }

  private double turn(int before, int at, int after) {
    if (before == at) {
      return 2 * Math.PI;
    }
    if (before == after) {
      return Math.PI;
    }
    double in = angle(before, at);
    double out = angle(at, after);
    double turn = Math.IEEEremainder(out - in, 2 * Math.PI);
    return Math.max(0, turn);
  }

  private double angle(int from, int to) {
    Placed a = wires.get(from);
    Placed b = wires.get(to);
    return Math.atan2(b.yMm() - a.yMm(), b.xMm() - a.xMm());
  }

  /** The pairs of wires beside each other. */
  List<Pair> pairs() {
    return pairs;
  }

  /** The piece of the outside that is a wire's, in mm; 0 for one inside. */
  double outsideMm(int wire) {
    return outside[wire];
  }

  /** The diameter of a cylinder of the same outside, in mm. */
  double diameterMm() {
    return Arrays.stream(outside).sum() / Math.PI;
  }

  /** The angle over which a wire faces no other. */
  double exposed(int wire) {
    return Math.max(FACING, 2 * Math.PI - neighbours[wire] * FACING);
  }
}
