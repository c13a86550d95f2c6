package org.tugtest.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tugtest.check.CheckResult;
import org.tugtest.check.CheckedFinding;
import org.tugtest.compare.entry.Renames;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;

/**
 * Which findings are new, which are gone, which were there before. One is the same as before when
 * its rule, its kind and its subjects are, called as they are called after: never by its line, its
 * state or its level. What is left of one, when some of its subjects were put right, is no new one.
 *
 * @param after the findings after, in the order of reports
 * @param resolved those that stood before and are gone
 */
public record FindingAges(List<AgedFinding> after, List<Finding> resolved) {

  public FindingAges {
    after = List.copyOf(after);
    resolved = List.copyOf(resolved);
  }

  /** The ages between two results. */
  static FindingAges of(CheckResult before, CheckResult after, Renames names) {
    Map<String, Integer> all = new HashMap<>();
    Map<String, Integer> standing = new HashMap<>();
    for (CheckedFinding checked : before.findings()) {
      String identity = identity(checked.finding(), names);
      all.merge(identity, 1, Integer::sum);
      if (!checked.waived()) {
        standing.merge(identity, 1, Integer::sum);
      }
    }
    Map<String, Integer> left = new HashMap<>();
    List<AgedFinding> aged = new ArrayList<>();
    Remains remains = new Remains(before, after, names);
    for (CheckedFinding checked : after.findings()) {
      String identity = checked.finding().identity();
      Map<String, Integer> known = checked.waived() ? all : standing;
      boolean was = known.merge(identity, -1, Integer::sum) >= 0;
      String whole = was ? null : remains.of(checked);
      left.merge(whole == null ? identity : whole, 1, Integer::sum);
      aged.add(new AgedFinding(checked, was || whole != null ? Age.KNOWN : Age.NEW));
    }
    List<Finding> resolved = new ArrayList<>();
    for (CheckedFinding checked : before.findings()) {
      boolean still = left.merge(identity(checked.finding(), names), -1, Integer::sum) >= 0;
      if (!still && !checked.waived()) {
        resolved.add(checked.finding());
      }
    }
    return new FindingAges(aged, resolved);
  }

  /** The identity of a finding of before by the ids after. */
  static String identity(Finding finding, Renames names) {
    if (names.isEmpty()) {
      return finding.identity();
    }
    return lot(finding, names)
        + finding.subjects().stream()
            .map(subject -> new Subject(names.place(subject.place())))
            .sorted()
            .distinct()
            .map(Subject::place)
            .collect(Collectors.joining(",", "(", ")"));
  }

  /** Rule and kind, which is what findings have in common of which one may be left of another. */
  static String lot(Finding finding, Renames names) {
    String kind = finding.kind().isEmpty() ? "" : "#" + names.word(finding.kind());
    return finding.rule() + kind;
  }

  /** Findings that are new and that no waiver covers. */
  public List<Finding> fresh() {
    return after.stream()
        .filter(AgedFinding::isNewAndStands)
        .map(aged -> aged.checked().finding())
        .toList();
  }

  /** New findings of a level or graver that no waiver covers. */
  public List<Finding> fresh(Level from) {
    return fresh().stream().filter(finding -> finding.level().atLeast(from)).toList();
  }

  /** Findings that were there before and that no waiver covers. */
  public List<Finding> known() {
    return after.stream()
        .filter(aged -> aged.age() == Age.KNOWN && !aged.checked().waived())
        .map(aged -> aged.checked().finding())
        .toList();
  }
}
