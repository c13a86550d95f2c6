package org.tugtest.report.console;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tugtest.check.CheckedFinding;
import org.tugtest.compare.Age;
import org.tugtest.compare.Announced;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.report.Baseline;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Tally;

/** What the lines of a check say of what it is held against. */
final class AgainstBase {
  private AgainstBase() {}

  /** Whether a finding was not there before, as far as is known. */
  static boolean isNew(HarnessReport harness, CheckedFinding checked) {
    return harness.age(checked) == Age.NEW;
  }

  /**
   * Ages and circuits in one line; empty when nothing is held against anything.
   *
   * @param from level from which on findings count
   */
  static Optional<String> line(Report report, Level from) {
    List<HarnessReport> held =
        report.harnesses().stream().filter(harness -> harness.baseline() != null).toList();
    if (held.isEmpty()) {
      return Optional.empty();
    }
    List<HarnessReport> present =
        held.stream().filter(harness -> baseline(harness).present()).toList();
    String label = baseline(held.get(0)).label();
    if (present.isEmpty()) {
      return Optional.of(
          "against "
              + label
              + ": there is no such harness yet, so everything is new"
              + (report.gate().onlyNew() ? " and passes" : ""));
    }
    Set<Finding> fresh = new HashSet<>();
    Set<Finding> known = new HashSet<>();
    Set<Finding> resolved = new HashSet<>();
    for (HarnessReport harness : held) {
      for (CheckedFinding checked : harness.result().standing()) {
        if (checked.finding().level().atLeast(from)) {
          (harness.age(checked) == Age.NEW ? fresh : known).add(checked.finding());
        }
      }
      baseline(harness).comparison().findings().resolved().stream()
          .filter(finding -> finding.level().atLeast(from))
          .forEach(resolved::add);
    }
    return Optional.of(
        "against "
            + label
            + ": "
            + Tally.counted(fresh.size(), "new finding")
            + ", "
            + known.size()
            + " known, "
            + resolved.size()
            + " resolved; "
            + circuits(present));
  }

  private static String circuits(List<HarnessReport> present) {
    if (present.size() == 1) {
      String sentence = baseline(present.get(0)).comparison().circuits().sentence();
      return Character.toLowerCase(sentence.charAt(0))
          + sentence.substring(1, sentence.length() - 1);
    }
    long changed =
        present.stream()
            .map(harness -> baseline(harness).comparison().circuits())
            .filter(circuits -> !circuits.same())
            .count();
    return changed == 0
        ? "electrically the same: no circuit changes"
        : "circuits change in " + changed + " of " + present.size() + " roots";
  }

  /** What is announced and made in no root, each a sentence. */
  static List<String> notMade(Report report) {
    Map<Announced.NotMade, Integer> roots = new HashMap<>();
    List<Announced.NotMade> inOrder = new ArrayList<>();
    int held = 0;
    for (HarnessReport harness : report.harnesses()) {
      Baseline baseline = harness.baseline();
      if (baseline != null && baseline.present()) {
        held++;
        for (Announced.NotMade one : baseline.announced().notMade()) {
          if (roots.merge(one, 1, Integer::sum) == 1) {
            inOrder.add(one);
          }
        }
      }
    }
    List<String> sentences = new ArrayList<>();
    for (Announced.NotMade one : inOrder) {
      if (roots.getOrDefault(one, 0) == held) {
        sentences.add("the announced change " + one.id() + " is not made: " + one.why());
      }
    }
    return sentences;
  }

  private static Baseline baseline(HarnessReport harness) {
    Baseline baseline = harness.baseline();
    if (baseline == null) {
      throw new IllegalStateException(harness.root() + " is held against nothing");
    }
    return baseline;
  }
}
