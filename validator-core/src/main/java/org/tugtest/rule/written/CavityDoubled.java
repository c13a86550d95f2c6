package org.tugtest.rule.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Terminal;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;
import org.tugtest.network.Studs;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;
import org.tugtest.table.Cited;

/** Two wire ends sit where only one can. */
public final class CavityDoubled implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("cavity-doubled", Heading.WRITTEN, Level.ERROR)
          .stage(Stage.REFERENCES)
          .summary("two or more wire ends share a cavity or pin that takes one")
          .subjects("cavities and pins with wires")
          .looksFor(
              """
              Two or more wire ends in one cavity of a connector, unless a terminal that is named
              for the cavity takes so many wires ("maxWires") and the sum of their conductor areas
              is in its range. On a device pin with "maxTerminals" 1: more terminals than one.
              A pin that takes several terminals is judged by stud-overstacked.
              """)
          .why(
              """
              A cavity holds one terminal. Two wires that are planned into it end in a terminal
              crimped in the paddock, or one of them is left hanging; two people who each add a
              wire in a branch of their own do this without any conflict in git.
              """)
          .remedy(
              """
              Move one of the wires to a free cavity, join them in a splice before the connector,
              or name a terminal that takes both wires.
              """)
          .basis(
              """
              One wire per terminal unless its maker says otherwise; two wires in one barrel only
              where the maker permits it and the sum of the areas is in the barrel's range
              (NASA-STD-8739.4, 19.11).
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "wires": {"R014": {"from": "F1:1", "to": "R1:3"},
                         "R022": {"from": "F2:1", "to": "R1:3"}}}
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {"PUMP": {"pins": {"+": {"family": "b6.3"}}}},
               "wires": {"W1": {"from": "R1:1", "to": "PUMP:+"},
                         "W2": {"from": "R1:2", "to": "PUMP:+"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {
                 "housings": {"h2": {"side": "socket", "rows": [["1", "2"]],
                                     "terminals": ["twin"]}},
                 "terminals": {"twin": {"family": "t2.8", "side": "socket", "areaMinMm2": 0.5,
                                        "areaMaxMm2": 2.5, "maxWires": 2}}},
               "connectors": {"R1": {"housing": "h2"}},
               "wires": {"R014": {"from": "F1:1", "to": "R1:1", "areaMm2": 1.0},
                         "R022": {"from": "F2:1", "to": "R1:1", "areaMm2": 1.5}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Map.Entry<Point, List<WireEnd>> entry : facts.wiring().ends().entrySet()) {
      Point point = entry.getKey();
      List<WireEnd> ends = entry.getValue();
      if (point.kind() == Point.Kind.SPLICE) {
        continue;
      }
      if (ends.size() < 2 || isOneWire(ends)) {
        ledger.fine();
      } else if (point.kind() == Point.Kind.CAVITY) {
        judgeCavity(facts, point, ends, ledger);
      } else {
        judgePin(facts, point, ends, ledger);
      }
    }
  }

  /** Both ends of one wire on one contact are an open end, which another rule reports. */
  private static boolean isOneWire(List<WireEnd> ends) {
    return ends.size() == 2 && ends.get(0).equals(ends.get(1).other());
  }

  private static void judgeCavity(Facts facts, Point cavity, List<WireEnd> ends, Ledger ledger) {
    Fitting fitting = facts.fitting();
    Fitting.Choice<Terminal> choice = fitting.terminal(cavity);
    List<Terminal> takers = new ArrayList<>();
    for (String id : choice.named()) {
      Terminal terminal = facts.harness().parts().terminals().get(id);
      if (terminal != null && terminal.maxWires() >= ends.size()) {
        takers.add(terminal);
      }
    }
    if (takers.isEmpty()) {
      ledger.finding(
          finding(facts, cavity, ends, cavityReason(choice)).measured(count(ends, choice)));
      return;
    }
    Optional<Cited> sum = fitting.areaSum(ends);
    if (sum.isEmpty()) {
      ledger.notJudged(cavity.subject(), "a wire in it gives no area");
    } else if (takers.stream().anyMatch(one -> fitting.areaProblem(one, ends).isEmpty())) {
      ledger.fine();
    } else {
      Terminal first = takers.get(0);
      Fitting.Misfit misfit = fitting.areaProblem(first, ends).orElseThrow();
      Measured measured =
          misfit.over()
              ? Measured.over(misfit.actual().value(), misfit.limit(), "mm2")
              : Measured.under(misfit.actual().value(), misfit.limit(), "mm2");
      String why =
          "the terminal "
              + first.id()
              + " takes "
              + (misfit.over() ? "at most " : "at least ")
              + measured.limitShown()
              + " mm2, together they have "
              + measured.actualShown()
              + " mm2";
      ledger.finding(
          finding(facts, cavity, ends, why).measured(measured).basis(misfit.actual().basis()));
    }
  }

  private static void judgePin(Facts facts, Point pin, List<WireEnd> ends, Ledger ledger) {
    Studs.Stack stack = Studs.stack(facts.harness(), pin, ends);
    if (stack.allowed() != 1 || stack.terminals() <= 1) {
      ledger.fine();
      return;
    }
    ledger.finding(
        finding(facts, pin, ends, "the pin takes one terminal")
            .measured(Measured.over(stack.terminals(), 1, "")));
  }

  private static String cavityReason(Fitting.Choice<Terminal> choice) {
    Terminal terminal = choice.part();
    if (terminal == null) {
      return "a cavity takes one wire unless a terminal that takes more is named for it";
    }
    return "the terminal " + terminal.id() + " takes " + wires(terminal.maxWires());
  }

  private static Measured count(List<WireEnd> ends, Fitting.Choice<Terminal> choice) {
    Terminal terminal = choice.part();
    return Measured.over(ends.size(), terminal == null ? 1 : terminal.maxWires(), "");
  }

  private static String wires(int count) {
    return count == 1 ? "one wire" : count + " wires";
  }

  private static Finding.Draft finding(
      Facts facts, Point point, List<WireEnd> ends, @Nullable String why) {
    Subject where = point.subject();
    Finding.Draft draft =
        Finding.on(where)
            .message(point.text() + " holds " + listed(ends) + "; " + why)
            .remedy(
                "move one wire to a free cavity, join them in a splice, or name a terminal that"
                    + " takes them all");
    for (WireEnd end : ends) {
      draft.and(Subject.wire(end.wire().id()));
      draft.at(facts.places().of("wires/" + end.wire().id(), end.field()));
    }
    return draft;
  }

  private static String listed(List<WireEnd> ends) {
    List<String> ids = ends.stream().map(end -> end.wire().id()).toList();
    String last = ids.get(ids.size() - 1);
    return ids.subList(0, ids.size() - 1).stream().collect(Collectors.joining(", "))
        + " and "
        + last;
  }
}
