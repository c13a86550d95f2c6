package org.tugtest.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckResult;
import org.tugtest.check.CheckedFinding;
import org.tugtest.compare.entry.Renames;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;

/**
 * The findings of before that are gone as they were, by their subjects: a finding after that speaks
 * of some of the subjects of one of them, and of no others, is what is left of it.
 */
final class Remains {
  /** A finding of before that nobody has after. */
  private record Gone(String identity, String lot, boolean waived, Set<Subject> subjects) {}

  private final Map<Subject, List<Gone>> bySubject = new HashMap<>();

  Remains(CheckResult before, CheckResult after, Renames names) {
    Set<String> there = new HashSet<>();
    after.findings().forEach(checked -> there.add(checked.finding().identity()));
    for (CheckedFinding checked : before.findings()) {
      Finding finding = checked.finding();
      String identity = FindingAges.identity(finding, names);
      if (finding.subjects().size() > 1 && !there.contains(identity)) {
        Set<Subject> subjects = new HashSet<>();
        finding.subjects().forEach(one -> subjects.add(new Subject(names.place(one.place()))));
        Gone gone =
            new Gone(
                identity, FindingAges.lot(finding, names), checked.waived(), Set.copyOf(subjects));
        subjects.forEach(one -> bySubject.computeIfAbsent(one, any -> new ArrayList<>()).add(gone));
      }
    }
  }

  /**
   * The identity of the finding of before of which this one is left; null when there is none. What
   * a waiver covered before is nothing that a finding without waiver could be left of.
   */
  @Nullable String of(CheckedFinding checked) {
    Finding finding = checked.finding();
    String lot = FindingAges.lot(finding, Renames.NONE);
    for (Gone gone : bySubject.getOrDefault(finding.firstSubject(), List.of())) {
      if (gone.lot().equals(lot)
          && (checked.waived() || !gone.waived())
          && gone.subjects().containsAll(finding.subjects())) {
        return gone.identity();
      }
    }
    return null;
  }
}
