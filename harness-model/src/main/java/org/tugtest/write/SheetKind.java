package org.tugtest.write;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The tables that can be edited in a spreadsheet. */
@SuppressWarnings("ImmutableEnumChecker") // its lists are unmodifiable copies
public enum SheetKind {
  /** One row for a wire. */
  WIRES(List.of("id"), List.of(), SheetLevel.WIRE),
  /** A row for a connector, without a cavity, and one for each of its cavities. */
  CONNECTORS(
      List.of("connector", "cavity"),
      List.of("wires", "circuits", "colours"),
      SheetLevel.CONNECTOR,
      SheetLevel.CAVITY),
  /** A row for a device, and one for each of its pins, ports and elements. */
  DEVICES(
      List.of("device", "what", "name"),
      List.of("wires", "circuits"),
      SheetLevel.DEVICE,
      SheetLevel.PIN,
      SheetLevel.PORT,
      SheetLevel.ELEMENT);

  static final String FILE = "file";
  static final String STAMP = "stamp";

  private final List<String> keys;
  private final List<String> shown;
  private final List<SheetLevel> levels;

  SheetKind(List<String> keys, List<String> shown, SheetLevel... levels) {
    this.keys = keys;
    this.shown = shown;
    this.levels = List.of(levels);
  }

  /** Name of the file that such a table is usually kept in. */
  public String fileName() {
    return name().toLowerCase(Locale.ROOT) + ".csv";
  }

  /** Columns that say what a row is about. */
  List<String> keys() {
    return keys;
  }

  /** Columns that are only shown. */
  List<String> shown() {
    return shown;
  }

  List<SheetLevel> levels() {
    return levels;
  }

  /** Columns that hold fields of the format; a field of several levels has one. */
  List<String> fields() {
    Set<String> fields = new LinkedHashSet<>();
    levels.forEach(level -> fields.addAll(level.fields()));
    fields.remove("note");
    fields.add("note");
    return List.copyOf(fields);
  }

  /** All columns in order. */
  List<String> columns() {
    List<String> columns = new ArrayList<>(keys);
    columns.addAll(fields());
    columns.addAll(shown);
    columns.add(FILE);
    columns.add(STAMP);
    return columns;
  }
}
