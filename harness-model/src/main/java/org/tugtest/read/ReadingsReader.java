package org.tugtest.read;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.tugtest.model.Reading;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Nearest;
import org.tugtest.text.Place;
import org.tugtest.text.Places;
import org.tugtest.text.Problem;
import org.tugtest.text.Quoted;
import org.tugtest.text.SourceText;

/** Reads continuity readings ({@code readings/*.csv}). Safe for several threads. */
public final class ReadingsReader {
  /** The columns of the format, in the order it names them. */
  static final List<String> COLUMNS =
      List.of("from", "to", "ohms", "joined", "method", "by", "date", "note");

  private static final String FOLDER = "readings/";

  private final SourceFiles files;
  private final ReadLimits limits;

  /** A reader of these files within these limits. */
  public ReadingsReader(SourceFiles files, ReadLimits limits) {
    this.files = files;
    this.limits = limits;
  }

  /** The paths of all files of readings, sorted. */
  public List<String> paths() {
    return files.paths().stream()
        .filter(path -> path.startsWith(FOLDER) && path.endsWith(".csv"))
        .sorted(NaturalOrder.NATURAL)
        .toList();
  }

  /**
   * Reads one file: the readings by the line they begin on. Whatever is wrong is a problem of the
   * result; nothing is thrown.
   */
  public ReadFile<Map<Integer, Reading>> read(String path) {
    TextDecoder.Decoded decoded = TextDecoder.decode(path, files.open(path), limits);
    SourceText source = decoded.source();
    TextDecoder.Trouble trouble = decoded.trouble();
    if (source == null || trouble != null) {
      List<Problem> problems =
          trouble == null
              ? List.of()
              : List.of(unreadable(path, trouble.message() + ".", trouble.remedy(), trouble.at()));
      return new ReadFile<>(
          Map.of(), (thing, names) -> Place.point(path, 1, 1, ""), problems, null);
    }
    return new Table(source).read();
  }

  private static Problem unreadable(String path, String message, String remedy, Place at) {
    return new Problem(
        Problem.Kind.FILE_UNREADABLE, "files/" + path, path + " " + message, remedy, List.of(at));
  }

  /** One file being read. */
  private static final class Table {
    private final SourceText source;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<Integer, Reading> readings = new LinkedHashMap<>();

    Table(SourceText source) {
      this.source = source;
    }

    ReadFile<Map<Integer, Reading>> read() {
      CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();
      try (CSVParser parser = format.parse(new StringReader(source.text()))) {
        records(parser);
      } catch (IOException | UncheckedIOException | IllegalStateException broken) {
        problems.add(
            unreadable(
                source.path(),
                "is no table: a quote is opened and not closed, or stands inside a field.",
                "Put fields that hold commas or quotes in double quotes, and double the quotes in"
                    + " them.",
                Place.point(source.path(), 1, 1, "")));
        readings.clear();
      }
      return new ReadFile<>(
          Collections.unmodifiableMap(readings), places(source), problems, source);
    }

    private void records(CSVParser parser) {
      List<String> header = List.of();
      for (CSVRecord record : parser) {
        int line = firstLine(record);
        if (header.isEmpty()) {
          header = header(record, line);
          if (header.isEmpty()) {
            return;
          }
        } else if (record.stream().anyMatch(field -> !field.isBlank())) {
          row(header, record, line);
        }
      }
      if (header.isEmpty()) {
        problems.add(
            unreadable(
                source.path(),
                "is empty.",
                "Begin it with the line " + String.join(",", COLUMNS) + ".",
                Place.point(source.path(), 1, 1, "")));
      }
    }

    /** The line on which a record begins; the parser itself counts where it ends. */
    private int firstLine(CSVRecord record) {
      int at = (int) Math.min(record.getCharacterPosition(), source.text().length());
      while (at < source.text().length() && "\r\n".indexOf(source.text().charAt(at)) >= 0) {
        at++;
      }
      return source.lineAt(at);
    }

    private List<String> header(CSVRecord record, int line) {
      if (record.size() == 1 && record.get(0).contains(";")) {
        wrong(line, "the columns are parted by semicolons.", "Save it with commas instead.");
        return List.of();
      }
      List<String> columns = new ArrayList<>();
      Set<String> seen = new HashSet<>();
      boolean usable = true;
      for (String field : record) {
        String name = field.strip().toLowerCase(Locale.ROOT);
        columns.add(name);
        if (!COLUMNS.contains(name)) {
          String near = Nearest.question(name, COLUMNS);
          String known = "the columns are " + String.join(", ", COLUMNS) + ".";
          wrong(
              line,
              Quoted.text(field.strip()) + " is no column of readings.",
              near.isEmpty() ? "Leave it out; " + known : "Correct it; " + near);
        } else if (!seen.add(name)) {
          wrong(line, "the column " + name + " stands twice.", "Leave one of the two out.");
        }
      }
      for (String needed : List.of("from", "to")) {
        if (!seen.contains(needed)) {
          usable = false;
          wrong(
              line,
              "the column " + needed + " is missing.",
              "The first line names the columns: " + String.join(",", COLUMNS) + ".");
        }
      }
      return usable ? columns : List.of();
    }

    private void row(List<String> header, CSVRecord record, int line) {
      if (record.size() > header.size()) {
        wrong(
            line,
            "line " + line + " has " + record.size() + " fields for " + header.size() + " columns.",
            "Write figures with a decimal point, and put a text that holds a comma in quotes.");
        return;
      }
      Map<String, String> fields = new LinkedHashMap<>();
      for (int i = 0; i < record.size(); i++) {
        fields.putIfAbsent(header.get(i), record.get(i).strip());
      }
      ReadingRow row = new ReadingRow(fields, (what, remedy) -> wrong(line, what, remedy));
      Reading reading = row.reading();
      if (reading != null) {
        readings.put(line, reading);
      }
    }

    private void wrong(int line, String message, String remedy) {
      Place at = lineAt(source, line);
      problems.add(
          new Problem(
              Problem.Kind.SHAPE_WRONG, "files/" + source.path(), message, remedy, List.of(at)));
    }
  }

  private static Place lineAt(SourceText source, int line) {
    return new Place(source.path(), line, 1, line, source.line(line).length() + 1, "");
  }

  private static Places places(SourceText source) {
    return (thing, names) -> {
      String number = thing.substring(thing.indexOf('/') + 1);
      boolean line = number.matches("[0-9]{1,9}");
      int at = line ? Integer.parseInt(number) : 1;
      return at >= 1 && at <= source.lineCount()
          ? lineAt(source, at)
          : Place.point(source.path(), 1, 1, "");
    };
  }
}
