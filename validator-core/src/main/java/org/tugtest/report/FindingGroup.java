package org.tugtest.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Finding;

/**
 * A finding with those that follow from it, as reports for people show it: one missing earth is one
 * finding. A fault in a file that several roots use is one finding too.
 *
 * @param finding the one shown, which follows from no other standing one
 * @param follow findings that follow from it, over any number of steps, in the order of reports
 * @param roots the roots that have it, in the order of the report
 */
public record FindingGroup(Finding finding, List<Finding> follow, List<String> roots) {

  public FindingGroup {
    follow = List.copyOf(follow);
    roots = List.copyOf(roots);
  }

  /** {@code 1 more follows}, {@code 2 more follow}. */
  public String followers() {
    return follow.size() + (follow.size() == 1 ? " more follows" : " more follow");
  }

  /** The findings of all roots that no waiver covers, in the order of reports. */
  public static List<FindingGroup> standing(Report report) {
    return standing(report.harnesses());
  }

  /** The findings of these roots that no waiver covers, in the order of reports. */
  public static List<FindingGroup> standing(Collection<HarnessReport> harnesses) {
    return standing(harnesses, (harness, finding) -> true);
  }

  /** Those of them that are {@code shown}, in the order of reports. */
  public static List<FindingGroup> standing(
      Collection<HarnessReport> harnesses, BiPredicate<HarnessReport, CheckedFinding> shown) {
    Map<Finding, Members> heads = new LinkedHashMap<>();
    for (HarnessReport harness : harnesses) {
      List<Finding> standing =
          harness.result().standing().stream()
              .filter(checked -> shown.test(harness, checked))
              .map(CheckedFinding::finding)
              .toList();
      Map<String, Finding> byIdentity = new HashMap<>();
      standing.forEach(finding -> byIdentity.putIfAbsent(finding.identity(), finding));
      for (Finding finding : standing) {
        Finding head = head(finding, byIdentity);
        Members members = heads.computeIfAbsent(head, none -> new Members());
        members.roots.add(harness.root());
        if (!head.equals(finding)) {
          members.follow.add(finding);
        }
      }
    }
    List<FindingGroup> groups = new ArrayList<>();
    heads.forEach(
        (head, members) ->
            groups.add(
                new FindingGroup(
                    head,
                    members.follow.stream().sorted(Finding.ORDER).toList(),
                    List.copyOf(members.roots))));
    groups.sort((one, other) -> Finding.ORDER.compare(one.finding, other.finding));
    return groups;
  }

  /** What a finding follows from in the end; itself when that goes round in a circle. */
  private static Finding head(Finding finding, Map<String, Finding> byIdentity) {
    Set<String> seen = new HashSet<>();
    Finding at = finding;
    while (at.cause() != null && byIdentity.containsKey(at.cause())) {
      if (!seen.add(at.identity())) {
        return finding;
      }
      at = byIdentity.get(at.cause());
    }
    return at;
  }

  private static final class Members {
    final Set<Finding> follow = new LinkedHashSet<>();
    final Set<String> roots = new LinkedHashSet<>();
  }
}
