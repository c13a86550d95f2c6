package org.tugtest.table;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.tugtest.finding.Basis;

/**
 * The ratings that vehicle fuses are made in, and the volts they are made for, by style: blades as
 * a public description and makers' data give them, bolted ones from memory.
 */
public final class FuseRatingTable {
  private static final Map<String, List<Double>> RATINGS = new LinkedHashMap<>();
  private static final Map<String, Cited> VOLTS = new LinkedHashMap<>();

  static {
    for (CSVRecord row : TableFile.rows("fuse_rating.csv")) {
      RATINGS.put(
          row.get("style"),
          Stream.of(row.get("ratings_a").split(" ", -1)).map(Double::valueOf).toList());
      VOLTS.put(
          row.get("style"),
          new Cited(
              Double.parseDouble(row.get("volts")),
              row.get("source"),
              Basis.valueOf(row.get("basis"))));
    }
  }

  private FuseRatingTable() {}

  /** The ratings of a style in amperes, rising; those of all styles for one not in the table. */
  public static List<Double> ratings(String style) {
    List<Double> own = RATINGS.get(style);
    if (own != null) {
      return own;
    }
    TreeSet<Double> all = new TreeSet<>();
    RATINGS.values().forEach(all::addAll);
    return List.copyOf(all);
  }

  /** Rated volts of a style; empty for one not in the table. */
  public static Optional<Cited> volts(String style) {
    return Optional.ofNullable(VOLTS.get(style));
  }
}
