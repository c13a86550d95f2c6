package org.tugtest.report.sheets.rework;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.bench.merge.MergedLoom;
import org.tugtest.bench.rework.Matching;
import org.tugtest.check.CheckResult;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Evidence;
import org.tugtest.model.Terminal;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.report.BenchWork;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Merges;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Column;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Table;
import org.tugtest.rule.connectors.MergeProposal;
import org.tugtest.text.Series;

/**
 * The rework sheet of each proposal to merge connectors: what goes where, the steps, the faces
 * before and after, what is measured again, and what the files have to say once it is done.
 */
public final class MergeSheets implements DocumentMaker {
  private static final Connector.Cavity NOTHING = new Connector.Cavity(null, null, null, null);
  private static final List<Column> MOVES =
      List.of(
          Column.text("wires", "Wires"),
          Column.text("from", "From"),
          Column.text("to", "To"),
          Column.text("terminal", "Terminal"));
  private static final List<Column> EDITS =
      List.of(
          Column.text("place", "In the files"),
          Column.text("field", "Field"),
          Column.text("is", "Is"),
          Column.text("becomes", "Becomes"));

  @Override
  public List<Document> of(HarnessReport harness) {
    List<MergeProposal> all = Merges.standing(harness);
    List<Document> sheets = new ArrayList<>();
    for (MergeProposal proposal : all.subList(0, Math.min(all.size(), Merges.MOST_SHEETS))) {
      sheets.add(new Maker(harness.facts(), proposal).sheet(all.size()));
    }
    return sheets;
  }

  private static final class Maker {
    private final Facts now;
    private final Facts target;
    private final MergeProposal proposal;
    private final List<List<Cell>> moves = new ArrayList<>();
    private final List<List<Cell>> edits = new ArrayList<>();

    Maker(Facts now, MergeProposal proposal) {
      this.now = now;
      this.target = MergedLoom.of(now, proposal);
      this.proposal = proposal;
    }

    Sheet sheet(int proposals) {
      String small = proposal.near() + " and " + proposal.far();
      String large = proposal.largeNear() + " and " + proposal.largeFar();
      for (MergeProposal.Move move : proposal.moves()) {
        move(move.near(), move.toNear());
        move(move.far(), move.toFar());
      }
      for (String gone : List.of(proposal.near(), proposal.far())) {
        edits.add(
            List.of(
                Cell.text("connectors/" + gone),
                Cell.EMPTY,
                Cell.text("there"),
                Cell.text("gone")));
      }
      Sheet.Builder sheet =
          Sheet.titled(Scope.WHOLE, Merges.sheet(proposal), "Merge " + small + " into " + large)
              .purpose(
                  "A proposal: how the contacts of "
                      + small
                      + " go into free cavities of "
                      + large
                      + ", step by step.")
              .note(
                  "Nobody has decided this yet. Leave both pairs as they are when one must be"
                      + " unplugged without the other, and do both halves in one go.")
              .note(
                  proposal.beside().isEmpty()
                      ? ""
                      : "Feed would stay beside what it may harm: "
                          + Series.and(proposal.beside())
                          + ".")
              .note(
                  proposals > Merges.MOST_SHEETS
                      ? "Of "
                          + proposals
                          + " proposals the first "
                          + Merges.MOST_SHEETS
                          + " have a sheet; the report has them all."
                      : "")
              .add(Table.of(MOVES, moves, "").captioned("What goes where").inCsv("moves"));
      CheckResult unchecked =
          new CheckResult(
              now.harness().root(), List.of(), List.of(), List.of(), List.of(), List.of());
      Comparison comparison =
          Comparison.of(
              Snapshot.of("the files", now, unchecked), Snapshot.of("merged", target, unchecked));
      ReworkSheet.fill(sheet, BenchWork.of(comparison, Matching.byId(now, target)));
      return sheet
          .add(
              Table.of(EDITS, edits, "")
                  .captioned("What the files have to say once it is done")
                  .inCsv("files")
                  .withTicks())
          .build();
    }

    private void move(Point from, Point to) {
      List<WireEnd> ends = now.wiring().endsAt(from);
      if (ends.isEmpty()) {
        return;
      }
      Terminal is = now.fitting().terminal(from).part();
      Terminal becomes = target.fitting().terminal(to).part();
      String terminal =
          is == null || becomes == null
              ? ""
              : is.id().equals(becomes.id()) ? is.id() + ", as it is" : "new: " + becomes.id();
      moves.add(
          List.of(
              Cell.text(Series.and(ends.stream().map(end -> end.wire().id()).distinct().toList())),
              Cell.text(from.text()),
              Cell.text(to.text()),
              Cell.text(terminal)));
      for (WireEnd end : ends) {
        edits.add(
            List.of(
                Cell.text("wires/" + end.wire().id()),
                Cell.text(end.field()),
                Cell.text(from.text()),
                Cell.text(to.text())));
      }
      cavity(to);
    }

    /** What has to be written for a cavity beside its wires. */
    private void cavity(Point to) {
      Connector.Cavity is = written(now, to);
      Connector.Cavity becomes = written(target, to);
      edit(to, "terminal", is.terminal(), becomes.terminal());
      edit(to, "seal", is.seal(), becomes.seal());
      edit(to, "blank", text(is.blank()), text(becomes.blank()));
      edit(to, "evidence", word(is.evidence()), word(becomes.evidence()));
    }

    private static Connector.Cavity written(Facts facts, Point at) {
      Connector connector = facts.harness().connectors().get(at.owner());
      return connector == null ? NOTHING : connector.cavities().getOrDefault(at.name(), NOTHING);
    }

    private static @Nullable String text(@Nullable Boolean flag) {
      return flag == null ? null : flag.toString();
    }

    private static @Nullable String word(@Nullable Evidence evidence) {
      return evidence == null ? null : evidence.word();
    }

    private void edit(Point at, String field, @Nullable String is, @Nullable String becomes) {
      if (!Objects.equals(is, becomes)) {
        edits.add(
            List.of(
                Cell.text("connectors/" + at.owner()),
                Cell.text("cavities." + at.name() + "." + field),
                Cell.text(is),
                Cell.text(becomes == null ? "left out" : becomes)));
      }
    }
  }
}
