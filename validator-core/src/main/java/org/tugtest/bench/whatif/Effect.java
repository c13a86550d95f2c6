package org.tugtest.bench.whatif;

import java.util.List;
import org.tugtest.network.Edge;

/**
 * What a fault does.
 *
 * @param states what it does in each state in which it does something, in their order
 */
public record Effect(Fault fault, List<InState> states) {
  public Effect {
    states = List.copyOf(states);
  }

  /** Whether any state shows the fault. */
  public boolean shows() {
    return !states.isEmpty();
  }

  /**
   * What a fault does in one state.
   *
   * @param lost wanted loads that get no volts any more
   * @param dim wanted loads that get volts, but fewer than they work with
   * @param live switched loads that no one wants there and that get volts now
   */
  public record InState(
      String state,
      List<Edge.OfElement> lost,
      List<Edge.OfElement> dim,
      List<Edge.OfElement> live) {
    public InState {
      lost = List.copyOf(lost);
      dim = List.copyOf(dim);
      live = List.copyOf(live);
    }

    /** Whether nothing differs. */
    public boolean isEmpty() {
      return lost.isEmpty() && dim.isEmpty() && live.isEmpty();
    }
  }
}
