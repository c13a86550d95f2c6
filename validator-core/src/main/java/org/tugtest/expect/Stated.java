package org.tugtest.expect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.model.Expectation;
import org.tugtest.model.Ref;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.text.Place;

/** An expectation with the facts it is judged on. */
record Stated(Facts facts, Expectation expectation) {

  Verdict holds(String message) {
    return verdict(Verdict.Answer.HOLDS, message, List.of());
  }

  /** It is not true; {@code things} are what breaks it. */
  Verdict fails(String message, List<Subject> things) {
    String reason = expectation.reason();
    String why = reason == null || reason.isBlank() ? "" : " (" + reason.strip() + ")";
    return verdict(Verdict.Answer.FAILS, message + why, things);
  }

  Verdict notJudged(String message) {
    return verdict(Verdict.Answer.NOT_JUDGED, message, List.of());
  }

  private Verdict verdict(Verdict.Answer answer, String message, List<Subject> things) {
    List<Place> at = new ArrayList<>();
    at.add(facts.places().of("expectations/" + expectation.id()));
    for (Subject thing : things) {
      Place place = facts.places().of(thing.place());
      if (!at.contains(place)) {
        at.add(place);
      }
    }
    return new Verdict(expectation.id(), answer, message, at);
  }

  /**
   * The points that a reference means: a contact, or the two ends of an element. Empty when it
   * names nothing.
   */
  List<Point> points(@Nullable Ref ref) {
    if (ref == null) {
      return List.of();
    }
    if (ref.member() != null) {
      return element(ref).map(edge -> List.of(edge.a(), edge.b())).orElse(List.of());
    }
    return facts
        .wiring()
        .pointOf(ref)
        .filter(point -> facts.network().index(point) >= 0)
        .map(List::of)
        .orElse(List.of());
  }

  /** The element that a reference names, when it lies between two points. */
  Optional<Edge.OfElement> element(@Nullable Ref ref) {
    if (ref == null || ref.member() == null) {
      return Optional.empty();
    }
    return facts.network().edges().stream()
        .filter(Edge.OfElement.class::isInstance)
        .map(Edge.OfElement.class::cast)
        .filter(edge -> edge.device().equals(ref.owner()) && edge.name().equals(ref.member()))
        .findFirst();
  }

  /** The loads and coils that a reference means: one, or for a device all but its free loads. */
  List<Edge.OfElement> users(Ref ref) {
    return facts.network().edges().stream()
        .filter(Edge.OfElement.class::isInstance)
        .map(Edge.OfElement.class::cast)
        .filter(edge -> edge.device().equals(ref.owner()) && ref.pin() == null)
        .filter(edge -> ref.member() == null ? isUser(edge) : edge.name().equals(ref.member()))
        .toList();
  }

  private static boolean isUser(Edge.OfElement edge) {
    return edge.element() instanceof Element.Load load && load.use() != Element.Load.Use.FREE;
  }

  /** An element, as what a finding points at. */
  static List<Subject> ends(Edge.OfElement edge) {
    return List.of(edge.subject());
  }

  /** The wires on a way; where there are none, all else on it. */
  static List<Subject> things(Path path) {
    List<Subject> wires =
        path.edges().stream()
            .filter(Edge.OfWire.class::isInstance)
            .map(Edge::subject)
            .distinct()
            .toList();
    return wires.isEmpty() ? path.edges().stream().map(Edge::subject).distinct().toList() : wires;
  }
}
