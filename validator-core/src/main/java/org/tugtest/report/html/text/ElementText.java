package org.tugtest.report.html.text;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.protect.Ratings;
import org.tugtest.text.Quoted;

/** What pages print of what is inside devices. */
public final class ElementText {
  private final Ratings ratings;

  /** What is printed with these ratings of fuses. */
  public ElementText(Ratings ratings) {
    this.ratings = ratings;
  }

  /** {@code fuse 10 A}, {@code contact of k1}, {@code load 8 A}: what it is, with its figure. */
  public String of(Edge.OfElement edge) {
    Element element = edge.element();
    if (element instanceof Element.Fuse fuse) {
      return fuse(edge, fuse);
    }
    if (element instanceof Element.Source source) {
      return (source.generator() ? "generator" : "source") + given(source.volts(), "V");
    }
    if (element instanceof Element.Load load) {
      return "load" + draws(load);
    }
    if (element instanceof Element.Contact contact) {
      return (contact.isolator() ? "isolator contact" : "contact")
          + (contact.coil() == null ? "" : " of " + contact.coil());
    }
    if (element instanceof Element.Coil coil) {
      return "coil" + given(coil.ohms(), "Ω");
    }
    return element.kind();
  }

  private String fuse(Edge.OfElement edge, Element.Fuse fuse) {
    if (!edge.fitted()) {
      return "empty fuse way";
    }
    Optional<Double> rating = ratings.ofFuse(edge);
    String noun = fuse.electronic() ? "electronic fuse" : "fuse";
    return noun + rating.map(amps -> " " + Quoted.number(amps) + " A").orElse(", rating not known");
  }

  private static String draws(Element.Load load) {
    if (load.watts() != null) {
      return given(load.watts(), "W")
          + (load.atVolts() == null ? "" : " at")
          + given(load.atVolts(), "V");
    }
    return given(load.amps(), "A") + given(load.ohms(), "Ω");
  }

  private static String given(@Nullable Double value, String unit) {
    return value == null ? "" : " " + Quoted.number(value) + " " + unit;
  }
}
