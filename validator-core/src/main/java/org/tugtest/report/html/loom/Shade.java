package org.tugtest.report.html.loom;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.report.html.text.Figures;

/** What the segments of a drawing can be shaded by, in six steps. */
public enum Shade {
  /** How full the fullest covering is. */
  FILL("fill", "how full the covering is", "%"),
  /** How warm the warmest wire becomes. */
  WARMTH("warm", "the warmest wire in it", "°C");

  private static final double PERCENT = 100;
  private static final List<Integer> PERCENTS = List.of(25, 50, 70, 80, 100);
  private static final List<Integer> DEGREES = List.of(40, 60, 80, 100, 125);

  private final String key;
  private final String words;
  private final String unit;

  Shade(String key, String words, String unit) {
    this.key = key;
    this.words = words;
    this.unit = unit;
  }

  /** A step of the legend. */
  public record Step(int number, String says) {}

  /** Its name in the page. */
  public String key() {
    return key;
  }

  /** What it shows, in words. */
  public String words() {
    return words;
  }

  /** The steps from the least to the greatest. */
  public List<Step> steps() {
    List<Integer> bounds = bounds();
    List<Step> steps = new ArrayList<>();
    steps.add(new Step(0, "under " + said(bounds.get(0))));
    for (int i = 1; i < bounds.size(); i++) {
      steps.add(new Step(i, bounds.get(i - 1) + " to " + said(bounds.get(i))));
    }
    int last = bounds.get(bounds.size() - 1);
    steps.add(
        new Step(
            bounds.size(),
            this == FILL ? "over " + said(last) + ": does not fit" : said(last) + " and more"));
    return steps;
  }

  private List<Integer> bounds() {
    return this == FILL ? PERCENTS : DEGREES;
  }

  private String said(int bound) {
    return bound + " " + unit;
  }

  private double value(Inside inside) {
    return this == FILL ? inside.fill() * PERCENT : inside.celsius();
  }

  /** The step of a figure; -1 when it is not known. */
  int step(Inside inside) {
    double value = value(inside);
    if (Double.isNaN(value)) {
      return -1;
    }
    List<Integer> bounds = bounds();
    int step = 0;
    for (int i = 0; i < bounds.size(); i++) {
      boolean last = i == bounds.size() - 1;
      // what is just full still fits
      boolean over = (this == FILL && last) ? value > bounds.get(i) : value >= bounds.get(i);
      step += over ? 1 : 0;
    }
    return step;
  }

  /** The figure in words; empty when it is not known. */
  String figure(Inside inside) {
    double value = value(inside);
    if (Double.isNaN(value)) {
      return "";
    }
    return Double.isInfinite(value) ? "no rest" : Figures.fixed(value, 0) + " " + unit;
  }
}
