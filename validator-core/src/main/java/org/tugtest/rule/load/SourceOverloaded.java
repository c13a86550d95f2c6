package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** What hangs on a source wants more than the greatest current that it gives. */
public final class SourceOverloaded implements Rule {
  static final String ID = "source-overloaded";
  private static final int SHOWN = 4;
  private static final RuleInfo INFO =
      RuleInfo.of(ID, Heading.LOAD, Level.ERROR)
          .summary("what hangs on a source wants more than the greatest current that it gives")
          .subjects("sources with maxA")
          .looksFor(
              """
              Sources with maxA, such as converters, power supplies and alternators without a
              battery, that give their maxA in a state while nothing else holds the volts up: no
              other source on that circuit gives or takes any current. Several side by side that are
              all at their limit are one finding. A warning where every load still gets the volts it
              works with, minV or half of nominal. An alternator at its limit beside a battery is
              fine here: the battery gives the rest.
              """)
          .why(
              """
              At its limit a source lowers its volts until what hangs on it takes no more: lamps dim,
              control units reset, and a converter that protects itself switches off and on again.
              """)
          .remedy(
              """
              Take a source that gives more, put another beside it, feed some of the loads from
              elsewhere, or run fewer at a time.
              """)
          .basis("Follows from the maxA that the harness gives and from what its loads draw.")
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .failing(example("2"))
          .passing(example("4"))
          .build();

  private static String example(String ohms) {
    return Example.filled(
        """
        {"format": 1, "defaults": {"nominalV": 24},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 25.2}}},
           "DCDC": {"elements": {
             "in": {"kind": "load", "a": "1", "b": "2", "watts": 60},
             "out": {"kind": "source", "plus": "3", "minus": "4", "volts": 12, "maxA": 4,
                     "selfLimiting": true, "generator": true, "fedBy": "in"}}},
           "HEAT": {"elements": {"pad": {"kind": "load", "a": "1", "b": "2", "ohms": %s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "DCDC:1", "areaMm2": 2.5, "cutMm": 500},
                   "W2": {"from": "DCDC:2", "to": "BAT:-", "areaMm2": 2.5, "cutMm": 500},
                   "W3": {"from": "DCDC:3", "to": "HEAT:1", "areaMm2": 1.5, "cutMm": 500},
                   "W4": {"from": "HEAT:2", "to": "DCDC:4", "areaMm2": 1.5, "cutMm": 500}}}
        """,
        ohms);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<List<Edge.OfElement>, List<Overdrawn>> found = new LinkedHashMap<>();
    for (Overdrawn one : Overdrawn.all(facts)) {
      found.computeIfAbsent(one.sources(), none -> new ArrayList<>(1)).add(one);
    }
    Set<Edge.OfElement> told = new LinkedHashSet<>();
    found.forEach(
        (sources, states) -> {
          told.addAll(sources);
          ledger.finding(finding(facts, states), sources.stream().map(Edge::subject).toList());
        });
    List<Edge.OfElement> open =
        Users.loads(facts).stream().filter(load -> !says((Element.Load) load.element())).toList();
    for (Edge.OfElement source : facts.network().sources()) {
      Double most = ((Element.Source) source.element()).maxA();
      if (most != null && !told.contains(source)) {
        if (lacksDraw(facts, source, open)) {
          ledger.notJudged(source.subject(), "a load that it feeds does not say what it draws");
        } else {
          ledger.fine();
        }
      }
    }
  }

  /** Whether a wanted load on the circuit of a source leaves open what it draws. */
  private static boolean lacksDraw(Facts facts, Edge.OfElement source, List<Edge.OfElement> open) {
    int plus = facts.network().index(source.a());
    return facts.operating().all().stream()
        .anyMatch(
            state ->
                open.stream()
                    .anyMatch(
                        load ->
                            state.wanted(load)
                                && state
                                    .solution()
                                    .oneIsland(facts.network().index(load.a()), plus)));
  }

  private static boolean says(Element.Load load) {
    return load.amps() != null || load.watts() != null || load.ohms() != null;
  }

  /**
   * The identity of the finding that a load's few volts follow from in a state, if it hangs on a
   * source that gives no more.
   */
  static Optional<String> causeOfFewVolts(Facts facts, String state, Edge.OfElement load) {
    return Overdrawn.all(facts).stream()
        .filter(one -> one.state().state().equals(state) && one.feeds(load))
        .map(Overdrawn::identity)
        .findFirst();
  }

  private static Finding.Draft finding(Facts facts, List<Overdrawn> states) {
    Overdrawn worst = states.get(0);
    for (Overdrawn one : states) {
      worst = one.volts() < worst.volts() ? one : worst;
    }
    List<Subject> subjects = worst.sources().stream().map(Edge::subject).toList();
    boolean single = subjects.size() == 1;
    Finding.Draft draft = Finding.on(subjects.get(0));
    subjects.subList(1, subjects.size()).forEach(draft::and);
    String wants;
    if (worst.wantedA().orElse(0) > worst.mostA()) {
      Measured measured = Measured.over(worst.wantedA().orElse(0), worst.mostA(), "A");
      draft.measured(measured);
      wants = measured.actualShown();
    } else {
      wants = "more than " + Quoted.number(worst.mostA());
    }
    Edge.OfElement first = worst.sources().get(0);
    double watts = worst.openVolts(facts.network()) * worst.mostA();
    draft
        .message(
            Series.and(worst.loads().stream().map(Edge::text).toList(), SHOWN)
                + (worst.loads().size() == 1 ? " wants " : " together want ")
                + wants
                + " A of "
                + Series.and(worst.sources().stream().map(Edge::text).toList(), SHOWN)
                + " in state "
                + worst.state().state()
                + "; "
                + (single ? "it gives" : "they give")
                + " at most "
                + Quoted.number(worst.mostA())
                + " A ("
                + Math.round(watts)
                + " W), so "
                + (single ? "its" : "their")
                + " volts fall to "
                + Users.volts(worst.volts()))
        .remedy(
            "take a source that gives more, feed some of these loads from elsewhere, or run fewer"
                + " at a time")
        .state(worst.state().state())
        .basis(worst.state().rests(first.a()).basis());
    Overdrawn shown = worst;
    worst.loads().forEach(load -> draft.detail(said(shown, load)));
    if (states.stream().noneMatch(one -> starves(facts, one))) {
      draft.level(Level.WARNING);
    }
    for (Overdrawn other : states) {
      if (!other.equals(worst)) {
        draft.detail("also in state " + other.state().state() + ": " + Users.volts(other.volts()));
      }
    }
    return draft;
  }

  private static String said(Overdrawn at, Edge.OfElement load) {
    Element.Load its = load.element() instanceof Element.Load is ? is : null;
    String wants =
        its == null || its.ohms() != null
            ? ""
            : its.watts() != null
                ? " of " + Quoted.number(its.watts()) + " W"
                : its.amps() != null ? " of " + Quoted.number(its.amps()) + " A" : "";
    return load.text() + wants + " gets " + Users.volts(Math.abs(at.state().across(load)));
  }

  private static boolean starves(Facts facts, Overdrawn one) {
    return one.loads().stream()
        .anyMatch(
            load ->
                one.state().wanted(load)
                    && Math.abs(one.state().across(load)) < Users.leastVolts(facts, load));
  }
}
