package org.tugtest.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;

/**
 * What flows through an edge in the states that last, as far as it heats: of loads with a duty the
 * root mean square.
 *
 * @param edge what it flows through
 * @param worst the first state in which most flows
 * @param amps what flows in it, never negative
 * @param known whether no load leaves open what flows, in any of the states
 * @param lasting all states that last
 */
public record LastingAmps(
    Edge edge, OperatingPoint worst, double amps, boolean known, List<OperatingPoint> lasting) {
  /** Why nothing is said of an edge of a harness with brief states alone. */
  public static final String NO_STATE = "no state lasts";

  /** Why an edge is not fine through which a load of unknown draw may send more. */
  public static final String NOT_KNOWN = "what flows through it is not known";

  /** Of an edge; empty when no state lasts. */
  public static Optional<LastingAmps> of(Facts facts, Edge edge) {
    List<OperatingPoint> lasting = facts.operating().lasting();
    OperatingPoint worst = null;
    boolean known = true;
    for (OperatingPoint state : lasting) {
      worst = worst == null || state.heatAmps(edge) > worst.heatAmps(edge) ? state : worst;
      known &= state.ampsKnown(edge);
    }
    return worst == null
        ? Optional.empty()
        : Optional.of(new LastingAmps(edge, worst, worst.heatAmps(edge), known, lasting));
  }

  /** The other states in which more than {@code most} amperes flow, in words. */
  public List<String> others(double most) {
    List<String> others = new ArrayList<>();
    for (OperatingPoint state : lasting) {
      double here = state.heatAmps(edge);
      if (!state.equals(worst) && here > most) {
        others.add(String.format(Locale.ROOT, "also in state %s: %.2f A", state.state(), here));
      }
    }
    return others;
  }

  /** What flows while every load draws, in words; empty when that is all the time. */
  public Optional<String> peak() {
    double peak = Math.abs(worst.amps(edge));
    return peak > amps * (1 + 1e-6)
        ? Optional.of(
            String.format(
                Locale.ROOT, "%.2f A while all of its loads draw; their duty counts", peak))
        : Optional.empty();
  }
}
