package org.tugtest.table;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.tugtest.finding.Basis;

/**
 * How much longer than planned a wire may be: IPC/WHMA-A-620 table 11-1 (draft B for industry
 * review). Shorter is never allowed.
 */
public final class LengthToleranceTable {
  private static final double PERCENT = 100;
  private static final List<Band> BANDS = new ArrayList<>();

  /** A row: lengths up to {@code toMm} may be {@code plusMm}, or that share, longer. */
  private record Band(double toMm, double plusMm, double share, String source, Basis basis) {}

  static {
    for (CSVRecord row : TableFile.rows("length_tolerance.csv")) {
      boolean last = row.get("to_mm").isEmpty();
      BANDS.add(
          new Band(
              last ? Double.POSITIVE_INFINITY : Double.parseDouble(row.get("to_mm")),
              last ? 0 : Double.parseDouble(row.get("plus_mm")),
              last ? Double.parseDouble(row.get("plus_percent")) / PERCENT : 0,
              row.get("source"),
              Basis.valueOf(row.get("basis"))));
    }
  }

  private LengthToleranceTable() {}

  /** How much longer than so many mm a wire may be, in mm. */
  public static Cited plusMm(double plannedMm) {
    for (Band band : BANDS) {
      if (plannedMm <= band.toMm()) {
        return new Cited(band.plusMm() + band.share() * plannedMm, band.source(), band.basis());
      }
    }
    throw new IllegalStateException("the last row of the table has an end");
  }
}
