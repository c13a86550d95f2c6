package org.tugtest.rule.built;

import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;

/** Something joins what the plan does not join, or is not there, or sits elsewhere. */
public final class BuiltOtherwise implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("built-otherwise", Heading.BUILT, Level.ERROR)
          .stage(Stage.BUILT)
          .summary("a loom was built to other connections than planned, and nobody accepts it")
          .subjects("deviations in what is joined, and where")
          .looksFor(
              """
              A record or a harness file of the loom as built says that a wire ends on another
              contact, was added or left out, or that a connector, a splice or a device is not
              there. It is an error until the team accepts it, once its day is past, and as long
              as it is noted as not safe. What only sits at another place is a warning.
              """)
          .why(
              """
              Everything else that is checked is checked of the plan. Where the loom joins other
              things, no fuse, no earth and no state is proven, and the next person looks in the
              wrong cavity.
              """)
          .remedy(Standing.ACCEPT)
          .basis(Standing.SOURCE)
          .failing(
              Examples.with(
                  Examples.entry(
                      "re-pinned", "wires/W1", "\"planned\": \"X1:1\", \"built\": \"X1:3\"")))
          .passing(
              Examples.with(
                  Examples.entry(
                      "re-pinned",
                      "wires/W1",
                      "\"planned\": \"X1:1\", \"built\": \"X1:3\", \"accepted\": true, \"until\":"
                          + " \"2027-03-31\"")))
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    List<Deviation> deviations =
        facts
            .asBuilt()
            .map(built -> built.deviations(Deviation.Kind.CONNECTION, Deviation.Kind.POSITION))
            .orElse(List.of());
    for (Deviation deviation : deviations) {
      Optional<String> why = Standing.blocked(deviation, facts.today());
      if (why.isEmpty()) {
        ledger.fine();
      } else {
        boolean place = deviation.kind() == Deviation.Kind.POSITION;
        ledger.finding(
            Standing.finding(deviation, why.get()).level(place ? Level.WARNING : Level.ERROR));
      }
    }
  }
}
