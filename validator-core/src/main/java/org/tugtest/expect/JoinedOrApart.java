package org.tugtest.expect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.model.Ref;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.text.Series;

/** {@code joined}: all points are one net. {@code apart}: no two of them are. */
final class JoinedOrApart {
  private JoinedOrApart() {}

  static Verdict joined(Stated stated) {
    Map<String, Point> points = new LinkedHashMap<>();
    String missing = gather(stated, points);
    if (!missing.isEmpty()) {
      return stated.notJudged(missing);
    }
    Map.Entry<String, Point> first = points.entrySet().iterator().next();
    Reach reach = reach(stated, first.getValue());
    List<String> away = new ArrayList<>();
    List<Subject> things = new ArrayList<>();
    points.forEach(
        (text, point) -> {
          if (!reach.reaches(point)) {
            away.add(text);
            things.add(point.subject());
          }
        });
    if (away.isEmpty()) {
      return stated.holds(Series.and(List.copyOf(points.keySet())) + " are one net");
    }
    Reach others = reach(stated, points.get(away.get(0)));
    return stated
        .fails(
            Series.and(away)
                + (away.size() == 1 ? " is" : " are")
                + " not joined to "
                + first.getKey(),
            things)
        .lacks(new Lacking.Joint(reach::reaches, others::reaches));
  }

  static Verdict apart(Stated stated) {
    Map<String, Point> points = new LinkedHashMap<>();
    String missing = gather(stated, points);
    if (!missing.isEmpty()) {
      return stated.notJudged(missing);
    }
    List<Map.Entry<String, Point>> all = List.copyOf(points.entrySet());
    for (int i = 0; i < all.size(); i++) {
      Reach reach = reach(stated, all.get(i).getValue());
      for (int j = i + 1; j < all.size(); j++) {
        Path path = reach.path(all.get(j).getValue()).orElse(null);
        if (path != null) {
          return stated.fails(
              all.get(i).getKey() + " and " + all.get(j).getKey() + " are joined: " + path.text(),
              Stated.things(path));
        }
      }
    }
    return stated.holds("no two of " + Series.and(List.copyOf(points.keySet())) + " are joined");
  }

  /** Finds the points; says what is missing, or nothing. */
  private static String gather(Stated stated, Map<String, Point> points) {
    String in = stated.expectation().in();
    if (in != null && stated.facts().operating().in(in).isEmpty()) {
      return "there is no state " + in;
    }
    for (Ref ref : stated.expectation().points()) {
      List<Point> found = stated.points(ref);
      if (found.size() != 1) {
        return ref.text() + " names no contact of this harness";
      }
      points.put(ref.text(), found.get(0));
    }
    return points.size() < 2 ? "it names fewer than two points" : "";
  }

  /** By wires, plugs and splices; in a state also through what lets current pass in it. */
  private static Reach reach(Stated stated, Point from) {
    String in = stated.expectation().in();
    OperatingPoint state = in == null ? null : stated.facts().operating().in(in).orElse(null);
    return Reach.from(
        stated.facts().network(),
        List.of(from),
        (edge, at) ->
            !(edge instanceof Edge.OfElement inside)
                || (state != null && isMetal(inside.element()) && state.conducts(edge)));
  }

  private static boolean isMetal(Element element) {
    return element instanceof Element.Contact
        || element instanceof Element.Link
        || element instanceof Element.Fuse;
  }
}
