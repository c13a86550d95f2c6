package org.tugtest.protect;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.tugtest.finding.Basis;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Sides;
import org.tugtest.table.OpeningCurve;

/** A fault in the network of a harness, from its first current on. */
final class RunningFault {
  /** Less than this, in amperes, is nothing. */
  private static final double NOTHING_A = 0.01;

  private final FaultParts parts;
  private final FaultGrid grid;
  private final int from;
  private final Basis basis;
  private final String missing;
  private final LaidFault laid;

  RunningFault(FaultParts parts, FaultGrid grid, int from, int to, Basis basis, String missing) {
    this.parts = parts;
    this.grid = grid;
    this.from = from;
    this.basis = basis;
    this.missing = missing;
    this.laid = new LaidFault(grid, from, to, 0);
  }

  /** What it draws at first. */
  ShortCircuit first() {
    LaidFault.Currents currents = laid.currents();
    return first(currents);
  }

  private ShortCircuit first(LaidFault.Currents currents) {
    List<ShortCircuit.Through> through = carrying(currents).stream().map(Fuse::through).toList();
    return new ShortCircuit(currents.faultA(), through, basis, missing);
  }

  /** A fuse that carries current now: a gate, or else an arm. */
  private record Fuse(Edge.OfElement edge, int gate, int arm, double amps) {
    ShortCircuit.Through through() {
      return new ShortCircuit.Through(edge, amps);
    }
  }

  /** Those on the way of the fault first, then those on rings, then the others. */
  private List<Fuse> carrying(LaidFault.Currents currents) {
    Set<Integer> gates = new LinkedHashSet<>();
    for (int gate = grid.gateAbove(from); gate >= 0; gate = grid.gateAfter(gate)) {
      gates.add(gate);
    }
    List<Fuse> fuses = new ArrayList<>();
    gates.forEach(gate -> addGate(fuses, currents, gate));
    currents
        .armA()
        .forEach(
            (arm, amps) -> {
              Edge.OfElement edge = parts.armEdge(arm);
              if (edge != null && Sides.isFuse(edge) && Math.abs(amps) > NOTHING_A) {
                fuses.add(new Fuse(edge, -1, arm, Math.abs(amps)));
              }
            });
    for (int gate : currents.gateA().keySet()) {
      if (gates.add(gate)) {
        addGate(fuses, currents, gate);
      }
    }
    return fuses;
  }

  private void addGate(List<Fuse> fuses, LaidFault.Currents currents, int gate) {
    double amps = currents.gateA().getOrDefault(gate, 0.0);
    if (amps > NOTHING_A) {
      fuses.add(new Fuse((Edge.OfElement) parts.edge(gate), gate, -1, amps));
    }
  }

  /**
   * Lets the fuses open, each by its curve at what it carries then; heat from before counts for
   * nothing.
   *
   * @param curve of a fuse; empty when it is not known, so that it does not open
   */
  FaultCourse course(Function<Edge.OfElement, Optional<OpeningCurve>> curve) {
    LaidFault.Currents currents = laid.currents();
    ShortCircuit first = first(currents);
    List<FaultCourse.Opening> openings = new ArrayList<>();
    double elapsed = 0;
    while (currents.faultA() > NOTHING_A) {
      Fuse soonest = null;
      double least = Double.POSITIVE_INFINITY;
      for (Fuse fuse : carrying(currents)) {
        double seconds =
            curve.apply(fuse.edge()).map(known -> known.seconds(fuse.amps())).orElse(least);
        if (seconds < least) {
          least = seconds;
          soonest = fuse;
        }
      }
      if (soonest == null) {
        break;
      }
      elapsed += least;
      OpeningCurve its = curve.apply(soonest.edge()).orElseThrow();
      openings.add(
          new FaultCourse.Opening(
              soonest.edge(),
              soonest.amps(),
              elapsed,
              its.extrapolated(soonest.amps()),
              its.basis(soonest.amps())));
      if (soonest.gate() >= 0) {
        laid.openGate(soonest.gate());
      } else {
        laid.openArm(soonest.arm());
      }
      currents = laid.currents();
    }
    boolean dead = currents.faultA() <= NOTHING_A;
    List<ShortCircuit.Through> left =
        dead ? List.of() : carrying(currents).stream().map(Fuse::through).toList();
    return new FaultCourse(
        first, openings, dead ? 0 : currents.faultA(), left, dead ? List.of() : givers(currents));
  }

  private List<Edge.OfElement> givers(LaidFault.Currents currents) {
    List<Edge.OfElement> givers = new ArrayList<>();
    currents
        .armA()
        .forEach(
            (arm, amps) -> {
              Edge.OfElement edge = parts.armEdge(arm);
              if (edge != null && edge.element() instanceof Element.Source && amps > NOTHING_A) {
                givers.add(edge);
              }
            });
    return givers;
  }
}
