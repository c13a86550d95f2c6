package org.tugtest.rule.body;

import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.route.Allowance;
import org.tugtest.route.Route;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A wire is cut or built shorter than its route and its ends need. */
public final class WireTooShort implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("wire-too-short", Heading.BODY, Level.ERROR)
          .summary("a wire is shorter than its route and its ends need")
          .subjects("wires with a cut or built length")
          .looksFor(
              """
              A wire whose "builtMm", or else "cutMm", is less than its route: the segments it
              runs along, the lay of its twist, and breakout, spare and strip at its ends. The
              sentence says whether it does not reach at all, or reaches but lacks some of its
              spare. A wire without a route is not judged, unless it is shorter than what is
              stripped of its ends, nor one that is laid in place and not yet measured.
              """)
          .why(
              """
              A wire that is short by 5 mm is a new wire. One that just reaches pulls on its
              contacts and cannot be given a new terminal.
              """)
          .remedy(
              """
              Cut it to the length its route needs, or correct the route, or set "serviceMm" and
              "breakoutMm" of the connector to what is really there.
              """)
          .basis(
              """
              The length follows from the layout; shorter than planned is not allowed
              (IPC/WHMA-A-620 table 11-1, draft B). Allowances that the files do not give are the
              format's own, common practice.
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "cutMm": 950}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "cutMm": 1095}}}
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
      double stripped = 2 * facts.harness().defaults().stripMm();
      if (route == null && given.mm() < stripped) {
        ledger.finding(stub(given, stripped));
      } else if (route == null) {
        ledger.notJudged(given.subject(), given.whyNoRoute());
      } else if (given.mm() >= route.routedMm() - GivenLength.SAME) {
        ledger.fine();
      } else {
        ledger.finding(finding(given, route));
      }
    }
  }

  /** A wire that is shorter than what is stripped of it: most often metres for millimetres. */
  private static Finding.Draft stub(GivenLength given, double stripped) {
    Measured measured = Measured.under(given.mm(), stripped, "mm");
    return Finding.on(given.subject())
        .message(
            "wire "
                + given.subject().id()
                + given.verb()
                + Millimetres.actual(measured)
                + ", but its two ends alone are stripped over "
                + Millimetres.limit(measured))
        .remedy("lengths are in millimetres: write 3 m as 3000")
        .measured(measured);
  }

  private static Finding.Draft finding(GivenLength given, Route route) {
    double needed = route.routedMm();
    double spare = route.allowanceMm(Allowance.Kind.SERVICE);
    boolean reaches = given.mm() >= needed - spare - GivenLength.SAME;
    Measured measured = Measured.under(given.mm(), Math.ceil(needed * 10 - 1e-9) / 10, "mm");
    Subject subject = given.subject();
    Finding.Draft draft =
        Finding.on(subject)
            .message(
                "wire "
                    + route.wire()
                    + given.verb()
                    + Millimetres.actual(measured)
                    + ", but its route needs "
                    + Millimetres.limit(measured)
                    + (reaches
                        ? "; it reaches, with "
                            + Millimetres.text(needed - given.mm())
                            + " less spare than planned"
                        : "; it does not reach, even without the "
                            + Millimetres.text(spare)
                            + " of spare"))
            .remedy(given.redo(route) + ", or correct the route or what its ends need")
            .measured(measured)
            .basis(route.basis());
    given.explain(route).forEach(draft::detail);
    return draft;
  }
}
