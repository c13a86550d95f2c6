package org.tugtest.report.html.loom;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * The arms of a skeleton that form trees, those with most wires first; the others close loops.
 * Every question is answered without recursion, so that a chain of any length does no harm.
 */
final class Forest {
  private final Skeleton skeleton;
  private final double[] length;
  private final List<List<Integer>> at;
  private final BitSet closing = new BitSet();

  /** A forest with these lengths of the arms. */
  Forest(Skeleton skeleton, double[] length) {
    this.skeleton = skeleton;
    this.length = length.clone();
    this.at = new ArrayList<>();
    int[] tree = new int[skeleton.knots().size()];
    for (int i = 0; i < tree.length; i++) {
      tree[i] = i;
      at.add(new ArrayList<>(2));
    }
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < skeleton.arms().size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingInt((Integer arm) -> -skeleton.arms().get(arm).wires()));
    for (int arm : order) {
      int a = root(tree, skeleton.arms().get(arm).a());
      int b = root(tree, skeleton.arms().get(arm).b());
      if (a == b) {
        closing.set(arm);
      } else {
        tree[Math.max(a, b)] = Math.min(a, b);
        at.get(skeleton.arms().get(arm).a()).add(arm);
        at.get(skeleton.arms().get(arm).b()).add(arm);
      }
    }
    at.forEach(Collections::sort);
  }

  private static int root(int[] tree, int knot) {
    int top = knot;
    while (tree[top] != top) {
      tree[top] = tree[tree[top]];
      top = tree[top];
    }
    return top;
  }

  /** Whether an arm closes a loop and is in no tree. */
  boolean closes(int arm) {
    return closing.get(arm);
  }

  /** The arms of the tree at a knot. */
  List<Integer> arms(int knot) {
    return Collections.unmodifiableList(at.get(knot));
  }

  /** The knot across an arm. */
  int across(int arm, int knot) {
    Skeleton.Arm one = skeleton.arms().get(arm);
    return one.a() == knot ? one.b() : one.a();
  }

  /** Every tree as its knots, the greatest first. */
  List<List<Integer>> trees() {
    List<List<Integer>> trees = new ArrayList<>();
    BitSet seen = new BitSet();
    for (int knot = 0; knot < at.size(); knot++) {
      if (!seen.get(knot)) {
        List<Integer> tree = new ArrayList<>();
        Walk walk = walk(knot, -1);
        for (int each : walk.order) {
          seen.set(each);
          tree.add(each);
        }
        trees.add(tree);
      }
    }
    trees.sort(Comparator.comparingInt((List<Integer> tree) -> -tree.size()));
    return trees;
  }

  /** The longest way in the tree of a knot, as knots. */
  List<Integer> longest(int knot) {
    return wayBack(walk(farthest(walk(knot, -1)), -1));
  }

  /** The longest way from a knot that begins with an arm, as knots. */
  List<Integer> longest(int knot, int arm) {
    List<Integer> way = new ArrayList<>();
    way.add(knot);
    List<Integer> rest = wayBack(walk(across(arm, knot), arm));
    Collections.reverse(rest);
    way.addAll(rest);
    return way;
  }

  /** How long all arms are that hang on a knot by an arm, that arm included. */
  double hanging(int knot, int arm) {
    Walk walk = walk(across(arm, knot), arm);
    double sum = length[arm];
    for (int each : walk.order) {
      sum += walk.by[each] < 0 ? 0 : length[walk.by[each]];
    }
    return sum;
  }

  private static int farthest(Walk walk) {
    int far = walk.order.get(0);
    for (int knot : walk.order) {
      far = walk.far[knot] > walk.far[far] ? knot : far;
    }
    return far;
  }

  /** From the farthest knot back to where the walk began. */
  private List<Integer> wayBack(Walk walk) {
    List<Integer> way = new ArrayList<>();
    int knot = farthest(walk);
    way.add(knot);
    while (walk.by[knot] >= 0) {
      knot = across(walk.by[knot], knot);
      way.add(knot);
    }
    return way;
  }

  /** Knots in the order they are reached, how far each is, and by which arm it is reached. */
  private static final class Walk {
    final List<Integer> order = new ArrayList<>();
    final double[] far;
    final int[] by;

    Walk(int knots) {
      far = new double[knots];
      by = new int[knots];
      Arrays.fill(by, -1);
    }
  }

  private Walk walk(int start, int not) {
    Walk walk = new Walk(at.size());
    Deque<Integer> open = new ArrayDeque<>();
    open.add(start);
    while (!open.isEmpty()) {
      int knot = open.remove();
      walk.order.add(knot);
      for (int arm : at.get(knot)) {
        if (arm != walk.by[knot] && arm != not) {
          int next = across(arm, knot);
          walk.by[next] = arm;
          walk.far[next] = walk.far[knot] + length[arm];
          open.add(next);
        }
      }
    }
    return walk;
  }
}
