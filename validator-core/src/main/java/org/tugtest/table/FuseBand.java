package org.tugtest.table;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.finding.Basis;
import org.tugtest.model.FusePart;

/**
 * The band of times in which a fuse opens.
 *
 * @param ratingA its rating in amperes
 * @param least it opens no earlier
 * @param greatest it opens no later
 */
public record FuseBand(double ratingA, OpeningCurve least, OpeningCurve greatest) {
  private static final String OWN = "times given with the part";

  /** The band that a part's own times give. */
  public static FuseBand of(double ratingA, List<FusePart.Time> times) {
    List<OpeningCurve.Point> least = new ArrayList<>();
    List<OpeningCurve.Point> greatest = new ArrayList<>();
    for (FusePart.Time time : times) {
      double amps = ratingA * time.multiple();
      if (time.leastS() != null) {
        least.add(new OpeningCurve.Point(amps, time.leastS(), OWN, Basis.GIVEN));
      }
      if (time.greatestS() != null) {
        greatest.add(new OpeningCurve.Point(amps, time.greatestS(), OWN, Basis.GIVEN));
      }
    }
    return new FuseBand(ratingA, OpeningCurve.least(least), OpeningCurve.greatest(greatest));
  }

  /** The least current in amperes at which it is sure to open; infinite when none is known. */
  public double surelyOpensA() {
    return greatest.firstAmps();
  }
}
