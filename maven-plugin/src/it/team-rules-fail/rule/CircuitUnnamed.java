package org.acme;

import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Wire;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A team's own rule: every wire names its circuit. */
public final class CircuitUnnamed implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("acme-circuit-unnamed", Heading.WRITTEN, Level.ERROR)
          .summary("a wire names no circuit")
          .subjects("wires")
          .looksFor("Wires without \"circuit\".")
          .why("Our drawings are sorted by circuit.")
          .remedy("Name the circuit.")
          .basis("Our own practice.")
          .failing(
              "{\"format\": 1, \"sketch\": true, \"wires\": {\"W1\": {\"from\": \"A:1\", \"to\":"
                  + " \"B:1\"}}}")
          .passing(
              "{\"format\": 1, \"sketch\": true, \"wires\": {\"W1\": {\"from\": \"A:1\", \"to\":"
                  + " \"B:1\", \"circuit\": \"x\"}}}")
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Wire wire : facts.harness().wires().values()) {
      if (wire.circuit() == null) {
        ledger.finding(
            Finding.on(Subject.wire(wire.id()))
                .message("wire " + wire.id() + " names no circuit")
                .remedy("add \"circuit\" to it"));
      } else {
        ledger.fine();
      }
    }
  }
}
