package org.tugtest.report.html.loom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.tugtest.report.PrintableText;
import org.tugtest.text.Quoted;

/** Draws a skeleton whose knots have places. */
final class Sketcher {
  private static final double WIDE = 1180;
  private static final double HIGH = 720;
  private static final int RADIUS = 5;
  private static final int LONGEST_LINE = 24;
  private static final int MOST_LINES = 3;
  private static final int MARGIN = 14;
  private static final double CHANGE_AT = 0.42;
  private final Skeleton skeleton;
  private final Places places;
  private final Look look;
  private final Labels room = new Labels();
  private final double scale;
  private final List<Drawing.Line> lines = new ArrayList<>();
  private final List<Drawing.Mark> marks = new ArrayList<>();
  private final List<Drawing.Mark> changes = new ArrayList<>();
  private final List<Drawing.Label> labels = new ArrayList<>();
  private final List<Bow> bows = new ArrayList<>();

  /** An arm as drawn: from one point over the pull of another to a third. */
  private record Bow(double x1, double y1, double pullX, double pullY, double x2, double y2) {
    double x(double t) {
      return (1 - t) * (1 - t) * x1 + 2 * t * (1 - t) * pullX + t * t * x2;
    }

    double y(double t) {
      return (1 - t) * (1 - t) * y1 + 2 * t * (1 - t) * pullY + t * t * y2;
    }
  }

  private Sketcher(Skeleton skeleton, Places places, Look look) {
    this.skeleton = skeleton;
    this.look = look;
    this.places = places;
    double width = span(places.x());
    double height = span(places.y());
    double fits = Math.min(WIDE / Math.max(width, 1e-9), HIGH / Math.max(height, 1e-9));
    this.scale = Math.min(fits, 1e9);
  }

  /** The drawing. */
  static Drawing draw(Skeleton skeleton, Places places, Look look, String says) {
    return new Sketcher(skeleton, places, look).draw(says);
  }

  private static double span(double[] values) {
    double least = java.util.Arrays.stream(values).min().orElse(0);
    return java.util.Arrays.stream(values).max().orElse(0) - least;
  }

  private Drawing draw(String says) {
    arms();
    List<Drawing.Spot> spots = spots();
    splices();
    changes();
    names();
    lengths();
    return framed(spots, says);
  }

  private double x(int knot) {
    return places.x()[knot] * scale;
  }

  private double y(int knot) {
    return places.y()[knot] * scale;
  }

  private void arms() {
    Map<List<Integer>, Integer> between = new HashMap<>();
    for (int i = 0; i < skeleton.arms().size(); i++) {
      Skeleton.Arm arm = skeleton.arms().get(i);
      int nth =
          between.merge(
              List.of(Math.min(arm.a(), arm.b()), Math.max(arm.a(), arm.b())), 1, Integer::sum);
      Bow bow = bow(arm, nth - 1);
      bows.add(bow);
      boolean bent = skeleton.ofLayout() && places.bent().get(i);
      lines.add(
          new Drawing.Line(
              arm.number(),
              path(arm, bow),
              look.width(arm),
              bent,
              look.steps(arm),
              PrintableText.cut(look.title(arm), 300)));
      double midX = bow.x(0.5);
      double midY = bow.y(0.5);
      room.stroke(bow.x1(), bow.y1(), midX, midY, look.width(arm));
      room.stroke(midX, midY, bow.x2(), bow.y2(), look.width(arm));
    }
  }

  /** The first of several between two knots is straight, the others bow out more and more. */
  private Bow bow(Skeleton.Arm arm, int nth) {
    double x1 = x(arm.a());
    double y1 = y(arm.a());
    double x2 = x(arm.b());
    double y2 = y(arm.b());
    if (arm.a() == arm.b()) {
      return new Bow(x1, y1, x1, y1 - 70 - 30 * nth, x2, y2);
    }
    double far = Math.max(1e-9, Math.hypot(x2 - x1, y2 - y1));
    double out = nth == 0 ? 0 : (nth % 2 == 0 ? -1 : 1) * (36 + 14 * nth);
    double midX = (x1 + x2) / 2 - (y2 - y1) / far * out;
    double midY = (y1 + y2) / 2 + (x2 - x1) / far * out;
    return new Bow(x1, y1, midX, midY, x2, y2);
  }

  private static String path(Skeleton.Arm arm, Bow bow) {
    String start = "M" + at(bow.x1(), bow.y1());
    if (arm.a() == arm.b()) {
      double lift = bow.y1() - bow.pullY();
      return start
          + "C"
          + at(bow.x1() - lift, bow.pullY())
          + " "
          + at(bow.x1() + lift, bow.pullY())
          + " "
          + at(bow.x2(), bow.y2());
    }
    boolean straight =
        Math.abs(bow.x(0.5) - (bow.x1() + bow.x2()) / 2) < 1e-6
            && Math.abs(bow.y(0.5) - (bow.y1() + bow.y2()) / 2) < 1e-6;
    return start
        + (straight ? "L" : "Q" + at(bow.pullX(), bow.pullY()) + " ")
        + at(bow.x2(), bow.y2());
  }

  private static String at(double x, double y) {
    return Math.round(x) + "," + Math.round(y);
  }

  private List<Drawing.Spot> spots() {
    List<Drawing.Spot> spots = new ArrayList<>();
    for (int i = 0; i < skeleton.knots().size(); i++) {
      Skeleton.Knot knot = skeleton.knots().get(i);
      boolean fitted = !skeleton.ofLayout() || !knot.here().isEmpty();
      String here = knot.here().isEmpty() ? "" : ": " + String.join(", ", knot.here());
      spots.add(
          new Drawing.Spot(
              knot.number(),
              (int) Math.round(x(i)),
              (int) Math.round(y(i)),
              fitted,
              PrintableText.cut(knot.id() + here, 300)));
      room.take(new Box(x(i) - RADIUS - 1, y(i) - RADIUS - 1, 2 * RADIUS + 2, 2 * RADIUS + 2));
    }
    return spots;
  }

  private void splices() {
    for (int i = 0; i < skeleton.arms().size(); i++) {
      for (Skeleton.Along along : skeleton.arms().get(i).splices()) {
        double x = bows.get(i).x(along.share());
        double y = bows.get(i).y(along.share());
        marks.add(
            new Drawing.Mark((int) Math.round(x), (int) Math.round(y), "splice " + along.splice()));
        room.take(new Box(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS));
      }
    }
  }

  /** A triangle on each arm that changes, and beside each knot. */
  private void changes() {
    for (int i = 0; i < skeleton.arms().size(); i++) {
      Set<String> said = look.changes(skeleton.arms().get(i));
      if (!said.isEmpty()) {
        changed(bows.get(i).x(CHANGE_AT), bows.get(i).y(CHANGE_AT), said);
      }
    }
    for (int i = 0; i < skeleton.knots().size(); i++) {
      Set<String> said = look.changes(skeleton.knots().get(i));
      if (!said.isEmpty()) {
        changed(x(i), y(i) - 3 * RADIUS, said);
      }
    }
  }

  private void changed(double x, double y, Set<String> said) {
    String more = said.size() > 1 ? " and " + (said.size() - 1) + " more" : "";
    changes.add(
        new Drawing.Mark(
            (int) Math.round(x),
            (int) Math.round(y),
            PrintableText.cut(said.iterator().next(), 300) + more));
    room.take(new Box(x - 2 * RADIUS, y - 2 * RADIUS, 4 * RADIUS, 4 * RADIUS));
  }

  /** Names of knots, those with most to say first. */
  private void names() {
    List<Integer> order =
        IntStream.range(0, skeleton.knots().size())
            .boxed()
            .sorted(
                Comparator.comparingInt((Integer i) -> -skeleton.knots().get(i).here().size())
                    .thenComparingInt(i -> i))
            .toList();
    for (int i : order) {
      List<String> text = text(skeleton.knots().get(i));
      double width = text.stream().mapToDouble(Labels::width).max().orElse(0);
      Box box = room.place(x(i), y(i), RADIUS, width, Labels.LINE * text.size());
      double[] near = box.nearest(x(i), y(i));
      boolean far = Math.hypot(near[0] - x(i), near[1] - y(i)) > RADIUS + Labels.NEAR;
      String tie = far ? "M" + at(x(i), y(i)) + "L" + at(near[0], near[1]) : "";
      labels.add(label(box, text, true, tie, Map.of()));
    }
  }

  private static Drawing.Label label(
      Box box, List<String> text, boolean strong, String tie, Map<String, String> figures) {
    return new Drawing.Label(
        (int) Math.round(box.left()), (int) Math.round(box.top()) + 12, text, strong, tie, figures);
  }

  /** The name, then what is here as far as it fits. */
  private static List<String> text(Skeleton.Knot knot) {
    List<String> lines = new ArrayList<>();
    lines.add(shown(knot.id()));
    StringBuilder line = new StringBuilder();
    int left = knot.here().size();
    for (String thing : knot.here()) {
      String shown = shown(thing);
      String more = left > 1 ? " +" + (left - 1) : "";
      boolean last = lines.size() == MOST_LINES - 1;
      int fits = LONGEST_LINE - (last ? more.length() : 0);
      if (line.length() > 0 && line.length() + 1 + shown.length() > fits) {
        if (last) {
          lines.add(line + " +" + left);
          return lines;
        }
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(shown);
      left--;
    }
    if (line.length() > 0) {
      lines.add(line.toString());
    }
    return lines;
  }

  private static String shown(String text) {
    return PrintableText.cut(PrintableText.of(text), LONGEST_LINE);
  }

  /** Lengths and the figures of shades beside the arms that have room for them. */
  private void lengths() {
    for (int i = 0; i < skeleton.arms().size(); i++) {
      Skeleton.Arm arm = skeleton.arms().get(i);
      Bow bow = bows.get(i);
      double far = Math.hypot(bow.x2() - bow.x1(), bow.y2() - bow.y1());
      String text = arm.measured() ? Quoted.number(Math.rint(arm.mm())) : "";
      Map<String, String> figures = look.figures(arm);
      double width = Labels.width(text);
      for (String figure : figures.values()) {
        width = Math.max(width, Labels.width(figure));
      }
      if (width > 0 && far > 26) {
        double dx = -(bow.y2() - bow.y1()) / far;
        double dy = (bow.x2() - bow.x1()) / far;
        double away =
            lines.get(i).width() / 2.0 + 4 + Math.abs(dx) * width / 2 + Math.abs(dy) * 7.5;
        for (int side : new int[] {-1, 1}) {
          Box box =
              room.beside(bow.x(0.5) + side * dx * away, bow.y(0.5) + side * dy * away, width, 13);
          if (box != null) {
            labels.add(label(box, List.of(text), false, "", figures));
            break;
          }
        }
      }
    }
  }

  private Drawing framed(List<Drawing.Spot> spots, String says) {
    double left = Double.POSITIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    for (Box box : room.all()) {
      left = Math.min(left, box.left());
      top = Math.min(top, box.top());
      right = Math.max(right, box.right());
      bottom = Math.max(bottom, box.bottom());
    }
    for (Bow bow : bows) {
      top = Math.min(top, Math.min(bow.y(0.5), bow.pullY()));
      bottom = Math.max(bottom, bow.y(0.5));
      left = Math.min(left, bow.x(0.5));
      right = Math.max(right, bow.x(0.5));
    }
    int x = (int) Math.floor(left) - MARGIN;
    int y = (int) Math.floor(top) - MARGIN;
    return new Drawing(
        x,
        y,
        (int) Math.ceil(right) + MARGIN - x,
        (int) Math.ceil(bottom) + MARGIN - y,
        lines,
        spots,
        marks,
        changes,
        labels,
        says);
  }
}
