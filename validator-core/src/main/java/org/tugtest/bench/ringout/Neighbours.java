package org.tugtest.bench.ringout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.model.Housing;
import org.tugtest.network.Point;

/** Which cavities lie side by side, by the rows of the housing: to the side, above and aslant. */
public final class Neighbours {
  private static final int[][] AHEAD = {{0, 1}, {1, -1}, {1, 0}, {1, 1}};

  private Neighbours() {}

  /** Two cavities of one connector that lie side by side. */
  public record Pair(Point one, Point other) {}

  /** All such pairs of a connector; none when its housing is not known. */
  public static List<Pair> in(Facts facts, String connector) {
    Optional<Housing> housing = facts.wiring().mating().housingOf(connector);
    if (housing.isEmpty()) {
      return List.of();
    }
    List<List<String>> rows = housing.get().rows();
    List<Pair> pairs = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        String name = rows.get(row).get(column);
        for (int[] step : AHEAD) {
          String near = at(rows, row + step[0], column + step[1]);
          if (!name.isEmpty() && !near.isEmpty() && !name.equals(near)) {
            pairs.add(new Pair(Point.cavity(connector, name), Point.cavity(connector, near)));
          }
        }
      }
    }
    return pairs;
  }

  private static String at(List<List<String>> rows, int row, int column) {
    boolean inside = row < rows.size() && column >= 0 && column < rows.get(row).size();
    return inside ? rows.get(row).get(column) : "";
  }
}
