package org.tugtest.route;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Wire;

/**
 * How a wire runs and how long it is.
 *
 * @param from where it starts
 * @param to where it ends
 * @param nodes the nodes it passes, in order
 * @param pieces what it covers of each segment, in order
 * @param lay what its twist adds; null when it is in no twisted group or shares no piece with it
 * @param allowances what its ends need
 * @param equalWay segments of another way of the same length, of which this one was chosen by the
 *     ids of its segments; empty when there is none
 * @param stepMm step to which cut lengths are rounded up
 * @param restsOn what its length rests on that is not given, and what to give, one line each
 */
public record Route(
    String wire,
    Stand from,
    Stand to,
    List<String> nodes,
    List<Piece> pieces,
    @Nullable Lay lay,
    List<Allowance> allowances,
    List<String> equalWay,
    double stepMm,
    List<String> restsOn) {

  /**
   * What twisting adds to a wire on the pieces that it shares with its group.
   *
   * @param sharedMm length of those pieces
   * @param factor wire length by axial length, 1 or more
   */
  public record Lay(String group, double sharedMm, double factor, Basis basis) {
    /** What is added, in mm. */
    public double addedMm() {
      return sharedMm * (factor - 1);
    }
  }

  public Route {
    nodes = List.copyOf(nodes);
    pieces = List.copyOf(pieces);
    allowances = List.copyOf(allowances);
    equalWay = List.copyOf(equalWay);
    restsOn = List.copyOf(restsOn);
  }

  /** Its way along the segments, in mm. */
  public double segmentsMm() {
    return pieces.stream().mapToDouble(Piece::lengthMm).sum();
  }

  /** What its ends need of one kind, in mm. */
  public double allowanceMm(Allowance.Kind kind) {
    return allowances.stream().filter(one -> one.kind() == kind).mapToDouble(Allowance::mm).sum();
  }

  /** The length it needs: segments, lay and allowances, in mm. */
  public double routedMm() {
    double mm = segmentsMm() + (lay == null ? 0 : lay.addedMm());
    return mm + allowances.stream().mapToDouble(Allowance::mm).sum();
  }

  /** What it is cut to: the length it needs, rounded up to the step, in mm. */
  public double cutMm() {
    double steps = routedMm() / stepMm;
    double whole = Math.rint(steps);
    return stepMm
        * (Math.abs(steps - whole) < 1e-9 * Math.max(1, whole) ? whole : Math.ceil(steps));
  }

  /**
   * What a wire is planned to be, in mm: the length it needs when it is laid in place, else what it
   * is cut to.
   */
  public double plannedMm(Wire wire) {
    return wire.laidInPlace() ? routedMm() : cutMm();
  }

  /** What its length rests on: the weakest of its parts. */
  public Basis basis() {
    Basis basis = lay == null ? Basis.GIVEN : lay.basis();
    for (Allowance allowance : allowances) {
      if (allowance.mm() > 0) {
        basis = basis.weaker(allowance.basis());
      }
    }
    return basis;
  }
}
