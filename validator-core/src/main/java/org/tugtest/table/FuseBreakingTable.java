package org.tugtest.table;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.tugtest.finding.Basis;

/**
 * The greatest current that vehicle fuses break, by style: ISO 8820-3 types by its scope and as
 * makers' data quoted in public documents give it, bolted ones from memory.
 */
public final class FuseBreakingTable {
  private static final Map<String, Cited> BY_STYLE = new LinkedHashMap<>();

  static {
    for (CSVRecord row : TableFile.rows("fuse_breaking.csv")) {
      BY_STYLE.put(
          row.get("style"),
          new Cited(
              Double.parseDouble(row.get("breaking_a")),
              row.get("source"),
              Basis.valueOf(row.get("basis"))));
    }
  }

  private FuseBreakingTable() {}

  /** Breaking capacity in amperes of a style; empty for one not in the table. */
  public static Optional<Cited> breakingCapacityA(String style) {
    return Optional.ofNullable(BY_STYLE.get(style));
  }
}
