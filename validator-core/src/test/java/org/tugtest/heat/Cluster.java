package org.tugtest.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The packing of the reference, for tests: largest first, each next one touching two placed wires
 * where its middle is nearest to the area centroid. Places come out in the order given.
 */
final class Cluster {
  private static final double SAME = 1e-9;
  private final List<double[]> placed = new ArrayList<>();
  private final List<Double> radii = new ArrayList<>();

  private Cluster() {}

  static List<Placed> of(List<Placed> wires, double spread) {
    Cluster cluster = new Cluster();
    List<Integer> order =
        IntStream.range(0, wires.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -wires.get(i).radius()))
            .toList();
    order.forEach(i -> cluster.add(wires.get(i).radius()));
    List<Placed> result = new ArrayList<>(wires);
    for (int k = 0; k < order.size(); k++) {
      int i = order.get(k);
      double[] at = cluster.placed.get(k);
      result.set(i, new Placed(wires.get(i).wire(), spread * at[0], spread * at[1]));
    }
    return result;
  }

  private void add(double radius) {
    double[] at = {0, 0};
    if (placed.size() == 1) {
      at = new double[] {radii.get(0) + radius, 0};
    } else if (placed.size() > 1) {
      at = nearest(radius);
    }
    placed.add(at);
    radii.add(radius);
  }

  private double[] nearest(double radius) {
    double area = 0;
    double x = 0;
    double y = 0;
    for (int i = 0; i < placed.size(); i++) {
      double weight = radii.get(i) * radii.get(i);
      area += weight;
      x += weight * placed.get(i)[0];
      y += weight * placed.get(i)[1];
    }
    double[] best = {0, 0};
    double least = Double.POSITIVE_INFINITY;
    for (int a = 0; a < placed.size(); a++) {
      for (int b = a + 1; b < placed.size(); b++) {
        for (int side = 1; side >= -1; side -= 2) {
          double[] at = touching(a, b, radius, side);
          double far = Math.hypot(at[0] - x / area, at[1] - y / area);
          if (far < least - SAME && free(at, radius)) {
            least = far;
            best = at;
          }
        }
      }
    }
    return best;
  }

  private double[] touching(int a, int b, double radius, int side) {
    double ra = radii.get(a) + radius;
    double rb = radii.get(b) + radius;
    double dx = placed.get(b)[0] - placed.get(a)[0];
    double dy = placed.get(b)[1] - placed.get(a)[1];
    double apart = Math.hypot(dx, dy);
    double along = (apart * apart + ra * ra - rb * rb) / (2 * apart);
    double high = side * Math.sqrt(ra * ra - along * along);
    return new double[] {
      placed.get(a)[0] + (along * dx - high * dy) / apart,
      placed.get(a)[1] + (along * dy + high * dx) / apart
    };
  }

  private boolean free(double[] at, double radius) {
    for (int i = 0; i < placed.size(); i++) {
      double apart = Math.hypot(at[0] - placed.get(i)[0], at[1] - placed.get(i)[1]);
      if (!(apart >= radii.get(i) + radius - 1e-7)) {
        return false;
      }
    }
    return true;
  }
}
