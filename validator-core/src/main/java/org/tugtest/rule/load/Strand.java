package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Subject;
import org.tugtest.heat.Ampacity;
import org.tugtest.model.Element;
import org.tugtest.model.Terminal;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.table.Cited;

/**
 * One of several ways side by side: what it has in ohms, of which its worst contact, and what it
 * may carry.
 *
 * @param edges in a row
 * @param ohms of all of them
 * @param contact the one with the greatest contact resistance; null when none has any
 * @param contactOhms of that
 * @param basis of the weakest resistance
 * @param ratings what its parts may carry, each where it is known
 */
record Strand(
    List<Edge> edges,
    double ohms,
    @Nullable Edge contact,
    double contactOhms,
    Basis basis,
    List<Rating> ratings) {
  private static final double MILLI = 1e-3;

  /** What a part may carry for long, in amperes. */
  record Rating(Subject subject, String text, double amps, Basis basis) {}

  Strand {
    edges = List.copyOf(edges);
    ratings = List.copyOf(ratings);
  }

  /** A way as it stands in a state. */
  static Strand of(Facts facts, OperatingPoint state, List<Edge> edges) {
    double ohms = 0;
    double most = 0;
    Edge worst = null;
    Basis basis = Basis.GIVEN;
    List<Rating> ratings = new ArrayList<>();
    for (Edge edge : edges) {
      ohms += state.resistance(edge).ohms();
      basis = basis.weaker(state.resistance(edge).basis());
      double here = contactOhms(facts, state, edge);
      if (here > most) {
        most = here;
        worst = edge;
      }
      addRatings(facts, edge, ratings);
    }
    return new Strand(edges, ohms, worst, most, basis, ratings);
  }

  /** What of an edge is contact: all of a plugged or moving one, of a wire all but its copper. */
  private static double contactOhms(Facts facts, OperatingPoint state, Edge edge) {
    double whole = state.resistance(edge).ohms();
    if (edge instanceof Edge.OfWire of) {
      Optional<Cited> copper =
          facts.operating().resistances().conductorMilliohm(of.wire(), state.celsius(of.wire()));
      return copper.map(milliohm -> Math.max(0, whole - milliohm.value() * MILLI)).orElse(0.0);
    }
    boolean contact =
        !(edge instanceof Edge.OfElement inside) || inside.element() instanceof Element.Contact;
    return contact ? whole : 0;
  }

  private static void addRatings(Facts facts, Edge edge, List<Rating> ratings) {
    if (edge instanceof Edge.OfWire of) {
      Ampacity stands = facts.ampacity().of(of.wire()).orElse(null);
      if (stands != null) {
        String text = "wire " + edge.text();
        ratings.add(new Rating(edge.subject(), text, stands.amps(), stands.basis()));
      }
    } else if (edge instanceof Edge.OfMating) {
      addTerminal(facts, edge.a(), ratings);
      addTerminal(facts, edge.b(), ratings);
    } else if (edge instanceof Edge.OfElement inside) {
      if (inside.element() instanceof Element.Contact contact && contact.ratingA() != null) {
        String text = "contact " + edge.text();
        ratings.add(new Rating(edge.subject(), text, contact.ratingA(), Basis.GIVEN));
      } else if (inside.element() instanceof Element.Fuse) {
        facts
            .protection()
            .ratings()
            .ofFuse(inside)
            .ifPresent(
                amps ->
                    ratings.add(
                        new Rating(edge.subject(), "fuse " + edge.text(), amps, Basis.GIVEN)));
      }
    }
  }

  private static void addTerminal(Facts facts, Point at, List<Rating> ratings) {
    Terminal terminal = at.kind() == Point.Kind.CAVITY ? facts.fitting().terminal(at).part() : null;
    if (terminal != null && terminal.maxA() != null) {
      ratings.add(new Rating(at.subject(), "terminal " + at.text(), terminal.maxA(), Basis.GIVEN));
    }
  }

  /** Whether the resistance of every part is known. */
  boolean known(OperatingPoint state) {
    return edges.stream().allMatch(edge -> state.resistance(edge).known());
  }

  /** Its ohms when its worst contact has so many times what is reckoned with. */
  double ohmsAt(double times) {
    return ohms + (times - 1) * contactOhms;
  }

  /** What it is called: its wires, else its first part. */
  String text() {
    List<String> wires =
        edges.stream().filter(Edge.OfWire.class::isInstance).map(Edge::text).toList();
    return wires.isEmpty() ? edges.get(0).text() : String.join("-", wires);
  }

  /** The part that a person would look at first: a wire when there is one. */
  Subject subject() {
    return edges.stream()
        .filter(Edge.OfWire.class::isInstance)
        .findFirst()
        .orElse(edges.get(0))
        .subject();
  }
}
