package org.tugtest.protect;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Element;
import org.tugtest.model.FusePart;
import org.tugtest.model.Harness;
import org.tugtest.network.Edge;

/** What the fuses of a harness are rated at: the fitted part's rating, else the place's own. */
public final class Ratings {
  private final Harness harness;

  /** The ratings in this harness. */
  public Ratings(Harness harness) {
    this.harness = harness;
  }

  /** The fuse part that is fitted in a place; empty when none is, or it is not known. */
  public Optional<FusePart> part(Edge.OfElement fuse) {
    String id = harness.fitted().get(fuse.text());
    return Optional.ofNullable(id == null ? null : harness.parts().fuses().get(id));
  }

  /** The rating in amperes; empty when it is not known. */
  public Optional<Double> ofFuse(Edge.OfElement fuse) {
    @Nullable Double own = fuse.element() instanceof Element.Fuse place ? place.ratingA() : null;
    @Nullable Double fitted = part(fuse).map(FusePart::ratingA).orElse(null);
    return Optional.ofNullable(fitted == null ? own : fitted);
  }

  /** The style of a fuse, as written; empty when none is. */
  public Optional<String> style(Edge.OfElement fuse) {
    String own = fuse.element() instanceof Element.Fuse place ? place.style() : null;
    return part(fuse).map(FusePart::style).or(() -> Optional.ofNullable(own));
  }

  /** The current that a self-limiting source bounds itself to; infinite for any other. */
  static double ofSource(Element.Source source) {
    Double most = source.maxA();
    return source.selfLimiting() && most != null ? most : Double.POSITIVE_INFINITY;
  }
}
