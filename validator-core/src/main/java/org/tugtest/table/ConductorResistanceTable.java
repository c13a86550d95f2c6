package org.tugtest.table;

import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.tugtest.finding.Basis;

/**
 * Greatest resistance of copper conductors at 20 °C: plain fine strand by area (IEC 60228 class 5;
 * under 0.5 mm2 the small sizes of DIN VDE 0295), and tinned strand by gauge (FAA AC 43.13-1B,
 * table 11-9). Between rows of one series the resistance is a straight line on logarithmic axes,
 * beyond them it goes with one over the area, between the two series by area it is the greater of
 * what either gives (all derived).
 */
public final class ConductorResistanceTable {
  private static final String IEC = "IEC60228_CLASS5";
  private static final String VDE = "DIN_VDE_0295_SMALL";
  private static final String MM2 = "mm2";
  private static final Map<String, NavigableMap<Double, Cited>> BY_AREA = new HashMap<>();
  private static final NavigableMap<Double, Cited> BY_GAUGE_AREA = new TreeMap<>();

  static {
    for (CSVRecord row : TableFile.rows("conductor_resistance.csv")) {
      Cited resistance =
          new Cited(
              Double.parseDouble(row.get("r20_max_ohm_per_km")),
              row.get("source"),
              Basis.valueOf(row.get("basis")));
      String size = row.get("size");
      if (row.get("size_unit").equals(MM2)) {
        BY_AREA
            .computeIfAbsent(row.get("series"), series -> new TreeMap<>())
            .put(Double.parseDouble(size), resistance);
      } else {
        AwgTable.areaMm2(size).ifPresent(area -> BY_GAUGE_AREA.put(area.value(), resistance));
      }
    }
  }

  private ConductorResistanceTable() {}

  /** Milliohms per metre at 20 °C of a conductor of an area in mm2, above 0. */
  public static Cited ofArea(double areaMm2) {
    NavigableMap<Double, Cited> iec = series(IEC);
    NavigableMap<Double, Cited> vde = series(VDE);
    if (areaMm2 <= vde.lastKey()) {
      return LogLog.at(vde, areaMm2);
    }
    Cited byIec = LogLog.at(iec, areaMm2);
    if (areaMm2 >= iec.firstKey()) {
      return byIec;
    }
    Cited byVde = LogLog.at(vde, areaMm2);
    return byIec.value() >= byVde.value() ? byIec : byVde;
  }

  /** Milliohms per metre at 20 °C of a gauge ({@code "4/0"} to {@code "30"}). */
  public static Optional<Cited> ofGauge(String awg) {
    Optional<Cited> area = AwgTable.areaMm2(awg);
    if (area.isEmpty()) {
      return Optional.empty();
    }
    double mm2 = area.get().value();
    return Optional.of(
        mm2 < BY_GAUGE_AREA.firstKey() * 0.999
            ? derived(ofArea(mm2))
            : LogLog.at(BY_GAUGE_AREA, mm2));
  }

  private static Cited derived(Cited figure) {
    return new Cited(figure.value(), figure.source(), Basis.DERIVED.weaker(figure.basis()));
  }

  private static NavigableMap<Double, Cited> series(String name) {
    return BY_AREA.getOrDefault(name, new TreeMap<>());
  }
}
