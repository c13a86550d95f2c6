package org.tugtest.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Quoted;
import org.tugtest.write.CsvTable.Row;

/** From the rows of a wire list to wires, cell by cell; ids come later. */
final class WireRows {
  private static final int LONGEST_CIRCUIT = 60;
  private static final int LONGEST_LABEL = 200;
  private static final String KEPT = "It was left out; the cell is kept as a note.";

  private final WireHeader header;
  private final UnclearCells unclear;
  private final LegalNames looms = new LegalNames();
  private final EndCells ends;
  private final ColourCells colours;
  private final EndColumns from;
  private final EndColumns to;

  WireRows(
      List<Row> rows, WireHeader header, ColumnMap map, LegalNames names, UnclearCells unclear) {
    this.header = header;
    this.unclear = unclear;
    this.from = EndColumns.of(header, WireColumn.FROM, WireColumn.FROM_PIN, rows);
    this.to = EndColumns.of(header, WireColumn.TO, WireColumn.TO_PIN, rows);
    List<EndCells.Cell> cells = new ArrayList<>();
    List<String> colourCells = new ArrayList<>();
    for (Row row : rows) {
      cells.add(from.cell(row));
      cells.add(to.cell(row));
      colourCells.add(row.cell(header.column(WireColumn.COLOUR)));
      colourCells.add(row.cell(header.column(WireColumn.STRIPE)));
    }
    this.ends = new EndCells(cells, names);
    this.colours = new ColourCells(colourCells, map.colours());
  }

  /** The wire of a row; null when the row has no end at all. */
  @Nullable WireDraft read(Row row) {
    WireDraft wire = new WireDraft(row.number());
    if (isNothing(from.cell(row)) && isNothing(to.cell(row))) {
      unclear.row(
          row.number(),
          "Row " + row.number() + " names no end: " + Quoted.text(row.shown()) + ".",
          "No wire was made of it.");
      return null;
    }
    wire.from(end(row, from, wire));
    wire.to(end(row, to, wire));
    colour(row, wire);
    for (Map.Entry<Integer, WireColumn> column : new TreeMap<>(header.columns()).entrySet()) {
      int at = column.getKey();
      if (!row.cell(at).isEmpty()) {
        read(row.number(), at, column.getValue(), row.cell(at), wire);
      }
    }
    for (int c = 0; c < row.cells().size(); c++) {
      if (!header.columns().containsKey(c) && !row.cell(c).isEmpty()) {
        wire.note(header.name(c), row.cell(c));
      }
    }
    return wire;
  }

  private static boolean isNothing(EndCells.Cell cell) {
    EndForm.Kind kind = EndForm.of(cell.text()).kind();
    boolean none = kind == EndForm.Kind.NONE || kind == EndForm.Kind.PLACEHOLDER;
    return none && cell.pin().isEmpty();
  }

  private @Nullable String end(Row row, EndColumns columns, WireDraft wire) {
    EndCells.Cell cell = columns.cell(row);
    EndCells.Read read = ends.read(cell);
    String carried = columns.carried(row);
    if (carried != null && read.owner() != null) {
      unclear.cell(
          row.number(),
          columns.owner(),
          cell.pin(),
          "Pin " + Quoted.text(cell.pin()) + " stands without what it belongs to.",
          "It was taken for a pin of " + read.owner() + ", which stands above it.");
    } else if (read.message() != null && read.done() != null) {
      unclear.cell(row.number(), columns.owner(), read.about(), read.message(), read.done());
    }
    if (read.owner() == null) {
      keep(row, columns.owner(), wire);
      keep(row, columns.pin(), wire);
    }
    return read.reference();
  }

  private void keep(Row row, int column, WireDraft wire) {
    if (!row.cell(column).isEmpty()) {
      wire.note(header.name(column), row.cell(column));
    }
  }

  private void colour(Row row, WireDraft wire) {
    int base = header.column(WireColumn.COLOUR);
    int stripe = header.column(WireColumn.STRIPE);
    String baseCode = colourCode(row, base, wire);
    String stripeCode = colourCode(row, stripe, wire);
    if (baseCode != null && stripeCode != null) {
      if (baseCode.indexOf('/') < 0 && stripeCode.indexOf('/') < 0) {
        wire.text("colour", baseCode + "/" + stripeCode);
        return;
      }
      left(row.number(), stripe, row.cell(stripe), "is a second stripe", wire);
    } else if (baseCode == null && stripeCode != null) {
      left(row.number(), stripe, row.cell(stripe), "is a stripe without a base", wire);
    }
    wire.text("colour", baseCode);
  }

  private @Nullable String colourCode(Row row, int column, WireDraft wire) {
    String cell = row.cell(column);
    if (cell.isEmpty()) {
      return null;
    }
    ColourCells.Read read = colours.read(cell);
    if (read.unclear() != null) {
      unclear.cell(row.number(), column, cell, read.unclear(), KEPT);
      wire.note(header.name(column), cell);
    } else if (read.assumed() != null) {
      String done = "It was read as " + read.colour() + ".";
      unclear.cell(row.number(), column, cell, read.assumed(), done);
    }
    return read.colour();
  }

  private void read(int row, int at, WireColumn column, String cell, WireDraft wire) {
    switch (column) {
      case SIZE -> size(row, at, cell, SizeCell.Unit.UNSAID, wire);
      case AREA -> size(row, at, cell, SizeCell.Unit.MM2, wire);
      case AWG -> size(row, at, cell, SizeCell.Unit.AWG, wire);
      case LENGTH -> length(row, at, cell, LengthCell.Unit.UNSAID, wire);
      case LENGTH_MM -> length(row, at, cell, LengthCell.Unit.MM, wire);
      case LENGTH_CM -> length(row, at, cell, LengthCell.Unit.CM, wire);
      case LENGTH_M -> length(row, at, cell, LengthCell.Unit.M, wire);
      case CIRCUIT -> line(row, at, cell, LONGEST_CIRCUIT, "circuit", wire);
      case LABEL -> line(row, at, cell, LONGEST_LABEL, "label", wire);
      case LOOM -> loom(row, at, cell, wire);
      case NOTE -> wire.note("", cell);
      case PART -> {
        unclear.cell(
            row,
            at,
            "",
            "The list names parts, but no part is described here.",
            "They are kept as notes; describe them under parts.wires to use them.");
        wire.note(header.name(at), cell);
      }
      case FROM, FROM_PIN, TO, TO_PIN, PIN, ID, COLOUR, STRIPE -> {}
    }
  }

  private void size(int row, int at, String cell, SizeCell.Unit unit, WireDraft wire) {
    SizeCell size = SizeCell.read(cell, unit);
    if (size.unclear() != null) {
      unclear.cell(row, at, cell, size.unclear(), KEPT);
      wire.note(header.name(at), cell);
    } else if (wire.hasSize()) {
      left(row, at, cell, "is a second size of the same wire", wire);
    } else if (size.areaMm2() != null) {
      wire.number("areaMm2", size.areaMm2());
    } else {
      wire.text("awg", size.awg());
    }
  }

  private void length(int row, int at, String cell, LengthCell.Unit unit, WireDraft wire) {
    LengthCell length = LengthCell.read(cell, unit);
    if (LengthCell.inPlace(cell)) {
      wire.flag("laidInPlace");
    } else if (length.mm() != null) {
      wire.number("cutMm", length.mm());
    } else {
      unclear.cell(row, at, cell, String.valueOf(length.unclear()), KEPT);
      wire.note(header.name(at), cell);
    }
  }

  private void line(int row, int at, String cell, int longest, String name, WireDraft wire) {
    String text = WireDraft.printable(cell).replaceAll("\\s+", " ").strip();
    if (text.isEmpty() || text.length() > longest) {
      left(row, at, cell, "is longer than " + longest + " characters", wire);
    } else {
      wire.text(name, text);
    }
  }

  private void loom(int row, int at, String cell, WireDraft wire) {
    String id = looms.idOf(cell);
    if (id.isEmpty()) {
      left(row, at, cell, "has no letter or digit that an id may hold", wire);
      return;
    }
    if (!id.equals(cell)) {
      unclear.cell(
          row,
          at,
          cell,
          Quoted.text(cell) + " is no legal id, or is spelt otherwise elsewhere.",
          "The loom was written as " + id + ".");
    }
    wire.loom(id);
  }

  private void left(int row, int at, String cell, String why, WireDraft wire) {
    unclear.cell(row, at, cell, Quoted.text(cell) + " " + why + ".", KEPT);
    wire.note(header.name(at), cell);
  }
}
