package org.tugtest.rule.load;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** A contact closes onto more inrush than it can make without welding. */
public final class ContactWeldsOnInrush implements Rule {
  private static final String TIMES = "times";
  private static final RuleInfo INFO =
      RuleInfo.of("contact-welds-on-inrush", Heading.LOAD, Level.WARNING)
          .summary("a contact closes onto more inrush than it can make")
          .subjects("contacts with a rating that loads with an inrush are fed through")
          .looksFor(
              """
              For each contact the sum of inrushA of the loads whose current passes it in one state,
              as if all started when it closes, against three times its ratingA.
              """)
          .why(
              """
              Lamps and motors take many times their current for the first moments. A contact that
              bounces on such a current welds, and the load no longer switches off.
              """)
          .remedy(
              """
              Take a contact made for the inrush, split the loads over two, or start them one after
              the other.
              """)
          .basis(
              "Three times the rating is common practice where the maker gives no making current.")
          .setting(new Setting(TIMES, 3, 1, 20, "", "making current over ratingA"))
          .failing(example(31))
          .passing(example(30))
          .build();

  private static String example(int inrush) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2", "ratingA": 10}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 5, "inrushA": %d, "inrushS": 0.2}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "SW:1"}, "W2": {"from": "SW:2", "to": "FAN:1"},
                   "W3": {"from": "FAN:2", "to": "BAT:-"}}}
        """,
        inrush);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** The loads that start through a contact in one state. */
  private record Start(OperatingPoint state, Map<String, Double> inrush) {
    double sum() {
      return inrush.values().stream().mapToDouble(Double::doubleValue).sum();
    }
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<Edge.OfElement, Start> worst = new LinkedHashMap<>();
    for (OperatingPoint state : facts.operating().all()) {
      Map<Edge.OfElement, Start> here = new LinkedHashMap<>();
      for (Edge.OfElement load : Users.loads(facts)) {
        if (load.element() instanceof Element.Load its && its.inrushA() != null) {
          double inrush = its.inrushA();
          Feed.of(facts, state, load)
              .ifPresent(feed -> add(here, state, load.text(), inrush, feed));
        }
      }
      here.forEach(
          (contact, start) ->
              worst.merge(contact, start, (old, now) -> now.sum() > old.sum() ? now : old));
    }
    worst.forEach((contact, start) -> judge(settings, contact, start, ledger));
  }

  private static void add(
      Map<Edge.OfElement, Start> here,
      OperatingPoint state,
      String load,
      double inrush,
      Feed feed) {
    for (List<Way.Step> steps : List.of(feed.supply().steps(), feed.back().steps())) {
      for (Way.Step step : steps) {
        if (step.edge() instanceof Edge.OfElement inside
            && inside.element() instanceof Element.Contact) {
          here.computeIfAbsent(inside, key -> new Start(state, new TreeMap<>(NaturalOrder.NATURAL)))
              .inrush()
              .put(load, inrush);
        }
      }
    }
  }

  private static void judge(Settings settings, Edge.OfElement contact, Start start, Ledger ledger) {
    Subject subject = contact.subject();
    Double rating = ((Element.Contact) contact.element()).ratingA();
    if (rating == null) {
      ledger.notJudged(subject, "it gives no ratingA");
      return;
    }
    double making = rating * settings.number(TIMES, subject);
    if (start.sum() <= making) {
      ledger.fine();
      return;
    }
    Measured measured = Measured.over(start.sum(), making, "A");
    ledger.finding(
        Finding.on(subject)
            .message(
                "contact "
                    + contact.text()
                    + " closes onto "
                    + measured.actualShown()
                    + " A of "
                    + Series.and(List.copyOf(start.inrush().keySet()), 6)
                    + " in state "
                    + start.state().state()
                    + "; it can make "
                    + measured.limitShown()
                    + " A")
            .remedy("take a contact made for it, split the loads, or start them one by one")
            .measured(measured)
            .state(start.state().state())
            .basis(Basis.COMMON_PRACTICE));
  }
}
