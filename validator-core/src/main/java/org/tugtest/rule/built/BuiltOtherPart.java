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

/** A part other than the planned one was built in. */
public final class BuiltOtherPart implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("built-other-part", Heading.BUILT, Level.ERROR)
          .stage(Stage.BUILT)
          .summary("another part was built in than planned, and nobody accepts it")
          .subjects("parts built otherwise")
          .looksFor(
              """
              A housing, terminal, splice, fuse, covering, or a wire of another size that is not known to be
              thinner, of which a record or a harness file of the loom as built names another part than the
              plan.
              """)
          .why(
              """
              Sealing, temperature class, range of the crimp, keying and mate go with the part; the next spare
              is bought by the plan.
              """)
          .remedy(Standing.ACCEPT)
          .basis(Standing.SOURCE)
          .failing(
              Examples.with(
                  Examples.entry(
                      "part", "connectors/X1", "\"planned\": \"h3\", \"built\": \"h3b\"")))
          .passing(
              Examples.with(
                  Examples.entry(
                      "part",
                      "connectors/X1",
                      "\"planned\": \"h3\", \"built\": \"h3b\", \"accepted\": true")))
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Deviation deviation : facts.asBuilt().map(AsBuilt::deviations).orElse(List.of())) {
      if (!isOtherPart(deviation)) {
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

  /** A thinner wire has a rule of its own. */
  private static boolean isOtherPart(Deviation deviation) {
    Double planned = deviation.planned();
    Double built = deviation.built();
    return deviation.kind() == Deviation.Kind.PART
        || (deviation.kind() == Deviation.Kind.SIZE
            && (planned == null || built == null || built >= planned));
  }
}
