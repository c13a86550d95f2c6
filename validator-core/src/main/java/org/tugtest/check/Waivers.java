package org.tugtest.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.finding.Finding;
import org.tugtest.model.Waiver;

/**
 * The waivers that hold on a day, found by rule and first subject. An expired one covers nothing.
 */
final class Waivers {
  private final Map<String, List<Waiver>> byRule;

  private Waivers(Map<String, List<Waiver>> byRule) {
    this.byRule = byRule;
  }

  static Waivers of(Collection<Waiver> waivers, LocalDate today) {
    Map<String, List<Waiver>> byRule = new HashMap<>();
    for (Waiver waiver : waivers) {
      boolean whole = waiver.rule() != null && waiver.at() != null && waiver.reason() != null;
      boolean holds = waiver.until() == null || !today.isAfter(waiver.until());
      if (whole && holds) {
        byRule.computeIfAbsent(waiver.rule(), rule -> new ArrayList<>()).add(waiver);
      }
    }
    return new Waivers(byRule);
  }

  Optional<Waiver> covering(Finding finding) {
    return byRule.getOrDefault(finding.rule(), List.of()).stream()
        .filter(waiver -> finding.firstSubject().place().equals(waiver.at()))
        .filter(waiver -> waiver.state() == null || waiver.state().equals(finding.state()))
        .findFirst();
  }
}
