package org.tugtest.report.html.loom;

import java.util.ArrayList;
import java.util.Arrays;
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
    double least = Arrays.stream(values).min().orElse(0);
    return Arrays.stream(values).max().orElse(0) - least;
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
      Bow bow =
          arm.a() == arm.b()
              ? Bow.back(x(arm.a()), y(arm.a()), nth - 1)
              : Bow.between(x(arm.a()), y(arm.a()), x(arm.b()), y(arm.b()), nth - 1);
      bows.add(bow);
      boolean bent = skeleton.ofLayout() && places.bent().get(i);
      lines.add(
          new Drawing.Line(
              arm.number(),
              bow.path(),
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
      List<String> text = KnotText.of(skeleton.knots().get(i));
      double width = text.stream().mapToDouble(Labels::width).max().orElse(0);
      Box box = room.place(x(i), y(i), RADIUS, width, Labels.LINE * text.size());
      double[] near = box.nearest(x(i), y(i));
      boolean far = Math.hypot(near[0] - x(i), near[1] - y(i)) > RADIUS + Labels.NEAR;
      String tie = far ? "M" + Bow.at(x(i), y(i)) + "L" + Bow.at(near[0], near[1]) : "";
      labels.add(label(box, text, true, tie, Map.of()));
    }
  }

  private static Drawing.Label label(
      Box box, List<String> text, boolean strong, String tie, Map<String, String> figures) {
    return new Drawing.Label(
        (int) Math.round(box.left()), (int) Math.round(box.top()) + 12, text, strong, tie, figures);
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
