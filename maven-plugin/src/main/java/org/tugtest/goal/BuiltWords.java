package org.tugtest.goal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tugtest.built.explain.Explanation;
import org.tugtest.built.explain.Suspect;
import org.tugtest.built.explain.Telling;
import org.tugtest.facts.TakenReading;
import org.tugtest.report.Report;

/** An explanation of readings, line by line. */
final class BuiltWords {
  private static final int MOST_READINGS = 4;

  private BuiltWords() {}

  static List<String> lines(Report report, Explanation explanation) {
    List<String> lines = new ArrayList<>();
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
      lines.add(
          head + "; no set of a few faults explains " + (readings.size() == 1 ? "it" : "them all"));
      return lines;
    }
    lines.add(head + "; likeliest" + (explanation.smallest() ? "" : ", found step by step") + ":");
    for (List<Suspect> set : explanation.sets()) {
      lines.add(
          (set == explanation.sets().get(0) ? "    " : "    or ")
              + set.stream().map(Suspect::what).collect(Collectors.joining(", and ")));
    }
    explanation.telling().ifPresent(telling -> lines.add("    " + telling(telling)));
    if (explanation.telling().isEmpty() && explanation.sets().size() > 1) {
      lines.add("    a meter shows the same for the first two: look");
    }
    return lines;
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
}
