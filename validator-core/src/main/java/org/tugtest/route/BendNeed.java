package org.tugtest.route;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Subject;
import org.tugtest.model.Group;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.text.Quoted;

/**
 * The least inside radius at which something may be bent.
 *
 * @param mm the radius
 * @param because what asks for it, in a few words: {@code wire W1 of 2.8 mm, ten times its
 *     diameter}
 * @param subject the wire, cable or segment that asks for it
 */
public record BendNeed(double mm, String because, Subject subject, Basis basis) {
  /** Multiple of the diameter of a wire (AC 43.13-1B 11-96, as restated elsewhere). */
  public static final double OF_WIRE = 10;

  /** Multiple of the diameter of a bundle (a harness maker's guide). */
  public static final double OF_BUNDLE = 2;

  /** Multiple of the diameter of a jacketed cable, at any time (NASA-STD-8739.4 7.3.21). */
  public static final double OF_CABLE = 6;

  /**
   * What the bundles of a segment need: the greatest of what each of their wires and cables asks
   * for, its own least radius or {@code ofWire} times its diameter, and of {@code ofBundle} times
   * the loose diameter with all coverings; empty when nothing lies there.
   */
  public static Optional<BendNeed> of(
      Harness harness,
      List<Bundle> pieces,
      List<String> coverings,
      double ofWire,
      double ofBundle) {
    BendNeed most = null;
    for (Bundle piece : pieces) {
      for (Strand strand : piece.strands()) {
        most = greater(most, of(harness, strand, ofWire));
      }
      if (!piece.strands().isEmpty()) {
        double thick =
            CoverLayers.of(
                    harness.parts().coverings(), coverings, piece.expectedMm(), piece.looseMm())
                .looseMm();
        most =
            greater(
                most,
                new BendNeed(
                    ofBundle * thick,
                    "its bundle of " + mm(thick) + ", " + times(ofBundle) + " that",
                    Subject.of("segments", piece.segment()),
                    Basis.SECONDARY.weaker(piece.basis())));
      }
    }
    return Optional.ofNullable(most);
  }

  /** What cables among the bundles must have at any time; empty when there are none. */
  public static Optional<BendNeed> ofCables(List<Bundle> pieces) {
    BendNeed most = null;
    for (Bundle piece : pieces) {
      for (Strand strand : piece.strands()) {
        if (strand.cable()) {
          most = greater(most, times(strand, OF_CABLE, Basis.SOURCE));
        }
      }
    }
    return Optional.ofNullable(most);
  }

  private static BendNeed of(Harness harness, Strand strand, double multiple) {
    Double own = own(harness, strand);
    return own == null
        ? times(strand, multiple, Basis.SECONDARY)
        : new BendNeed(
            own, strand.text() + ", which gives minBendMm", strand.subject(), Basis.GIVEN);
  }

  private static BendNeed times(Strand strand, double multiple, Basis basis) {
    double outer = strand.outerMm().value();
    return new BendNeed(
        multiple * outer,
        strand.text() + " of " + mm(outer) + ", " + times(multiple) + " that",
        strand.subject(),
        basis.weaker(strand.outerMm().basis()));
  }

  private static @Nullable Double own(Harness harness, Strand strand) {
    if (strand.cable()) {
      Group group = harness.groups().get(strand.id());
      return group == null ? null : group.minBendMm();
    }
    Wire wire = harness.wires().get(strand.id());
    WirePart part =
        wire == null || wire.part() == null ? null : harness.parts().wires().get(wire.part());
    return part == null ? null : part.minBendMm();
  }

  private static BendNeed greater(@Nullable BendNeed one, BendNeed other) {
    return one == null || other.mm() > one.mm() ? other : one;
  }

  private static String mm(double mm) {
    return Quoted.number(Math.round(mm * 10) / 10.0) + " mm";
  }

  private static String times(double multiple) {
    return Quoted.number(multiple) + " times";
  }
}
