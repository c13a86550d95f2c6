package org.tugtest.table;

import java.util.NavigableMap;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;

/**
 * Resistance of blade fuses, cold and at their rating, as makers' data quoted in public documents
 * give it. Between the listed ratings it is a straight line on logarithmic axes, beyond them, and
 * for other styles, it goes with one over the rating (derived): a fuse of 10 to 100 A drops about
 * 0.11 V at its rating.
 */
public final class FuseResistanceTable {
  private static final String REGULAR = "blade-regular";
  private static final NavigableMap<Double, Cited> COLD = new TreeMap<>();
  private static final NavigableMap<Double, Cited> LOADED = new TreeMap<>();
  private static final NavigableMap<String, Cited> OF_STYLE = new TreeMap<>();

  static {
    for (CSVRecord row : TableFile.rows("fuse_resistance.csv")) {
      double rating = Double.parseDouble(row.get("rating_a"));
      Basis basis = Basis.valueOf(row.get("basis"));
      Cited cold =
          new Cited(Double.parseDouble(row.get("cold_milliohm")), row.get("source"), basis);
      if (!row.get("style").equals(REGULAR)) {
        OF_STYLE.put(key(row.get("style"), rating), cold);
        continue;
      }
      COLD.put(rating, cold);
      double loaded = Double.parseDouble(row.get("drop_at_rated_mv")) / rating;
      LOADED.put(rating, new Cited(loaded, row.get("source"), basis));
    }
  }

  private FuseResistanceTable() {}

  /** Milliohms of a fuse without current, for faults; {@code style} null when it is not given. */
  public static Cited coldMilliohm(double ratingA, @Nullable String style) {
    Cited own = style == null ? null : OF_STYLE.get(key(style, ratingA));
    return own != null ? own : of(COLD, ratingA, style);
  }

  /** Milliohms of a fuse that carries its rating, for lasting currents. */
  public static Cited loadedMilliohm(double ratingA, @Nullable String style) {
    return of(LOADED, ratingA, style);
  }

  private static Cited of(
      NavigableMap<Double, Cited> rows, double ratingA, @Nullable String style) {
    Cited figure = LogLog.at(rows, ratingA);
    return REGULAR.equals(style)
        ? figure
        : new Cited(figure.value(), figure.source(), Basis.DERIVED.weaker(figure.basis()));
  }

  private static String key(String style, double rating) {
    return style + " " + rating;
  }
}
