package org.tugtest.rule.written;

import java.time.LocalDate;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.facts.WaiverUse;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Waiver;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;
import org.tugtest.text.Nearest;
import org.tugtest.text.Series;

/** A waiver covers nothing that was found. */
public final class WaiverIdle implements Rule {
  private static final int SHOWN = 3;
  private static final RuleInfo INFO =
      RuleInfo.of("waiver-idle", Heading.WRITTEN, Level.WARNING)
          .stage(Stage.WAIVERS)
          .summary("a waiver covers no finding")
          .subjects("waivers")
          .looksFor(
              """
              A waiver that matches no finding of its rule although the rule ran and could judge its
              place. A waiver covers the findings of its rule whose first subject is its "at", in
              its "state" if it names one. Expired waivers are judged by waiver-expired.
              """)
          .why(
              """
              Either what it covered was put right, and the next such fault at the same place would
              be covered silently, or its "at" has a slip and what it should cover is not covered.
              """)
          .remedy("Delete the waiver, or correct its \"rule\", \"at\" or \"state\".")
          .basis("Follows from the format.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "F1:1", "to": "R1:3"}, "W2": {"from": "F2:1", "to": "R1:4"}},
               "waivers": {"double": {"rule": "cavity-doubled", "at": "connectors/R1:3",
                 "reason": "until the new housing is here"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "F1:1", "to": "R1:3"}, "W2": {"from": "F2:1", "to": "R1:3"}},
               "waivers": {"double": {"rule": "cavity-doubled", "at": "connectors/R1:3",
                 "reason": "until the new housing is here"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    WaiverUse use = facts.waiverUse();
    for (Waiver waiver : facts.harness().waivers().values()) {
      Subject subject = Subject.of("waivers", waiver.id());
      String rule = waiver.rule();
      String at = waiver.at();
      LocalDate until = waiver.until();
      if (rule == null || at == null || waiver.reason() == null) {
        ledger.notJudged(subject, Unjudged.MISREAD);
      } else if (use.covered().containsKey(waiver.id())) {
        ledger.fine();
      } else if (until != null && facts.today().isAfter(until)) {
        ledger.notJudged(subject, "it is past its date");
      } else if (!use.ran().contains(rule)) {
        ledger.notJudged(subject, "its rule did not run");
      } else if (use.unjudged().contains(waiver.id())) {
        ledger.notJudged(subject, "its rule could not judge its place");
      } else if (!facts.unread().isEmpty()) {
        ledger.notJudged(subject, Facts.FILE_UNREAD);
      } else {
        ledger.finding(finding(facts, waiver, rule, at));
      }
    }
  }

  private static Finding.Draft finding(Facts facts, Waiver waiver, String rule, String at) {
    List<String> found =
        facts.waiverUse().foundBy(rule).stream().map(Subject::place).distinct().toList();
    String state = waiver.state();
    return Finding.on(Subject.of("waivers", waiver.id()))
        .message(
            "waiver "
                + waiver.id()
                + " covers nothing: "
                + rule
                + " finds nothing at "
                + at
                + (state == null ? "" : " in state " + state)
                + (found.contains(at)
                    ? state == null ? " that no other waiver covers" : ", only in others"
                    : ""))
        .remedy(remedy(at, found))
        .at(facts.places().of("waivers/" + waiver.id(), "at"));
  }

  private static String remedy(String at, List<String> found) {
    String delete = "delete it, or correct its \"at\"";
    if (found.isEmpty() || found.contains(at)) {
      return "delete it";
    }
    String near = Nearest.question(at, found);
    return near.isEmpty()
        ? delete + "; what the rule finds is at " + Series.and(found, SHOWN)
        : near + " if not, delete it";
  }
}
