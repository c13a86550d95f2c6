package org.tugtest.compare.consequence;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.match.Match;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.text.NaturalOrder;

/**
 * A figure that moved.
 *
 * @param what in words: {@code PUMP.motor in night run}
 * @param subject what it is of, as it is called after; null for the whole harness
 * @param before null when it is not known there
 * @param after null when it is not known there
 * @param unit as printed; empty for counts
 * @param decimals it is shown with
 * @param note what to know of it; empty when nothing
 */
public record Moved(
    String what,
    @Nullable Subject subject,
    @Nullable Double before,
    @Nullable Double after,
    String unit,
    int decimals,
    String note) {

  /** The largest first; a figure that one side lacks before all others. */
  public static final Comparator<Moved> LARGEST_FIRST =
      Comparator.comparingDouble(Moved::size)
          .reversed()
          .thenComparing(Moved::what, NaturalOrder.NATURAL);

  /** A figure, when it is not the same on both sides as shown. */
  public static Optional<Moved> of(
      String what,
      @Nullable Subject subject,
      @Nullable Double before,
      @Nullable Double after,
      String unit,
      int decimals) {
    Moved moved = new Moved(what, subject, before, after, unit, decimals, "");
    return moved.shown(before).equals(moved.shown(after)) ? Optional.empty() : Optional.of(moved);
  }

  /** A figure of each wire that is on both sides and has it on both, in the order of reports. */
  static List<Moved> ofWires(
      Comparison comparison,
      Function<Facts, Map<String, Double>> figures,
      String unit,
      int decimals) {
    Map<String, Double> before = figures.apply(comparison.before().facts());
    Map<String, Double> after = figures.apply(comparison.after().facts());
    List<Moved> moved = new ArrayList<>();
    for (Match match : comparison.matches().in("wires")) {
      Double was = before.get(match.before());
      Double is = after.get(match.after());
      if (was != null && is != null) {
        of(match.after(), Subject.wire(match.after()), was, is, unit, decimals)
            .ifPresent(moved::add);
      }
    }
    return sorted(moved);
  }

  /** The same with something to know of it. */
  public Moved with(String remark) {
    return new Moved(what, subject, before, after, unit, decimals, remark);
  }

  /** In the order of reports. */
  static List<Moved> sorted(List<Moved> moved) {
    return moved.stream().sorted(LARGEST_FIRST).toList();
  }

  /** As the rounded figures show it, so that dust of the computing sets no order. */
  private double size() {
    if (before == null || after == null || before.isInfinite() || after.isInfinite()) {
      return Double.POSITIVE_INFINITY;
    }
    return rounded(after).subtract(rounded(before)).abs().doubleValue();
  }

  /** A value with its unit; {@code not known} for null, {@code no bound} or {@code never}. */
  public String shown(@Nullable Double value) {
    if (value == null) {
      return "not known";
    }
    if (value.isInfinite()) {
      return unit.equals("s") ? "never" : "no bound";
    }
    BigDecimal rounded = rounded(value);
    String number = rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    return unit.isEmpty() ? number : number + " " + unit;
  }

  private BigDecimal rounded(double value) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
  }

  /**
   * The move, as the rounded figures show it, with its sign: {@code +0.4 V}, {@code -312 g}; empty
   * when a side is not known.
   */
  public String difference() {
    if (before == null || after == null || before.isInfinite() || after.isInfinite()) {
      return "";
    }
    String shown = shown(rounded(after).subtract(rounded(before)).doubleValue());
    return shown.startsWith("-") ? shown : "+" + shown;
  }
}
