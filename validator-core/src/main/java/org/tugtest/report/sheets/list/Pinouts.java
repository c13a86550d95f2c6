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
          sheet.add(Table.of(columns(id), maker.rows(id), id + " has no cavities.").withTicks());
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

    List<List<Cell>> rows(String connector) {
      List<List<Cell>> rows = new ArrayList<>();
      for (String cavity : LoomParts.sorted(facts.wiring().cavitiesOf(connector))) {
        Point point = Point.cavity(connector, cavity);
        List<WireEnd> wires = facts.wiring().endsAt(point);
        if (wires.isEmpty()) {
          rows.add(empty(point));
        }
        wires.forEach(end -> rows.add(used(point, end)));
      }
      return rows;
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
      return List.of(
          Cell.text(point.owner()),
          Cell.text(point.name()),
          Cell.text(Blanks.isBlanked(facts, point) ? "blank" : "free"),
          Cell.EMPTY,
          Cell.EMPTY,
          Cell.EMPTY,
          Cell.EMPTY,
          Cell.EMPTY,
          meets(point),
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
