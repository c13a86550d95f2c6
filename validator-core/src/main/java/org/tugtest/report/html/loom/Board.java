package org.tugtest.report.html.loom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Lays a skeleton out as on a board: the longest way of each tree is straight, and every branch
 * stands off it, straight too, at the angle at which it has most room. Arms keep their length but
 * where that would make a drawing nobody can read: those of no known length, those far shorter or
 * longer than most, and those that close a loop.
 */
final class Board {
  private static final double SHORTEST = 0.25;
  private static final double LONGEST = 8;
  private static final double ROOM = 0.07;
  private static final int ANGLES = 24;
  private static final double CROSSING = 8;
  private final Skeleton skeleton;
  private final double[] length;
  private final Forest forest;
  private final Places places;
  private final List<List<Double>> used = new ArrayList<>();
  private List<Straight> lines = new ArrayList<>();
  private double room;
  private double trunk;

  /** A straight row of arms. */
  private record Straight(double x1, double y1, double x2, double y2, BitSet knots) {}

  /** A branch that still has no place. */
  private record Branch(int knot, int arm, double hanging) {}

  private Board(Skeleton skeleton) {
    this.skeleton = skeleton;
    this.places = new Places(skeleton.knots().size());
    this.length = drawn(skeleton, places.bent());
    this.forest = new Forest(skeleton, length);
    skeleton.knots().forEach(knot -> used.add(new ArrayList<>()));
  }

  /** The places of all knots. */
  static Places of(Skeleton skeleton) {
    Board board = new Board(skeleton);
    board.lay();
    return board.places;
  }

  private static double[] drawn(Skeleton skeleton, BitSet bent) {
    List<Skeleton.Arm> arms = skeleton.arms();
    double[] known =
        arms.stream().filter(Skeleton.Arm::measured).mapToDouble(Skeleton.Arm::mm).toArray();
    Arrays.sort(known);
    double usual = known.length == 0 ? 1 : known[known.length / 2];
    double[] drawn = new double[arms.size()];
    for (int i = 0; i < drawn.length; i++) {
      double mm = arms.get(i).measured() ? arms.get(i).mm() : usual;
      drawn[i] = Math.max(SHORTEST * usual, Math.min(LONGEST * usual, mm));
      bent.set(i, !arms.get(i).measured() || drawn[i] != mm);
    }
    return drawn;
  }

  private void lay() {
    for (int arm = 0; arm < length.length; arm++) {
      places.bent().set(arm, places.bent().get(arm) || forest.closes(arm));
    }
    List<List<Integer>> trees = forest.trees();
    double mean = Arrays.stream(length).average().orElse(1);
    Shelf shelf = new Shelf(places, mean, trees.size());
    for (List<Integer> tree : trees) {
      lines = new ArrayList<>();
      layTree(tree.get(0));
      shelf.put(tree);
    }
  }

  private void layTree(int first) {
    List<Integer> way = forest.longest(first);
    if (turned(way)) {
      Collections.reverse(way);
    }
    trunk = Math.max(1e-9, sum(way));
    room = ROOM * trunk;
    PriorityQueue<Branch> open =
        new PriorityQueue<>(
            Comparator.comparingDouble((Branch branch) -> -branch.hanging())
                .thenComparingInt(Branch::arm)
                .thenComparingInt(Branch::knot));
    place(way, 0, 0, 0, open);
    for (Branch next = open.poll(); next != null; next = open.poll()) {
      List<Integer> branch = forest.longest(next.knot(), next.arm());
      double x = places.x()[next.knot()];
      double y = places.y()[next.knot()];
      place(branch, x, y, angle(next.knot(), sum(branch)), open);
    }
  }

  /** Whether the trunk is better drawn the other way: what lies at the lesser x first. */
  private boolean turned(List<Integer> way) {
    Skeleton.Knot one = skeleton.knots().get(way.get(0));
    Skeleton.Knot other = skeleton.knots().get(way.get(way.size() - 1));
    boolean known = one.xyzMm().size() == 3 && other.xyzMm().size() == 3;
    return known ? one.xyzMm().get(0) > other.xyzMm().get(0) : one.number() > other.number();
  }

  private double sum(List<Integer> way) {
    double sum = 0;
    for (int i = 1; i < way.size(); i++) {
      sum += length[arm(way.get(i - 1), way.get(i))];
    }
    return sum;
  }

  private int arm(int one, int other) {
    for (int arm : forest.arms(one)) {
      if (forest.across(arm, one) == other) {
        return arm;
      }
    }
    throw new IllegalArgumentException("no arm of the tree joins the two");
  }

  private void place(
      List<Integer> way, double x, double y, double angle, PriorityQueue<Branch> open) {
    double far = 0;
    BitSet knots = new BitSet();
    for (int i = 0; i < way.size(); i++) {
      int knot = way.get(i);
      knots.set(knot);
      if (i > 0) {
        far += length[arm(way.get(i - 1), knot)];
        places.x()[knot] = x + far * Math.cos(angle);
        places.y()[knot] = y + far * Math.sin(angle);
        used.get(knot).add(angle + Math.PI);
      } else {
        places.x()[knot] = x;
        places.y()[knot] = y;
      }
      if (i < way.size() - 1) {
        used.get(knot).add(angle);
      }
    }
    int last = way.get(way.size() - 1);
    lines.add(new Straight(x, y, places.x()[last], places.y()[last], knots));
    for (int i = 0; i < way.size(); i++) {
      int knot = way.get(i);
      for (int arm : forest.arms(knot)) {
        int next = forest.across(arm, knot);
        boolean onWay =
            (i > 0 && way.get(i - 1) == next) || (i < way.size() - 1 && way.get(i + 1) == next);
        boolean behind = i == 0 && lines.size() > 1;
        if (!onWay && !behind) {
          open.add(new Branch(knot, arm, forest.hanging(knot, arm)));
        }
      }
    }
  }

  /** The angle at which a branch of that length has most room. */
  private double angle(int knot, double far) {
    double best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ANGLES; i++) {
      // The right angles first, then the halves of them, then the rest.
      double angle = 2 * Math.PI * i / ANGLES;
      double cost = (i % 6 == 0 ? 0 : i % 3 == 0 ? 0.05 : 0.15) + cost(knot, angle, far);
      if (cost < least - 1e-9) {
        least = cost;
        best = angle;
      }
    }
    return best;
  }

  private double cost(int knot, double angle, double far) {
    double cost = 0;
    for (double other : used.get(knot)) {
      double apart = Math.abs(Math.IEEEremainder(angle - other, 2 * Math.PI));
      cost += apart < 0.45 ? 40 * (1 - apart) : apart < 0.9 ? 0.6 : 0;
    }
    double x = places.x()[knot];
    double y = places.y()[knot];
    double endX = x + far * Math.cos(angle);
    double endY = y + far * Math.sin(angle);
    for (Straight line : lines) {
      if (!line.knots().get(knot)) {
        double apart =
            Distance.between(x, y, endX, endY, line.x1(), line.y1(), line.x2(), line.y2());
        cost += apart <= 0 ? CROSSING : apart < room ? 2 * (1 - apart / room) : 0;
      } else {
        double apart = Distance.ofPoint(endX, endY, line.x1(), line.y1(), line.x2(), line.y2());
        cost += apart < room ? 1 - apart / room : 0;
      }
    }
    return cost + 2 * Math.max(0, Math.abs(endY) / trunk - 0.3);
  }
}
