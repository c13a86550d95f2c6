package org.tugtest.rule.written;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.tugtest.facts.Facts;
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

/** The last day of a waiver is past. */
public final class WaiverExpired implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("waiver-expired", Heading.WRITTEN, Level.ERROR)
          .stage(Stage.WAIVERS)
          .summary("a waiver is past its date")
          .subjects("waivers with a date")
          .looksFor(
              """
              A waiver whose "until" lies before the day of the check. The day named is the last on
              which it holds. From then on it covers nothing: what it covered is reported again.
              """)
          .why("A date was set because the matter shall be put right, not forgotten.")
          .remedy(
              """
              Put right what it covers and delete it, or set a later date and look at the reason
              again.
              """)
          .basis("Follows from the format.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "F1:1", "to": "R1:3"}, "W2": {"from": "F2:1", "to": "R1:3"}},
               "waivers": {"double": {"rule": "cavity-doubled", "at": "connectors/R1:3",
                 "reason": "until the new housing is here", "until": "2020-01-31"}}}
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
      if (facts.today().isAfter(until)) {
        ledger.finding(finding(facts, waiver, until));
      } else {
        ledger.fine();
      }
    }
  }

  private static Finding.Draft finding(Facts facts, Waiver waiver, LocalDate until) {
    long days = ChronoUnit.DAYS.between(until, facts.today());
    return Finding.on(Subject.of("waivers", waiver.id()))
        .message(
            "waiver "
                + waiver.id()
                + " for "
                + waiver.rule()
                + " at "
                + waiver.at()
                + " ended on "
                + until
                + ", "
                + days
                + (days == 1 ? " day ago" : " days ago"))
        .remedy("put right what it covers and delete it, or give a later \"until\"")
        .at(facts.places().of("waivers/" + waiver.id(), "until"));
  }
}
