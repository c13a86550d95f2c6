package org.tugtest.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.tugtest.bench.rework.Step;
import org.tugtest.text.Series;

/** The steps of a rework in short: blanks of one connector that follow each other are one line. */
public final class StepText {
  private static final int MOST_NAMES = 24;

  private StepText() {}

  /** A line, and what to look out for. */
  public record Line(String text, List<String> remarks) {
    public Line {
      remarks = List.copyOf(remarks);
    }
  }

  /** The steps as lines, in their order. */
  public static List<Line> lines(List<Step> steps) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < steps.size(); ) {
      int end = i + 1;
      while (end < steps.size() && goTogether(steps.get(i), steps.get(end))) {
        end++;
      }
      lines.add(line(steps.subList(i, end)));
      i = end;
    }
    return lines;
  }

  private static boolean goTogether(Step one, Step other) {
    boolean blanks = one.kind() == Step.Kind.BLANK || one.kind() == Step.Kind.UNBLANK;
    return blanks
        && one.kind() == other.kind()
        && one.at().equals(other.at())
        && Objects.equals(one.part(), other.part())
        && one.remarks().equals(other.remarks())
        && one.from() != null
        && other.from() != null;
  }

  private static Line line(List<Step> together) {
    Step first = together.get(0);
    if (together.size() == 1) {
      return new Line(first.text(), first.remarks());
    }
    List<String> cavities =
        together.stream().map(step -> Objects.requireNonNull(step.from()).name()).toList();
    String named = Series.and(cavities, MOST_NAMES);
    return new Line(
        first.at()
            + (first.kind() == Step.Kind.BLANK
                ? ": plug " + named + " with blanks"
                : ": take the blanks out of " + named),
        first.remarks());
  }
}
