package org.tugtest.trace;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.model.Ref;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.text.Place;

/**
 * Everything that hangs on a point, branch by branch: along wires, through splices and across
 * plugged contacts and bolted metal, up to the pins of devices and what lies behind them.
 */
final class Branches {
  private static final int MOST_LINES = 500;
  private final Facts facts;
  private final Sayings sayings;
  private final List<TraceLine> lines;
  private final Set<Point> seen = new HashSet<>();
  private int left = MOST_LINES;
  private int more;

  /** Branches that are added to {@code lines}. */
  Branches(Facts facts, Sayings sayings, List<TraceLine> lines) {
    this.facts = facts;
    this.sayings = sayings;
    this.lines = lines;
  }

  /** A line still to be written, and the point that it leads to. */
  private record Twig(int depth, String text, Place at, @Nullable Point to, Object by) {}

  /**
   * Adds all branches of a point.
   *
   * @param depth of the lines that hang on the point itself
   * @param by the id of the wire or element, or the point, that led here and is not gone back
   *     along; the point itself when nothing did
   */
  void add(Point start, int depth, Object by) {
    seen.add(start);
    Deque<Twig> open = new ArrayDeque<>();
    reversed(twigs(start, depth, by)).forEach(open::push);
    while (!open.isEmpty()) {
      Twig twig = open.pop();
      Point to = twig.to();
      boolean again = to != null && !seen.add(to);
      write(new TraceLine(twig.depth(), twig.text() + (again ? " (see above)" : ""), twig.at()));
      if (to != null && !again) {
        reversed(twigs(to, twig.depth() + 1, twig.by())).forEach(open::push);
      }
    }
    if (more > 0) {
      lines.add(
          new TraceLine(depth, "and " + more + (more == 1 ? " more line" : " more lines"), null));
      more = 0;
    }
  }

  private void write(TraceLine line) {
    if (left > 0) {
      left--;
      lines.add(line);
    } else {
      more++;
    }
  }

  private static List<Twig> reversed(List<Twig> twigs) {
    List<Twig> reversed = new ArrayList<>(twigs);
    Collections.reverse(reversed);
    return reversed;
  }

  private List<Twig> twigs(Point at, int depth, Object by) {
    List<Twig> twigs = new ArrayList<>();
    for (WireEnd end : facts.wiring().endsAt(at)) {
      if (!end.wire().id().equals(by)) {
        twigs.add(wire(end, depth));
      }
    }
    for (Edge edge : facts.network().edgesAt(at)) {
      Point across = edge.across(at);
      if (!across.equals(by) && edge instanceof Edge.OfMating) {
        twigs.add(twig(depth, "meets " + across, across.subject().place(), across, at));
      } else if (!across.equals(by) && edge instanceof Edge.OfBolt) {
        twigs.add(twig(depth, "bolted to " + across, across.subject().place(), across, at));
      }
    }
    if (at.kind() == Point.Kind.PIN) {
      inside(at, depth, by, twigs);
    }
    return twigs;
  }

  private Twig wire(WireEnd end, int depth) {
    String said = sayings.wire(end.wire());
    Ref ref = end.other().ref();
    Optional<Point> to = facts.wiring().pointOf(ref);
    String where =
        ref == null
            ? "ends on nothing"
            : "to " + ref.text() + (to.isEmpty() ? ", which is not known" : "");
    return twig(
        depth, said + " " + where, "wires/" + end.wire().id(), to.orElse(null), end.wire().id());
  }

  private void inside(Point pin, int depth, Object by, List<Twig> twigs) {
    sayings
        .elements(pin.owner())
        .forEach(
            (name, element) -> {
              String whole = pin.owner() + "." + name;
              if (element.ends().contains(pin.name()) && !whole.equals(by)) {
                twigs.add(
                    twig(
                        depth,
                        sayings.element(pin.owner(), name, element) + others(pin, element),
                        "devices/" + whole,
                        null,
                        pin));
              }
            });
  }

  private static String others(Point pin, Element element) {
    return element.ends().stream()
        .filter(end -> !end.equals(pin.name()))
        .map(
            end ->
                (element instanceof Element.Signal ? " with " : " to ") + pin.owner() + ":" + end)
        .findFirst()
        .orElse("");
  }

  private Twig twig(int depth, String text, String place, @Nullable Point to, Object by) {
    return new Twig(depth, text, facts.places().of(place), to, by);
  }
}
