package org.tugtest.compare.consequence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.compare.Comparison;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.protect.FaultCourse;
import org.tugtest.protect.Faults;

/** The time in which the fuses end a short inside each load, opening as late as they may. */
public final class ClearingTimes implements Consequence {
  @Override
  public String title() {
    return "times until a short inside a load is dead";
  }

  @Override
  public List<Moved> of(Comparison comparison) {
    Map<String, Double> before = times(comparison.before().facts());
    Map<String, Double> after = times(comparison.after().facts());
    Map<String, Moved> moved = new LinkedHashMap<>();
    before.forEach(
        (load, was) -> {
          Double is = after.get(load);
          if (is != null && !was.equals(is)) {
            Moved.of(load, new Subject("devices/" + load), was, is, "s", 2)
                .ifPresent(one -> moved.put(load, one));
          }
        });
    return Moved.sorted(List.copyOf(moved.values()));
  }

  /** In seconds, infinite for one that lasts; without what cannot be reckoned. */
  private static Map<String, Double> times(Facts facts) {
    Map<String, Double> times = new LinkedHashMap<>();
    for (Faults.Spot spot : facts.faults().inLoads()) {
      Optional<FaultCourse> course = facts.faults().slowest(spot);
      if (spot.load() != null && course.isPresent()) {
        double seconds = course.get().dead() ? course.get().seconds() : Double.POSITIVE_INFINITY;
        times.merge(spot.load().text(), seconds, Math::max);
      }
    }
    return times;
  }
}
