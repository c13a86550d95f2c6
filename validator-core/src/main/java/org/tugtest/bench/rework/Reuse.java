package org.tugtest.bench.rework;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.model.Housing;
import org.tugtest.model.Terminal;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;

/** Whether a terminal with its wires can go from one seat into another as it is. */
final class Reuse {
  private final Facts now;
  private final Facts target;
  private final Bodies bodies;

  Reuse(Facts now, Facts target, Bodies bodies) {
    this.now = now;
    this.target = target;
    this.bodies = bodies;
  }

  /**
   * Whether {@code is}, taken out whole, can be put in as {@code wanted}: with the same wires, a
   * terminal that the new seat takes, and the right seal, which cannot pass a terminal.
   */
  boolean asItIs(Unit is, Unit wanted) {
    Seat from = is.seat();
    Seat to = wanted.seat();
    if (!is.ends().equals(wanted.ends()) || from.kind() != to.kind()) {
      return false;
    }
    if (from.kind() == Point.Kind.SPLICE) {
      return from.equals(to);
    }
    if (!sealsAgree(is, wanted)) {
      return false;
    }
    if (from.kind() == Point.Kind.PIN) {
      return is.terminal() == null
          || wanted.terminal() == null
          || is.terminal().equals(wanted.terminal());
    }
    return familiesAgree(from, to) && takes(is, to);
  }

  /** A seal that is not there has to go on before the terminal; where none is told, it may be. */
  private boolean sealsAgree(Unit is, Unit wanted) {
    if (wanted.seal() == null || wanted.seal().equals(is.seal())) {
      return true;
    }
    boolean told = bodies.housing(is.seat()).isPresent() && !is.seat().equals(wanted.seat());
    return is.seal() == null && !told;
  }

  private boolean familiesAgree(Seat from, Seat to) {
    Optional<Housing> one = bodies.housing(from);
    Optional<Housing> other = bodies.housing(to);
    if (one.isEmpty() || other.isEmpty() || from.equals(to)) {
      return true;
    }
    String is = one.get().familyOf(from.name());
    String wanted = other.get().familyOf(to.name());
    return is == null
        || wanted == null
        || (is.equals(wanted) && Objects.equals(one.get().side(), other.get().side()));
  }

  private boolean takes(Unit is, Seat to) {
    Terminal terminal =
        is.terminal() == null ? null : now.harness().parts().terminals().get(is.terminal());
    Optional<Point> point = bodies.pointTarget(to);
    if (terminal == null || point.isEmpty()) {
      return true;
    }
    List<String> named = target.fitting().terminal(point.get()).named();
    boolean fits =
        bodies.housing(to).map(h -> Fitting.fitsCavity(terminal, h, to.name())).orElse(true);
    return fits && (named.isEmpty() || named.stream().anyMatch(id -> isLike(terminal, id)));
  }

  /** The same part, or one of another name with the same figures. */
  private boolean isLike(Terminal terminal, String id) {
    Terminal named = target.harness().parts().terminals().get(id);
    return terminal.id().equals(id)
        || (named != null
            && Objects.equals(named.family(), terminal.family())
            && named.side() == terminal.side()
            && Objects.equals(named.areaMinMm2(), terminal.areaMinMm2())
            && Objects.equals(named.areaMaxMm2(), terminal.areaMaxMm2())
            && named.maxWires() == terminal.maxWires());
  }
}
