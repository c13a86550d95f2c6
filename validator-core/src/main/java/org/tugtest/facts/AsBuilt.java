package org.tugtest.facts;

import java.util.List;
import org.tugtest.network.Meter;

/**
 * What is told of a loom as it was built, fitted to the plan: only what speaks of things that are
 * there.
 *
 * @param deviations what was built otherwise than planned
 * @param readings what was measured; of several readings between two points the last counts
 * @param meter the harness as planned, with what was built otherwise: what a meter should show
 */
public record AsBuilt(List<Deviation> deviations, List<TakenReading> readings, Meter meter) {
  public AsBuilt {
    deviations = List.copyOf(deviations);
    readings = List.copyOf(readings);
  }

  /** The deviations of these kinds. */
  public List<Deviation> deviations(Deviation.Kind... kinds) {
    List<Deviation.Kind> wanted = List.of(kinds);
    return deviations.stream().filter(deviation -> wanted.contains(deviation.kind())).toList();
  }
}
