package org.tugtest.rule.written;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.text.NaturalOrder;

/**
 * Which contacts can be closed together: all of them, and, where two contacts of one device can
 * never be, each position of that switch or relay by itself with everything else closed.
 */
final class ChangeOvers {
  private static final int MOST = 200;
  private static final String PULLED = "pulled";
  private static final String RELEASED = "released";

  private ChangeOvers() {}

  /** The sets of contacts that are tried, each as a test of one contact. */
  static List<Predicate<Edge.OfElement>> closings(Network network) {
    Map<String, List<Edge.OfElement>> moved = new LinkedHashMap<>();
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Contact contact) {
        String mover = inside.device() + (contact.coil() == null ? "" : "." + contact.coil());
        moved.computeIfAbsent(mover, none -> new ArrayList<>()).add(inside);
      }
    }
    List<Predicate<Edge.OfElement>> closings = new ArrayList<>();
    closings.add(contact -> true);
    for (List<Edge.OfElement> together : moved.values()) {
      if (isChangeOver(together)) {
        for (String position : positions(together)) {
          Set<Edge.OfElement> open = Collections.newSetFromMap(new IdentityHashMap<>());
          together.stream()
              .filter(contact -> !closedIn(contact).contains(position))
              .forEach(open::add);
          closings.add(contact -> !open.contains(contact));
        }
      }
    }
    return closings.subList(0, Math.min(MOST, closings.size()));
  }

  private static boolean isChangeOver(List<Edge.OfElement> contacts) {
    for (Edge.OfElement one : contacts) {
      for (Edge.OfElement other : contacts) {
        if (Collections.disjoint(closedIn(one), closedIn(other))) {
          return true;
        }
      }
    }
    return false;
  }

  private static Set<String> positions(List<Edge.OfElement> contacts) {
    Set<String> positions = new TreeSet<>(NaturalOrder.NATURAL);
    contacts.forEach(contact -> positions.addAll(closedIn(contact)));
    return positions;
  }

  /** The positions in which a contact is closed. */
  private static List<String> closedIn(Edge.OfElement inside) {
    Element.Contact contact = (Element.Contact) inside.element();
    if (contact.coil() == null) {
      return contact.closedIn();
    }
    return List.of(contact.restClosed() ? RELEASED : PULLED);
  }
}
