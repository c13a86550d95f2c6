package org.tugtest.rule.written;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Terminal;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.Studs;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** Two wires run between the same two contacts, and nothing says that they share load. */
public final class WireRepeated implements Rule {
  private static final int SHOWN = 4;

  private static final RuleInfo INFO =
      RuleInfo.of("wire-repeated", Heading.WRITTEN, Level.WARNING)
          .summary("two wires run between the same two contacts")
          .subjects("wires")
          .looksFor(
              """
              Two or more wires with the same two ends, whichever is "from". They are taken as
              parallel by design when all of them carry the same "circuit" and both contacts take
              that many: a splice, a stud or pin with room for the terminals, a cavity for which a
              terminal with enough "maxWires" is named. Wires with the decision "remove" are left
              out.
              """)
          .why(
              """
              Nearly always a row that was copied and not changed: one wire is built for nothing, or
              the place it should go to has none.
              """)
          .remedy(
              """
              Correct the end of one of them, or take it out. If they shall share load, give both
              the same "circuit" and a contact that takes both.
              """)
          .basis("Common practice: parallel wires are drawn as such, never by repeating a line.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "S1", "to": "S2"}, "W2": {"from": "S2", "to": "S1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "S1", "to": "S2", "circuit": "starter feed"},
                         "W2": {"from": "S2", "to": "S1", "circuit": "starter feed"},
                         "W3": {"from": "S1", "to": "R1:1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** Two contacts in their natural order. */
  private record Pair(Point first, Point second) {
    static Pair of(Point one, Point other) {
      return one.compareTo(other) <= 0 ? new Pair(one, other) : new Pair(other, one);
    }
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<Pair, List<Wire>> runs = new LinkedHashMap<>();
    for (Wire wire : facts.harness().wires().values()) {
      Optional<Point> from = facts.wiring().pointOf(wire.from());
      Optional<Point> to = facts.wiring().pointOf(wire.to());
      if (from.isEmpty() || to.isEmpty()) {
        ledger.notJudged(Subject.wire(wire.id()), Unjudged.UNKNOWN_END);
      } else if (wire.decision() == Wire.Decision.REMOVE || from.get().equals(to.get())) {
        ledger.fine();
      } else {
        runs.computeIfAbsent(Pair.of(from.get(), to.get()), none -> new ArrayList<>(1)).add(wire);
      }
    }
    runs.forEach(
        (pair, wires) -> {
          if (wires.size() < 2 || isMeant(facts, pair, wires)) {
            ledger.fine(wires.size());
          } else {
            ledger.finding(
                finding(pair, wires), wires.stream().map(wire -> Subject.wire(wire.id())).toList());
          }
        });
  }

  private static boolean isMeant(Facts facts, Pair pair, List<Wire> wires) {
    String circuit = wires.get(0).circuit();
    return circuit != null
        && !circuit.isBlank()
        && wires.stream().allMatch(wire -> circuit.equals(wire.circuit()))
        && takes(facts, pair.first())
        && takes(facts, pair.second());
  }

  /** Whether a contact takes all the wires that end on it. */
  private static boolean takes(Facts facts, Point point) {
    List<WireEnd> ends = facts.wiring().endsAt(point);
    if (point.kind() == Point.Kind.PIN) {
      Studs.Stack stack = Studs.stack(facts.harness(), point, ends);
      return stack.terminals() <= stack.allowed();
    }
    return point.kind() == Point.Kind.SPLICE
        || facts.fitting().terminal(point).named().stream()
            .map(id -> facts.harness().parts().terminals().get(id))
            .anyMatch(terminal -> takes(terminal, ends.size()));
  }

  private static boolean takes(@Nullable Terminal terminal, int wires) {
    return terminal != null && terminal.maxWires() >= wires;
  }

  private static Finding.Draft finding(Pair pair, List<Wire> wires) {
    List<String> ids = wires.stream().map(Wire::id).toList();
    Finding.Draft draft =
        Finding.on(Subject.wire(ids.get(0)))
            .message(
                "wires "
                    + Series.and(ids, SHOWN)
                    + (ids.size() == 2 ? " both run" : " all run")
                    + " from "
                    + pair.first()
                    + " to "
                    + pair.second())
            .remedy(
                "correct an end of one of them or take it out; if they share load, give them the"
                    + " same \"circuit\" and contacts that take "
                    + (ids.size() == 2 ? "both" : "all of them"));
    ids.subList(1, ids.size()).forEach(id -> draft.and(Subject.wire(id)));
    return draft;
  }
}
