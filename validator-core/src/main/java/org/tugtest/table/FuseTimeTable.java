package org.tugtest.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.tugtest.finding.Basis;

/**
 * Opening times of vehicle fuses by per cent of their rating at 23 °C: limits of ISO 8820-3 and
 * 8820-5 types, in part as makers' sheets quoted in public documents print them, the rest from
 * memory. They hold for the ratings that a row names alone.
 */
public final class FuseTimeTable {
  private static final double PERCENT = 0.01;
  private static final double SAME = 1e-9;
  private static final Map<String, List<CSVRecord>> BY_STYLE = new LinkedHashMap<>();

  static {
    for (CSVRecord row : TableFile.rows("fuse_time.csv")) {
      BY_STYLE.computeIfAbsent(row.get("style"), style -> new ArrayList<>()).add(row);
    }
  }

  private FuseTimeTable() {}

  /** The band of a style at a rating in amperes; empty for a style or rating not in the table. */
  public static Optional<FuseBand> of(String style, double ratingA) {
    List<OpeningCurve.Point> least = new ArrayList<>();
    List<OpeningCurve.Point> greatest = new ArrayList<>();
    for (CSVRecord row : BY_STYLE.getOrDefault(style, List.of())) {
      if (ratingA >= number(row, "rating_min_a") * (1 - SAME)
          && ratingA <= number(row, "rating_max_a") * (1 + SAME)) {
        add(least, row, ratingA, "least_s");
        add(greatest, row, ratingA, "greatest_s");
      }
    }
    return least.isEmpty() && greatest.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new FuseBand(ratingA, OpeningCurve.least(least), OpeningCurve.greatest(greatest)));
  }

  private static void add(
      List<OpeningCurve.Point> points, CSVRecord row, double ratingA, String column) {
    if (!row.get(column).isEmpty()) {
      points.add(
          new OpeningCurve.Point(
              ratingA * PERCENT * number(row, "percent"),
              number(row, column),
              row.get("source"),
              Basis.valueOf(row.get("basis"))));
    }
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
