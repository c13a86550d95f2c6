package org.tugtest.compare.consequence;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.match.Match;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Wire;

/** The length of each wire, given or routed. */
public final class CutLengths implements Consequence {
  @Override
  public String title() {
    return "lengths of the wires";
  }

  @Override
  public List<Moved> of(Comparison comparison) {
    List<Moved> moved = new ArrayList<>();
    for (Match match : comparison.matches().in("wires")) {
      Double was = length(comparison.before().facts(), match.before());
      Double is = length(comparison.after().facts(), match.after());
      if (was != null && is != null) {
        Moved.of(match.after(), Subject.wire(match.after()), was, is, "mm", 0)
            .ifPresent(moved::add);
      }
    }
    return Moved.sorted(moved);
  }

  private static @Nullable Double length(Facts facts, String id) {
    Wire wire = facts.harness().wires().get(id);
    return wire == null ? null : facts.lengths().of(wire).map(found -> found.mm()).orElse(null);
  }
}
