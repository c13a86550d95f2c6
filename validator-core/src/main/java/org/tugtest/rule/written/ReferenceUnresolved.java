package org.tugtest.rule.written;

import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;
import org.tugtest.rule.written.reference.Missing;
import org.tugtest.rule.written.reference.References;

/** Something is named that is not there. */
public final class ReferenceUnresolved implements Rule {
  private static final int LISTED = 3;
  private static final RuleInfo INFO =
      RuleInfo.of("reference-unresolved", Heading.WRITTEN, Level.ERROR)
          .stage(Stage.REFERENCES)
          .summary("something is named that is not there")
          .subjects("entries that name others")
          .looksFor(
              """
              Every name in the files that stands for something else: what a wire ends on, parts of
              every kind, nodes, segments, zones, what a connector mates, members of states and
              their positions, fuse places, pins of elements, what expectations, waivers and limits
              speak of, rules and their settings. A name that nothing bears is one finding, however
              many things use it, with the nearest names that there are. In a sketch, connectors,
              splices, cavities and pins that wires name are there by being named. Whether a cavity
              or pin is there that a wire ends on is judged by cavity-unknown.
              """)
          .why(
              """
              A slip in a name is silent: the wire hangs in the air, the part has no size, the
              waiver covers nothing, and every check that needs what is named has nothing to judge.
              """)
          .remedy("Correct the name, or define what it stands for.")
          .basis("Follows from the format: a reference names something that is defined.")
          .causes(Cause.JOINT_UNMADE)
          .failing(
              """
              {"format": 1,
               "parts": {"housings": {"h2": {"side": "socket", "rows": [["1", "2"]]}}},
               "connectors": {"R1": {"housing": "h2"}, "R2": {"housing": "h3"}},
               "wires": {"W1": {"from": "R1:1", "to": "R22:1", "areaMm2": 1.0}}}
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {"SW": {"positions": ["off", "side", "head"]}},
               "states": {"night": {"set": {"SW": "heads"}}},
               "wires": {"W1": {"from": "SW:1", "to": "R1:1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {"SW": {"positions": ["off", "side", "head"]}},
               "states": {"night": {"set": {"SW": "head"}}},
               "wires": {"W1": {"from": "SW:1", "to": "R1:1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    References references = References.of(facts);
    ledger.fine(references.fine());
    references.unjudged().forEach(ledger::notJudged);
    for (Missing missing : references.missing()) {
      List<Subject> by = missing.by();
      Finding.Draft draft =
          Finding.on(by.get(0))
              .kind(missing.kind())
              .message(missing.message())
              .remedy(missing.remedy());
      by.subList(1, by.size()).forEach(draft::and);
      missing.at().forEach(draft::at);
      if (by.size() > LISTED) {
        by.forEach(subject -> draft.detail(subject.place()));
      }
      ledger.finding(draft, by);
    }
  }
}
