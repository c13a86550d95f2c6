package org.tugtest.table;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.tugtest.finding.Basis;

/**
 * Conductor areas of American wire gauges 4/0 to 30, from the defining formula of ASTM B258: d =
 * 0.127 mm · 92^((36 − n) / 39).
 */
public final class AwgTable {
  private static final Map<String, Cited> AREAS = read();

  private AwgTable() {}

  /** The area in mm2 of a gauge ({@code "4/0"}, {@code "18"}); empty for one not in the table. */
  public static Optional<Cited> areaMm2(String awg) {
    return Optional.ofNullable(AREAS.get(awg));
  }

  private static Map<String, Cited> read() {
    Map<String, Cited> areas = new HashMap<>();
    for (CSVRecord row : TableFile.rows("awg.csv")) {
      double area = Double.parseDouble(row.get("area_mm2"));
      areas.put(row.get("awg"), new Cited(area, "ASTM B258 formula", Basis.SOURCE));
    }
    return Map.copyOf(areas);
  }
}
