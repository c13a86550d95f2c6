package org.tugtest.rule.protection;

import java.util.List;
import java.util.Optional;
import org.tugtest.finding.Basis;
import org.tugtest.network.Edge;
import org.tugtest.protect.FaultCourse;
import org.tugtest.protect.Faults;
import org.tugtest.protect.ShortCircuit;
import org.tugtest.table.FuseBand;

/**
 * A short behind a fuse and how the fuse takes it.
 *
 * @param fuse that is to be blamed: the one that stays, or opens last; else the first that opens
 * @param amps through it
 * @param surelyA the least current at which it is sure to open; 0 when it opens
 * @param seconds until the short is dead; infinite when it never is
 * @param basis the weakest figure
 * @param extrapolated whether its time is
 * @param missing what is not known on the way; empty when all is
 */
record ClearingCase(
    Faults.Spot spot,
    Edge.OfElement fuse,
    double amps,
    double surelyA,
    double seconds,
    Basis basis,
    boolean extrapolated,
    String missing) {
  private static final double ALL = 0.99;

  /**
   * The case of a short; empty when no fuse is before it, or what stays has none. A smaller fuse or
   * trip that carries all of it and of which no times are known is the one that it rests with.
   */
  static Optional<ClearingCase> of(Faults faults, Faults.Spot spot, FaultCourse course) {
    Optional<ClearingCase> found = byKnown(faults, spot, course);
    ShortCircuit first = course.first();
    return found.flatMap(
        one ->
            first.fuses().stream()
                .filter(through -> through.amps() >= ALL * first.amps())
                .filter(through -> faults.bands().mayOpenBefore(through.fuse(), one.fuse()))
                .findFirst()
                .map(through -> staying(faults, spot, course, through))
                .or(() -> found));
  }

  private static Optional<ClearingCase> byKnown(
      Faults faults, Faults.Spot spot, FaultCourse course) {
    ShortCircuit first = course.first();
    List<ShortCircuit.Through> staying = course.lasting();
    if (!course.dead()) {
      return staying.isEmpty()
          ? Optional.empty()
          : Optional.of(staying(faults, spot, course, staying.get(0)));
    }
    if (course.openings().isEmpty()) {
      return Optional.empty();
    }
    FaultCourse.Opening last = course.openings().get(course.openings().size() - 1);
    return Optional.of(
        new ClearingCase(
            spot,
            last.fuse(),
            last.amps(),
            0,
            course.seconds(),
            course.basis(),
            course.extrapolated(),
            first.missing()));
  }

  private static ClearingCase staying(
      Faults faults, Faults.Spot spot, FaultCourse course, ShortCircuit.Through stays) {
    FuseBand band = faults.bands().of(stays.fuse()).orElse(null);
    boolean unknown = band == null || band.greatest().isEmpty();
    double surely = band == null ? Double.POSITIVE_INFINITY : band.surelyOpensA();
    Basis basis =
        band == null || unknown
            ? course.basis()
            : course.basis().weaker(band.greatest().points().get(0).basis());
    return new ClearingCase(
        spot,
        stays.fuse(),
        stays.amps(),
        surely,
        Double.POSITIVE_INFINITY,
        basis,
        false,
        course.first().missing());
  }

  /** Whether the fuse's times are not known. */
  boolean unknown() {
    return Double.isInfinite(surelyA);
  }

  /** Whether it is not sure to open. */
  boolean never() {
    return Double.isInfinite(seconds);
  }
}
