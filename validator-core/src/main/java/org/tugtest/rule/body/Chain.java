package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.finding.Subject;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.route.Piece;
import org.tugtest.route.Route;
import org.tugtest.route.Stand;
import org.tugtest.text.NaturalOrder;

/**
 * Wires that are one after another without a branch: through plugged contacts and splices of two
 * ends, from a pin, a branch or a dead end to another.
 *
 * @param links the wires in order, each with the end it is entered by
 * @param joints the mated pairs it goes through, in order
 * @param from where it begins; the pin, cavity or splice
 * @param to where it ends
 */
record Chain(List<Link> links, List<Joint> joints, Point from, Point to) {

  /** A wire of a chain; {@code forward} when it is entered by its {@code from}. */
  record Link(Wire wire, boolean forward) {}

  /** A mated pair of connectors, the first by id first. */
  record Joint(String one, String two) {
    static Joint of(String a, String b) {
      return NaturalOrder.NATURAL.compare(a, b) <= 0 ? new Joint(a, b) : new Joint(b, a);
    }
  }

  Chain {
    links = List.copyOf(links);
    joints = List.copyOf(joints);
  }

  /** The ids of its wires, in order. */
  List<String> wires() {
    return links.stream().map(link -> link.wire().id()).toList();
  }

  Subject subject() {
    return Subject.wire(links.get(0).wire().id());
  }

  /** The looms of its wires; nothing for loose ones. */
  Set<String> looms() {
    Set<String> looms = new TreeSet<>(NaturalOrder.NATURAL);
    for (Link link : links) {
      String loom = link.wire().loom();
      if (loom != null) {
        looms.add(loom);
      }
    }
    return looms;
  }

  /** The chain seen from its other end. */
  Chain turned() {
    List<Link> back = new ArrayList<>();
    for (Link link : links) {
      back.add(new Link(link.wire(), !link.forward()));
    }
    Collections.reverse(back);
    List<Joint> other = new ArrayList<>(joints);
    Collections.reverse(other);
    return new Chain(back, other, /* from= */ to, /* to= */ from);
  }

  /** A chain with the routes of all its wires. */
  record Run(Chain chain, List<Piece> pieces, Stand from, Stand to) {
    static Run of(Chain chain, List<Route> routes) {
      List<Piece> pieces = new ArrayList<>();
      for (int i = 0; i < routes.size(); i++) {
        List<Piece> its = new ArrayList<>(routes.get(i).pieces());
        if (!chain.links().get(i).forward()) {
          Collections.reverse(its);
          its.replaceAll(
              piece ->
                  new Piece(
                      piece.segment(), /* fromMm= */ piece.toMm(), /* toMm= */ piece.fromMm()));
        }
        pieces.addAll(its);
      }
      Link first = chain.links().get(0);
      Link last = chain.links().get(routes.size() - 1);
      Route start = routes.get(0);
      Route end = routes.get(routes.size() - 1);
      return new Run(
          chain,
          List.copyOf(pieces),
          first.forward() ? start.from() : start.to(),
          last.forward() ? end.to() : end.from());
    }

    double mm() {
      return pieces.stream().mapToDouble(Piece::lengthMm).sum();
    }
  }
}
