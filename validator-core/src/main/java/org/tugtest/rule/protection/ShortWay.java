package org.tugtest.rule.protection;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.protect.DeadShort;
import org.tugtest.text.Series;

/** A way from plus to minus in the words of the findings. */
final class ShortWay {
  private static final int NAMED = 4;

  private ShortWay() {}

  /** A finding whose first subject is the culprit, with all wires and elements on the way. */
  static Finding.Draft draft(DeadShort found) {
    Subject first = found.culprit().subject();
    Set<Subject> others = new LinkedHashSet<>();
    for (Edge edge : found.way().edges()) {
      if (edge instanceof Edge.OfWire || edge instanceof Edge.OfElement) {
        others.add(edge.subject());
      }
    }
    others.add(found.source().subject());
    others.remove(first);
    Finding.Draft draft = Finding.on(first).detail(found.way().text());
    others.forEach(draft::and);
    return draft;
  }

  /** The contacts on the way that have to be closed: {@code SW.c is closed}. */
  static String switches(DeadShort found) {
    List<String> contacts =
        found.way().edges().stream()
            .filter(
                edge ->
                    edge instanceof Edge.OfElement inside
                        && inside.element() instanceof Element.Contact)
            .filter(edge -> !edge.equals(found.culprit()))
            .map(Edge::text)
            .toList();
    return contacts.isEmpty()
        ? ""
        : Series.and(contacts, NAMED) + (contacts.size() == 1 ? " is closed" : " are closed");
  }

  static boolean isSource(Edge edge) {
    return edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Source;
  }
}
