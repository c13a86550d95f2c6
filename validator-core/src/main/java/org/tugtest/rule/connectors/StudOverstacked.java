package org.tugtest.rule.connectors;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.network.Point;
import org.tugtest.network.Studs;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** More ring terminals on a stud than it takes. */
public final class StudOverstacked implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("stud-overstacked", Heading.CONNECTORS, Level.ERROR)
          .summary("a stud holds more terminals than it takes")
          .subjects("studs and faces with wires")
          .looksFor(
              """
              More than four terminals on a stud, a face or a pin without a family, or more than
              its "maxTerminals" says. Wires that share one terminal ("maxWires" of the terminal
              that is written for their end) count as one.
              """)
          .why(
              """
              Every further terminal in the stack is one more joint in the path of the current,
              and the stack settles: the nut works loose, the joint heats, and the fault looks
              like a bad earth somewhere else.
              """)
          .remedy(
              """
              Put a small bus bar across two studs and share the terminals out, join thin wires
              in a splice, or give the pin its own "maxTerminals" when its maker allows more.
              """)
          .basis("At most four terminals on a stud: FAA AC 43.13-1B, 11-174b.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {"EARTH": {"pins": {"1": {"family": "stud-m8"}}}},
               "wires": {"W1": {"from": "A:1", "to": "EARTH:1"},
                         "W2": {"from": "A:2", "to": "EARTH:1"},
                         "W3": {"from": "A:3", "to": "EARTH:1"},
                         "W4": {"from": "A:4", "to": "EARTH:1"},
                         "W5": {"from": "A:5", "to": "EARTH:1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {"EARTH": {"pins": {"1": {"family": "stud-m8"}}}},
               "wires": {"W1": {"from": "A:1", "to": "EARTH:1"},
                         "W2": {"from": "A:2", "to": "EARTH:1"},
                         "W3": {"from": "A:3", "to": "EARTH:1"},
                         "W4": {"from": "A:4", "to": "EARTH:1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Map.Entry<Point, List<WireEnd>> entry : facts.wiring().ends().entrySet()) {
      Point pin = entry.getKey();
      if (pin.kind() != Point.Kind.PIN) {
        continue;
      }
      Studs.Stack stack = Studs.stack(facts.harness(), pin, entry.getValue());
      if (stack.allowed() == 1) {
        continue;
      }
      if (stack.terminals() <= stack.allowed()) {
        ledger.fine();
      } else {
        ledger.finding(finding(facts, pin, entry.getValue(), stack));
      }
    }
  }

  private static Finding.Draft finding(
      Facts facts, Point pin, List<WireEnd> ends, Studs.Stack stack) {
    String wires = ends.stream().map(end -> end.wire().id()).collect(Collectors.joining(", "));
    Finding.Draft draft =
        Finding.on(pin.subject())
            .message(
                pin.text()
                    + " holds "
                    + stack.terminals()
                    + " terminals ("
                    + wires
                    + "); it takes at most "
                    + stack.allowed())
            .remedy("share the wires out over a second stud or a bus bar, or join some in a splice")
            .measured(Measured.over(stack.terminals(), stack.allowed(), ""))
            .basis(Basis.SOURCE);
    for (WireEnd end : ends) {
      draft.and(Subject.wire(end.wire().id()));
      draft.at(facts.places().of("wires/" + end.wire().id(), end.field()));
    }
    return draft;
  }
}
