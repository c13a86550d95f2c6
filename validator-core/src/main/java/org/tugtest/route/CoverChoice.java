package org.tugtest.route;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Covering;
import org.tugtest.model.Need;
import org.tugtest.text.NaturalOrder;

/** Proposes coverings from those that the files define. */
public final class CoverChoice {
  /** At least this share of the inner circle is filled, so that the bundle does not slide about. */
  private static final double LEAST_FILL = 0.25;

  private final Map<String, Covering> parts;

  /** A choice among these parts. */
  public CoverChoice(Map<String, Covering> parts) {
    this.parts = parts;
  }

  /**
   * The closest covering that goes over a bundle: one of the same kind if there is one, else of any
   * kind.
   *
   * @param like kind to prefer; null: any
   * @param needs what it must protect from
   * @param bundleMm expected diameter of the bundle
   * @param fill greatest share of the inner circle that the bundle may fill, over 0 to 1
   */
  public Optional<Covering> over(
      Covering.@Nullable Kind like, Set<Need> needs, double bundleMm, double fill) {
    Predicate<Covering> fits =
        part -> fits(part, bundleMm, fill) && part.protects().containsAll(needs);
    Optional<Covering> same = closest(part -> part.kind() == like && fits.test(part));
    return same.isPresent() ? same : closest(fits);
  }

  private Optional<Covering> closest(Predicate<Covering> fits) {
    return parts.values().stream()
        .filter(part -> CoverLayers.most(part) != null)
        .filter(fits)
        .min(
            Comparator.<Covering>comparingDouble(CoverChoice::greatest)
                .thenComparing(Covering::id, NaturalOrder.NATURAL));
  }

  private static double greatest(Covering part) {
    Double most = CoverLayers.most(part);
    return most == null ? Double.POSITIVE_INFINITY : most;
  }

  /** A shield is closed round the bundle, so it is never too wide. */
  private static boolean fits(Covering part, double bundleMm, double fill) {
    double most = greatest(part);
    Double least = part.innerMinMm();
    boolean wraps = part.kind() == Covering.Kind.HEAT_SHIELD;
    return bundleMm <= most * Math.sqrt(fill)
        && (wraps
            || (least == null ? bundleMm >= most * Math.sqrt(LEAST_FILL) : bundleMm >= least));
  }
}
