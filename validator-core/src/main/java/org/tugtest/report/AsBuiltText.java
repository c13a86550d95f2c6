package org.tugtest.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tugtest.built.explain.Explanation;
import org.tugtest.built.explain.Suspect;
import org.tugtest.built.explain.Telling;
import org.tugtest.check.CheckedFinding;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.TakenReading;
import org.tugtest.model.Reading;
import org.tugtest.text.Quoted;

/** What is said of a loom as built, in short sentences without a full stop. */
public final class AsBuiltText {
  private static final int MOST_READINGS = 4;

  private AsBuiltText() {}

  /**
   * An explanation of readings.
   *
   * @param head which readings, and how sure it is
   * @param sets what would explain them, the likeliest first
   * @param telling how to tell the first two apart; empty when there are not two
   */
  public record Explained(String head, List<String> sets, String telling) {
    public Explained {
      sets = List.copyOf(sets);
    }
  }

  /** {@code accepted until 2027-03-31}, {@code blocks: nobody has accepted that}. */
  public static String standing(
      Report report, HarnessReport harness, AsBuiltReport.Judged<Deviation> judged) {
    Deviation deviation = judged.told();
    CheckedFinding found = judged.found();
    if (found != null) {
      String message = found.finding().message();
      int why = message.lastIndexOf("; ");
      return word(report, harness, found) + (why < 0 ? "" : ": " + message.substring(why + 2));
    }
    if (!deviation.accepted()) {
      return "within its limits";
    }
    return deviation.until() == null ? "accepted" : "accepted until " + deviation.until();
  }

  /** {@code as expected}, of the plan with its deviations, or what is wrong. */
  public static String standing(
      AsBuiltReport.Judged<TakenReading> judged, Report report, HarnessReport harness) {
    CheckedFinding found = judged.found();
    return found == null
        ? "as expected"
        : word(report, harness, found) + ": " + found.finding().rule();
  }

  private static String word(Report report, HarnessReport harness, CheckedFinding found) {
    if (found.waived()) {
      return "waived";
    }
    return report.gate().blocks(harness, found) ? "blocks" : found.finding().level().word();
  }

  /** {@code 0.35 ohm}, {@code open}, {@code joined}. */
  public static String reads(Reading reading) {
    Double ohms = reading.ohms();
    if (ohms != null) {
      return Quoted.number(ohms) + " ohm";
    }
    return Boolean.TRUE.equals(reading.joined()) ? "joined" : "open";
  }

  /** An explanation in words. */
  public static Explained of(Report report, Explanation explanation) {
    List<TakenReading> readings = explanation.readings();
    String which =
        readings.stream()
            .limit(MOST_READINGS)
            .map(reading -> report.path(reading.at().file()) + ":" + reading.at().line())
            .collect(Collectors.joining(", "));
    int more = readings.size() - MOST_READINGS;
    String head =
        (readings.size() == 1 ? "1 reading contradicts" : readings.size() + " readings contradict")
            + " the plan ("
            + which
            + (more > 0 ? " and " + more + " more" : "")
            + ")";
    if (explanation.sets().isEmpty()) {
      String all = readings.size() == 1 ? "it" : "them all";
      return new Explained(head + "; no set of a few faults explains " + all, List.of(), "");
    }
    return new Explained(
        head + "; likeliest" + (explanation.smallest() ? "" : ", found step by step"),
        explanation.sets().stream()
            .map(set -> set.stream().map(Suspect::what).collect(Collectors.joining(", and ")))
            .toList(),
        telling(explanation));
  }

  private static String telling(Explanation explanation) {
    if (explanation.sets().size() < 2) {
      return "";
    }
    return explanation
        .telling()
        .map(AsBuiltText::telling)
        .orElse("a meter shows the same for the first two: look");
  }

  private static String telling(Telling telling) {
    return "to tell the first two apart measure "
        + telling.from()
        + " to "
        + telling.to()
        + ": "
        + (telling.joinedByFirst() ? "joined" : "open")
        + " if it is the first";
  }

  /** An explanation as lines of a terminal. */
  public static List<String> lines(Report report, Explanation explanation) {
    Explained explained = of(report, explanation);
    List<String> lines = new ArrayList<>();
    lines.add(explained.head() + (explained.sets().isEmpty() ? "" : ":"));
    for (int i = 0; i < explained.sets().size(); i++) {
      lines.add((i == 0 ? "    " : "    or ") + explained.sets().get(i));
    }
    if (!explained.telling().isEmpty()) {
      lines.add("    " + explained.telling());
    }
    return lines;
  }
}
