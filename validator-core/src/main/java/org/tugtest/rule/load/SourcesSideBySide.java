package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.model.State;
import org.tugtest.network.Edge;
import org.tugtest.network.Joined;
import org.tugtest.network.Network;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.solve.Branch;

/** Sources joined plus to plus and minus to minus that should not be, or not like that. */
public final class SourcesSideBySide implements Rule {
  private static final String VOLTS = "volts";
  private static final RuleInfo INFO =
      RuleInfo.of("sources-side-by-side", Heading.LOAD, Level.ERROR)
          .summary("batteries of unlike volts side by side, or sources joined without resistance")
          .subjects("sources")
          .looksFor(
              """
              Two sources whose plus ends are joined and whose minus ends are joined in a state, by
              wires, contacts as they stand, fuses, links and bolts. An error where the open volts of
              two that are no generators differ by more than the limit. Else a warning where what
              joins them has no resistance at all: links and contacts of 0 milliohm, or the same
              pins.
              """)
          .why(
              """
              Between batteries of unlike volts a current flows that only their inner resistances
              and the wires between them limit. Where nothing between sources has a resistance, how
              they share the load is decided by figures that are rarely known.
              """)
          .remedy(
              """
              Never put batteries of unlike volts side by side. Describe what joins sources: wires,
              or the milliohm of bars and contacts.
              """)
          .basis(
              """
              Follows from Ohm's law. That batteries side by side may differ by 0.5 V is common
              practice.
              """)
          .setting(
              new Setting(VOLTS, 0.5, 0, 60, "V", "allowed between open volts; common practice"))
          .failing(example(24))
          .passing(example(12.4))
          .build();

  private static String example(double volts) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "B1": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
           "B2": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": %s}}}},
         "wires": {"W1": {"from": "B1:+", "to": "B2:+", "areaMm2": 16, "cutMm": 300},
                   "W2": {"from": "B1:-", "to": "B2:-", "areaMm2": 16, "cutMm": 300}}}
        """,
        volts);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** Two sources in the state in which it is worst. */
  private record Pair(Edge.OfElement one, Edge.OfElement other) {}

  /**
   * How it is in a state.
   *
   * @param unlike volts by which batteries differ; 0 where one is a generator or gives no volts
   */
  private record Seen(String state, double unlike, boolean bare) {}

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Network network = facts.network();
    Map<Pair, Seen> pairs = new LinkedHashMap<>();
    if (network.sources().size() > 1) {
      facts.operating().all().forEach(point -> look(facts, point, pairs));
    }
    List<Subject> bad = new ArrayList<>();
    pairs.forEach(
        (pair, seen) -> {
          double limit = settings.number(VOLTS, pair.one().subject());
          if (seen.unlike() > limit) {
            ledger.finding(unlike(pair, seen, limit));
          } else if (seen.bare()) {
            ledger.finding(bare(pair, seen));
          } else {
            return;
          }
          bad.add(pair.one().subject());
        });
    for (Edge.OfElement source : network.sources()) {
      if (!bad.contains(source.subject())) {
        ledger.fine();
      }
    }
  }

  private static void look(Facts facts, OperatingPoint point, Map<Pair, Seen> pairs) {
    Network network = facts.network();
    Joined joined = joined(network, edge -> isMetal(edge, point));
    Joined bare =
        joined(
            network,
            edge -> isMetal(edge, point) && point.resistance(edge).ohms() < Branch.LEAST_OHMS);
    Map<Long, Edge.OfElement> first = new HashMap<>();
    Map<Long, Edge.OfElement> firstBare = new HashMap<>();
    for (Edge.OfElement source : network.sources()) {
      if (inside(network, joined, source)) {
        continue;
      }
      Edge.OfElement other = first.putIfAbsent(ends(network, joined, source), source);
      if (other != null) {
        double unlike = unlike(facts, point.state(), other, source);
        note(pairs, new Pair(other, source), new Seen(point.state(), unlike, false));
      }
      Edge.OfElement tied = firstBare.putIfAbsent(ends(network, bare, source), source);
      if (tied != null) {
        note(pairs, new Pair(tied, source), new Seen(point.state(), 0, true));
      }
    }
  }

  /** Keeps the worst: the greatest difference, and the first state without any resistance. */
  private static void note(Map<Pair, Seen> pairs, Pair pair, Seen seen) {
    pairs.merge(
        pair,
        seen,
        (was, is) -> is.unlike() > was.unlike() || (is.bare() && was.unlike() == 0) ? is : was);
  }

  private static Joined joined(Network network, Predicate<Edge> by) {
    Joined joined = new Joined(network.points().size());
    for (int i = 0; i < network.edges().size(); i++) {
      if (by.test(network.edges().get(i))) {
        joined.join(network.indexOfA(i), network.indexOfB(i));
      }
    }
    return joined;
  }

  /** Wires, plugs and bolts; links, fitted fuses and closed contacts of devices. */
  private static boolean isMetal(Edge edge, OperatingPoint point) {
    if (!(edge instanceof Edge.OfElement inside)) {
      return true;
    }
    Element element = inside.element();
    return (element instanceof Element.Link
            || element instanceof Element.Fuse
            || element instanceof Element.Contact)
        && point.conducts(edge);
  }

  private static long ends(Network network, Joined joined, Edge.OfElement source) {
    long plus = joined.find(network.index(source.a()));
    return plus << Integer.SIZE | joined.find(network.index(source.b()));
  }

  /** Whether metal shorts the source, which has a finding of its own. */
  private static boolean inside(Network network, Joined joined, Edge.OfElement source) {
    return joined.find(network.index(source.a())) == joined.find(network.index(source.b()));
  }

  private static double unlike(
      Facts facts, String state, Edge.OfElement one, Edge.OfElement other) {
    Optional<Double> first = batteryVolts(facts, state, one);
    Optional<Double> second = batteryVolts(facts, state, other);
    return first.isPresent() && second.isPresent() ? Math.abs(first.get() - second.get()) : 0;
  }

  private static Optional<Double> batteryVolts(Facts facts, String name, Edge.OfElement edge) {
    if (!(edge.element() instanceof Element.Source source) || source.generator()) {
      return Optional.empty();
    }
    State state = facts.harness().states().get(name);
    return state == null
        ? Optional.ofNullable(source.volts())
        : state.volts().entrySet().stream()
            .filter(
                given ->
                    given.getKey().text().equals(edge.text())
                        || given.getKey().text().equals(edge.device()))
            .map(Map.Entry::getValue)
            .findFirst()
            .or(() -> Optional.ofNullable(source.volts()));
  }

  private static Finding.Draft unlike(Pair pair, Seen seen, double limit) {
    Measured measured = Measured.over(Math.round(seen.unlike() * 1000) / 1000.0, limit, "V");
    return Finding.on(pair.one().subject(), pair.other().subject())
        .message(
            pair.one().text()
                + " and "
                + pair.other().text()
                + " are side by side in state "
                + seen.state()
                + ", but their open volts differ by "
                + measured.actualShown()
                + " V; at most "
                + measured.limitShown()
                + " V")
        .remedy(
            "part the plus of "
                + pair.one().text()
                + " and "
                + pair.other().text()
                + ", or put right the volts of one of them")
        .measured(measured)
        .basis(Basis.COMMON_PRACTICE)
        .state(seen.state());
  }

  private static Finding.Draft bare(Pair pair, Seen seen) {
    return Finding.on(pair.one().subject(), pair.other().subject())
        .level(Level.WARNING)
        .message(
            pair.one().text()
                + " and "
                + pair.other().text()
                + " are joined at both ends without any resistance in state "
                + seen.state())
        .remedy("describe the wires between them, or give \"milliohm\" of the links and contacts")
        .state(seen.state());
  }
}
