package org.tugtest.report.html.loom;

import java.util.List;
import java.util.Map;

/**
 * A drawing of looms, ready to be written: everything in whole units, y downwards.
 *
 * @param changes where something changes against an older revision
 * @param says what there is to see, for those who do not see it
 */
public record Drawing(
    int left,
    int top,
    int width,
    int height,
    List<Line> lines,
    List<Spot> spots,
    List<Mark> marks,
    List<Mark> changes,
    List<Label> labels,
    String says) {
  public Drawing {
    lines = List.copyOf(lines);
    spots = List.copyOf(spots);
    marks = List.copyOf(marks);
    changes = List.copyOf(changes);
    labels = List.copyOf(labels);
  }

  /**
   * An arm.
   *
   * @param arm its number
   * @param path in the language of SVG
   * @param width how thick it is drawn
   * @param bent whether it is not drawn to length
   * @param steps names of its steps of every shade
   */
  public record Line(int arm, String path, int width, boolean bent, String steps, String title) {}

  /**
   * A knot.
   *
   * @param fitted whether a connector or a device is there
   */
  public record Spot(int knot, int x, int y, boolean fitted, String title) {}

  /** A splice along an arm, or a change. */
  public record Mark(int x, int y, String title) {}

  /**
   * A text.
   *
   * @param x where its lines begin
   * @param y the foot of its first line
   * @param strong whether its first line is a name
   * @param tie a line to what it names, in the language of SVG; empty when it is near
   * @param figures of every shade, shown instead of its line; none for a name
   */
  public record Label(
      int x, int y, List<String> lines, boolean strong, String tie, Map<String, String> figures) {
    public Label {
      lines = List.copyOf(lines);
    }

    /** The lines after the first. */
    public List<String> rest() {
      return lines.subList(1, lines.size());
    }
  }

  /** What an SVG gives as its view box. */
  public String viewBox() {
    return left + " " + top + " " + width + " " + height;
  }
}
