package org.tugtest.table;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.tugtest.finding.Basis;

/**
 * The least circle round equal circles: its diameter by theirs, for 1 to 30 of them, as published
 * (to 20) and as remembered and derived again (21 to 30). Nothing is packed tighter.
 */
public final class EqualCircleTable {
  /** The greatest number of circles in the table. */
  public static final int MOST = 30;

  private static final Map<Integer, Cited> RATIOS = new TreeMap<>();

  static {
    for (CSVRecord row : TableFile.rows("circle_packing.csv")) {
      RATIOS.put(
          Integer.parseInt(row.get("circles")),
          new Cited(
              Double.parseDouble(row.get("ratio")),
              row.get("source"),
              Basis.valueOf(row.get("basis"))));
    }
  }

  private EqualCircleTable() {}

  /** The ratio for so many circles; empty for none and for more than {@link #MOST}. */
  public static Optional<Cited> ratio(int circles) {
    return Optional.ofNullable(RATIOS.get(circles));
  }
}
