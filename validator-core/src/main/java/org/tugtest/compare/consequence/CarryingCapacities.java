package org.tugtest.compare.consequence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.match.Match;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.heat.Ampacity;
import org.tugtest.model.Wire;

/**
 * The lasting currents that the wires stand where they lie: of each net that stayed, the wire whose
 * figure moved most.
 */
public final class CarryingCapacities implements Consequence {
  @Override
  public String title() {
    return "lasting currents that the wires stand";
  }

  @Override
  public List<Moved> of(Comparison comparison) {
    Map<String, Moved> moved = new LinkedHashMap<>();
    for (Match match : comparison.matches().in("wires")) {
      Double was = stands(comparison.before().facts(), match.before());
      Double is = stands(comparison.after().facts(), match.after());
      if (was != null && is != null) {
        Moved.of(match.after(), Subject.wire(match.after()), was, is, "A", 1)
            .ifPresent(one -> moved.put(match.after(), one));
      }
    }
    return moved.isEmpty() ? List.of() : new StayedNets(comparison).worst(moved);
  }

  private static @Nullable Double stands(Facts facts, String id) {
    Wire wire = facts.harness().wires().get(id);
    return wire == null ? null : facts.ampacity().of(wire).map(Ampacity::amps).orElse(null);
  }
}
