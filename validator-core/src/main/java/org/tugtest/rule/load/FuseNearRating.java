package org.tugtest.rule.load;

import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.Element;
import org.tugtest.model.Layout;
import org.tugtest.model.Zone;
import org.tugtest.network.Edge;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.LastingAmps;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.Quoted;

/** A fuse carries more for long than its rating allows at the temperature where it sits. */
public final class FuseNearRating implements Rule {
  private static final String PERCENT = "percent";
  private static final String PER_KELVIN = "percentPerKelvin";
  private static final double FROM_C = 25;
  private static final RuleInfo INFO =
      RuleInfo.of("fuse-near-rating", Heading.LOAD, Level.WARNING)
          .summary("a fuse carries too much of its rating for long")
          .subjects("fuses that are fitted")
          .looksFor(
              """
              Fuses whose current in a lasting state is over 75 % of their rating at 25 °C,
              0.4 % of that less for every kelvin above. The temperature is that of the zone
              of the device the fuse sits in, else defaults.ambientC. A load with a duty counts by
              the root mean square of its current, which is what warms the fuse. Electronic trips
              and brief states are left out. A fuse without a rating, and one that seems within
              its limit but before which a load gives no figure of what it draws, are not judged.
              """)
          .why(
              """
              A fuse that runs near its rating ages and opens one day without a fault, on the last
              lap.
              """)
          .remedy(
              """
              Fit the next rating if the wires behind it stand it, or give some of its loads another
              way. The finding names the rating and the wires that would not stand it.
              """)
          .basis("75 % at 25 °C: a published fuse glossary. 0.4 % per kelvin: common practice.")
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .setting(
              new Setting(
                  PERCENT, 75, 1, 100, "%", "of the rating at 25 °C (a published fuse glossary)"))
          .setting(
              new Setting(
                  PER_KELVIN,
                  0.4,
                  0,
                  5,
                  "%/K",
                  "less for each kelvin above 25 °C (common practice)"))
          .failing(example(8))
          .passing(example(7))
          .build();

  private static String example(int amps) {
    return Example.filled(
        """
        {"format": 1, "defaults": {"ambientC": 25},
         "parts": {"fuses": {"f10": {"ratingA": 10, "style": "blade-mini"}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": %d}}}},
         "fitted": {"FB.f1": "f10"},
         "wires": {"W1": {"from": "BAT:+", "to": "FB:in"}, "W2": {"from": "FB:1", "to": "FAN:1"},
                   "W3": {"from": "FAN:2", "to": "BAT:-"}}}
        """,
        amps);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    NextFuse next = new NextFuse(facts);
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Fuse fuse
          && inside.fitted()
          && !fuse.electronic()) {
        Optional<Double> rating = facts.protection().ratings().ofFuse(inside);
        Optional<LastingAmps> flow = LastingAmps.of(facts, edge);
        if (rating.isEmpty()) {
          ledger.notJudged(edge.subject(), "its rating is not known");
        } else if (flow.isEmpty()) {
          ledger.notJudged(edge.subject(), LastingAmps.NO_STATE);
        } else {
          judge(facts, settings, inside, rating.get(), flow.get(), next, ledger);
        }
      }
    }
  }

  private static void judge(
      Facts facts,
      Settings settings,
      Edge.OfElement fuse,
      double rating,
      LastingAmps flow,
      NextFuse next,
      Ledger ledger) {
    Subject subject = fuse.subject();
    double celsius = celsius(facts, fuse.device());
    double above = Math.max(0, celsius - FROM_C);
    double less = settings.number(PER_KELVIN, subject);
    double share = settings.number(PERCENT, subject) * Math.max(0, 100 - less * above) / 10_000;
    double allowed = rating * share;
    if (flow.amps() <= allowed) {
      if (flow.known()) {
        ledger.fine();
      } else {
        ledger.notJudged(subject, LastingAmps.NOT_KNOWN);
      }
      return;
    }
    Measured measured = Measured.over(flow.amps(), rounded(allowed), "A");
    Finding.Draft draft =
        Finding.on(subject)
            .message(
                "fuse "
                    + fuse.text()
                    + " ("
                    + Quoted.number(rating)
                    + " A) carries "
                    + measured.actualShown()
                    + " A in state "
                    + flow.worst().state()
                    + "; at "
                    + Quoted.number(celsius)
                    + " °C at most "
                    + measured.limitShown()
                    + " A for long")
            .remedy(next.remedy(fuse, rating, share > 0 ? flow.amps() / share : Double.MAX_VALUE))
            .measured(measured)
            .state(flow.worst().state())
            .basis(Basis.COMMON_PRACTICE.weaker(flow.worst().rests(fuse.a()).basis()));
    flow.peak().ifPresent(draft::detail);
    flow.others(allowed).forEach(draft::detail);
    ledger.finding(draft);
  }

  /** Down to a hundredth, so that the printed limit is never the greater one. */
  private static double rounded(double limit) {
    return Math.floor(limit * 100 + 1e-9) / 100;
  }

  private static double celsius(Facts facts, String id) {
    Device device = facts.harness().devices().get(id);
    String at = device == null ? null : device.at();
    Layout.Node node = at == null ? null : facts.harness().layout().nodes().get(at);
    Zone zone =
        node == null || node.zone() == null ? null : facts.harness().zones().get(node.zone());
    Double own = zone == null ? null : zone.ambientC();
    return own == null ? facts.harness().defaults().ambientC() : own;
  }
}
