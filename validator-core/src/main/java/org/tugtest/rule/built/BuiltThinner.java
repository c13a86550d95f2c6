package org.tugtest.rule.built;

import java.util.List;
import java.util.Optional;
import org.tugtest.facts.AsBuilt;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;

/** A wire was built of a thinner conductor than planned. */
public final class BuiltThinner implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("built-thinner", Heading.BUILT, Level.ERROR)
          .stage(Stage.BUILT)
          .summary("a wire was built thinner than planned, and nobody accepts it")
          .subjects("wires built of another size")
          .looksFor(
              """
              A wire of which a record or a harness file of the loom as built gives a smaller conductor area
              than the plan. Where one of the two areas is not known, the wire is not judged.
              """)
          .why(
              """
              The plan's fuse was chosen for the planned wire. A thinner one gets hotter at the same current
              and drops more volts, and the fuse may no longer protect it.
              """)
          .remedy(Standing.ACCEPT)
          .basis(Standing.SOURCE)
          .failing(
              Examples.with(
                  Examples.entry(
                      "re-gauged", "wires/W1", "\"planned\": \"w1.0\", \"built\": \"w0.5\"")))
          .passing(
              Examples.with(
                  Examples.entry(
                      "re-gauged",
                      "wires/W1",
                      "\"planned\": \"w1.0\", \"built\": \"w0.5\", \"accepted\": true")))
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Deviation deviation : facts.asBuilt().map(AsBuilt::deviations).orElse(List.of())) {
      if (deviation.kind() != Deviation.Kind.SIZE) {
        continue;
      }
      Double planned = deviation.planned();
      Double built = deviation.built();
      if (planned == null || built == null) {
        ledger.notJudged(deviation.subject(), "its area, as planned or as built, is not known");
        continue;
      }
      Optional<String> why = Standing.blocked(deviation, facts.today());
      if (built >= planned || why.isEmpty()) {
        ledger.fine();
      } else {
        ledger.finding(
            Standing.finding(deviation, why.get()).measured(Measured.under(built, planned, "mm2")));
      }
    }
  }
}
