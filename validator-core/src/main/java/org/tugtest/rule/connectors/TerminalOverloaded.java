package org.tugtest.rule.connectors;

import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Terminal;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.LastingAmps;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A contact of a connector carries more than its terminal is rated for. */
public final class TerminalOverloaded implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("terminal-overloaded", Heading.CONNECTORS, Level.ERROR)
          .summary("a terminal carries more than its rating")
          .subjects("cavities with wires")
          .looksFor(
              """
              Cavities whose current through the mated contact in a lasting state is over the maxA of
              the terminal in them. A load with a duty counts by the root mean square of its
              current, which is what warms the contact. Brief states are left out. A terminal
              without maxA, and one that seems within it but through which a load of unknown draw
              is fed, are not judged.
              """)
          .why(
              """
              An overloaded terminal heats the plug until its spring goes soft, and then heats it
              more.
              """)
          .remedy(
              """
              Take a larger terminal, share the current over a second cavity, or move the circuit to
              another plug.
              """)
          .basis("The terminal's own maxA.")
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .failing(example(4))
          .passing(example(5))
          .build();

  private static String example(int maxA) {
    return Example.filled(
        """
        {"format": 1,
         "parts": {
           "housings": {"s": {"side": "socket", "family": "t1.5", "rows": [["1", "2"]], "terminals": ["ts"]},
                        "p": {"side": "pin", "family": "t1.5", "rows": [["2", "1"]]}},
           "terminals": {"ts": {"family": "t1.5", "side": "socket", "areaMinMm2": 0.35, "areaMaxMm2": 1.5, "maxA": %d}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FAN": {"ports": {"plug": {"housing": "p"}},
                   "elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 5}}}},
         "connectors": {"X1": {"housing": "s", "mates": "FAN"}},
         "wires": {"W1": {"from": "BAT:+", "to": "X1:1", "areaMm2": 1},
                   "W2": {"from": "X1:2", "to": "BAT:-", "areaMm2": 1}}}
        """,
        maxA);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Point cavity : facts.wiring().wiredCavities()) {
      Terminal terminal = facts.fitting().terminal(cavity).part();
      if (terminal == null) {
        ledger.notJudged(cavity.subject(), "no known terminal is named");
      } else if (terminal.maxA() == null) {
        ledger.notJudged(cavity.subject(), "its terminal gives no maxA");
      } else {
        judge(facts, cavity, terminal, ledger);
      }
    }
  }

  private static void judge(Facts facts, Point cavity, Terminal terminal, Ledger ledger) {
    Optional<Edge> mated =
        facts.network().edgesAt(cavity).stream()
            .filter(Edge.OfMating.class::isInstance)
            .findFirst();
    Optional<LastingAmps> lasting = mated.flatMap(edge -> LastingAmps.of(facts, edge));
    if (lasting.isEmpty()) {
      ledger.notJudged(
          cavity.subject(),
          mated.isEmpty() && !facts.operating().lasting().isEmpty()
              ? "nothing is plugged onto it"
              : LastingAmps.NO_STATE);
      return;
    }
    LastingAmps flow = lasting.get();
    double most = terminal.maxA() == null ? Double.POSITIVE_INFINITY : terminal.maxA();
    if (flow.amps() <= most) {
      if (flow.known()) {
        ledger.fine();
      } else {
        ledger.notJudged(cavity.subject(), LastingAmps.NOT_KNOWN);
      }
      return;
    }
    double amps = flow.amps();
    OperatingPoint worst = flow.worst();
    Measured measured = Measured.over(amps, most, "A");
    Finding.Draft draft =
        Finding.on(cavity.subject())
            .message(
                cavity.text()
                    + " carries "
                    + measured.actualShown()
                    + " A in state "
                    + worst.state()
                    + "; terminal "
                    + terminal.id()
                    + " is rated "
                    + measured.limitShown()
                    + " A")
            .remedy("take a larger terminal, or share the current over a second cavity")
            .measured(measured)
            .state(worst.state())
            .basis(worst.rests(cavity).basis());
    flow.peak().ifPresent(draft::detail);
    flow.others(most).forEach(draft::detail);
    for (WireEnd end : facts.wiring().endsAt(cavity)) {
      draft.and(Subject.wire(end.wire().id()));
    }
    ledger.finding(draft);
  }
}
