package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Terminal;
import org.tugtest.model.Wire;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** A conductor or insulation that is out of its terminal's range. */
public final class TerminalUnfitForWire implements Rule {
  private static final int NAMED = 8;
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
              themselves are allowed. All ends at which the same terminal meets the same wire part
              are one finding. Diameters come from the wire part, else from a table of
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

  /**
   * A crimp that does not suit.
   *
   * @param what {@code conductor} or {@code insulation}
   * @param unit of what does not suit
   */
  private record Crimp(
      Point point,
      Terminal terminal,
      List<WireEnd> ends,
      String what,
      String unit,
      Fitting.Misfit misfit) {

    /** What is the same in all crimps that one change mends; several wires in one are their own. */
    List<String> lot() {
      if (ends.size() > 1) {
        return List.of(point.text(), terminal.id(), what);
      }
      Wire wire = ends.get(0).wire();
      return List.of(
          "",
          terminal.id(),
          what,
          wire.part() != null ? "part " + wire.part() : "",
          String.valueOf(wire.areaMm2()),
          String.valueOf(wire.awg()));
    }
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<List<String>, List<Crimp>> lots = new LinkedHashMap<>();
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
        judge(facts, cavity, terminal, facts.wiring().endsAt(cavity), lots, ledger);
      }
    }
    for (Map.Entry<Point, List<WireEnd>> entry : facts.wiring().ends().entrySet()) {
      if (entry.getKey().kind() == Point.Kind.PIN) {
        entry.getValue().forEach(end -> judgePin(facts, entry.getKey(), end, lots, ledger));
      }
    }
    lots.values().forEach(lot -> report(facts, lot, ledger));
  }

  private static void judgePin(
      Facts facts, Point pin, WireEnd end, Map<List<String>, List<Crimp>> lots, Ledger ledger) {
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
      judge(facts, pin, terminal, sharing, lots, ledger);
    }
  }

  private static void judge(
      Facts facts,
      Point point,
      Terminal terminal,
      List<WireEnd> ends,
      Map<List<String>, List<Crimp>> lots,
      Ledger ledger) {
    Fitting fitting = facts.fitting();
    Optional<Fitting.Misfit> area = fitting.areaProblem(terminal, ends);
    Optional<Fitting.Misfit> insulation =
        fitting.insulationProblem(terminal.insulationMinMm(), terminal.insulationMaxMm(), ends);
    if (area.isPresent() || insulation.isPresent()) {
      Crimp crimp =
          area.isPresent()
              ? new Crimp(point, terminal, ends, "conductor", "mm2", area.get())
              : new Crimp(point, terminal, ends, "insulation", "mm", insulation.orElseThrow());
      if (!ledger.switchedOff(point.subject())) {
        lots.computeIfAbsent(crimp.lot(), key -> new ArrayList<>()).add(crimp);
      }
    } else if (fitting.areaSum(ends).isEmpty()) {
      ledger.notJudged(point.subject(), NO_SIZE);
    } else {
      ledger.fine();
    }
  }

  private static void report(Facts facts, List<Crimp> lot, Ledger ledger) {
    Crimp first = lot.get(0);
    boolean several = lot.size() > 1;
    List<WireEnd> ends = lot.stream().flatMap(one -> one.ends().stream()).toList();
    List<String> wires =
        ends.stream().map(end -> end.wire().id()).distinct().sorted(NaturalOrder.NATURAL).toList();
    List<String> points = lot.stream().map(one -> one.point().text()).distinct().toList();
    String terminal = first.terminal().id();
    String where = Series.and(points, NAMED);
    String part = ends.get(0).wire().part();
    Finding.Draft draft = Finding.on(first.point().subject());
    wires.forEach(wire -> draft.and(Subject.wire(wire)));
    lot.stream().skip(1).forEach(one -> draft.and(one.point().subject()));
    for (WireEnd end : ends) {
      draft.at(facts.places().of("wires/" + end.wire().id(), end.field()));
    }
    ledger.finding(
        draft
            .at(facts.places().of("parts/terminals/" + terminal))
            .kind(first.what())
            .message(
                first.what()
                    + (wires.size() == 1
                        ? " of wire "
                        : first.ends().size() > 1 ? "s of wires " : " of wires ")
                    + Series.and(wires, NAMED)
                    + (first.ends().size() > 1 ? " do" : " does")
                    + " not suit terminal "
                    + terminal
                    + " at "
                    + where
                    + ": "
                    + Cavities.sentence(first.misfit(), first.unit()))
            .remedy(
                several
                    ? "name a terminal there whose range holds "
                        + (part == null ? "these wires" : "wire part " + part)
                        + ", take another wire, or correct the range of terminal "
                        + terminal
                    : "name a terminal at " + where + " whose range holds it, or change the wire")
            .measured(Cavities.measured(first.misfit(), first.unit()))
            .basis(first.misfit().actual().basis()),
        lot.stream().map(one -> one.point().subject()).toList());
  }
}
