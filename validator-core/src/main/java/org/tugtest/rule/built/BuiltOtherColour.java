package org.tugtest.rule.built;

import java.util.List;
import java.util.Optional;
import org.tugtest.facts.AsBuilt;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;

/** A wire was built of another colour than planned. */
public final class BuiltOtherColour implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("built-other-colour", Heading.BUILT, Level.ERROR)
          .stage(Stage.BUILT)
          .summary("a wire was built of another colour than planned, and nobody accepts it")
          .subjects("wires built of another colour")
          .looksFor(
              """
              A wire of which a record or a harness file of the loom as built gives another colour than the
              plan.
              """)
          .why(
              """
              In the vehicle a wire is found by its colour and its label. A plan with another colour sends the
              next person to the wrong wire.
              """)
          .remedy(Standing.ACCEPT)
          .basis(Standing.SOURCE)
          .failing(
              Examples.with(
                  Examples.entry(
                      "re-coloured", "wires/W1", "\"planned\": \"RD\", \"built\": \"OG\"")))
          .passing(
              Examples.with(
                  Examples.entry(
                      "re-coloured",
                      "wires/W1",
                      "\"planned\": \"RD\", \"built\": \"OG\", \"accepted\": true")))
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Deviation deviation : facts.asBuilt().map(AsBuilt::deviations).orElse(List.of())) {
      if (deviation.kind() != Deviation.Kind.COLOUR) {
        continue;
      }
      Optional<String> why = Standing.blocked(deviation, facts.today());
      if (why.isEmpty()) {
        ledger.fine();
      } else {
        ledger.finding(Standing.finding(deviation, why.get()));
      }
    }
  }
}
