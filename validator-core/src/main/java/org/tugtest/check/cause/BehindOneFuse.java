package org.tugtest.check.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Cause;

/**
 * One fuse that is too great is one finding, and not one for each wire behind it: what is said of
 * the others follows from the wire that is worst, since the fuse that suits it suits them too.
 */
final class BehindOneFuse {
  private static final String DEVICES = "devices";
  private final Causes causes;

  BehindOneFuse(Causes causes) {
    this.causes = causes;
  }

  /**
   * Tells of each finding that follows from another behind the same fuses.
   *
   * @param standing the findings that are not waived
   */
  void link(Set<Finding> standing) {
    Map<List<Subject>, List<Finding>> heads = new LinkedHashMap<>();
    for (Finding finding : causes.causing(Cause.FUSE_TOO_GREAT)) {
      if (standing.contains(finding) && causes.told(finding).cause() == null) {
        heads.computeIfAbsent(fuses(finding), none -> new ArrayList<>(1)).add(finding);
      }
    }
    heads.remove(List.<Subject>of());
    heads.replaceAll((fuses, all) -> List.of(worst(all)));
    for (Finding finding : causes.following(Cause.FUSE_TOO_GREAT)) {
      heads.getOrDefault(fuses(finding), List.of()).stream()
          .filter(head -> causes.may(finding, Cause.FUSE_TOO_GREAT, head))
          .forEach(head -> causes.link(finding, head));
    }
  }

  private static List<Subject> fuses(Finding finding) {
    return finding.subjects().stream()
        .filter(each -> each.section().equals(DEVICES))
        .sorted()
        .toList();
  }

  /** The gravest; of these the first rule's; of these the one that is farthest over its limit. */
  private static Finding worst(List<Finding> all) {
    Finding first = all.get(0);
    return all.stream()
        .filter(each -> each.rule().equals(first.rule()) || graver(each, first))
        .min(
            Comparator.comparing((Finding each) -> each.level())
                .thenComparing(each -> !each.rule().equals(first.rule()))
                .thenComparing(each -> -over(each))
                .thenComparing(Finding.ORDER))
        .orElse(first);
  }

  private static boolean graver(Finding one, Finding other) {
    return !other.level().atLeast(one.level());
  }

  private static double over(Finding finding) {
    Measured measured = finding.measured();
    return measured == null ? 0 : measured.actual() / measured.limit();
  }
}
