package org.tugtest.table;

import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;

/**
 * What share of its current in free air a wire may carry in a bundle: the MIL-W-5088L chart as
 * digitised, by the number of wires and by the share of the bundle's whole capacity that is in use.
 * Numbers between two rows are on a straight line (derived).
 */
public final class BundleFactorTable {
  private static final Map<Integer, NavigableMap<Integer, Cited>> BY_LOADING = new HashMap<>();

  static {
    for (CSVRecord row : TableFile.rows("bundle_factor.csv")) {
      BY_LOADING
          .computeIfAbsent(Integer.parseInt(row.get("loading_percent")), percent -> new TreeMap<>())
          .put(
              Integer.parseInt(row.get("wires")),
              new Cited(
                  Double.parseDouble(row.get("factor")),
                  row.get("source"),
                  Basis.valueOf(row.get("basis"))));
    }
  }

  private BundleFactorTable() {}

  /**
   * The factor; past the last row that of the last row.
   *
   * @param wires in the bundle, at least 1
   * @param loadingPercent 20, 40, 60, 80 or 100; anything else is refused with an {@link
   *     IllegalArgumentException}
   */
  public static Cited factor(int wires, int loadingPercent) {
    NavigableMap<Integer, Cited> rows = BY_LOADING.get(loadingPercent);
    if (rows == null) {
      throw new IllegalArgumentException("no curve for " + loadingPercent + " %");
    }
    Map.@Nullable Entry<Integer, Cited> below = rows.floorEntry(Math.max(1, wires));
    Map.@Nullable Entry<Integer, Cited> above = rows.ceilingEntry(Math.max(1, wires));
    if (below == null || above == null) {
      Cited last = rows.lastEntry().getValue();
      return new Cited(last.value(), "past the last row of: " + last.source(), last.basis());
    }
    if (below.getKey() >= above.getKey()) {
      return below.getValue();
    }
    double share = (double) (wires - below.getKey()) / (above.getKey() - below.getKey());
    double low = below.getValue().value();
    return new Cited(
        low + share * (above.getValue().value() - low),
        "between rows of: " + below.getValue().source() + "; " + above.getValue().source(),
        Basis.DERIVED.weaker(below.getValue().basis()).weaker(above.getValue().basis()));
  }

  /** The greatest number of wires for which a published row of the 20 % curve was read. */
  public static int lastRead() {
    return BY_LOADING.getOrDefault(20, new TreeMap<>()).entrySet().stream()
        .filter(row -> row.getValue().basis() == Basis.SOURCE)
        .mapToInt(Map.Entry::getKey)
        .max()
        .orElse(1);
  }
}
