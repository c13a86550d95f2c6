package org.tugtest.report.html.circuits;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.network.Point;
import org.tugtest.report.html.text.Swatch;

/**
 * The circuit of one load.
 *
 * @param number from 1; its anchor is {@code circuit-N}
 * @param load what it is called
 * @param what it is, with its figure
 * @param says its fuses, and its volts and amps where they are known
 * @param note in which state the figures are, and what else is to be known of them
 * @param points every point on its way
 */
public record Circuit(
    int number,
    String load,
    String what,
    List<String> says,
    String note,
    List<Step> steps,
    @Nullable LoopDrawing drawing,
    List<String> besides,
    List<Point> points) {
  public Circuit {
    says = List.copyOf(says);
    steps = List.copyOf(steps);
    besides = List.copyOf(besides);
    points = List.copyOf(points);
  }

  /**
   * One thing on the way.
   *
   * @param name what it is called
   * @param what it is
   * @param swatch of a wire; null for everything else
   * @param to where it leads
   * @param milliohm resistance; empty when it has none or it is not known
   * @param amps current; empty when it is not known
   * @param drop volts that are lost on it
   * @param volts at the point that it leads to
   */
  public record Step(
      String name,
      String what,
      @Nullable Swatch swatch,
      String to,
      String milliohm,
      String amps,
      String drop,
      String volts,
      boolean turn) {}
}
