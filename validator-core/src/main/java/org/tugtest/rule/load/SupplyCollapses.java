package org.tugtest.rule.load;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
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
import org.tugtest.solve.Trouble;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** Loads of constant power want more than what feeds them can give. */
public final class SupplyCollapses implements Rule {
  private static final int SHOWN = 4;
  private static final RuleInfo INFO =
      RuleInfo.of("supply-collapses", Heading.LOAD, Level.ERROR)
          .summary("loads of constant power want more than what feeds them can give")
          .subjects("constant-power loads that a state wants and feeds")
          .looksFor(
              """
              Loads with watts (and no atVolts), wanted and fed in a state, for which no volts exist
              at which they draw their watts: behind open volts E and a resistance R no more than
              E²/4R can be drawn, and from a source with maxA no more than its volts times that.
              Several that share a feed are judged together. Volts that come to no rest in the
              computation are a warning of this rule.
              """)
          .why(
              """
              A control unit or LED lamp draws the more current the fewer volts it gets. Over the
              limit its volts fall until it resets, draws nothing, comes back and falls again.
              """)
          .remedy(
              """
              Lower the resistance of the feed and return: thicker or shorter wires, fewer joints, a
              feed of its own; or give the loads less to do in that state.
              """)
          .basis(
              "Follows from Ohm's law: the power in a load behind a resistance is at most E²/4R.")
          .causes(Cause.LOAD_STARVED)
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .failing(example("45"))
          .passing(example("30"))
          .build();

  private static String example(String watts) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.02}}},
           "UNIT": {"elements": {"supply": {"kind": "load", "a": "1", "b": "2", "watts": %s}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "UNIT:1", "areaMm2": 0.22, "cutMm": 4500},
                   "W2": {"from": "UNIT:2", "to": "BAT:-", "areaMm2": 0.22, "cutMm": 4500}}}
        """,
        watts);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** A collapse in one state. */
  private record Seen(
      Live live,
      List<Edge.OfElement> loads,
      double watts,
      double mostWatts,
      List<Edge.OfElement> limits) {
    double over() {
      return watts / mostWatts;
    }

    /** The greatest power in two digits, as sure as it is, where these lie under what is wanted. */
    double shownMost() {
      double rounded = BigDecimal.valueOf(mostWatts).round(new MathContext(2)).doubleValue();
      return rounded < watts ? rounded : mostWatts;
    }
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    List<Live> states = Live.all(facts);
    Map<List<Edge.OfElement>, List<Seen>> collapses = new LinkedHashMap<>();
    List<Subject> fallen = new ArrayList<>();
    for (Live live : states) {
      for (Trouble trouble : live.state().troubles()) {
        seen(live, trouble)
            .ifPresent(
                seen -> {
                  collapses.computeIfAbsent(seen.loads(), none -> new ArrayList<>(1)).add(seen);
                  seen.loads().forEach(load -> fallen.add(load.subject()));
                });
      }
    }
    collapses.values().forEach(seen -> ledger.finding(finding(facts, seen), subjects(seen)));
    unsettled(states).ifPresent(ledger::finding);
    for (Edge.OfElement load : Users.loads(facts)) {
      if (isConstantPower(load) && !fallen.contains(load.subject())) {
        judgeFed(facts, states, load, ledger);
      }
    }
  }

  private static boolean isConstantPower(Edge.OfElement load) {
    Element.Load its = (Element.Load) load.element();
    return its.watts() != null && its.watts() > 0 && its.atVolts() == null && its.ohms() == null;
  }

  /** The loads of a collapse that a state wants and feeds. */
  private static Optional<Seen> seen(Live live, Trouble trouble) {
    if (!(trouble instanceof Trouble.Collapse collapse)) {
      return Optional.empty();
    }
    List<Edge.OfElement> all =
        live.state().edges(collapse).stream().map(Edge.OfElement.class::cast).toList();
    List<Edge.OfElement> loads =
        all.stream()
            .filter(load -> live.state().wanted(load) && live.fed(load) && live.returns(load))
            .toList();
    double watts = all.stream().mapToDouble(SupplyCollapses::watts).sum();
    return loads.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Seen(live, loads, watts, collapse.mostWatts(), sources(live, collapse.limits())));
  }

  private static List<Edge.OfElement> sources(Live live, List<Integer> numbers) {
    return live.state().edges(numbers).stream().map(Edge.OfElement.class::cast).toList();
  }

  /** The identity of the finding that a load's few volts follow from, if it has one. */
  static Optional<String> causeOfFewVolts(Facts facts, Live live, Edge.OfElement load) {
    Optional<String> overloaded =
        SourceOverloaded.causeOfFewVolts(facts, live.state().state(), load);
    if (overloaded.isPresent()) {
      return overloaded;
    }
    for (Trouble trouble : live.state().troubles()) {
      Optional<Seen> seen = seen(live, trouble);
      if (seen.isPresent()
          && live.state()
              .solution()
              .oneIsland(
                  facts.network().index(load.a()),
                  facts.network().index(seen.get().loads().get(0).a()))) {
        return Optional.of(
            seen.get().loads().stream()
                .map(Edge::subject)
                .sorted()
                .map(Subject::place)
                .collect(Collectors.joining(",", INFO.id() + "(", ")")));
      }
    }
    return Optional.empty();
  }

  private static double watts(Edge.OfElement load) {
    Double watts = ((Element.Load) load.element()).watts();
    return watts == null ? 0 : watts;
  }

  private static void judgeFed(Facts facts, List<Live> states, Edge.OfElement load, Ledger ledger) {
    boolean fed = false;
    boolean known = true;
    for (Live live : states) {
      if (live.state().wanted(load) && live.fed(load) && live.returns(load)) {
        fed = true;
        known &=
            Feed.of(facts, live.state(), load).map(feed -> feed.unknown().isEmpty()).orElse(true);
      }
    }
    if (fed && known) {
      ledger.fine();
    } else if (fed) {
      ledger.notJudged(load.subject(), "a wire on its way gives no length or size");
    }
  }

  private static List<Subject> subjects(List<Seen> seen) {
    return seen.get(0).loads().stream().map(Edge::subject).toList();
  }

  private static Finding.Draft finding(Facts facts, List<Seen> seen) {
    Seen worst = seen.get(0);
    for (Seen one : seen) {
      worst = one.over() > worst.over() ? one : worst;
    }
    List<Edge.OfElement> loads = worst.loads();
    Measured measured = Measured.over(worst.watts(), worst.shownMost(), "W");
    boolean single = loads.size() == 1;
    List<String> names = loads.stream().map(Edge::text).toList();
    Finding.Draft draft = Finding.on(loads.get(0).subject());
    loads.subList(1, loads.size()).forEach(load -> draft.and(load.subject()));
    draft
        .message(
            Series.and(names, SHOWN)
                + (single ? " wants " : " together want ")
                + measured.actualShown()
                + " W in state "
                + worst.live().state().state()
                + "; what feeds "
                + (single ? "it" : "them")
                + " gives at most "
                + measured.limitShown()
                + " W"
                + limit(worst)
                + ", so the volts collapse")
        .remedy(
            worst.limits().isEmpty()
                ? "lower the resistance of the feed and return: thicker or shorter wires, fewer"
                    + " joints, a feed of its own"
                : "take a source that gives more, feed some of these loads from elsewhere, or give"
                    + " them less to do in that state")
        .measured(measured)
        .cause(
            SourceOverloaded.causeOfFewVolts(facts, worst.live().state().state(), loads.get(0))
                .orElse(null))
        .state(worst.live().state().state())
        .basis(basis(facts, worst));
    for (Edge.OfElement load : loads) {
      draft.detail(
          load.text() + " falls to " + Users.volts(Math.abs(worst.live().state().across(load))));
    }
    Feed.of(facts, worst.live().state(), loads.get(0))
        .ifPresent(feed -> Way.worst(feed.supply(), feed.back()).forEach(draft::detail));
    for (Seen other : seen) {
      if (!other.equals(worst)) {
        draft.detail("also in state " + other.live().state().state());
      }
    }
    return draft;
  }

  /** The sources that give no more, where these are to blame. */
  private static String limit(Seen seen) {
    if (seen.limits().isEmpty()) {
      return "";
    }
    List<String> each =
        seen.limits().stream()
            .map(
                is ->
                    is.text()
                        + " is at its limit of "
                        + Quoted.number(Math.abs(seen.live().state().amps(is)))
                        + " A")
            .toList();
    return ", as " + Series.and(each, SHOWN);
  }

  private static Basis basis(Facts facts, Seen seen) {
    Basis basis = Basis.GIVEN;
    for (Edge.OfElement load : seen.loads()) {
      basis =
          basis.weaker(
              Feed.of(facts, seen.live().state(), load).map(Feed::basis).orElse(Basis.GIVEN));
    }
    return basis;
  }

  /** What came to no rest, as one warning with the states. */
  private static Optional<Finding.Draft> unsettled(List<Live> states) {
    List<String> names = new ArrayList<>();
    List<Edge> edges = new ArrayList<>();
    for (Live live : states) {
      for (Trouble trouble : live.state().troubles()) {
        if (trouble instanceof Trouble.LoadsUnsettled
            || trouble instanceof Trouble.PiecesUnsettled
            || trouble instanceof Trouble.NotSolvable) {
          names.add(live.state().state());
          edges.addAll(live.state().edges(trouble));
        }
      }
    }
    if (names.isEmpty()) {
      return Optional.empty();
    }
    List<Subject> subjects = edges.stream().map(Edge::subject).distinct().sorted().toList();
    Finding.Draft draft =
        Finding.on(subjects.isEmpty() ? Subject.HARNESS : subjects.get(0))
            .kind("unsettled")
            .level(Level.WARNING)
            .message(
                "the volts come to no rest in "
                    + (names.size() == 1 ? "state " : "states ")
                    + Series.and(names, SHOWN)
                    + ", last at "
                    + Series.and(subjects.stream().map(Subject::id).toList(), SHOWN)
                    + "; what is said of those states is not sure")
            .remedy("correct the figures of these elements: one of them is far from the others")
            .state(names.get(0));
    subjects.stream().skip(1).forEach(draft::and);
    return Optional.of(draft);
  }
}
