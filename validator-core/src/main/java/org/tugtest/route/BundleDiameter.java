package org.tugtest.route;

import java.util.List;
import org.tugtest.table.EqualCircleTable;

/**
 * How thick a bundle of circles comes out. One circle is itself and two lie side by side, whatever
 * is done; from three on the formulas of bundle tables hold, and nothing is less than the two
 * largest side by side.
 */
public final class BundleDiameter {
  /** Factor on the root of the sum of squares for a laid bundle (common practice). */
  public static final double LAID = 1.2;

  /** The same for a loose one, laid by hand. */
  public static final double LOOSE = 1.3;

  private BundleDiameter() {}

  /**
   * The expected diameter in mm: the greatest of the bound for as many circles of the same root
   * mean square (to 30), of 1.2 times the root of the sum of squares, and of the two largest side
   * by side.
   *
   * @param diametersMm each above 0, in any order
   */
  public static double expectedMm(List<Double> diametersMm) {
    double[] sizes = sorted(diametersMm);
    if (sizes.length < 3) {
      return sum(sizes);
    }
    double root = rootOfSquares(sizes);
    double pair = sizes[sizes.length - 1] + sizes[sizes.length - 2];
    double bound =
        EqualCircleTable.ratio(sizes.length)
            .map(ratio -> ratio.value() * root / Math.sqrt(sizes.length))
            .orElse(0.0);
    return Math.max(Math.max(bound, LAID * root), pair);
  }

  /**
   * The diameter in mm of a bundle laid loosely by hand: 1.3 times the root of the sum of squares,
   * but never less than the expected one.
   *
   * @param diametersMm each above 0, in any order
   */
  public static double looseMm(List<Double> diametersMm) {
    double expected = expectedMm(diametersMm);
    return diametersMm.size() < 3
        ? expected
        : Math.max(expected, LOOSE * rootOfSquares(sorted(diametersMm)));
  }

  private static double[] sorted(List<Double> diameters) {
    return diameters.stream().mapToDouble(Double::doubleValue).sorted().toArray();
  }

  private static double sum(double[] sizes) {
    double sum = 0;
    for (double size : sizes) {
      sum += size;
    }
    return sum;
  }

  private static double rootOfSquares(double[] sizes) {
    double squares = 0;
    for (double size : sizes) {
      squares += size * size;
    }
    return Math.sqrt(squares);
  }
}
