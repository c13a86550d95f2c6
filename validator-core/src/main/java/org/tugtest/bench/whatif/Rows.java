package org.tugtest.bench.whatif;

import java.util.Arrays;
import java.util.List;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.operate.OperatingPoint;

/** Parts of a network that lie in a row: the current of one is that of all. */
final class Rows {
  private final int[] row;

  private Rows(int[] row) {
    this.row = row;
  }

  /** The rows of one state, among the parts that carry more than {@code least} amperes. */
  static Rows of(Network network, OperatingPoint state, double least) {
    List<Edge> edges = network.edges();
    int[] first = new int[network.points().size()];
    int[] degree = new int[network.points().size()];
    int[] row = new int[edges.size()];
    for (int i = 0; i < edges.size(); i++) {
      row[i] = i;
      if (Math.abs(state.amps(edges.get(i))) > least) {
        degree[network.index(edges.get(i).a())]++;
        degree[network.index(edges.get(i).b())]++;
      }
    }
    Arrays.fill(first, -1);
    for (int i = 0; i < edges.size(); i++) {
      Edge edge = edges.get(i);
      if (Math.abs(state.amps(edge)) > least && !isCoil(edge)) {
        for (int at : new int[] {network.index(edge.a()), network.index(edge.b())}) {
          if (degree[at] == 2 && first[at] < 0) {
            first[at] = i;
          } else if (degree[at] == 2) {
            join(row, first[at], i);
          }
        }
      }
    }
    return new Rows(row);
  }

  /** A coil stands for no row: its contacts need it. */
  private static boolean isCoil(Edge edge) {
    return edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Coil;
  }

  /** The number of the first part of the row that a part is in. */
  int of(int part) {
    return find(row, part);
  }

  private static void join(int[] row, int one, int other) {
    int a = find(row, one);
    int b = find(row, other);
    row[Math.max(a, b)] = Math.min(a, b);
  }

  private static int find(int[] row, int part) {
    int at = part;
    while (row[at] != at) {
      row[at] = row[row[at]];
      at = row[at];
    }
    return at;
  }
}
