package org.tugtest.rule.written;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Loom;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A wire that shall be taken out is still part of the loom that is to be built. */
public final class RemovedStillJoined implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("removed-still-joined", Heading.WRITTEN, Level.ERROR)
          .summary("a wire that shall be removed is still wired in a planned loom")
          .subjects("wires with a decision")
          .looksFor(
              """
              A wire with the decision "remove" whose two ends both still name contacts, in a loom
              that is planned ("stage": "planned", which is the default; wires of no loom count as
              planned). In a loom with "stage": "found" decisions are plans, and nothing is wrong.
              """)
          .why(
              """
              The loom is built from these files: a wire that stays in them is cut, crimped and put
              in, and the circuit that should be gone is back.
              """)
          .remedy(
              """
              Delete the wire from the planned loom, or change its decision. While the file still
              describes the donor as it was found, write "stage": "found" for the loom.
              """)
          .basis("Follows from the format.")
          .failing(
              """
              {"format": 1, "sketch": true, "loom": {"id": "rear"},
               "wires": {"W1": {"from": "R1:1", "to": "R2:1", "decision": "remove"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true, "loom": {"id": "rear", "stage": "found"},
               "wires": {"W1": {"from": "R1:1", "to": "R2:1", "decision": "remove"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Wire wire : facts.harness().wires().values()) {
      if (wire.decision() == null) {
        continue;
      }
      Loom loom = wire.loom() == null ? null : facts.harness().looms().get(wire.loom());
      boolean planned = loom == null || loom.stage() == Loom.Stage.PLANNED;
      Optional<Point> from = facts.wiring().pointOf(wire.from());
      Optional<Point> to = facts.wiring().pointOf(wire.to());
      if (wire.decision() != Wire.Decision.REMOVE || !planned) {
        ledger.fine();
      } else if (from.isEmpty() || to.isEmpty()) {
        ledger.notJudged(Subject.wire(wire.id()), Unjudged.UNKNOWN_END);
      } else {
        ledger.finding(finding(facts, wire, loom, from.get(), to.get()));
      }
    }
  }

  private static Finding.Draft finding(
      Facts facts, Wire wire, @Nullable Loom loom, Point from, Point to) {
    return Finding.on(Subject.wire(wire.id()))
        .message(
            "wire "
                + wire.id()
                + " shall be removed and still joins "
                + from
                + " to "
                + to
                + (loom == null ? "" : " in the planned loom " + loom.id()))
        .remedy(
            "delete the wire or change its decision"
                + (loom == null
                    ? ""
                    : "; write \"stage\": \"found\" while loom "
                        + loom.id()
                        + " is the donor's as it was found"))
        .at(facts.places().of("wires/" + wire.id(), "decision"));
  }
}
