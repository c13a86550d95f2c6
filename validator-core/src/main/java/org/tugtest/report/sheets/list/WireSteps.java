package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.model.Group;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.network.WireEnd;
import org.tugtest.report.html.text.WireText;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Scope;
import org.tugtest.table.LengthToleranceTable;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** The steps with single wires, groups and splices: what is cut, laid, twisted and joined. */
final class WireSteps {
  private static final int NAMED = 14;
  private final Facts facts;
  private final Scope scope;
  private final CutLength lengths;
  private final WireText texts;
  private final List<BuildStep> steps = new ArrayList<>();

  WireSteps(Facts facts, Scope scope) {
    this.facts = facts;
    this.scope = scope;
    this.lengths = new CutLength(facts);
    this.texts = new WireText(facts.harness());
  }

  List<BuildStep> all() {
    LoomParts.wires(facts.harness(), scope).forEach(this::donor);
    cut();
    laid();
    groups();
    splices();
    return List.copyOf(steps);
  }

  private void add(BuildStage stage, String on, String task, String with) {
    steps.add(new BuildStep(stage, on, task, with, false));
  }

  private void donor(Wire wire) {
    if (wire.decision() == null) {
      return;
    }
    String task =
        switch (wire.decision()) {
          case KEEP -> "keep it as it is";
          case EXTEND -> "extend it: splice a piece on, away from breakouts and plugs";
          case REMOVE -> "take it out to both ends; cap what stays";
          case UNDECIDED -> "not decided yet: settle it before you go on";
        };
    String reason = wire.reason() == null ? "no reason given" : wire.reason();
    steps.add(
        new BuildStep(
            BuildStage.DONOR,
            wire.id() + ", " + WireText.end(wire.from()) + " to " + WireText.end(wire.to()),
            task,
            reason,
            texts.guessed(wire)));
  }

  private void cut() {
    CutPlan plan = CutPlan.of(facts, scope);
    Map<CutPlan.Stock, List<CutPlan.Piece>> byStock = new LinkedHashMap<>();
    for (CutPlan.Piece piece : plan.pieces()) {
      if (!piece.inPlace()) {
        CutPlan.Stock stock = new CutPlan.Stock(piece.part(), piece.cable() != null);
        byStock.computeIfAbsent(stock, none -> new ArrayList<>()).add(piece);
      }
    }
    byStock.forEach(
        (stock, pieces) -> {
          long unknown = pieces.stream().filter(piece -> piece.mm() == null).count();
          String name = stock.part().isEmpty() ? "wire of no given part" : stock.part();
          add(
              BuildStage.CUT,
              name,
              "cut "
                  + pieces.size()
                  + " by the cut list and mark "
                  + (pieces.size() == 1 ? "it" : "each")
                  + " at both ends",
              unknown == 0 ? "" : unknown + " without a known length: lay in place and mark");
        });
  }

  /** In the order of the cut list. */
  private void laid() {
    for (CutPlan.Piece piece : CutPlan.of(facts, scope).pieces()) {
      if (piece.inPlace()) {
        Wire wire = piece.wires().get(0);
        String ends = WireText.end(wire.from()) + " to " + WireText.end(wire.to());
        Double mm = piece.mm();
        String band =
            mm == null
                ? "no length known"
                : Cell.number(mm, 0).value()
                    + " mm, or up to "
                    + Quoted.number(LengthToleranceTable.plusMm(mm).value())
                    + " mm longer";
        String part = piece.part().isEmpty() ? "no part given" : piece.part();
        steps.add(
            new BuildStep(
                BuildStage.LAID,
                piece.cable() == null ? wire.id() + ", " + ends : "cable " + piece.cable().id(),
                "run it " + way(wire) + ", mark it at both ends, cut it there",
                part + ", " + band,
                piece.wires().stream().anyMatch(texts::guessed)));
      }
    }
  }

  private String way(Wire wire) {
    return lengths
        .route(wire)
        .map(route -> "along " + String.join(" – ", route.nodes()))
        .orElse("from end to end");
  }

  private void groups() {
    for (Group group : facts.harness().groups().values()) {
      List<String> its = group.wires().stream().filter(this::ours).toList();
      if (its.isEmpty() || group.kind() == null) {
        continue;
      }
      if (group.kind() == Group.Kind.TWISTED) {
        String pitch =
            group.pitchMm() == null
                ? "pitch not given"
                : "one turn every " + Quoted.number(group.pitchMm()) + " mm";
        add(BuildStage.GROUPS, group.id(), "twist " + Series.and(its, NAMED), pitch);
      } else {
        String screen = group.screen() == null ? "no screen wire" : "screen " + group.screen();
        add(BuildStage.GROUPS, group.id(), "open the cable to " + Series.and(its, NAMED), screen);
      }
    }
  }

  private boolean ours(String id) {
    Wire wire = facts.harness().wires().get(id);
    return wire != null && scope.holds(wire.loom());
  }

  private void splices() {
    for (String id : SpliceList.inOrder(facts, LoomParts.splices(facts, scope))) {
      Splice splice = facts.harness().splices().get(id);
      List<WireEnd> joined =
          LoomParts.endsIn(facts, id).stream().filter(end -> stays(end.wire())).toList();
      List<String> wires = joined.stream().map(end -> end.wire().id()).distinct().toList();
      if (!joined.isEmpty() && joined.stream().noneMatch(end -> fresh(end.wire()))) {
        continue;
      }
      boolean guessed = joined.stream().anyMatch(end -> texts.guessed(end.wire()));
      List<String> with = new ArrayList<>();
      String part = splice == null ? null : splice.part();
      with.add(part == null ? "splice part not known" : part);
      if (splice != null) {
        splice.coverings().forEach(with::add);
      }
      boolean covered = splice != null && !splice.coverings().isEmpty();
      boolean cap = splice != null && splice.endCap();
      steps.add(
          new BuildStep(
              BuildStage.SPLICES,
              id + ", " + SpliceList.place(facts, id),
              (covered ? "slide the covering on, then " : "")
                  + (cap ? "cap " : "join ")
                  + (wires.isEmpty() ? "nothing: no wire ends here" : Series.and(wires, NAMED)),
              String.join(", ", with),
              guessed));
    }
  }

  private static boolean stays(Wire wire) {
    return wire.decision() != Wire.Decision.REMOVE;
  }

  /** A donor's wire has its terminals already. */
  private boolean fresh(Wire wire) {
    return !lengths.fromDonor(wire);
  }
}
