package org.tugtest.bench.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.LowSupplies;
import org.tugtest.network.Network;
import org.tugtest.operate.OperatingPoint;

/** What a person notices at the loads of a harness in one state. */
public final class Symptoms {
  private static final double NO_VOLTS = 0.5;
  private static final double HALF = 0.5;
  private static final double LIVE_SHARE = 0.1;
  private final OperatingPoint state;
  private final Network network;
  private final double nominalV;
  private final LowSupplies supplies;
  private final List<Edge.OfElement> wanted = new ArrayList<>();
  private final List<Edge.OfElement> unwanted = new ArrayList<>();

  /** What can be noticed in this state. */
  public Symptoms(Facts facts, OperatingPoint state) {
    this.state = state;
    this.network = facts.network();
    this.nominalV = facts.harness().defaults().nominalV();
    this.supplies = facts.lowSupplies();
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfElement user && user.element() instanceof Element.Load load) {
        double volts = Math.abs(state.across(user));
        if (state.wanted(user) && volts >= least(user)) {
          wanted.add(user);
        } else if (!state.wanted(user)
            && load.use() == Element.Load.Use.SWITCHED
            && volts < LIVE_SHARE * nominalV) {
          unwanted.add(user);
        }
      }
    }
  }

  /** Loads that the state wants and that work in the sound harness, in the order of the network. */
  public List<Edge.OfElement> working() {
    return List.copyOf(wanted);
  }

  /** Switched loads that the state does not want and that are dead in the sound harness. */
  public List<Edge.OfElement> resting() {
    return List.copyOf(unwanted);
  }

  /**
   * What differs from the sound harness.
   *
   * @param across volts of every branch
   */
  Effect.InState of(IntToDoubleFunction across) {
    List<Edge.OfElement> lost = new ArrayList<>();
    List<Edge.OfElement> dim = new ArrayList<>();
    List<Edge.OfElement> live = new ArrayList<>();
    for (Edge.OfElement load : wanted) {
      double volts = volts(across, load);
      if (volts < NO_VOLTS) {
        lost.add(load);
      } else if (volts < least(load)) {
        dim.add(load);
      }
    }
    for (Edge.OfElement load : unwanted) {
      if (volts(across, load) >= LIVE_SHARE * nominalV) {
        live.add(load);
      }
    }
    return new Effect.InState(state.state(), lost, dim, live);
  }

  /** Nothing that differs. */
  Effect.InState none() {
    return new Effect.InState(state.state(), List.of(), List.of(), List.of());
  }

  /** Whether the symptoms stay the same when all volts are wrong by so much. */
  boolean certain(IntToDoubleFunction across, double within) {
    for (Edge.OfElement load : wanted) {
      double volts = volts(across, load);
      if (isNear(volts, NO_VOLTS, within) || isNear(volts, least(load), within)) {
        return false;
      }
    }
    for (Edge.OfElement load : unwanted) {
      if (isNear(volts(across, load), LIVE_SHARE * nominalV, within)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isNear(double volts, double mark, double within) {
    return Math.abs(volts - mark) <= within;
  }

  private double volts(IntToDoubleFunction across, Edge.OfElement load) {
    return Math.abs(across.applyAsDouble(network.number(load)));
  }

  private double least(Edge.OfElement user) {
    Double own = user.element() instanceof Element.Load load ? load.minV() : null;
    return own == null ? HALF * supplies.nominalV(user) : own;
  }
}
