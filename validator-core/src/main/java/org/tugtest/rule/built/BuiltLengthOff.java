package org.tugtest.rule.built;

import java.util.List;
import java.util.Optional;
import org.tugtest.facts.AsBuilt;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;
import org.tugtest.table.Cited;
import org.tugtest.table.LengthToleranceTable;

/** A wire or a segment was built shorter than planned, or longer than its band. */
public final class BuiltLengthOff implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("built-length-off", Heading.BUILT, Level.ERROR)
          .stage(Stage.BUILT)
          .summary("a length was built out of its tolerance, and nobody accepts it")
          .subjects("lengths built otherwise")
          .looksFor(
              """
              A wire or a segment that is shorter than planned by any amount is an error; one that is longer
              by more than its band is a warning: 25 mm up to 0.3 m, 50 mm up to 1.5 m, 100 mm up to 3 m,
              150 mm up to 7.5 m, 5 % beyond. Planned is what the plan cuts the wire to, else what its route
              needs.
              """)
          .why(
              """
              A wire that is 5 mm short is a new wire, or it pulls at its crimp; one that is far too long lies
              in a loop that nothing holds.
              """)
          .remedy(Standing.ACCEPT)
          .basis(
              "IPC/WHMA-A-620 table 11-1 (draft B for industry review). Shorter is an error, longer"
                  + " a warning: derived.")
          .failing(
              Examples.with(
                  Examples.entry("length", "wires/W1", "\"planned\": 1000, \"builtMm\": 990")))
          .passing(
              Examples.with(
                  Examples.entry("length", "wires/W1", "\"planned\": 1000, \"builtMm\": 1050")))
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Deviation deviation : facts.asBuilt().map(AsBuilt::deviations).orElse(List.of())) {
      if (deviation.kind() != Deviation.Kind.LENGTH) {
        continue;
      }
      Double planned = deviation.planned();
      Double built = deviation.built();
      if (planned == null || built == null) {
        ledger.notJudged(deviation.subject(), "no planned length is known");
        continue;
      }
      Optional<String> why = Standing.blocked(deviation, facts.today());
      Optional<Finding.Draft> found = why.flatMap(w -> judge(deviation, planned, built, w));
      if (found.isPresent()) {
        ledger.finding(found.get());
      } else {
        ledger.fine();
      }
    }
  }

  private static Optional<Finding.Draft> judge(
      Deviation deviation, double planned, double built, String why) {
    Cited plus = LengthToleranceTable.plusMm(planned);
    if (built < planned) {
      return Optional.of(
          Standing.finding(deviation, why)
              .measured(Measured.under(built, planned, "mm"))
              .basis(plus.basis()));
    }
    return built > planned + plus.value()
        ? Optional.of(
            Standing.finding(deviation, why)
                .level(Level.WARNING)
                .measured(Measured.over(built, planned + plus.value(), "mm"))
                .basis(plus.basis()))
        : Optional.empty();
  }
}
