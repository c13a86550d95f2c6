package org.tugtest.table;

import java.util.Map;
import java.util.NavigableMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;

/** Reads a column of a table between its rows, as a straight line on two logarithmic axes. */
final class LogLog {
  private static final double SAME = 1e-3;

  private LogLog() {}

  /**
   * The value at a size, above 0. Beyond the rows it goes on as one over the size.
   *
   * @param rows values by size, at least one, all above 0
   */
  static Cited at(NavigableMap<Double, Cited> rows, double size) {
    Map.@Nullable Entry<Double, Cited> below = rows.floorEntry(size * (1 + SAME));
    Map.@Nullable Entry<Double, Cited> above = rows.ceilingEntry(size * (1 - SAME));
    if (below == null || above == null) {
      Map.@Nullable Entry<Double, Cited> end = below == null ? above : below;
      if (end == null) {
        throw new IllegalArgumentException("a table without rows");
      }
      Cited row = end.getValue();
      return new Cited(
          row.value() * end.getKey() / size,
          "beyond the rows of: " + row.source(),
          Basis.DERIVED.weaker(row.basis()));
    }
    Cited low = below.getValue();
    Cited high = above.getValue();
    if (below.getKey() >= above.getKey()) {
      return low;
    }
    double share = Math.log(size / below.getKey()) / Math.log(above.getKey() / below.getKey());
    return new Cited(
        low.value() * Math.pow(high.value() / low.value(), share),
        "between rows of: " + low.source(),
        Basis.DERIVED.weaker(low.basis()).weaker(high.basis()));
  }
}
