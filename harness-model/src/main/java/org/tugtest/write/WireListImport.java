package org.tugtest.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;
import org.tugtest.text.Quoted;
import org.tugtest.write.CsvTable.Row;

/**
 * Makes a sketch harness of a wire list kept in a spreadsheet. Whatever is not plain is listed with
 * its row and column and what was done about it; nothing is guessed silently, and what cannot be
 * used stays in the note of its wire.
 */
public final class WireListImport {
  private WireListImport() {}

  /**
   * What a person chooses.
   *
   * @param root path of the root file to make, ending in {@code .harness.json}
   * @param title of the vehicle; null for none
   * @param map which column is what, as a JSON object; null when the headers say it
   */
  public record Options(String root, @Nullable String title, @Nullable String map) {}

  /**
   * Reads one list.
   *
   * @param path of the list, for problems
   * @param content its bytes
   */
  public static WireListResult read(String path, byte[] content, Options options) {
    SheetText sheet = SheetText.decode(content);
    if (sheet.refused() != null) {
      return refused(path, sheet.refused(), "Give a CSV file.");
    }
    ColumnMap.Parsed map =
        options.map() == null
            ? new ColumnMap.Parsed(ColumnMap.NONE, List.of())
            : ColumnMap.parse("the map of columns", options.map());
    if (!map.problems().isEmpty()) {
      return new WireListResult.Refused(map.problems());
    }
    Character announced = CsvTable.announced(sheet.text());
    String text = sheet.text();
    if (text.isBlank()) {
      return refused(path, "is empty", "Save the list as CSV again, with its header.");
    }
    char separator = announced != null ? announced : separator(text, map.map());
    CsvTable table = CsvTable.read(text, separator);
    if (table.broken() != null) {
      return refused(path, table.broken(), "Close the quote in that row, or take it away.");
    }
    WireHeader header = WireHeader.find(table, map.map());
    if (!header.hasEnds()) {
      return refused(
          path,
          "has no row that names a column for each end of a wire, such as from and to",
          "Add such a header, or say which column is which: {\"from\": \"A\", \"to\": \"B\"}.");
    }
    UnclearCells unclear = new UnclearCells();
    if (sheet.assumed()) {
      unclear.file(
          "The list is not UTF-8 and does not say what it is.",
          "It was read as " + sheet.encoding() + ".");
    }
    WireListResult result = new Reading(header, map.map(), unclear).imported(table, sheet, options);
    boolean nothing =
        result instanceof WireListResult.Imported imported
            && imported.wires() == 0
            && imported.unclear().isEmpty();
    return nothing
        ? refused(path, "has a header and no wire below it", "Save the list with its rows.")
        : result;
  }

  /** The separator under which the header says most; a comma when none does. */
  private static char separator(String text, ColumnMap map) {
    char best = CsvTable.SEPARATORS.charAt(0);
    WireHeader bestHeader = null;
    for (char separator : CsvTable.SEPARATORS.toCharArray()) {
      WireHeader header = WireHeader.find(CsvTable.sample(text, separator), map);
      int gain = bestHeader == null ? 1 : header.score() - bestHeader.score();
      boolean ends = bestHeader != null && header.hasEnds() && !bestHeader.hasEnds();
      if (ends || (gain > 0 && (bestHeader == null || header.hasEnds() == bestHeader.hasEnds()))) {
        best = separator;
        bestHeader = header;
      }
    }
    return best;
  }

  private static WireListResult refused(String path, String why, String remedy) {
    return new WireListResult.Refused(
        List.of(
            new Problem(
                Problem.Kind.FILE_UNREADABLE,
                "files/" + path,
                path + " " + why + ".",
                remedy,
                List.of(Place.point(path, 1, 1, "")))));
  }

  /** One list being read. */
  private record Reading(WireHeader header, ColumnMap map, UnclearCells unclear) {

    WireListResult imported(CsvTable table, SheetText sheet, Options options) {
      List<Row> rows = data(table);
      WireRows reader = new WireRows(rows, header, map, new LegalNames(), unclear);
      List<WireDraft> wires = new ArrayList<>();
      for (Row row : rows) {
        WireDraft wire = reader.read(row);
        if (wire != null) {
          wires.add(wire);
        }
      }
      Map<Integer, Row> byNumber =
          rows.stream().collect(Collectors.toMap(Row::number, Function.identity()));
      List<String> ids = new WireIds(header, unclear).give(wires, byNumber);
      sayWhatIsOdd(wires, ids);
      String description = beforeHeader(table);
      Map<String, String> files = new WireListFiles(options, description).write(wires, ids);
      return new WireListResult.Imported(
          files,
          wires.size(),
          sheet.encoding() + (sheet.assumed() ? " (assumed)" : ""),
          table.separator(),
          columns(),
          unclear.sorted());
    }

    /** The rows below the header that say something and are no header again. */
    private List<Row> data(CsvTable table) {
      List<Row> data = new ArrayList<>();
      for (Row row : table.rows()) {
        if (row.number() <= header.lastRow() || row.isBlank()) {
          continue;
        }
        if (isHeader(row)) {
          unclear.row(
              row.number(),
              "Row " + row.number() + " is the header once more.",
              "It was passed over.");
        } else {
          data.add(row);
        }
      }
      return data;
    }

    private boolean isHeader(Row row) {
      int from = header.column(WireColumn.FROM);
      int to = header.column(WireColumn.TO);
      return header.lastRow() > 0
          && row.cell(from).equalsIgnoreCase(header.name(from))
          && row.cell(to).equalsIgnoreCase(header.name(to));
    }

    /** What stands above the header; it goes into the description of the file. */
    private String beforeHeader(CsvTable table) {
      List<String> above = new ArrayList<>();
      for (Row row : table.rows()) {
        if (row.number() < header.lastRow() && !row.isBlank() && !isUpperHalf(row)) {
          above.add(row.shown());
          unclear.row(
              row.number(),
              "Row " + row.number() + " stands above the header.",
              "It was put into the description of the file.");
        }
      }
      return String.join("\n", above);
    }

    /** Whether a row is the upper of two header rows. */
    private boolean isUpperHalf(Row row) {
      return row.number() == header.lastRow() - 1
          && row.cells().stream()
              .filter(cell -> !cell.isEmpty())
              .allMatch(cell -> header.headers().stream().anyMatch(name -> name.startsWith(cell)));
    }

    private void sayWhatIsOdd(List<WireDraft> wires, List<String> ids) {
      Map<String, Integer> byEnds = new HashMap<>();
      for (int i = 0; i < wires.size(); i++) {
        WireDraft wire = wires.get(i);
        String from = wire.from();
        String to = wire.to();
        if (from == null || to == null) {
          String there = from == null ? to : from;
          String which = there == null ? "no end that can be used" : "one end only, " + there;
          unclear.row(
              wire.row(),
              "Row " + wire.row() + " has " + which + ".",
              "It was kept as " + ids.get(i) + " with an open end.");
        } else if (from.equals(to)) {
          unclear.row(
              wire.row(),
              "Row " + wire.row() + " begins and ends on " + from + ".",
              "It was kept as " + ids.get(i) + ".");
        } else {
          String key = from.compareTo(to) < 0 ? from + " " + to : to + " " + from;
          Integer first = byEnds.putIfAbsent(key, i);
          if (first != null) {
            unclear.row(
                wire.row(),
                "Row "
                    + wire.row()
                    + " joins the ends of row "
                    + wires.get(first).row()
                    + " again.",
                "Both were kept, as " + ids.get(first) + " and " + ids.get(i) + ".");
          }
        }
        if (wire.noteIsTooLong()) {
          unclear.row(
              wire.row(),
              "Row " + wire.row() + " holds more than a note can.",
              "The note of " + ids.get(i) + " was cut.");
        }
      }
    }

    private List<String> columns() {
      List<String> columns = new ArrayList<>();
      for (int c = 0; c < header.headers().size(); c++) {
        WireColumn meaning = header.columns().get(c);
        String name = header.headers().get(c);
        if (meaning != null) {
          columns.add(header.name(c) + " = " + meaning.word());
          if (HeaderWords.of(name).misspelt()) {
            unclear.cell(
                header.lastRow(),
                c,
                name,
                Quoted.text(name) + " is no known header.",
                "The column was taken for " + meaning.word() + ".");
          }
        } else if (!name.isEmpty()) {
          columns.add(name + " = note");
          unclear.cell(
              header.lastRow(),
              c,
              name,
              Quoted.text(name) + " is not known, or says what another column says.",
              "Its cells are kept as notes.");
        }
      }
      if (header.headers().isEmpty()) {
        new TreeMap<>(header.columns())
            .forEach((c, meaning) -> columns.add(header.name(c) + " = " + meaning.word()));
      }
      return columns;
    }
  }
}
