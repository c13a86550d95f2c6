package org.tugtest.rule.protection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.protect.Isolation;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** Something stays live though every isolator contact is open. */
public final class IsolatorBypassed implements Rule {
  private static final int NAMED = 6;

  private static final RuleInfo INFO =
      RuleInfo.of("isolator-bypassed", Heading.PROTECTION, Level.ERROR)
          .summary("a way round the isolator keeps something live")
          .subjects("isolator contacts, and loads that are not free")
          .looksFor(
              """
              With every contact that has "isolator": true open: an isolator contact of which both
              sides are still joined to the plus of a source, and a load, other than a "free" one,
              that is still joined to a plus and to a minus. Switches stand in any position in which
              no isolator contact is closed; a relay counts as pulled unless its coil is dead, and a
              source that says "fedBy" gives nothing when that load is dead, such as a converter.
              Loads that are live only by the way round a contact are told with that contact, and
              so are those that a contact in the earth lead alone fails to part from another source
              or another earth.
              Besides, every state in which a generator turns is solved again from there with the
              isolators open: a load that shall work in it and still has its least volts, "minV" or
              half the nominal volts, is found with the way that feeds it.
              """)
          .why(
              """
              The isolator is for the marshal who reaches into a crashed car. What stays live behind
              it strikes sparks into fuel, and an alternator that feeds the ignition keeps the
              engine running.
              """)
          .remedy(
              """
              Feed what is found from behind the isolator, or give the isolator another pole for it,
              as for the alternator. What shall stay live for good, such as a bleed resistor or a
              clock, gets "use": "free" or a waiver with the reason.
              """)
          .basis("Follows from what an isolator is for; half the nominal volts: common practice.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "ISO": {"elements": {"pole": {"kind": "contact", "a": "1", "b": "2",
                                               "isolator": true}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "ISO:1", "areaMm2": 16},
                         "W2": {"from": "ISO:2", "to": "FB:in", "areaMm2": 16},
                         "W3": {"from": "BAT:+", "to": "FB:in", "areaMm2": 2.5},
                         "W4": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 1},
                         "W5": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "ISO": {"elements": {"pole": {"kind": "contact", "a": "1", "b": "2",
                                               "isolator": true}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}}},
                 "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "ISO:1", "areaMm2": 16},
                         "W2": {"from": "ISO:2", "to": "FB:in", "areaMm2": 16},
                         "W4": {"from": "FB:1", "to": "LAMP:1", "areaMm2": 1},
                         "W5": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 1}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    if (!facts.isolation().isolators().isEmpty()) {
      new Judgement(facts, ledger).judge();
    }
  }

  /** The loads that are not free. */
  static List<Edge.OfElement> loads(Facts facts) {
    List<Edge.OfElement> loads = new ArrayList<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Load load
          && load.use() != Element.Load.Use.FREE) {
        loads.add(inside);
      }
    }
    return loads;
  }

  /** One run over one harness. */
  private static final class Judgement {
    private final Facts facts;
    private final Ledger ledger;
    private final Isolation isolation;
    private final Map<Edge.OfElement, Path> around = new LinkedHashMap<>();
    private final Map<Edge.OfElement, List<Edge.OfElement>> behind = new LinkedHashMap<>();
    private final Set<Subject> judged = new LinkedHashSet<>();

    Judgement(Facts facts, Ledger ledger) {
      this.facts = facts;
      this.ledger = ledger;
      this.isolation = facts.isolation();
    }

    void judge() {
      for (Edge.OfElement pole : isolation.isolators()) {
        isolation.wayAround(pole).ifPresent(way -> around.put(pole, way));
      }
      EarthLeadPole.all(facts).forEach(this::judgeEarth);
      for (Edge.OfElement load : loads(facts)) {
        if (!judged.contains(load.subject())) {
          isolation.liveWay(load).ifPresent(way -> judge(load, way));
        }
      }
      around.forEach(this::judgePole);
      RunOn runOn = new RunOn(facts);
      for (RunOn.Still still : runOn.found()) {
        if (judged.add(still.load().subject())) {
          ledger.finding(runsOn(still));
        }
      }
      for (Edge.OfElement pole : isolation.isolators()) {
        if (!runOn.unsettled().isEmpty() && judged.add(pole.subject())) {
          ledger.notJudged(pole.subject(), "a state does not settle when it opens");
        }
      }
      isolation.isolators().stream().map(Edge.OfElement::subject).forEach(this::fine);
      loads(facts).stream().map(Edge.OfElement::subject).forEach(this::fine);
    }

    /** One finding for a contact in the earth lead, and not one for each load that it fails. */
    private void judgeEarth(EarthLeadPole earth) {
      List<Edge.OfElement> live = earth.live(facts);
      if (live.isEmpty()) {
        return;
      }
      List<Subject> members = new ArrayList<>(List.of(earth.pole().subject()));
      live.forEach(load -> members.add(load.subject()));
      judged.addAll(members);
      String to = earth.source(facts).map(Edge.OfElement::text).orElse(earth.home().start().text());
      ledger.finding(
          earth
              .draft()
              .message(
                  "isolator contact "
                      + earth.pole().text()
                      + " opens an earth lead alone; with it open "
                      + Series.and(live.stream().map(Edge.OfElement::text).toList(), NAMED)
                      + (live.size() == 1 ? " stays live and returns" : " stay live and return")
                      + " to "
                      + to
                      + " past it")
              .remedy(
                  "put "
                      + earth.pole().text()
                      + " between plus and everything it feeds, with another pole for every other"
                      + " source, such as the alternator")
              .detail("the way past it: " + earth.home().text()),
          members);
    }

    private void fine(Subject subject) {
      if (judged.contains(subject)) {
        return;
      }
      if (facts.unread().isEmpty()) {
        ledger.fine();
      } else {
        ledger.notJudged(subject, Facts.FILE_UNREAD);
      }
    }

    private void judge(Edge.OfElement load, Path way) {
      Optional<Edge.OfElement> through =
          around.entrySet().stream()
              .filter(entry -> isPartOf(way, entry.getKey(), entry.getValue()))
              .map(Map.Entry::getKey)
              .findFirst();
      if (through.isPresent()) {
        behind.computeIfAbsent(through.get(), none -> new ArrayList<>()).add(load);
      } else {
        judged.add(load.subject());
        ledger.finding(live(load, way));
      }
    }

    /** Whether a way passes the far side of a pole, or the wire that leads round it. */
    private boolean isPartOf(Path way, Edge.OfElement pole, Path round) {
      Edge.OfWire wire = wireRound(pole, round);
      return way.points().contains(round.end()) || (wire != null && way.edges().contains(wire));
    }

    /** The first wire on the way round a pole that is not on the way to its near side as well. */
    private Edge.@Nullable OfWire wireRound(Edge.OfElement pole, Path way) {
      Path to = isolation.wayTo(pole);
      return way.edges().stream()
          .filter(Edge.OfWire.class::isInstance)
          .map(Edge.OfWire.class::cast)
          .filter(wire -> !to.edges().contains(wire))
          .findFirst()
          .orElse(null);
    }

    private void judgePole(Edge.OfElement pole, Path way) {
      List<Edge.OfElement> loads = behind.getOrDefault(pole, List.of());
      List<Subject> members = new ArrayList<>(List.of(pole.subject()));
      loads.forEach(load -> members.add(load.subject()));
      judged.addAll(members);
      ledger.finding(bypassed(pole, way, loads), members);
    }

    private Finding.Draft bypassed(Edge.OfElement pole, Path way, List<Edge.OfElement> loads) {
      Path to = isolation.wayTo(pole);
      Edge.OfWire round = wireRound(pole, way);
      Finding.Draft draft =
          Finding.on(round == null ? pole.subject() : round.subject())
              .message(
                  "with the isolator open both sides of "
                      + pole.text()
                      + " are live"
                      + (loads.isEmpty()
                          ? ""
                          : ", and so "
                              + (loads.size() == 1 ? "is " : "are ")
                              + Series.and(
                                  loads.stream().map(Edge.OfElement::text).toList(), NAMED)))
              .remedy(
                  round == null
                      ? "give the isolator another pole between "
                          + way.start().text()
                          + " and "
                          + way.end().text()
                      : "feed "
                          + round.text()
                          + " from behind the isolator, or give the isolator another pole for it")
              .detail("one side: " + to.text())
              .detail("the other: " + way.text());
      return round == null ? draft : draft.and(pole.subject());
    }

    private Finding.Draft live(Edge.OfElement load, Path way) {
      return Finding.on(load.subject())
          .message(
              "load "
                  + load.text()
                  + " is still live from "
                  + source(way)
                  + " with the isolator open")
          .remedy(
              "feed it from behind the isolator; if it shall stay live, say \"use\": \"free\" or"
                  + " waive it with the reason")
          .detail(way.text());
    }

    private Finding.Draft runsOn(RunOn.Still still) {
      Finding.Draft draft =
          Finding.on(still.load().subject())
              .kind("run-on")
              .message(
                  "load "
                      + still.load().text()
                      + " keeps "
                      + Figures.shown(Math.round(still.volts() * 10) / 10.0)
                      + " V when the isolator opens from state "
                      + still.state())
              .remedy(
                  "open that way too: another pole of the isolator, or a diode in the way that"
                      + " feeds it back")
              .basis(still.basis())
              .state(still.state());
      still.way().forEach(draft::detail);
      return draft;
    }

    private String source(Path way) {
      return facts.network().sources().stream()
          .filter(source -> source.a().equals(way.start()))
          .map(Edge.OfElement::text)
          .findFirst()
          .orElse(way.start().text());
    }
  }
}
