package org.tugtest.report.html.protection;

import java.util.List;

/**
 * The chart of one fuse.
 *
 * @param says what is to be known of it in a line
 * @param band path round the times in which the fuse opens; empty when they are not known
 * @param latest path of the latest times
 * @param curves what wires stand, the weakest first
 * @param marks currents: shorts, load, inrush
 * @param heads the currents of the table, in words
 * @param rows the same in figures
 */
public record ProtectionChart(
    int number,
    String fuse,
    List<String> says,
    List<Tick> ticks,
    String band,
    String latest,
    List<Curve> curves,
    List<Mark> marks,
    List<String> heads,
    List<Row> rows,
    int moreWires) {
  public ProtectionChart {
    says = List.copyOf(says);
    ticks = List.copyOf(ticks);
    curves = List.copyOf(curves);
    marks = List.copyOf(marks);
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
  }

  /** A line of the grid; upright ones are currents. */
  public record Tick(boolean upright, int at, String text, boolean strong) {}

  /** What a wire stands. */
  public record Curve(String letter, String path, int x, int y, String title) {}

  /**
   * A current, with the time it lasts if it is an inrush.
   *
   * @param kind {@code load}, {@code inrush}, {@code least} or {@code most}
   */
  public record Mark(String kind, int x, int y, String text) {}

  /** Times at the currents of the heads. */
  public record Row(String name, String what, List<String> times) {
    public Row {
      times = List.copyOf(times);
    }
  }
}
