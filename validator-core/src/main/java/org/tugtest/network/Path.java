package org.tugtest.network;

import java.util.ArrayList;
import java.util.List;

/**
 * A way from one point to another.
 *
 * @param start where it begins
 * @param edges what it takes, in order; each begins where the one before ends
 */
public record Path(Point start, List<Edge> edges) {
  public Path {
    edges = List.copyOf(edges);
  }

  /** Every point it passes, its ends included, in order. */
  public List<Point> points() {
    List<Point> points = new ArrayList<>(edges.size() + 1);
    Point at = start;
    points.add(at);
    for (Edge edge : edges) {
      at = edge.across(at);
      points.add(at);
    }
    return List.copyOf(points);
  }

  /** Where it ends. */
  public Point end() {
    List<Point> points = points();
    return points.get(points.size() - 1);
  }

  /** In one line: {@code BAT:+ -W1- FB:in -FB.f1- FB:1}; plugged contacts {@code X1:1 = LAMP:1}. */
  public String text() {
    StringBuilder line = new StringBuilder(start.text());
    Point at = start;
    for (Edge edge : edges) {
      at = edge.across(at);
      boolean touching = edge instanceof Edge.OfMating || edge instanceof Edge.OfBolt;
      line.append(touching ? " = " : " -" + edge.text() + "- ").append(at.text());
    }
    return line.toString();
  }
}
