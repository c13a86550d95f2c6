package org.tugtest.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Sides;

/** Where a point is fed from and where it returns to, with the fuses on the way. */
final class SupplyLines {
  private final Facts facts;
  private final Sayings sayings;

  SupplyLines(Facts facts, Sayings sayings) {
    this.facts = facts;
    this.sayings = sayings;
  }

  /** What can be said of a point. */
  List<TraceLine> of(Point point) {
    List<TraceLine> lines = new ArrayList<>();
    facts
        .nets()
        .of(point)
        .ifPresent(
            net ->
                lines.add(
                    conclusion(
                        "net "
                            + net.name()
                            + ": "
                            + counted(net.points().size(), "point")
                            + ", "
                            + counted(net.wires().size(), "wire"))));
    if (facts.network().sources().isEmpty()) {
      lines.add(conclusion("feed and return: not known, since no source is given"));
      return lines;
    }
    Sides sides = facts.sides();
    Optional<Path> feed = sides.feed().path(point);
    Optional<Path> back = sides.back().path(point);
    feed.ifPresent(path -> lines.add(conclusion("feed: " + path.text() + fuses(point, path))));
    back.ifPresent(path -> lines.add(conclusion("return: " + path.text())));
    if (feed.isEmpty() && back.isEmpty()) {
      lines.add(conclusion("feed and return: no way to a source that passes no load and no coil"));
    }
    return lines;
  }

  private String fuses(Point point, Path path) {
    List<String> fuses = new ArrayList<>();
    for (Edge edge : path.edges()) {
      if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Fuse) {
        fuses.add(sayings.element(inside.device(), inside.name(), inside.element()));
      }
    }
    String by = fuses.isEmpty() ? "" : "; through " + String.join(", ", fuses);
    boolean around = facts.sides().unfused().reaches(point);
    if (around) {
      return by + (fuses.isEmpty() ? "; no fuse" : "; there is also a way without a fuse");
    }
    return fuses.isEmpty() ? "; limited by its source" : by;
  }

  private static String counted(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  private static TraceLine conclusion(String text) {
    return new TraceLine(0, text, null);
  }
}
