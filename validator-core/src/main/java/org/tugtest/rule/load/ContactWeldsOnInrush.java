package org.tugtest.rule.load;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Cause;
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

  /** What is charged within this, in seconds, is over before a contact bounces; chosen. */
  private static final double LEAST_S = 1e-4;

  /** Of a source that gives none. */
  private static final double USUAL_OHMS = 0.01;

  private static final RuleInfo INFO =
      RuleInfo.of("contact-welds-on-inrush", Heading.LOAD, Level.WARNING)
          .summary("a contact closes onto more inrush than it can make")
          .subjects("contacts with a rating that loads with an inrush are fed through")
          .looksFor(
              """
              For each contact the sum of inrushA of the loads whose current passes it in one state,
              as if all started when it closes, against three times its ratingA. A load with
              capacitanceUf draws what its volts drive through the resistance of its way and its
              source, less what it is charged to already in a state in which this contact alone is
              open, as by a resistor of a pre-charge relay; where there is no such state among
              those in which it is open, another contact closes the circuit. Charging within 0.1 ms
              does not count.
              """)
          .why(
              """
              Lamps and motors take many times their current for the first moments. A contact that
              bounces on such a current welds, and the load no longer switches off.
              """)
          .remedy(
              """
              Take a contact made for the inrush, split the loads over two, or start them one after
              the other. Charge a large capacitor through a resistor first.
              """)
          .basis(
              """
              Three times the rating is common practice where the maker gives no making current. The
              0.1 ms are chosen, for the time in which a contact has not bounced yet.
              """)
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .setting(
              new Setting(TIMES, 3, 1, 20, "", "making current over ratingA (common practice)"))
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
        if (load.element() instanceof Element.Load its
            && (its.inrushA() != null || its.capacitanceUf() != null)) {
          Feed.of(facts, state, load).ifPresent(feed -> add(facts, here, state, its, feed));
        }
      }
      here.forEach(
          (contact, start) ->
              worst.merge(contact, start, (old, now) -> now.sum() > old.sum() ? now : old));
    }
    worst.forEach((contact, start) -> judge(settings, contact, start, ledger));
  }

  private static void add(
      Facts facts,
      Map<Edge.OfElement, Start> here,
      OperatingPoint state,
      Element.Load its,
      Feed feed) {
    double given = its.inrushA() == null ? 0 : its.inrushA();
    for (List<Way.Step> steps : List.of(feed.supply().steps(), feed.back().steps())) {
      for (Way.Step step : steps) {
        if (step.edge() instanceof Edge.OfElement inside
            && inside.element() instanceof Element.Contact) {
          double inrush = Math.max(given, charging(facts, inside, state, its, feed));
          if (!(inrush > 0)) {
            continue;
          }
          here.computeIfAbsent(inside, key -> new Start(state, new TreeMap<>(NaturalOrder.NATURAL)))
              .inrush()
              .put(feed.load().text(), inrush);
        }
      }
    }
  }

  /**
   * The current that a contact closes onto when the capacitor of a load lacks volts: those between
   * what it has in the state and the most it has in a state in which the contact is open, over the
   * resistance of its way and its source. None when it is charged sooner than a contact bounces.
   */
  private static double charging(
      Facts facts, Edge.OfElement contact, OperatingPoint state, Element.Load its, Feed feed) {
    Double micro = its.capacitanceUf();
    if (micro == null) {
      return 0;
    }
    double before = 0;
    boolean open = false;
    boolean last = false;
    for (OperatingPoint other : facts.operating().all()) {
      boolean here = state.from().map(other.state()::equals).orElse(!other.conducts(contact));
      open |= here;
      if (here && isLast(feed, contact, other)) {
        last = true;
        before = Math.max(before, Math.abs(other.across(feed.load())));
      }
    }
    if (open && !last) {
      return 0;
    }
    double ohms = feed.wayOhms() + sourceOhms(feed.supply().source());
    double seconds = micro * 1e-6 * ohms;
    double lacking = feed.volts() - before;
    return lacking > 0 && seconds >= LEAST_S ? lacking / ohms : 0;
  }

  /** Whether all other contacts on the way are closed, so that this one closes the circuit. */
  private static boolean isLast(Feed feed, Edge.OfElement contact, OperatingPoint before) {
    for (Way way : List.of(feed.supply(), feed.back())) {
      for (Way.Step step : way.steps()) {
        if (!step.edge().equals(contact) && !before.conducts(step.edge())) {
          return false;
        }
      }
    }
    return true;
  }

  private static double sourceOhms(Edge.@Nullable OfElement source) {
    Double given =
        source != null && source.element() instanceof Element.Source its ? its.ohms() : null;
    return given == null ? USUAL_OHMS : given;
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
            .remedy(
                "take a contact made for it, split the loads, or start them one by one; charge a"
                    + " capacitor through a resistor first")
            .measured(measured)
            .state(start.state().state())
            .basis(Basis.COMMON_PRACTICE));
  }
}
