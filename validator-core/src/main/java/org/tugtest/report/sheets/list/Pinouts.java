package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tugtest.facts.Facts;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.html.FaceDrawings;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Column;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.Drawing;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Table;

/** Every connector of each loom from both sides, with what sits in each cavity. */
public final class Pinouts implements DocumentMaker {
  private static final String TITLE = "Pinouts";

  /** How the drawing of a face says that it does not fit an upright page. */
  private static final String BROADEST = " broadest\"";

  private static final List<Column> OTHERS =
      List.of(
          Column.text("wire", "Wire"),
          Column.text("colour", "Colour"),
          Column.text("size", "Size"),
          Column.text("circuit", "Circuit"),
          Column.text("net", "Net").inCsv(),
          Column.text("goes_to", "Goes to"),
          Column.text("meets", "Meets"),
          Column.text("terminal", "Terminal"),
          Column.text("seal", "Seal"),
          Column.text("evidence", "Evidence").inCsv());

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Document> of(HarnessReport harness) {
    Facts facts = harness.facts();
    Map<String, String> faces = FaceDrawings.of(facts);
    List<Document> sheets = new ArrayList<>();
    for (Scope scope : Scope.parts(facts.harness())) {
      List<String> ids = LoomParts.connectors(facts, scope);
      if (!ids.isEmpty()) {
        Maker maker = new Maker(facts);
        Sheet.Builder sheet =
            Sheet.titled(scope, "pinouts", TITLE)
                .purpose("Every connector from both sides, and what sits in each cavity.")
                .note(
                    "Wire side: you look at the back, where the wires go in. Mating side: you look"
                        + " into the front; left and right change places. The latch is up in"
                        + " both.");
        if (ids.stream().anyMatch(id -> faces.getOrDefault(id, "").contains(BROADEST))) {
          sheet.landscape();
        }
        for (String id : ids) {
          sheet.add(new Drawing("<div class=\"faces\">" + faces.getOrDefault(id, "") + "</div>"));
          maker.tables(id).forEach(sheet::add);
        }
        sheets.add(sheet.build());
      }
    }
    return sheets;
  }

  /** The connector stands in the head, which each page repeats. */
  private static List<Column> columns(String connector) {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("connector", "Connector").inCsv());
    columns.add(Column.text("cavity", connector));
    columns.addAll(OTHERS);
    return columns;
  }

  private static final class Maker {
    private final Facts facts;
    private final WireCells cells;
    private final EndCells ends;

    Maker(Facts facts) {
      this.facts = facts;
      cells = new WireCells(facts);
      ends = new EndCells(facts);
    }

    /** What is printed, and where that is folded all rows for the file. */
    List<Table> tables(String connector) {
      List<Column> columns = columns(connector);
      String none = connector + " has no cavities.";
      List<List<Cell>> all = new ArrayList<>();
      List<List<Cell>> printed = new ArrayList<>();
      List<FreeCavity> run = new ArrayList<>();
      for (String cavity : LoomParts.sorted(facts.wiring().cavitiesOf(connector))) {
        Point point = Point.cavity(connector, cavity);
        List<List<Cell>> rows = rows(point);
        all.addAll(rows);
        FreeCavity free = FreeCavity.of(facts, point).orElse(null);
        if (free == null || (!run.isEmpty() && !free.isLike(run.get(0)))) {
          close(run, printed);
        }
        if (free == null) {
          printed.addAll(rows);
        } else {
          run.add(free);
        }
      }
      close(run, printed);
      if (printed.size() == all.size()) {
        return List.of(Table.of(columns, all, none).withTicks());
      }
      List<Column> filed = columns.stream().filter(Column::exported).map(Column::inCsv).toList();
      return List.of(
          Table.of(columns, printed, none).inCsv(Table.NO_CSV).withTicks(),
          Table.of(filed, all, none));
    }

    private List<List<Cell>> rows(Point point) {
      List<WireEnd> wires = facts.wiring().endsAt(point);
      return wires.isEmpty()
          ? List.of(empty(point))
          : wires.stream().map(end -> used(point, end)).toList();
    }

    /** Prints a run of free cavities, as one row where it is long. */
    private void close(List<FreeCavity> run, List<List<Cell>> printed) {
      if (run.size() < FreeCavity.FOLDED) {
        run.forEach(free -> printed.add(empty(free.at())));
      } else {
        FreeCavity first = run.get(0);
        FreeCavity last = run.get(run.size() - 1);
        String meets = first.meets().isEmpty() ? "" : "free cavities of " + first.meets();
        printed.add(
            empty(
                first.at(),
                Cell.text(first.at().name() + " to " + last.at().name()),
                Cell.text(run.size() + " " + first.words(run.size())),
                Cell.text(meets)));
      }
      run.clear();
    }

    private List<Cell> used(Point point, WireEnd end) {
      return List.of(
          Cell.text(point.owner()),
          Cell.text(point.name()),
          cells.id(end.wire()),
          cells.colour(end.wire()),
          cells.size(end.wire()),
          cells.circuit(end.wire()),
          Cell.text(ends.net(end)),
          ends.place(end.other()).over(""),
          meets(point),
          ends.terminal(end),
          ends.seal(end),
          cells.evidence(end.wire()));
    }

    private List<Cell> empty(Point point) {
      Cell says = Cell.text(Blanks.isBlanked(facts, point) ? "blank" : "free");
      String shown = FreeCavity.of(facts, point).map(free -> free.words(1)).orElse("");
      return empty(
          point, Cell.text(point.name()), shown.isEmpty() ? says : says.shown(shown), meets(point));
    }

    private static List<Cell> empty(Point point, Cell cavity, Cell says, Cell meets) {
      return List.of(
          Cell.text(point.owner()),
          cavity,
          says,
          Cell.EMPTY,
          Cell.EMPTY,
          Cell.EMPTY,
          Cell.EMPTY,
          Cell.EMPTY,
          meets,
          Cell.EMPTY,
          Cell.EMPTY,
          Cell.EMPTY);
    }

    /** The contact on the other half, with the wires on it. */
    private Cell meets(Point point) {
      Point other = facts.wiring().meets(point).orElse(null);
      if (other == null) {
        return Cell.EMPTY;
      }
      String wires =
          facts.wiring().endsAt(other).stream()
              .map(end -> end.wire().id())
              .collect(Collectors.joining(", "));
      return Cell.text(other.text()).over(wires);
    }
  }
}
