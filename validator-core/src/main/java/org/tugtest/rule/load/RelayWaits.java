package org.tugtest.rule.load;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;

/**
 * Loads that wait for a relay: its contact stands open before them, and its coil, which the state
 * wants as well, has a finding of its own. That one is the cause.
 */
final class RelayWaits {
  private final Facts facts;
  private final Map<String, Edge.OfElement> coils = new HashMap<>();

  RelayWaits(Facts facts) {
    this.facts = facts;
    for (Edge edge : Coils.of(facts)) {
      if (edge instanceof Edge.OfElement coil) {
        coils.put(coil.text(), coil);
      }
    }
  }

  /**
   * The identity of the finding on the coil that a dead end waits for; empty when it waits for
   * none, or the coil waits for what is dead with it. A coil that holds itself waits for the state
   * in which it should have been pulled.
   *
   * @param user the load or coil with the dead end
   * @param thePlus whether it lacks a source's plus
   */
  Optional<String> cause(Edge.OfElement user, Live live, Point end, boolean thePlus) {
    Point group = live.group(end);
    for (Edge.OfElement open : live.blockers(end, thePlus)) {
      Edge.OfElement coil = coilOf(open);
      if (user.equals(coil)) {
        Optional<String> elsewhere = elsewhere(coil);
        if (thePlus && elsewhere.isPresent()) {
          return elsewhere;
        }
      } else if (coil != null && !waitsFor(live, coil, group, new HashSet<>())) {
        String cause = finding(live, coil);
        if (cause != null) {
          return Optional.of(cause);
        }
      }
    }
    return Optional.empty();
  }

  /** The finding that a coil has in the first state in which it is fed and has one. */
  private Optional<String> elsewhere(Edge.OfElement coil) {
    return Live.all(facts).stream()
        .filter(live -> live.fed(coil))
        .map(live -> finding(live, coil))
        .filter(Objects::nonNull)
        .map(Objects::requireNonNull)
        .findFirst();
  }

  private static String identity(String rule, Edge.OfElement coil) {
    return rule + "(" + coil.subject().place() + ")";
  }

  private Edge.@Nullable OfElement coilOf(Edge.OfElement open) {
    return open.element() instanceof Element.Contact contact && contact.coil() != null
        ? coils.get(open.device() + "." + contact.coil())
        : null;
  }

  /** The finding that a coil has in a state; null without one. */
  private @Nullable String finding(Live live, Edge.OfElement coil) {
    if (!live.state().wanted(coil)) {
      return null;
    }
    Point end = deadEnd(live, coil);
    if (end == null) {
      return CoilsUnpulled.staysReleased(facts, live, coil)
          ? identity(VoltsUnderLeast.ID, coil)
          : null;
    }
    String rule = live.fed(coil) ? LoadWithoutReturn.ID : LoadUnfed.ID;
    return live.joins(end, facts.wiring().implied()) ? null : identity(rule, coil);
  }

  private static @Nullable Point deadEnd(Live live, Edge.OfElement coil) {
    if (!live.fed(coil)) {
      return live.deadEnd(coil);
    }
    return live.returns(coil) ? null : live.looseEnd(coil);
  }

  /** Whether a coil is dead with a group, or waits for a relay whose coil is. */
  private boolean waitsFor(Live live, Edge.OfElement coil, Point group, Set<Point> seen) {
    Point end = deadEnd(live, coil);
    if (end == null) {
      return false;
    }
    Point its = live.group(end);
    if (its.equals(group)) {
      return true;
    }
    if (!seen.add(its)) {
      return false;
    }
    for (Edge.OfElement open : live.openBefore(end)) {
      Edge.OfElement next = coilOf(open);
      if (next != null && live.state().wanted(next) && waitsFor(live, next, group, seen)) {
        return true;
      }
    }
    return false;
  }
}
