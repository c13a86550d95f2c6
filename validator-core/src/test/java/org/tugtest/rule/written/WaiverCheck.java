package org.tugtest.rule.written;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.check.CheckResult;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.rule.Coverage;
import org.tugtest.rule.Judged;

/** A whole check of a sketch with one doubled cavity, {@code R1:3}, for the rules on waivers. */
record WaiverCheck(CheckResult result) {
  static final LocalDate DAY = LocalDate.of(2026, 3, 1);

  private static final Set<String> WAIVER_RULES =
      Set.of("waiver-expired", "waiver-idle", "waiver-ends-soon");

  static WaiverCheck of(LocalDate today, Selection selection, String sections) {
    RuleCatalog catalog = RuleCatalog.standard();
    String json =
        "{\"format\": 1, \"sketch\": true, \"wires\": {"
            + "\"W1\": {\"from\": \"F:1\", \"to\": \"R1:3\"},"
            + "\"W2\": {\"from\": \"F:2\", \"to\": \"R1:3\"}}, "
            + sections
            + "}";
    Facts facts = Facts.of(Judged.read(Map.of(Judged.ROOT, json)), today, catalog.known());
    return new WaiverCheck(new Checker(catalog, selection).check(facts));
  }

  static WaiverCheck of(LocalDate today, String sections) {
    return of(today, Selection.ALL, sections);
  }

  /** A waiver {@code w} for {@code cavity-doubled}. */
  static String waiver(String at, String more) {
    return "\"waivers\": {\"w\": {\"rule\": \"cavity-doubled\", \"at\": \""
        + at
        + "\", \"reason\": \"donor as found\""
        + more
        + "}}";
  }

  /** What the rules on waivers found. */
  List<Finding> found() {
    return result.findings().stream()
        .map(checked -> checked.finding())
        .filter(finding -> WAIVER_RULES.contains(finding.rule()))
        .toList();
  }

  List<String> messages() {
    return found().stream().map(Finding::message).toList();
  }

  /** The rules whose findings no waiver covers. */
  List<String> standing() {
    return result.standing().stream().map(checked -> checked.finding().rule()).toList();
  }

  Coverage coverage(String rule) {
    return result.coverage().stream()
        .filter(one -> one.rule().equals(rule))
        .findFirst()
        .orElseThrow();
  }
}
