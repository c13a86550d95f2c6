package org.tugtest.expect;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tugtest.model.Element;
import org.tugtest.network.ClosedTogether;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;

/**
 * {@code fused-by}: a source's plus reaches the place through the named fuse, and by no way past
 * it. Contacts count as closed, loads and coils are not crossed.
 */
final class FusedBy {
  private FusedBy() {}

  static Verdict judge(Stated stated) {
    Edge.OfElement fuse = stated.element(stated.expectation().fuse()).orElse(null);
    List<Point> ends = stated.points(stated.expectation().at());
    if (fuse == null || !(fuse.element() instanceof Element.Fuse)) {
      return stated.notJudged("the fuse it names is no fuse between two points of this harness");
    }
    if (ends.isEmpty()) {
      return stated.notJudged("the place it names is no contact or element of this harness");
    }
    Network network = stated.facts().network();
    ClosedTogether together = stated.facts().together();
    if (network.sources().isEmpty()) {
      return stated.notJudged("the harness gives no source");
    }
    Set<Integer> parts = new HashSet<>();
    ends.forEach(end -> parts.add(network.partOf(network.index(end))));
    List<Point> plus =
        network.sources().stream()
            .map(Edge::a)
            .filter(point -> parts.contains(network.partOf(network.index(point))))
            .toList();
    String place = String.valueOf(stated.expectation().at());
    Reach past =
        Reach.from(
            network, together, plus, (edge, from) -> !edge.equals(fuse) && Sides.feeds(edge, from));
    for (Point end : ends) {
      Path path = past.path(end).orElse(null);
      if (path != null) {
        return stated.fails(
            place + " is also fed past " + fuse.text() + ": " + path.text(), Stated.things(path));
      }
    }
    Reach all = stated.facts().sides().feed();
    return ends.stream().anyMatch(all::reaches)
        ? stated.holds(place + " is fed through " + fuse.text() + " alone")
        : stated
            .fails(
                "nothing feeds "
                    + place
                    + (fuse.fitted() ? "" : ": no fuse is fitted in " + fuse.text()),
                List.of(fuse.subject()))
            .lacks(unfed(network, together, ends, all));
  }

  /** What ought to feed the place would do so from the feed side on, against the current. */
  private static Lacking unfed(
      Network network, ClosedTogether together, List<Point> ends, Reach fed) {
    Reach before =
        Reach.from(
            network,
            together,
            ends,
            (edge, from) -> Sides.feeds(edge, edge.across(from)) && !fed.reaches(from));
    return new Lacking.Joint(before::reaches, fed::reaches);
  }
}
