package org.tugtest.protect;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.tugtest.finding.Basis;
import org.tugtest.model.Element;
import org.tugtest.model.FusePart;
import org.tugtest.network.Edge;
import org.tugtest.table.Cited;
import org.tugtest.table.FuseBand;
import org.tugtest.table.FuseBreakingTable;
import org.tugtest.table.FuseTimeTable;
import org.tugtest.text.Quoted;

/** When the fuses of a harness open, and what they can break. */
public final class FuseBands {
  private final Ratings ratings;
  private final Map<String, Optional<FuseBand>> known = new ConcurrentHashMap<>();

  /** Bands made before: most fuses are of a few parts. */
  private final Map<Made, Optional<FuseBand>> made = new ConcurrentHashMap<>();

  /**
   * What a band is made of.
   *
   * @param of the times of a part, or a style
   */
  private record Made(Object of, double ratingA) {}

  /** The bands of fuses of these ratings. */
  public FuseBands(Ratings ratings) {
    this.ratings = ratings;
  }

  /**
   * The band of a fuse: what its part gives, else the table of its style. Empty without a rating or
   * a style of the table, and for a trip of a control unit whose times are not given.
   */
  public Optional<FuseBand> of(Edge.OfElement fuse) {
    return known.computeIfAbsent(fuse.text(), text -> find(fuse));
  }

  private Optional<FuseBand> find(Edge.OfElement fuse) {
    Optional<Double> rating = ratings.ofFuse(fuse).filter(amps -> amps > 0);
    if (rating.isEmpty()) {
      return Optional.empty();
    }
    List<FusePart.Time> times = ratings.part(fuse).map(FusePart::times).orElse(List.of());
    if (!times.isEmpty()) {
      return made.computeIfAbsent(
          new Made(times, rating.get()), none -> Optional.of(FuseBand.of(rating.get(), times)));
    }
    return isTrip(fuse)
        ? Optional.empty()
        : ratings
            .style(fuse)
            .flatMap(
                style ->
                    made.computeIfAbsent(
                        new Made(style, rating.get()),
                        none -> FuseTimeTable.of(style, rating.get())));
  }

  /**
   * Whether a fuse or trip of which no times are known may open before another: it is smaller, or
   * its rating is not known either.
   */
  public boolean mayOpenBefore(Edge.OfElement unknown, Edge.OfElement other) {
    boolean timed = of(unknown).filter(band -> !band.greatest().isEmpty()).isPresent();
    double rating = ratings.ofFuse(unknown).orElse(0.0);
    return !timed && rating < ratings.ofFuse(other).orElse(Double.POSITIVE_INFINITY);
  }

  /** Whether it is the trip of a control unit, not a fuse. */
  public static boolean isTrip(Edge.OfElement fuse) {
    return fuse.element() instanceof Element.Fuse place && place.electronic();
  }

  /** The greatest current it can break, in amperes; empty when neither part nor table says. */
  public Optional<Cited> breakingA(Edge.OfElement fuse) {
    Double given = ratings.part(fuse).map(FusePart::breakingCapacityA).orElse(null);
    return given != null
        ? Optional.of(new Cited(given, "given with the part", Basis.GIVEN))
        : ratings.style(fuse).flatMap(FuseBreakingTable::breakingCapacityA);
  }

  /** As people say it: {@code FB.f3 (20 A)}. */
  public String text(Edge.OfElement fuse) {
    return ratings
        .ofFuse(fuse)
        .map(amps -> fuse.text() + " (" + Quoted.number(amps) + " A)")
        .orElse(fuse.text());
  }
}
