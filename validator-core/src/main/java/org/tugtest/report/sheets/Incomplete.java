package org.tugtest.report.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tugtest.check.CheckedFinding;
import org.tugtest.facts.Facts;
import org.tugtest.report.HarnessReport;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Problem;
import org.tugtest.text.Series;

/** Why the sheets of a root may lack something, in words that stand on each of them. */
final class Incomplete {
  /** The rules whose findings mean that something is named and not there. */
  private static final Set<String> LOST =
      Set.of("reference-unresolved", "cavity-unknown", "wire-end-open");

  private static final int NAMED = 5;

  private Incomplete() {}

  /** One sentence for each cause; none when nothing is missing. */
  static List<String> sentences(HarnessReport harness) {
    List<String> sentences = new ArrayList<>();
    Facts facts = harness.facts();
    List<String> unread = facts.unread();
    if (!unread.isEmpty()) {
      sentences.add(
          count(unread.size(), "file could", "files could")
              + " not be read: "
              + Series.and(unread, NAMED));
    }
    Set<String> lost = new TreeSet<>(NaturalOrder.NATURAL);
    for (CheckedFinding checked : harness.result().findings()) {
      if (LOST.contains(checked.finding().rule())) {
        lost.add(checked.finding().subjects().get(0).place());
      }
    }
    if (!lost.isEmpty()) {
      sentences.add(
          count(lost.size(), "reference leads", "references lead")
              + " nowhere: "
              + Series.and(List.copyOf(lost), NAMED));
    }
    Set<String> misread =
        facts.problems().stream()
            .filter(
                problem ->
                    problem.kind() == Problem.Kind.SHAPE_WRONG
                        || problem.kind() == Problem.Kind.ID_GIVEN_TWICE)
            .map(Problem::subject)
            .collect(Collectors.toCollection(() -> new TreeSet<>(NaturalOrder.NATURAL)));
    if (!misread.isEmpty()) {
      sentences.add(
          count(misread.size(), "thing is", "things are")
              + " not written as the format asks: "
              + Series.and(List.copyOf(misread), NAMED));
    }
    return List.copyOf(sentences);
  }

  private static String count(int count, String one, String several) {
    return count + " " + (count == 1 ? one : several);
  }
}
