package org.tugtest.rule.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Reach;
import org.tugtest.protect.Isolation;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** The isolator cuts a turning generator off from every battery and leaves it nothing to feed. */
public final class IsolatorLeavesLoadDump implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("isolator-leaves-load-dump", Heading.PROTECTION, Level.WARNING)
          .summary(
              "the isolator opens a turning generator from every battery, with nothing to take its"
                  + " surge")
          .subjects("generators that isolator contacts part from a battery")
          .looksFor(
              """
              A source with "generator": true whose plus is joined to the plus of a battery while the
              isolator contacts are closed and to none when they are open, and on whose side then
              nothing is left that takes the surge: a load with "use": "free" outside its own device,
              such as a bleed resistor on a contact that closes as the isolator opens. A converter
              ("fedBy" its input) turns nothing and is left out.
              """)
          .why(
              """
              An alternator that is thrown off the battery while it charges drives its own output to
              far more than the supply for tenths of a second. That kills its rectifier and whatever
              is still joined to it.
              """)
          .remedy(
              """
              Give the isolator a contact that puts the alternator on a resistor as it opens, or let
              it open the alternator's field as well.
              """)
          .basis(
              """
              Common practice in motorsport: a general circuit breaker with a resistor or a second
              pole for the alternator.
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "ALT": {"elements": {"gen": {"kind": "source", "plus": "B+", "minus": "31",
                                              "generator": true}}},
                 "ISO": {"elements": {"pole": {"kind": "contact", "a": "1", "b": "2",
                                               "isolator": true}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "ISO:1", "areaMm2": 16},
                         "W2": {"from": "ISO:2", "to": "ALT:B+", "areaMm2": 16},
                         "W3": {"from": "ALT:31", "to": "BAT:-", "areaMm2": 16}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "ALT": {"elements": {"gen": {"kind": "source", "plus": "B+", "minus": "31",
                                              "generator": true}}},
                 "ISO": {"elements": {"pole": {"kind": "contact", "a": "1", "b": "2",
                                               "isolator": true},
                                      "surge": {"kind": "contact", "a": "2", "b": "3",
                                                "closedIn": ["off"]}}},
                 "DUMP": {"elements": {"r": {"kind": "load", "a": "1", "b": "2", "ohms": 3,
                                             "use": "free"}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "ISO:1", "areaMm2": 16},
                         "W2": {"from": "ISO:2", "to": "ALT:B+", "areaMm2": 16},
                         "W3": {"from": "ALT:31", "to": "BAT:-", "areaMm2": 16},
                         "W4": {"from": "ISO:3", "to": "DUMP:1", "areaMm2": 1.5},
                         "W5": {"from": "DUMP:2", "to": "BAT:-", "areaMm2": 1.5}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Isolation isolation = facts.isolation();
    if (isolation.isolators().isEmpty()) {
      return;
    }
    List<Edge.OfElement> batteries = new ArrayList<>();
    List<Edge.OfElement> generators = new ArrayList<>();
    for (Edge.OfElement source : facts.network().sources()) {
      Element.Source its = (Element.Source) source.element();
      if (!its.generator()) {
        batteries.add(source);
      } else if (!isConverter(facts, source, its)) {
        generators.add(source);
      }
    }
    for (Edge.OfElement generator : generators) {
      Optional<Path> way = toBattery(facts, generator, batteries);
      Reach left = isolation.live(generator);
      boolean parted =
          way.isPresent() && batteries.stream().noneMatch(one -> left.reaches(one.a()));
      if (!parted) {
        if (way.isPresent()) {
          ledger.fine();
        }
      } else if (takesSurge(facts, isolation.home(generator), left, generator)) {
        ledger.fine();
      } else {
        ledger.finding(finding(generator, way.get()));
      }
    }
  }

  /** Whether a source turns nothing: it is fed by a load that is no field. */
  private static boolean isConverter(Facts facts, Edge.OfElement source, Element.Source its) {
    String input = its.fedBy() == null ? "" : source.device() + "." + its.fedBy();
    return facts.network().edges().stream()
        .anyMatch(
            edge ->
                edge instanceof Edge.OfElement inside
                    && inside.text().equals(input)
                    && inside.element() instanceof Element.Load load
                    && load.use() != Element.Load.Use.FREE);
  }

  private static Optional<Path> toBattery(
      Facts facts, Edge.OfElement generator, List<Edge.OfElement> batteries) {
    Reach whole = facts.protection().feed(generator);
    return batteries.stream()
        .map(battery -> whole.path(battery.a()).orElse(null))
        .filter(Objects::nonNull)
        .findFirst();
  }

  private static boolean takesSurge(Facts facts, Reach home, Reach left, Edge.OfElement generator) {
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Load load
          && load.use() == Element.Load.Use.FREE
          && !inside.device().equals(generator.device())
          && ((left.reaches(edge.a()) && home.reaches(edge.b()))
              || (left.reaches(edge.b()) && home.reaches(edge.a())))) {
        return true;
      }
    }
    return false;
  }

  private static Finding.Draft finding(Edge.OfElement generator, Path way) {
    Subject pole =
        way.edges().stream()
            .filter(
                edge ->
                    edge instanceof Edge.OfElement inside
                        && inside.element() instanceof Element.Contact contact
                        && contact.isolator())
            .map(Edge::subject)
            .findFirst()
            .orElse(generator.subject());
    Finding.Draft draft =
        Finding.on(pole)
            .message(
                "isolator contact "
                    + pole.id()
                    + " parts generator "
                    + generator.text()
                    + " from every battery while it turns, and nothing on its side takes the surge")
            .remedy(
                "let a contact that closes as "
                    + pole.id()
                    + " opens put "
                    + generator.text()
                    + " on a resistor (a load with \"use\": \"free\")")
            .basis(Basis.COMMON_PRACTICE)
            .detail(way.text());
    return pole.equals(generator.subject()) ? draft : draft.and(generator.subject());
  }
}
