package org.tugtest.check;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tugtest.expect.Verdict;
import org.tugtest.finding.Level;
import org.tugtest.rule.Coverage;

/**
 * What came of checking one root.
 *
 * @param findings sorted by place, rule and subjects
 * @param coverage how far each rule that ran came, in the order of the catalogue
 * @param notRun rules that did not run and why, in the order of the catalogue
 * @param crashes rules that broke
 * @param expectations what came of the team's own statements, in natural order of their ids
 */
public record CheckResult(
    String root,
    List<CheckedFinding> findings,
    List<Coverage> coverage,
    List<NotRun> notRun,
    List<Crash> crashes,
    List<Verdict> expectations) {

  public CheckResult {
    findings = List.copyOf(findings);
    coverage = List.copyOf(coverage);
    notRun = List.copyOf(notRun);
    crashes = List.copyOf(crashes);
    expectations = List.copyOf(expectations);
  }

  /** Findings that no waiver covers. */
  public List<CheckedFinding> standing() {
    return findings.stream().filter(checked -> !checked.waived()).toList();
  }

  /** How many findings that no waiver covers there are of each level; every level has an entry. */
  public Map<Level, Integer> counts() {
    Map<Level, Integer> counts = new EnumMap<>(Level.class);
    for (Level level : Level.values()) {
      counts.put(level, 0);
    }
    standing().forEach(checked -> counts.merge(checked.finding().level(), 1, Integer::sum));
    return counts;
  }
}
