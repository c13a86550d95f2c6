package org.tugtest.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jgrapht.alg.util.UnionFind;

/** Which wires of a section lie beside each other, and how much of the outside each one has. */
final class SectionShape {
  /** A wire that comes this near to the hull, in shares of its radius, belongs to it. */
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
    List<Integer> outer = new ArrayList<>(hull);
    for (int i = 0; i < hull.size(); i++) {
      int at = hull.get(i);
      int before = hull.get((i + hull.size() - 1) % hull.size());
      int after = hull.get((i + 1) % hull.size());
      outside[at] += turn(before, at, after) * wires.get(at).radius();
      outer.addAll(share(at, after));
    }
    joinLost(outer);
  }

  /**
   * Wires that lie beside none that leads to the outside, such as the cores in a thick jacket, give
   * their heat to the nearest that does.
   */
  private void joinLost(List<Integer> outer) {
    UnionFind<Integer> joined = new UnionFind<>(Set.of());
    for (int i = 0; i < wires.size(); i++) {
      joined.addElement(i);
    }
    outer.forEach(one -> joined.union(outer.get(0), one));
    pairs.forEach(pair -> joined.union(pair.one(), pair.other()));
    while (!outer.isEmpty() && joined.numberOfSets() > 1) {
      Pair nearest = null;
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < wires.size(); i++) {
        boolean lost = !joined.inSameSet(i, outer.get(0));
        for (int k = 0; lost && k < wires.size(); k++) {
          double gap = apart(i, k) - wires.get(i).radius() - wires.get(k).radius();
          if (joined.inSameSet(k, outer.get(0)) && gap < least) {
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

  /**
   * Wires are beside each other with half a thin one's thickness of air between, which a laid
   * bundle has, and over a gap of half the thicker one's when nothing lies in it.
   */
  private void findPairs() {
    Integer[] byX = new Integer[wires.size()];
    Arrays.setAll(byX, i -> i);
    Arrays.sort(byX, Comparator.comparingDouble(i -> wires.get(i).xMm()));
    double widest = wires.stream().mapToDouble(Placed::radius).max().orElse(0);
    for (int i = 0; i < byX.length; i++) {
      Placed one = wires.get(byX[i]);
      for (int k = i + 1; k < byX.length; k++) {
        Placed other = wires.get(byX[k]);
        if (other.xMm() - one.xMm() > one.radius() + 2 * widest) {
          break;
        }
        double gap = one.distance(other) - one.radius() - other.radius();
        boolean touching = gap <= Math.min(one.radius(), other.radius()) * (1 + 1e-9);
        if (touching) {
          neighbours[byX[i]]++;
          neighbours[byX[k]]++;
        }
        double far = Math.max(one.radius(), other.radius()) * (1 + 1e-9);
        if (touching || (gap <= far && nothingBetween(byX[i], byX[k]))) {
          pairs.add(new Pair(Math.min(byX[i], byX[k]), Math.max(byX[i], byX[k])));
        }
      }
    }
  }

  /** Whether the straight way from one wire to another crosses none. */
  private boolean nothingBetween(int one, int other) {
    double length = apart(one, other);
    for (int i = 0; i < wires.size(); i++) {
      double along = i == one || i == other ? 0 : along(one, other, i);
      if (along > 0
          && along < length
          && Math.abs(left(one, other, i)) / length < wires.get(i).radius()) {
        return false;
      }
    }
    return true;
  }

  /** The corners of the hull of the middles, against the clock; of a row, its ends. */
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

  /** One half of the hull, its corners. */
  private List<Integer> chain(Integer[] order) {
    List<Integer> corners = new ArrayList<>();
    for (int next : order) {
      while (corners.size() > 1
          && left(corners.get(corners.size() - 2), corners.get(corners.size() - 1), next) <= 0) {
        corners.remove(corners.size() - 1);
      }
      corners.add(next);
    }
    return corners;
  }

  /**
   * Shares an edge of the hull among its ends and those between that come out to it, and returns
   * these. A thick wire among thin ones does so though its middle lies deeper than theirs.
   */
  private List<Integer> share(int from, int to) {
    double length = apart(from, to);
    double thicker = length > 0 ? (wires.get(to).radius() - wires.get(from).radius()) / length : 0;
    List<Integer> between = new ArrayList<>();
    for (int i = 0; i < wires.size(); i++) {
      double along = i == from || i == to ? 0 : along(from, to, i);
      if (along > 0 && along < length) {
        double radius = wires.get(i).radius();
        double line = wires.get(from).radius() + along * thicker;
        if (left(from, to, i) / length - radius + line <= NEAR * radius) {
          between.add(i);
        }
      }
    }
    between.sort(Comparator.comparingDouble(i -> along(from, to, i)));
    int before = from;
    double gone = 0;
    for (int i = 0; i <= between.size(); i++) {
      int next = i < between.size() ? between.get(i) : to;
      double here = next == to ? length : along(from, to, next);
      outside[before] += (here - gone) / 2;
      outside[next] += (here - gone) / 2;
      before = next;
      gone = here;
    }
    return between;
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
