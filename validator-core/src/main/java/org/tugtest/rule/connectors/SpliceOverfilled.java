package org.tugtest.rule.connectors;

import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Splice;
import org.tugtest.model.SplicePart;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.table.Cited;
import org.tugtest.text.Series;

/** The wires on a splice are more, or thicker or thinner together, than its part takes. */
public final class SpliceOverfilled implements Rule {
  private static final int NAMED = 8;

  /** Sums of areas within this factor of a bound are on it: they carry rounding only. */
  private static final double EXACT = 1 + 1e-9;

  private static final String NO_PART = "it names no splice part";
  private static final String PART_UNKNOWN = "its splice part is not known";
  private static final String NO_FIGURE = "its splice part gives no figures";
  private static final String NO_AREA = "a wire on it gives no area";

  private static final RuleInfo INFO =
      RuleInfo.of("splice-overfilled", Heading.CONNECTORS, Level.WARNING)
          .summary("the wires on a splice are more, thicker or thinner than its part takes")
          .subjects("splices")
          .looksFor(
              """
              More wire ends on a splice than "maxWires" of its part, or a sum of the conductor
              areas of all ends over its "areaMaxMm2" or under its "areaMinMm2". A splice without
              a part is not judged, nor the sum when a wire gives no area.
              """)
          .why(
              """
              An overfilled barrel is not gripped all round and a loose one does not grip at all;
              both pass the first check and fail warm, under heat-shrink.
              """)
          .remedy(
              """
              Take the splice part of the next size, share the wires out over two splices, or
              move the joint into a connector or a bus bar.
              """)
          .basis(
              """
              The range of the part, as the file gives it; the areas of all conductors in a barrel
              are added (NASA-STD-8739.4, 19.11). Gauges by the formula of ASTM B258.
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"splices": {"s4": {"areaMinMm2": 1.0, "areaMaxMm2": 4.0, "maxWires": 4}}},
               "splices": {"S1": {"part": "s4"}},
               "wires": {"W1": {"from": "A:1", "to": "S1", "areaMm2": 2.5},
                         "W2": {"from": "S1", "to": "B:1", "areaMm2": 2.5}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"splices": {"s4": {"areaMinMm2": 1.0, "areaMaxMm2": 4.0, "maxWires": 4}}},
               "splices": {"S1": {"part": "s4"}},
               "wires": {"W1": {"from": "A:1", "to": "S1", "areaMm2": 2.0},
                         "W2": {"from": "S1", "to": "B:1", "areaMm2": 2.0}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Splice splice : facts.harness().splices().values()) {
      Subject subject = Subject.splice(splice.id());
      SplicePart part =
          splice.part() == null ? null : facts.harness().parts().splices().get(splice.part());
      if (part == null) {
        ledger.notJudged(subject, splice.part() == null ? NO_PART : PART_UNKNOWN);
      } else if (part.maxWires() == null
          && part.areaMinMm2() == null
          && part.areaMaxMm2() == null) {
        ledger.notJudged(subject, NO_FIGURE);
      } else {
        judge(facts, splice, part, ledger);
      }
    }
  }

  private static void judge(Facts facts, Splice splice, SplicePart part, Ledger ledger) {
    List<WireEnd> ends = facts.wiring().endsAt(Point.splice(splice.id()));
    boolean bad = false;
    Integer most = part.maxWires();
    if (most != null && ends.size() > most) {
      String says = "holds " + ends.size() + " wire ends; its part " + part.id() + " takes " + most;
      ledger.finding(
          draft(facts, splice, part, ends, "wires", says, "share the wires out over two splices")
              .measured(Measured.over(ends.size(), most, "")));
      bad = true;
    }
    Sum sum = Sum.of(facts, ends);
    Double over = part.areaMaxMm2();
    Double under = part.areaMinMm2();
    if (over != null && sum.known() > over * EXACT) {
      Measured measured = Measured.over(sum.known(), over, "mm2");
      ledger.finding(areaFinding(facts, splice, part, ends, sum, measured, "at most"));
    } else if (!sum.complete() && (over != null || under != null)) {
      if (!bad) {
        ledger.notJudged(Subject.splice(splice.id()), NO_AREA);
      }
    } else if (under != null && !ends.isEmpty() && sum.known() < under / EXACT) {
      Measured measured = Measured.under(sum.known(), under, "mm2");
      ledger.finding(areaFinding(facts, splice, part, ends, sum, measured, "at least"));
    } else if (!bad) {
      ledger.fine();
    }
  }

  /**
   * The areas at some wire ends, added.
   *
   * @param known sum of those that are known, mm2
   * @param complete whether every wire gives one
   */
  private record Sum(double known, boolean complete, Basis basis) {
    static Sum of(Facts facts, List<WireEnd> ends) {
      double known = 0;
      boolean complete = true;
      Basis basis = Basis.GIVEN;
      for (WireEnd end : ends) {
        Optional<Cited> area = facts.fitting().sizes().areaMm2(end.wire());
        if (area.isPresent()) {
          known += area.get().value();
          basis = basis.weaker(area.get().basis());
        } else {
          complete = false;
        }
      }
      return new Sum(known, complete, basis);
    }
  }

  private static Finding.Draft areaFinding(
      Facts facts,
      Splice splice,
      SplicePart part,
      List<WireEnd> ends,
      Sum sum,
      Measured measured,
      String bound) {
    String says =
        "holds "
            + (sum.complete() ? "" : "at least ")
            + measured.actualShown()
            + " mm2 of conductors; its part "
            + part.id()
            + " takes "
            + bound
            + " "
            + measured.limitShown()
            + " mm2";
    String remedy =
        measured.bound() == Measured.Bound.AT_MOST
            ? "take a larger splice part, or share the wires out over two splices"
            : "take a smaller splice part";
    return draft(facts, splice, part, ends, "area", says, remedy)
        .measured(measured)
        .basis(sum.basis());
  }

  private static Finding.Draft draft(
      Facts facts,
      Splice splice,
      SplicePart part,
      List<WireEnd> ends,
      String kind,
      String says,
      String remedy) {
    List<String> wires = ends.stream().map(end -> end.wire().id()).distinct().toList();
    Finding.Draft draft =
        Finding.on(Subject.splice(splice.id()), Subject.part("splices", part.id()))
            .kind(kind)
            .message("splice " + splice.id() + " " + says + " (" + Series.and(wires, NAMED) + ")")
            .remedy(remedy)
            .at(facts.places().of("splices/" + splice.id()));
    for (String wire : wires) {
      draft.and(Subject.wire(wire)).at(facts.places().of("wires/" + wire));
    }
    return draft;
  }
}
