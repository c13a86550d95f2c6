package org.tugtest.rule.written;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import org.tugtest.text.Series;

/** Wires of a donor loom of which nobody has decided what becomes of them. */
public final class DecisionOpen implements Rule {
  private static final int SHOWN = 8;

  private static final RuleInfo INFO =
      RuleInfo.of("decision-open", Heading.WRITTEN, Level.NOTE)
          .summary("wires of a donor loom whose fate is not decided")
          .subjects("wires with a decision")
          .looksFor(
              """
              Wires with the decision "undecided". One finding for each loom, with the list; wires
              of no loom are one finding for the harness.
              """)
          .why(
              "What is not decided is neither kept safe nor taken out, and is found again by chance.")
          .remedy("Write \"keep\", \"extend\" or \"remove\", with a \"reason\".")
          .basis("Follows from the format.")
          .failing(
              """
              {"format": 1, "sketch": true, "loom": {"id": "rear", "stage": "found"},
               "wires": {"W1": {"from": "R1:1", "to": "R2:1", "decision": "undecided"},
                         "W2": {"from": "R1:2", "to": "R2:2", "decision": "keep"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true, "loom": {"id": "rear", "stage": "found"},
               "wires": {"W1": {"from": "R1:1", "to": "R2:1", "decision": "remove"},
                         "W2": {"from": "R1:2", "to": "R2:2", "decision": "keep"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<Subject, List<Subject>> open = new LinkedHashMap<>();
    for (Wire wire : facts.harness().wires().values()) {
      Subject subject = Subject.wire(wire.id());
      if (wire.decision() != null && wire.decision() != Wire.Decision.UNDECIDED) {
        ledger.fine();
      } else if (wire.decision() != null && !ledger.switchedOff(subject)) {
        Subject loom = wire.loom() == null ? Subject.HARNESS : Subject.loom(wire.loom());
        open.computeIfAbsent(loom, none -> new ArrayList<>()).add(subject);
      }
    }
    open.forEach((loom, wires) -> ledger.finding(finding(facts, loom, wires), wires));
  }

  private static Finding.Draft finding(Facts facts, Subject loom, List<Subject> wires) {
    List<String> ids = wires.stream().map(Subject::id).toList();
    boolean one = ids.size() == 1;
    String where = loom.equals(Subject.HARNESS) ? "" : " of loom " + loom.id();
    Finding.Draft draft =
        Finding.on(loom)
            .message(
                (one ? "wire " : ids.size() + " wires")
                    + (one ? ids.get(0) + where : where)
                    + (one ? " is" : " are")
                    + " not decided on"
                    + (one ? "" : ": " + Series.and(ids, SHOWN)))
            .remedy("write the decision \"keep\", \"extend\" or \"remove\" with a \"reason\"");
    for (Subject wire : wires) {
      draft.and(wire).at(facts.places().of(wire.place(), "decision"));
      if (wires.size() > SHOWN) {
        draft.detail(wire.id());
      }
    }
    return draft;
  }
}
