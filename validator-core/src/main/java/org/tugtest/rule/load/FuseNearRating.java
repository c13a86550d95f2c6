package org.tugtest.rule.load;

import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.Element;
import org.tugtest.model.FusePart;
import org.tugtest.model.Layout;
import org.tugtest.model.Zone;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;

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
              Fuses whose current in a lasting state is over 75 % of their rating at 25 degrees
              Celsius, 0.4 % of that less for every kelvin above. The temperature is that of the zone
              of the device the fuse sits in, else defaults.ambientC. Electronic trips and brief
              states are left out.
              """)
          .why(
              """
              A fuse that runs near its rating ages and opens one day without a fault, on the last
              lap.
              """)
          .remedy(
              """
              Fit the next rating if the wires behind it stand it, or give some of its loads another
              way.
              """)
          .basis(
              "75 % at 25 degrees: a published fuse glossary. 0.4 % per kelvin: common practice.")
          .setting(new Setting(PERCENT, 75, 1, 100, "%", "of the rating, at 25 degrees Celsius"))
          .setting(new Setting(PER_KELVIN, 0.4, 0, 5, "%/K", "less for each kelvin above 25"))
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
    List<OperatingPoint> lasting =
        facts.operating().all().stream().filter(state -> !state.brief()).toList();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Fuse fuse
          && inside.fitted()
          && !fuse.electronic()) {
        Optional<Double> rating = rating(facts, inside, fuse);
        if (rating.isEmpty()) {
          ledger.notJudged(edge.subject(), "its rating is not known");
        } else if (lasting.isEmpty()) {
          ledger.notJudged(edge.subject(), "no state lasts");
        } else {
          judge(facts, settings, inside, rating.get(), lasting, ledger);
        }
      }
    }
  }

  private static Optional<Double> rating(Facts facts, Edge.OfElement inside, Element.Fuse fuse) {
    if (fuse.ratingA() != null) {
      return Optional.of(fuse.ratingA());
    }
    String part = facts.harness().fitted().get(inside.text());
    FusePart fitted = part == null ? null : facts.harness().parts().fuses().get(part);
    return fitted == null ? Optional.empty() : Optional.ofNullable(fitted.ratingA());
  }

  private static void judge(
      Facts facts,
      Settings settings,
      Edge.OfElement fuse,
      double rating,
      List<OperatingPoint> lasting,
      Ledger ledger) {
    OperatingPoint worst = lasting.get(0);
    for (OperatingPoint state : lasting) {
      worst = Math.abs(state.amps(fuse)) > Math.abs(worst.amps(fuse)) ? state : worst;
    }
    double amps = Math.abs(worst.amps(fuse));
    Subject subject = fuse.subject();
    double celsius = celsius(facts, fuse.device());
    double above = Math.max(0, celsius - FROM_C);
    double share = settings.number(PERCENT, subject);
    double less = settings.number(PER_KELVIN, subject);
    double allowed = rating * share * Math.max(0, 100 - less * above) / 10_000;
    if (amps <= allowed) {
      ledger.fine();
      return;
    }
    Measured measured = Measured.over(amps, rounded(allowed), "A");
    ledger.finding(
        Finding.on(subject)
            .message(
                "fuse "
                    + fuse.text()
                    + " ("
                    + plain(rating)
                    + " A) carries "
                    + measured.actualShown()
                    + " A in state "
                    + worst.state()
                    + "; at "
                    + plain(celsius)
                    + " degrees Celsius at most "
                    + measured.limitShown()
                    + " A for long")
            .remedy(
                "fit the next rating if the wires behind it stand it, or give some of its loads"
                    + " another way")
            .measured(measured)
            .state(worst.state())
            .basis(Basis.COMMON_PRACTICE.weaker(worst.rests(fuse.a()).basis())));
  }

  /** Down to a hundredth, so that the printed limit is never the greater one. */
  private static double rounded(double limit) {
    return Math.floor(limit * 100 + 1e-9) / 100;
  }

  private static String plain(double figure) {
    return java.math.BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString();
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
