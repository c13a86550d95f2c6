package org.tugtest.table;

import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.WirePart;

/**
 * Outside diameters of vehicle wires: ISO 6722-1 maxima by area and wall (thin wall in part as a
 * trade catalogue prints them, the rest from memory), and SAE J1128 GXL by gauge as a maker's data
 * sheet prints them. Between two rows of a wall the diameter is interpolated along the area
 * (derived).
 */
public final class OuterDiameterTable {
  private static final double SAME = 1e-3;
  private static final Map<String, NavigableMap<Double, Cited>> BY_AREA = new HashMap<>();
  private static final Map<String, Cited> BY_GAUGE = new HashMap<>();

  static {
    for (CSVRecord row : TableFile.rows("outer_diameter.csv")) {
      String source = row.get("source") + ", " + row.get("what") + " outside diameter";
      Cited diameter =
          new Cited(
              Double.parseDouble(row.get("outer_mm")), source, Basis.valueOf(row.get("basis")));
      if (row.get("size_unit").equals("mm2")) {
        BY_AREA
            .computeIfAbsent(row.get("series"), series -> new TreeMap<>())
            .put(Double.parseDouble(row.get("size")), diameter);
      } else {
        BY_GAUGE.put(row.get("size"), diameter);
      }
    }
  }

  private OuterDiameterTable() {}

  /** The outside diameter in mm of a gauge with a thin wall; empty for one not in the table. */
  public static Optional<Cited> ofGauge(String awg) {
    return Optional.ofNullable(BY_GAUGE.get(awg));
  }

  /** The outside diameter in mm for an area in mm2; empty outside the rows of that wall. */
  public static Optional<Cited> ofArea(double areaMm2, WirePart.Wall wall) {
    NavigableMap<Double, Cited> rows = BY_AREA.get(series(wall));
    if (rows == null) {
      return Optional.empty();
    }
    Map.@Nullable Entry<Double, Cited> below = rows.floorEntry(areaMm2 * (1 + SAME));
    Map.@Nullable Entry<Double, Cited> above = rows.ceilingEntry(areaMm2 * (1 - SAME));
    if (below == null || above == null) {
      return Optional.empty();
    }
    if (below.getKey() >= above.getKey()) {
      return Optional.of(below.getValue());
    }
    double share = (areaMm2 - below.getKey()) / (above.getKey() - below.getKey());
    Cited low = below.getValue();
    Cited high = above.getValue();
    return Optional.of(
        new Cited(
            low.value() + share * (high.value() - low.value()),
            "between rows of: " + low.source(),
            Basis.DERIVED.weaker(low.basis()).weaker(high.basis())));
  }

  private static String series(WirePart.Wall wall) {
    if (wall == WirePart.Wall.ULTRA_THIN) {
      return "ISO6722_ULTRATHIN";
    }
    return wall == WirePart.Wall.THICK ? "ISO6722_THICK" : "ISO6722_THIN";
  }
}
