package org.tugtest.rule.load;

import java.util.Collection;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;

/** The relay coils of a harness. */
final class Coils {
  private Coils() {}

  /** All coils that lie between two points, in the order of the network. */
  static List<Edge> of(Facts facts) {
    return facts.network().edges().stream()
        .filter(edge -> edge instanceof Edge.OfElement in && in.element() instanceof Element.Coil)
        .toList();
  }

  /** The subjects of coils. */
  static List<Subject> subjects(Collection<Edge> coils) {
    return coils.stream().map(Edge::subject).toList();
  }

  /** What rests on the volts at which coils pull and let go: common practice where not given. */
  static Basis basis(Collection<Edge> coils) {
    boolean given =
        coils.stream()
            .allMatch(
                edge ->
                    edge instanceof Edge.OfElement inside
                        && inside.element() instanceof Element.Coil coil
                        && coil.pullInV() != null
                        && coil.dropOutV() != null);
    return given ? Basis.GIVEN : Basis.COMMON_PRACTICE;
  }
}
