package org.tugtest.table;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.tugtest.finding.Basis;

/**
 * The least force in newton that a crimped wire holds when it is pulled straight, slowly (25.4 mm a
 * minute) for a minute, the insulation grip not counted: a terminal maker's public crimping
 * specifications 114-2157 and 114-2161, commercial figures. The data of the terminal itself go
 * before it.
 */
public final class PullForceTable {
  private static final Map<String, Cited> FORCES = new HashMap<>();

  static {
    for (CSVRecord row : TableFile.rows("pull_force.csv")) {
      FORCES.put(
          row.get("awg"),
          new Cited(
              Double.parseDouble(row.get("force_n")),
              row.get("source"),
              Basis.valueOf(row.get("basis"))));
    }
  }

  /**
   * A row of the table.
   *
   * @param awg the gauge it is for
   * @param newton the least force
   */
  public record Force(String awg, Cited newton) {}

  private PullForceTable() {}

  /** The force for a gauge ({@code "20"}, {@code "1/0"}); empty for one not in the table. */
  public static Optional<Force> ofGauge(String awg) {
    return Optional.ofNullable(FORCES.get(awg)).map(newton -> new Force(awg, newton));
  }

  /**
   * The force for an area in mm2: that of the greatest gauge of the table that is not above it, so
   * the least that can be asked; empty below the smallest.
   */
  public static Optional<Force> ofArea(double areaMm2) {
    Force best = null;
    double bestArea = 0;
    for (Map.Entry<String, Cited> row : FORCES.entrySet()) {
      double area = AwgTable.areaMm2(row.getKey()).map(Cited::value).orElse(Double.MAX_VALUE);
      if (area <= areaMm2 && area > bestArea) {
        bestArea = area;
        best = new Force(row.getKey(), row.getValue());
      }
    }
    return Optional.ofNullable(best);
  }
}
