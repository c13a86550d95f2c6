package org.tugtest.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.tugtest.bench.retest.Function;
import org.tugtest.bench.retest.Retest;
import org.tugtest.bench.ringout.Apart;
import org.tugtest.bench.ringout.Probe;
import org.tugtest.text.Series;

/** What is measured and tried again, in short lines without a full stop. */
public final class RetestText {
  private static final int MOST_NAMES = 8;
  private static final MathContext THREE = new MathContext(3, RoundingMode.DOWN);

  private RetestText() {}

  /** {@code 3 pairs joined, 2 pairs apart}; what there is none of is left out. */
  public static String counts(Retest.OfLoom loom) {
    List<String> counts = new ArrayList<>();
    if (!loom.joined().isEmpty()) {
      counts.add(Tally.counted(loom.joined().size(), "pair") + " joined");
    }
    if (!loom.apart().isEmpty()) {
      counts.add(Tally.counted(loom.apart().size(), "pair") + " apart");
    }
    if (!loom.blind().isEmpty()) {
      counts.add(Tally.counted(loom.blind().size(), "wire") + " that no pair can show");
    }
    return String.join(", ", counts);
  }

  /** The greatest reading that is still good, rounded down: {@code 0.0712 ohm}. */
  public static String limit(Probe probe) {
    Double ohms = probe.limitOhms();
    if (ohms == null) {
      return "no limit: " + (probe.remark().isEmpty() ? "not known" : probe.remark());
    }
    BigDecimal rounded = BigDecimal.valueOf(ohms).round(THREE).stripTrailingZeros();
    return rounded.toPlainString() + " ohm";
  }

  /** The wires that a pair proves. */
  public static String proves(Probe probe) {
    return Series.and(probe.wires(), MOST_NAMES);
  }

  /** {@code X1:1 to X2:1 joined, at most 0.0712 ohm; proves W1}. */
  public static String of(Probe probe) {
    String limit = limit(probe);
    return probe.from()
        + " to "
        + probe.to()
        + " joined, "
        + (probe.limitOhms() == null ? limit : "at most " + limit)
        + "; proves "
        + proves(probe);
  }

  /** {@code X1:1 to X1:2 apart; side by side in X1}. */
  public static String of(Apart apart) {
    return apart.from() + " to " + apart.to() + " apart; " + apart.why();
  }

  /** The states in which something is tried. */
  public static String states(Function function) {
    return function.states().isEmpty()
        ? "no state names it"
        : (function.states().size() == 1 ? "in state " : "in states ")
            + Series.and(function.states(), MOST_NAMES);
  }

  /** What a function hangs on that was touched. */
  public static String why(Function function) {
    return Series.and(function.why(), MOST_NAMES);
  }

  /** {@code LAMP.bulb, for W4; in state night run}. */
  public static String of(Function function) {
    return function.element() + ", for " + why(function) + "; " + states(function);
  }
}
