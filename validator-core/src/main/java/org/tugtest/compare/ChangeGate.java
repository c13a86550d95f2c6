package org.tugtest.compare;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;

/**
 * What blocks a change.
 *
 * @param from level from which on a finding blocks; null: none does
 * @param onlyNew only findings that were not there before block
 * @param declared a change of circuits that nothing announces blocks
 */
public record ChangeGate(@Nullable Level from, boolean onlyNew, boolean declared) {

  /** Fails on new findings of this level and graver. */
  public static ChangeGate onNew(Level from) {
    return new ChangeGate(from, true, false);
  }

  /** Fails on all findings of this level and graver. */
  public static ChangeGate onAll(Level from) {
    return new ChangeGate(from, false, false);
  }

  /** The same, and fails on any change of circuits that is not announced. */
  public ChangeGate withDeclaredCircuits() {
    return new ChangeGate(from, onlyNew, true);
  }

  /** The findings that block, in the order of reports. */
  public List<Finding> blocking(Comparison comparison) {
    if (from == null || (onlyNew && !comparison.before().present())) {
      return List.of();
    }
    if (onlyNew) {
      return comparison.findings().fresh(from);
    }
    return comparison.after().result().standing().stream()
        .map(CheckedFinding::finding)
        .filter(finding -> finding.level().atLeast(from))
        .toList();
  }

  /** Why a change is blocked, one reason a line; empty when it passes. */
  public List<String> reasons(Comparison comparison, Announced announced) {
    List<String> reasons = new ArrayList<>();
    List<Finding> findings = blocking(comparison);
    if (!findings.isEmpty()) {
      reasons.add(
          (onlyNew ? "new findings" : "findings")
              + " of level "
              + (from == null ? "" : from.word())
              + " or graver: "
              + findings.size());
    }
    if (declared && comparison.before().present() && !announced.complete()) {
      int count = announced.undeclaredNets().size() + announced.undeclaredElements().size();
      reasons.add("changes of circuits that changes/ does not announce: " + count);
    }
    return reasons;
  }
}
