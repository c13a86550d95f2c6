package org.tugtest.report;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Coverage;
import org.tugtest.rule.connectors.MergeProposal;

/**
 * The proposals to merge connectors that stand among the findings of a root, and the sheets that
 * say how each is done.
 */
public final class Merges {
  /** Proposals that get a sheet; each is reckoned through the whole harness. */
  public static final int MOST_SHEETS = 24;

  /** The rule that proposes them. */
  public static final String RULE = "connector-could-merge";

  private Merges() {}

  /** All that stand, in the order in which they were found; what is waived is left out. */
  public static List<MergeProposal> standing(HarnessReport harness) {
    Set<Subject> found =
        harness.result().standing().stream()
            .map(CheckedFinding::finding)
            .filter(finding -> finding.rule().equals(RULE))
            .map(finding -> finding.firstSubject())
            .collect(Collectors.toSet());
    Coverage coverage =
        harness.result().coverage().stream()
            .filter(its -> its.rule().equals(RULE))
            .findFirst()
            .orElse(null);
    if (found.isEmpty() || coverage == null) {
      return List.of();
    }
    return MergeProposal.of(harness.facts(), coverage::lacks).stream()
        .filter(proposal -> found.contains(Subject.connector(proposal.near())))
        .toList();
  }

  /** The name of the sheet of a proposal, without ending. */
  public static String sheet(MergeProposal proposal) {
    return "merge-" + proposal.near();
  }
}
