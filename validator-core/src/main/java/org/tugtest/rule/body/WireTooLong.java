package org.tugtest.rule.body;

import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.route.Route;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.table.Cited;
import org.tugtest.table.LengthToleranceTable;

/** A wire is cut or built longer than its route, its ends and the tolerance allow. */
public final class WireTooLong implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("wire-too-long", Heading.BODY, Level.WARNING)
          .summary("a wire is longer than its route and the tolerance allow")
          .subjects("wires with a cut or built length")
          .looksFor(
              """
              A wire whose "builtMm", or else "cutMm", is more than the length its route is cut to
              and the tolerance on it: 25 mm to 0.3 m, 50 mm to 1.5 m, 100 mm to 3 m, 150 mm to
              7.5 m, 5 % beyond. For a wire that is laid in place it is the length its route needs,
              and the same tolerance. A wire without a route is not judged.
              """)
          .why(
              """
              Length that is not needed is mass and resistance, and ends up as a coil behind a
              panel that nobody planned a fixing for. Often it shows that the route in the files
              is not the one in the car.
              """)
          .remedy(
              """
              Cut it to the length its route needs, or give the route it really takes with "via".
              """)
          .basis(
              """
              Bands: IPC/WHMA-A-620 table 11-1 (draft B for industry review). Allowances that the
              files do not give are the format's own, common practice.
              """)
          .setting(
              new Setting(
                  "extraMm",
                  0,
                  0,
                  10_000,
                  "mm",
                  "what may be added to the tolerance, such as a build spare that is trimmed"
                      + " later"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "cutMm": 1400}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "cutMm": 1120}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (GivenLength given : GivenLength.all(facts)) {
      Route route = given.route();
      if (route == null) {
        ledger.notJudged(given.subject(), given.whyNoRoute());
        continue;
      }
      Cited plus = LengthToleranceTable.plusMm(given.meantMm(route));
      double most =
          given.meantMm(route) + plus.value() + settings.number("extraMm", given.subject());
      if (given.mm() <= most + GivenLength.SAME) {
        ledger.fine();
      } else {
        ledger.finding(finding(given, route, plus, most));
      }
    }
  }

  private static Finding.Draft finding(GivenLength given, Route route, Cited plus, double most) {
    Measured measured = Measured.over(given.mm(), Math.floor(most * 10 + 1e-9) / 10, "mm");
    Finding.Draft draft =
        Finding.on(given.subject())
            .message(
                "wire "
                    + route.wire()
                    + given.verb()
                    + Millimetres.actual(measured)
                    + ", "
                    + Millimetres.text(given.mm() - given.meantMm(route))
                    + " more than the "
                    + Millimetres.text(given.meantMm(route))
                    + (given.inPlace() ? " its route needs" : " its route is cut to")
                    + "; at most "
                    + Millimetres.limit(measured)
                    + " are in tolerance")
            .remedy(
                (given.inPlace() ? "trim it to " : "cut it to ")
                    + Millimetres.text(given.meantMm(route))
                    + ", or give the way it really takes with \"via\"")
            .measured(measured)
            .basis(route.basis().weaker(plus.basis()))
            .detail("tolerance " + Millimetres.text(plus.value()) + ": " + plus.source());
    given.explain(route).forEach(draft::detail);
    return draft;
  }
}
