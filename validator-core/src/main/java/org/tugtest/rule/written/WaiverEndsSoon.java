package org.tugtest.rule.written;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Waiver;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;

/** A waiver has only a few days left. */
public final class WaiverEndsSoon implements Rule {
  private static final String DAYS = "days";
  private static final RuleInfo INFO =
      RuleInfo.of("waiver-ends-soon", Heading.WRITTEN, Level.NOTE)
          .stage(Stage.WAIVERS)
          .summary("a waiver ends within the next days")
          .subjects("waivers with a date")
          .looksFor(
              """
              A waiver whose last day is today or at most so many days ahead. One that is past is
              judged by waiver-expired.
              """)
          .why(
              "When it ends, what it covers blocks the next commit; better to know before the race.")
          .remedy("Put right what it covers, or set a later date and look at the reason again.")
          .basis("Two weeks: common practice, time enough to order a part.")
          .setting(
              new Setting(
                  DAYS, 14, 0, 365, "days", "notice before the last day; 14 is common practice"))
          .failing(
              """
              {"format": 1, "sketch": true, "limits": {"waiver-ends-soon": {"days": 365}},
               "wires": {"W1": {"from": "F1:1", "to": "R1:3"}, "W2": {"from": "F2:1", "to": "R1:3"}},
               "waivers": {"double": {"rule": "cavity-doubled", "at": "connectors/R1:3",
                 "reason": "until the new housing is here", "until": "2026-12-09"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "F1:1", "to": "R1:3"}, "W2": {"from": "F2:1", "to": "R1:3"}},
               "waivers": {"double": {"rule": "cavity-doubled", "at": "connectors/R1:3",
                 "reason": "until the new housing is here", "until": "9999-12-31"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Waiver waiver : facts.harness().waivers().values()) {
      LocalDate until = waiver.until();
      if (until == null) {
        continue;
      }
      Subject subject = Subject.of("waivers", waiver.id());
      long left = ChronoUnit.DAYS.between(facts.today(), until);
      double notice = settings.number(DAYS, subject);
      if (left < 0 || left > notice) {
        ledger.fine();
      } else {
        ledger.finding(
            Finding.on(subject)
                .message(
                    "waiver "
                        + waiver.id()
                        + " for "
                        + waiver.rule()
                        + " at "
                        + waiver.at()
                        + " ends on "
                        + until
                        + ", "
                        + (left == 0 ? "today" : "in " + left + (left == 1 ? " day" : " days")))
                .remedy("put right what it covers, or give a later \"until\"")
                .measured(Measured.under((double) left, notice, "days"))
                .at(facts.places().of(subject.place(), "until")));
      }
    }
  }
}
