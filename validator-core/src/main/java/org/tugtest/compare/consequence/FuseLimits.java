package org.tugtest.compare.consequence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.match.Match;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.protect.Exposure;

/**
 * The lasting current that the fuses let the wires see: of each net that stayed, the wire whose
 * figure moved most.
 */
public final class FuseLimits implements Consequence {
  @Override
  public String title() {
    return "currents that the fuses let through the wires";
  }

  @Override
  public List<Moved> of(Comparison comparison) {
    Map<String, Moved> moved = new LinkedHashMap<>();
    for (Match match : comparison.matches().in("wires")) {
      Double was = limit(comparison.before().facts(), match.before());
      Double is = limit(comparison.after().facts(), match.after());
      if (was != null && is != null && !was.equals(is)) {
        moved.put(
            match.after(),
            new Moved(match.after(), Subject.wire(match.after()), was, is, "A", 1, ""));
      }
    }
    return moved.isEmpty() ? List.of() : new StayedNets(comparison).worst(moved);
  }

  /** In amperes; infinite when nothing bounds it, null when it is not exposed or not known. */
  private static @Nullable Double limit(Facts facts, String wire) {
    Optional<Exposure> exposure = facts.protection().exposure(wire);
    if (exposure.isEmpty()) {
      return null;
    }
    return exposure.get().unbounded()
        ? Double.valueOf(Double.POSITIVE_INFINITY)
        : exposure.get().limitA().orElse(null);
  }
}
