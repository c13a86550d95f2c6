package org.tugtest.rule.written;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Element;
import org.tugtest.model.Evidence;
import org.tugtest.model.Loom;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** A protected or critical circuit rests on wires that nobody has rung out or seen drawn. */
public final class RestsOnGuess implements Rule {
  private static final int SHOWN = 8;
  private static final RuleInfo INFO =
      RuleInfo.of("rests-on-guess", Heading.WRITTEN, Level.WARNING)
          .summary("a protected or critical circuit rests on a guess")
          .subjects("wires")
          .looksFor(
              """
              A wire whose evidence is "guess", by itself, by one of its cavities or by its loom,
              and that is behind a fuse (joined to the plus of a source, and only through fuses), or
              lies on the way from plus to a load that is "critical", or from that load back to
              minus. One finding for each loom, with the list.
              """)
          .why(
              """
              Whether a fuse protects a wire, and whether the fuel pump runs, is only known as far
              as somebody knows where the wires really go.
              """)
          .remedy(
              """
              Ring the wire out from end to end and write "evidence": "rung-out", or find it in a
              drawing and write "drawing".
              """)
          .basis("Follows from the format: a guess is believed, not shown.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "evidence": "rung-out"},
                         "W2": {"from": "FB:1", "to": "X1:1", "evidence": "guess"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}}}},
               "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "evidence": "guess"},
                         "W2": {"from": "FB:1", "to": "X1:1", "evidence": "drawing"},
                         "W3": {"from": "X9:1", "to": "X9:2", "evidence": "guess"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<String, String> critical = critical(facts);
    Map<Subject, Map<Subject, String>> guessed = new LinkedHashMap<>();
    for (Wire wire : facts.harness().wires().values()) {
      Subject subject = Subject.wire(wire.id());
      Optional<Point> from = facts.wiring().pointOf(wire.from());
      Optional<Point> to = facts.wiring().pointOf(wire.to());
      if (!isGuess(facts, wire)) {
        ledger.fine();
      } else if (from.isEmpty() || to.isEmpty()) {
        ledger.notJudged(subject, Unjudged.UNKNOWN_END);
      } else if (facts.network().sources().isEmpty()) {
        ledger.notJudged(subject, "no source is described");
      } else {
        String why =
            critical.containsKey(wire.id())
                ? "it is on the way of " + critical.get(wire.id()) + ", which is critical"
                : isFused(facts, from.get()) ? "it is behind a fuse" : null;
        if (why == null) {
          ledger.fine();
        } else if (!ledger.switchedOff(subject)) {
          Subject loom = wire.loom() == null ? Subject.HARNESS : Subject.loom(wire.loom());
          guessed.computeIfAbsent(loom, none -> new LinkedHashMap<>()).put(subject, why);
        }
      }
    }
    guessed.forEach((loom, wires) -> ledger.finding(finding(facts, loom, wires), wires.keySet()));
  }

  private static boolean isFused(Facts facts, Point point) {
    return facts.sides().feed().reaches(point) && !facts.sides().unfused().reaches(point);
  }

  /** The wires on the way of a critical load, each with the first such load. */
  private static Map<String, String> critical(Facts facts) {
    Map<String, String> wires = new HashMap<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Load load
          && load.critical()) {
        for (Point pin : List.of(inside.a(), inside.b())) {
          note(wires, inside.text(), facts.sides().feed(), pin);
          note(wires, inside.text(), facts.sides().back(), pin);
        }
      }
    }
    return wires;
  }

  private static void note(Map<String, String> wires, String load, Reach side, Point pin) {
    List<Edge> way = side.path(pin).map(Path::edges).orElse(List.of());
    for (Edge edge : way) {
      if (edge instanceof Edge.OfWire run) {
        wires.putIfAbsent(run.wire().id(), load);
      }
    }
  }

  private static boolean isGuess(Facts facts, Wire wire) {
    Loom loom = wire.loom() == null ? null : facts.harness().looms().get(wire.loom());
    Evidence usual = loom == null ? null : loom.evidence();
    Evidence own = wire.evidence() == null ? usual : wire.evidence();
    return own == Evidence.GUESS
        || isGuess(cavity(facts, new WireEnd(wire, true)))
        || isGuess(cavity(facts, new WireEnd(wire, false)));
  }

  private static boolean isGuess(Connector.@Nullable Cavity cavity) {
    return cavity != null && cavity.evidence() == Evidence.GUESS;
  }

  private static Connector.@Nullable Cavity cavity(Facts facts, WireEnd end) {
    return facts
        .wiring()
        .pointOf(end.ref())
        .filter(point -> point.kind() == Point.Kind.CAVITY)
        .map(
            point -> {
              Connector connector = facts.harness().connectors().get(point.owner());
              return connector == null ? null : connector.cavities().get(point.name());
            })
        .orElse(null);
  }

  private static Finding.Draft finding(Facts facts, Subject loom, Map<Subject, String> wires) {
    List<String> ids = wires.keySet().stream().map(Subject::id).toList();
    boolean one = ids.size() == 1;
    String where = loom.equals(Subject.HARNESS) ? "" : " of loom " + loom.id();
    Finding.Draft draft =
        Finding.on(loom)
            .message(
                (one ? "wire " : "wires ")
                    + Series.and(ids, SHOWN)
                    + where
                    + (one ? " is a guess" : " are guesses")
                    + " in protected or critical circuits")
            .remedy(
                "ring "
                    + (one ? "it" : "them")
                    + " out and write \"evidence\": \"rung-out\", or \"drawing\" where a drawing"
                    + " shows "
                    + (one ? "it" : "them"));
    wires.forEach(
        (wire, why) ->
            draft.and(wire).at(facts.places().of(wire.place())).detail(wire.id() + ": " + why));
    return draft;
  }
}
