package org.tugtest.rule.connectors;

import java.util.List;
import java.util.stream.Collectors;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Measured;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.table.Cited;

/** Words that the rules on cavities share. */
final class Cavities {
  private static final int SHOWN = 8;

  private Cavities() {}

  /** The cavities on which wires end, sorted. */
  static List<Point> wired(Facts facts) {
    return facts.wiring().wiredCavities();
  }

  /** {@code cavity 3}, {@code cavities 3, 4 and 7}, or the first eight and how many more. */
  static String listed(List<String> names) {
    if (names.size() == 1) {
      return "cavity " + names.get(0);
    }
    List<String> shown = names.subList(0, Math.min(SHOWN, names.size()));
    int more = names.size() - shown.size();
    if (more > 0) {
      return "cavities " + String.join(", ", shown) + " and " + more + " more";
    }
    int last = shown.size() - 1;
    return "cavities " + String.join(", ", shown.subList(0, last)) + " and " + shown.get(last);
  }

  /** The wires of these ends, {@code W1, W2}. */
  static String wires(List<WireEnd> ends) {
    return ends.stream().map(end -> end.wire().id()).distinct().collect(Collectors.joining(", "));
  }

  /** A misfit as figure against limit. */
  static Measured measured(Fitting.Misfit misfit, String unit) {
    return misfit.over()
        ? Measured.over(misfit.actual().value(), misfit.limit(), unit)
        : Measured.under(misfit.actual().value(), misfit.limit(), unit);
  }

  /** {@code 2.1 mm, over the greatest of 2.0 mm (source)}. */
  static String sentence(Fitting.Misfit misfit, String unit) {
    Measured measured = measured(misfit, unit);
    Cited actual = misfit.actual();
    String source = actual.source().equals("given") ? "" : " (" + actual.source() + ")";
    return measured.actualShown()
        + " "
        + unit
        + source
        + (misfit.over() ? ", over the greatest of " : ", under the least of ")
        + measured.limitShown()
        + " "
        + unit;
  }
}
