package org.tugtest.rule.load;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;

/**
 * The loads given in ohms between circuits, as resistors of a small network of their own. The
 * resistance of wires and contacts, milliohms beside them, is left out.
 */
final class Resistors {
  private static final int MOST_NODES = 60;
  private final Map<Point, List<Resistor>> at = new LinkedHashMap<>();

  private record Resistor(Point a, Point b, double ohms) {
    Point across(Point end) {
      return end.equals(a) ? b : a;
    }
  }

  private Resistors() {}

  static Resistors of(Facts facts) {
    Resistors all = new Resistors();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Load load
          && load.ohms() != null
          && load.ohms() > 0) {
        Point a = Elements.net(facts, edge.a()).orElse(edge.a());
        Point b = Elements.net(facts, edge.b()).orElse(edge.b());
        if (!a.equals(b)) {
          Resistor one = new Resistor(a, b, load.ohms());
          all.at.computeIfAbsent(a, net -> new ArrayList<>()).add(one);
          all.at.computeIfAbsent(b, net -> new ArrayList<>()).add(one);
        }
      }
    }
    return all;
  }

  /**
   * The resistance between two circuits in ohm; infinite when no resistors join them. Ways through
   * more than {@value #MOST_NODES} circuits are cut there.
   */
  double between(Point from, Point to) {
    Map<Point, Integer> index = new LinkedHashMap<>();
    Deque<Point> open = new ArrayDeque<>(List.of(from));
    index.put(from, 0);
    while (!open.isEmpty()) {
      Point here = open.remove();
      for (Resistor resistor : at.getOrDefault(here, List.of())) {
        Point next = resistor.across(here);
        if (index.size() < MOST_NODES && index.putIfAbsent(next, index.size()) == null) {
          open.add(next);
        }
      }
    }
    Integer end = index.get(to);
    return end == null ? Double.POSITIVE_INFINITY : solve(index, end);
  }

  /** Volts at {@code from} for one ampere from there to {@code to}, which stands at 0 volts. */
  private double solve(Map<Point, Integer> index, int to) {
    int size = index.size();
    double[][] rows = new double[size][size + 1];
    index.forEach(
        (net, row) -> {
          for (Resistor resistor : at.getOrDefault(net, List.of())) {
            Integer column = index.get(resistor.across(net));
            if (column != null) {
              rows[row][row] += 1 / resistor.ohms();
              rows[row][column] -= 1 / resistor.ohms();
            }
          }
        });
    Arrays.fill(rows[to], 0);
    rows[to][to] = 1;
    rows[0][size] = 1;
    for (int pivot = 0; pivot < size; pivot++) {
      for (int row = 0; row < size; row++) {
        double share = row == pivot ? 0 : rows[row][pivot] / rows[pivot][pivot];
        for (int column = pivot; column <= size && share != 0; column++) {
          rows[row][column] -= share * rows[pivot][column];
        }
      }
    }
    return rows[0][size] / rows[0][0];
  }
}
