package org.tugtest.report.html.loom;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a drawing shows before it has places: knots, and arms between them.
 *
 * @param ofLayout whether the knots are nodes and the arms segments; else what wires join
 */
public record Skeleton(boolean ofLayout, List<Knot> knots, List<Arm> arms) {
  public Skeleton {
    knots = List.copyOf(knots);
    arms = List.copyOf(arms);
  }

  /**
   * A node of the layout, or a connector, device or splice where there is no layout.
   *
   * @param number in the whole skeleton
   * @param here connectors, devices and splices at a node
   * @param xyzMm where it is; three figures or none
   */
  public record Knot(int number, String id, List<String> here, List<Double> xyzMm) {
    public Knot {
      here = List.copyOf(here);
      xyzMm = List.copyOf(xyzMm);
    }
  }

  /**
   * A segment of the layout, or all wires between two things where there is no layout.
   *
   * @param number in the whole skeleton
   * @param a place of one end in {@link #knots}
   * @param b place of the other end
   * @param mm its length; NaN when it is not known
   * @param wires how many run through it
   * @param splices those along it
   */
  public record Arm(
      int number, String id, int a, int b, double mm, int wires, List<Along> splices) {
    public Arm {
      splices = List.copyOf(splices);
    }

    /** Whether its length is known and more than nothing. */
    boolean measured() {
      return mm > 0 && mm < Double.POSITIVE_INFINITY;
    }
  }

  /** A splice on an arm, a share of its length from {@code a}: 0 to 1. */
  public record Along(String splice, double share) {}

  /** The part of it that holds these arms and their knots. */
  Skeleton part(Collection<Arm> some) {
    Map<Integer, Integer> places = new LinkedHashMap<>();
    List<Knot> kept = new ArrayList<>();
    List<Arm> moved = new ArrayList<>();
    for (Arm arm : some) {
      moved.add(
          new Arm(
              arm.number(),
              arm.id(),
              place(places, kept, arm.a()),
              place(places, kept, arm.b()),
              arm.mm(),
              arm.wires(),
              arm.splices()));
    }
    return new Skeleton(ofLayout, kept, moved);
  }

  private int place(Map<Integer, Integer> places, List<Knot> kept, int knot) {
    return places.computeIfAbsent(
        knot,
        at -> {
          kept.add(knots.get(at));
          return kept.size() - 1;
        });
  }
}
