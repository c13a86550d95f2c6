package org.tugtest.rule.connectors;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Terminal;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A conductor or insulation that is out of its terminal's range. */
public final class TerminalUnfitForWire implements Rule {
  private static final String NO_SIZE = "the wire gives neither area nor gauge";

  private static final RuleInfo INFO =
      RuleInfo.of("terminal-unfit-for-wire", Heading.CONNECTORS, Level.ERROR)
          .summary("a wire is too thin or too thick for the terminal it is crimped into")
          .subjects("crimped wire ends")
          .looksFor(
              """
              The conductor area at a terminal (of several wires in one terminal their sum) is
              outside "areaMinMm2" to "areaMaxMm2", or the insulation is outside
              "insulationMinMm" to "insulationMaxMm" where the terminal gives these. The bounds
              themselves are allowed. Diameters come from the wire part, else from a table of
              outside diameters; a remembered row of it can only warn.
              """)
          .why(
              """
              A thin wire in a wide barrel pulls out; a thick one leaves strands outside the crimp
              and runs hot. Both look right until the loom is pulled or loaded.
              """)
          .remedy("Name a terminal whose range holds the wire, or change the wire.")
          .basis(
              """
              The ranges are the terminal's own, as written. Gauges by the ASTM B258 formula;
              outside diameters from ISO 6722-1 (a trade catalogue where it could be read, else
              from memory) and a maker's data sheet of SAE J1128 GXL.
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"h1": {"side": "socket", "family": "t1.5", "rows": [["1"]],
                                             "terminals": ["s15"]}},
                         "terminals": {"s15": {"family": "t1.5", "side": "socket",
                                               "areaMinMm2": 0.35, "areaMaxMm2": 1.0}}},
               "connectors": {"R1": {"housing": "h1"}},
               "wires": {"W1": {"from": "R1:1", "to": "R2:1", "areaMm2": 1.5}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"h1": {"side": "socket", "family": "t1.5", "rows": [["1"]],
                                             "terminals": ["s15"]}},
                         "terminals": {"s15": {"family": "t1.5", "side": "socket",
                                               "areaMinMm2": 0.35, "areaMaxMm2": 1.0}}},
               "connectors": {"R1": {"housing": "h1"}},
               "wires": {"W1": {"from": "R1:1", "to": "R2:1", "areaMm2": 1.0}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Point cavity : Cavities.wired(facts)) {
      Fitting.Choice<Terminal> choice = facts.fitting().terminal(cavity);
      Terminal terminal = choice.part();
      if (terminal == null) {
        ledger.notJudged(
            cavity.subject(),
            choice.named().isEmpty() ? "no terminal is named" : "the terminal is not known");
      } else if (facts.fitting().overfilled(cavity)) {
        ledger.notJudged(cavity.subject(), Unjudged.OVERFILLED);
      } else {
        judge(facts, cavity, terminal, facts.wiring().endsAt(cavity), ledger);
      }
    }
    for (Map.Entry<Point, List<WireEnd>> entry : facts.wiring().ends().entrySet()) {
      if (entry.getKey().kind() == Point.Kind.PIN) {
        entry.getValue().forEach(end -> judgePin(facts, entry.getKey(), end, ledger));
      }
    }
  }

  private static void judgePin(Facts facts, Point pin, WireEnd end, Ledger ledger) {
    String id = end.terminal();
    Terminal terminal = id == null ? null : facts.harness().parts().terminals().get(id);
    if (terminal == null) {
      ledger.notJudged(
          Subject.wire(end.wire().id()),
          id == null ? "no terminal is written for its end" : "the terminal is not known");
      return;
    }
    List<WireEnd> sharing =
        terminal.maxWires() < 2
            ? List.of(end)
            : facts.wiring().endsAt(pin).stream()
                .filter(other -> terminal.id().equals(other.terminal()))
                .toList();
    if (sharing.get(0).equals(end)) {
      judge(facts, pin, terminal, sharing, ledger);
    }
  }

  private static void judge(
      Facts facts, Point point, Terminal terminal, List<WireEnd> ends, Ledger ledger) {
    Fitting fitting = facts.fitting();
    Optional<Fitting.Misfit> area = fitting.areaProblem(terminal, ends);
    Optional<Fitting.Misfit> insulation =
        fitting.insulationProblem(terminal.insulationMinMm(), terminal.insulationMaxMm(), ends);
    if (area.isPresent()) {
      String what = ends.size() == 1 ? "conductor of wire " : "conductors of wires ";
      ledger.finding(
          finding(facts, point, terminal, ends, what, area.get(), "mm2").kind("conductor"));
    } else if (insulation.isPresent()) {
      String what = ends.size() == 1 ? "insulation of wire " : "insulation of wires ";
      ledger.finding(
          finding(facts, point, terminal, ends, what, insulation.get(), "mm").kind("insulation"));
    } else if (fitting.areaSum(ends).isEmpty()) {
      ledger.notJudged(point.subject(), NO_SIZE);
    } else {
      ledger.fine();
    }
  }

  private static Finding.Draft finding(
      Facts facts,
      Point point,
      Terminal terminal,
      List<WireEnd> ends,
      String what,
      Fitting.Misfit misfit,
      String unit) {
    Finding.Draft draft =
        Finding.on(point.subject())
            .message(
                what
                    + Cavities.wires(ends)
                    + (ends.size() == 1 ? " does" : " do")
                    + " not suit terminal "
                    + terminal.id()
                    + " at "
                    + point.text()
                    + ": "
                    + Cavities.sentence(misfit, unit))
            .remedy(
                "name a terminal at " + point.text() + " whose range holds it, or change the wire")
            .measured(Cavities.measured(misfit, unit))
            .basis(misfit.actual().basis());
    for (WireEnd end : ends) {
      draft.and(Subject.wire(end.wire().id()));
      draft.at(facts.places().of("wires/" + end.wire().id(), end.field()));
    }
    return draft.at(facts.places().of("parts/terminals/" + terminal.id()));
  }
}
