package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.tugtest.network.Point;

/**
 * Where each contact of a pair goes in the free cavities of another: an assignment of least cost.
 * Feed beside return or a signal, in either half, costs most; else the order of the cavities is
 * kept. Contacts that move side by side are then exchanged for as long as that helps.
 *
 * @param moves in the order of the contacts that move
 * @param beside where feed would still be beside return or a signal
 */
record MergePlan(List<Move> moves, List<String> beside) {
  /** Free cavities that are looked at; the first ones. */
  private static final int MOST_FREE = 200;

  private static final double NEVER = 1e12;
  private static final double CLASH = 1e6;

  /** One contact, from where to where. */
  record Move(Joint.Contact from, Joint.Contact to) {}

  /** Plans the move of all contacts of {@code small} into {@code large}, if there is a way. */
  static Optional<MergePlan> of(
      Roles roles, ContactMove fit, Joint small, Joint large, Set<Joint.Contact> taken) {
    List<Joint.Contact> free =
        large.free().stream().filter(one -> !taken.contains(one)).limit(MOST_FREE).toList();
    if (free.size() < small.used().size()
        || !fit.allows(small.near().housing(), large.near().housing())
        || !fit.allows(small.far().housing(), large.far().housing())) {
      return Optional.empty();
    }
    Costs costs = new Costs(roles, fit, small, large, free);
    return costs.assign().map(costs::improve).map(costs::plan);
  }

  /** What it costs to put a contact into a cavity. */
  private static final class Costs {
    private final Joint small;
    private final Joint large;
    private final List<Joint.Contact> free;
    private final Roles.Role[] moving;
    private final Map<Point, Roles.Role> present = new HashMap<>();
    private final Map<String, List<String>> neighbours;
    private final double[][] fixed;

    Costs(Roles roles, ContactMove fit, Joint small, Joint large, List<Joint.Contact> free) {
      this.small = small;
      this.large = large;
      this.free = free;
      this.moving =
          small.used().stream()
              .map(one -> roles.of(small.near().at(one.near())))
              .toArray(Roles.Role[]::new);
      for (Joint.Contact one : large.used()) {
        Point at = large.near().at(one.near());
        present.put(at, roles.of(at));
      }
      this.neighbours = neighbours(large);
      this.fixed = new double[moving.length][free.size()];
      for (int i = 0; i < moving.length; i++) {
        for (int j = 0; j < free.size(); j++) {
          fixed[i][j] = fixed(fit, i, j);
        }
      }
    }

    private double fixed(ContactMove fit, int i, int j) {
      Joint.Contact from = small.used().get(i);
      Joint.Contact to = free.get(j);
      boolean fits =
          fit.fits(small.near(), from.near(), large.near(), to.near())
              && fit.fits(small.far(), from.far(), large.far(), to.far());
      if (!fits) {
        return NEVER;
      }
      double order = i - j;
      return CLASH * clashesWithPresent(i, j).size() + order * order;
    }

    private List<Point> clashesWithPresent(int i, int j) {
      List<Point> clashes = new ArrayList<>();
      for (String name : neighbours.getOrDefault(free.get(j).near(), List.of())) {
        Point beside = large.near().at(name);
        Roles.Role role = present.getOrDefault(beside, Roles.Role.UNKNOWN);
        if (moving[i].clashesWith(role)) {
          clashes.add(beside);
        }
      }
      return clashes;
    }

    private boolean touch(int j, int k) {
      return neighbours.getOrDefault(free.get(j).near(), List.of()).contains(free.get(k).near());
    }

    /** The column of each row at least cost, without what moves side by side. */
    Optional<int[]> assign() {
      int size = free.size();
      for (double[] row : fixed) {
        if (Arrays.stream(row).allMatch(cost -> cost >= NEVER)) {
          return Optional.empty();
        }
      }
      Graph<Integer, DefaultWeightedEdge> graph =
          new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
      Set<Integer> rows = new LinkedHashSet<>();
      Set<Integer> columns = new LinkedHashSet<>();
      for (int i = 0; i < size; i++) {
        rows.add(i);
        columns.add(size + i);
        graph.addVertex(i);
        graph.addVertex(size + i);
      }
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < size; j++) {
          DefaultWeightedEdge edge = graph.addEdge(i, size + j);
          graph.setEdgeWeight(edge, i < moving.length ? fixed[i][j] : 0);
        }
      }
      int[] columnOf = new int[moving.length];
      for (DefaultWeightedEdge edge :
          new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, rows, columns)
              .getMatching()
              .getEdges()) {
        int row = Math.min(graph.getEdgeSource(edge), graph.getEdgeTarget(edge));
        int column = Math.max(graph.getEdgeSource(edge), graph.getEdgeTarget(edge)) - size;
        if (row < moving.length) {
          columnOf[row] = column;
        }
      }
      return cost(columnOf) >= NEVER ? Optional.empty() : Optional.of(columnOf);
    }

    /** All of it, with contacts that move side by side. */
    private double cost(int[] columnOf) {
      double cost = 0;
      for (int i = 0; i < columnOf.length; i++) {
        cost += fixed[i][columnOf[i]];
        for (int k = i + 1; k < columnOf.length; k++) {
          if (moving[i].clashesWith(moving[k]) && touch(columnOf[i], columnOf[k])) {
            cost += CLASH;
          }
        }
      }
      return cost;
    }

    /** Moves one contact, or exchanges two, for as long as that costs less. */
    int[] improve(int[] start) {
      int[] best = start;
      double least = cost(best);
      boolean better = true;
      while (better && least >= CLASH) {
        better = false;
        for (int i = 0; i < best.length && !better; i++) {
          for (int j = 0; j < free.size() && !better; j++) {
            int[] tried = put(best, i, j);
            double cost = cost(tried);
            if (cost < least) {
              best = tried;
              least = cost;
              better = true;
            }
          }
        }
      }
      return best;
    }

    /** Row {@code i} in column {@code j}; a row that was there takes the column of {@code i}. */
    private static int[] put(int[] columnOf, int i, int j) {
      int[] changed = columnOf.clone();
      for (int k = 0; k < changed.length; k++) {
        if (changed[k] == j) {
          changed[k] = columnOf[i];
        }
      }
      changed[i] = j;
      return changed;
    }

    MergePlan plan(int[] columnOf) {
      List<Move> moves = new ArrayList<>();
      List<String> beside = new ArrayList<>();
      for (int i = 0; i < columnOf.length; i++) {
        moves.add(new Move(small.used().get(i), free.get(columnOf[i])));
        for (Point other : clashesWithPresent(i, columnOf[i])) {
          Roles.Role role = present.getOrDefault(other, Roles.Role.UNKNOWN);
          beside.add(beside(i, columnOf[i], other, role));
        }
        for (int k = i + 1; k < columnOf.length; k++) {
          if (moving[i].clashesWith(moving[k]) && touch(columnOf[i], columnOf[k])) {
            Point other = large.near().at(free.get(columnOf[k]).near());
            beside.add(beside(i, columnOf[i], other, moving[k]));
          }
        }
      }
      return new MergePlan(List.copyOf(moves), List.copyOf(beside));
    }

    private String beside(int i, int j, Point other, Roles.Role role) {
      return large.near().at(free.get(j).near()).text()
          + moving[i].shown()
          + " would be beside "
          + other.text()
          + role.shown();
    }
  }

  /** Which contacts stand next to each other in either half, by their cavities in the near one. */
  private static Map<String, List<String>> neighbours(Joint joint) {
    Map<String, String> nearOf = new HashMap<>();
    for (List<Joint.Contact> contacts : List.of(joint.used(), joint.free())) {
      contacts.forEach(one -> nearOf.put(one.far(), one.near()));
    }
    Map<String, List<String>> both = neighbours(joint.near().housing().rows());
    neighbours(joint.far().housing().rows())
        .forEach(
            (far, beside) -> {
              String near = nearOf.get(far);
              if (near != null) {
                List<String> known = both.computeIfAbsent(near, key -> new ArrayList<>());
                beside.stream()
                    .map(nearOf::get)
                    .filter(other -> other != null && !known.contains(other))
                    .forEach(known::add);
              }
            });
    return both;
  }

  /** Which cavities stand next to each other in a row or in the rows above and below. */
  private static Map<String, List<String>> neighbours(List<List<String>> rows) {
    Map<String, List<String>> neighbours = new HashMap<>();
    for (int r = 0; r < rows.size(); r++) {
      for (int c = 0; c < rows.get(r).size(); c++) {
        List<String> beside = new ArrayList<>();
        for (int[] step : new int[][] {{0, -1}, {0, 1}, {-1, 0}, {1, 0}}) {
          int row = r + step[0];
          int column = c + step[1];
          if (row >= 0
              && row < rows.size()
              && column >= 0
              && column < rows.get(row).size()
              && !rows.get(row).get(column).isEmpty()) {
            beside.add(rows.get(row).get(column));
          }
        }
        neighbours.put(rows.get(r).get(c), beside);
      }
    }
    return neighbours;
  }
}
