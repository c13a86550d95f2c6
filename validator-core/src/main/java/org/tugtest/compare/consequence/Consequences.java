package org.tugtest.compare.consequence;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.compare.Comparison;

/**
 * All figures that moved, sort by sort.
 *
 * @param title of the sort
 * @param moved the figures, the largest first; never empty
 */
public record Consequences(String title, List<Moved> moved) {

  public Consequences {
    moved = List.copyOf(moved);
  }

  /** The sorts of figures there are, in the order of reports. */
  public static List<Consequence> standard() {
    return List.of(
        new Totals(),
        new LoadVolts(),
        new NetVolts(),
        new WireAmps(),
        new FuseLimits(),
        new CarryingCapacities(),
        new PathResistances(),
        new ClearingTimes(),
        new WireTemperatures(),
        new CutLengths(),
        new BundleDiameters());
  }

  /** What moved between two revisions; sorts of which nothing moved are left out. */
  public static List<Consequences> of(Comparison comparison) {
    List<Consequences> all = new ArrayList<>();
    for (Consequence sort : standard()) {
      List<Moved> moved = sort.of(comparison);
      if (!moved.isEmpty()) {
        all.add(new Consequences(sort.title(), moved));
      }
    }
    return all;
  }
}
