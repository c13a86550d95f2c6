package org.tugtest.table;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;

/**
 * Mean diameters of stranded equipment wire by area, for heat: where a wire's own diameters are not
 * given, the mean is taken and not the greatest, since a thicker wire gives off more heat. Between
 * rows they are straight lines along the root of the area, beyond them they go with it (derived).
 */
public final class EquipmentWireTable {
  private static final NavigableMap<Double, Cited> OUTER = new TreeMap<>();
  private static final NavigableMap<Double, Cited> CONDUCTOR = new TreeMap<>();

  static {
    for (CSVRecord row : TableFile.rows("equipment_wire.csv")) {
      double root = Math.sqrt(Double.parseDouble(row.get("area_mm2")));
      double outer = Double.parseDouble(row.get("outer_mm"));
      double wall = Double.parseDouble(row.get("wall_mm"));
      Basis basis = Basis.valueOf(row.get("basis"));
      OUTER.put(root, new Cited(outer, row.get("source"), basis));
      CONDUCTOR.put(root, new Cited(outer - 2 * wall, row.get("source"), basis));
    }
  }

  private EquipmentWireTable() {}

  /** Outside diameter in mm for a conductor area in mm2, above 0. */
  public static Cited outerMm(double areaMm2) {
    return at(OUTER, Math.sqrt(areaMm2));
  }

  /** Diameter of the strand in mm for a conductor area in mm2, above 0. */
  public static Cited conductorMm(double areaMm2) {
    return at(CONDUCTOR, Math.sqrt(areaMm2));
  }

  private static Cited at(NavigableMap<Double, Cited> rows, double root) {
    Map.@Nullable Entry<Double, Cited> below = rows.floorEntry(root);
    Map.@Nullable Entry<Double, Cited> above = rows.ceilingEntry(root);
    if (below == null || above == null) {
      Map.Entry<Double, Cited> end = below == null ? rows.firstEntry() : rows.lastEntry();
      return derived(end.getValue().value() * root / end.getKey(), "beyond", end.getValue());
    }
    if (below.getKey() >= above.getKey()) {
      return below.getValue();
    }
    double share = (root - below.getKey()) / (above.getKey() - below.getKey());
    double low = below.getValue().value();
    return derived(
        low + share * (above.getValue().value() - low), "between rows of", below.getValue());
  }

  private static Cited derived(double value, String how, Cited row) {
    return new Cited(value, how + ": " + row.source(), Basis.DERIVED.weaker(row.basis()));
  }
}
