package org.tugtest.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Nearest;
import org.tugtest.text.Quoted;
import org.tugtest.write.SheetRows.Row;

/** Finds for each row of an edited sheet what it is about, and gathers the changes it asks for. */
final class RowMerge {
  private static final List<String> ONE_NAMESPACE =
      List.of("devices", "connectors", "splices", "wires", "groups");

  private final SheetKind kind;
  private final SheetTable table;
  private final SheetRows now;
  private final SheetMerge.Options options;
  private final FieldMerge fields;
  private final Map<Key, List<Row>> byKey = new HashMap<>();
  private final Map<Key, Integer> seen = new HashMap<>();
  private final Set<Row> kept = new HashSet<>();
  private final Set<String> ids = new HashSet<>();
  private final Map<String, String> fileOfNew = new HashMap<>();
  private final Map<String, FileEdits> edits = new TreeMap<>();
  private final List<CellProblem> problems = new ArrayList<>();
  private final Map<String, String> changed = new LinkedHashMap<>();
  private final Map<String, String> added = new LinkedHashMap<>();
  private final List<String> missing = new ArrayList<>();

  /** What a row is about. */
  private record Key(SheetLevel level, String id, String name) {
    boolean isInner() {
      return level.inner() != null;
    }

    List<String> path() {
      return level.entry(id, name);
    }

    /** The row of something that no file says. */
    Row in(String file) {
      return new Row(level, id, name, file, false, Map.of());
    }

    String place() {
      return in("").place();
    }
  }

  RowMerge(SheetKind kind, SheetTable table, SheetRows now, SheetMerge.Options options) {
    this.kind = kind;
    this.table = table;
    this.now = now;
    this.options = options;
    this.fields = new FieldMerge(kind, table, now, edits, problems);
    for (Row row : now.rows()) {
      Key key = new Key(row.level(), row.id(), row.name());
      byKey.computeIfAbsent(key, first -> new ArrayList<>()).add(row);
    }
    now.trees()
        .forEach(
            (path, tree) -> {
              edits.put(path, new FileEdits(tree));
              for (String section : ONE_NAMESPACE) {
                JsonText.Members entries = tree.objectAt(section);
                if (entries != null) {
                  entries.byName().keySet().forEach(id -> ids.add(folded(id)));
                }
              }
            });
  }

  Map<String, FileEdits> edits() {
    return edits;
  }

  List<CellProblem> problems() {
    return problems;
  }

  /** The file of each thing that changes, by place string. */
  Map<String, String> changed() {
    return changed;
  }

  /** The file of each thing that is new, by place string. */
  Map<String, String> added() {
    return added;
  }

  List<String> missing() {
    return missing;
  }

  void run() {
    for (boolean inner : new boolean[] {false, true}) {
      for (CsvTable.Row row : table.rows()) {
        Key key = key(row);
        if (key != null && key.isInner() == inner) {
          merge(row, key);
        } else if (key == null && !inner) {
          fields.problem(
              row,
              kind.keys().get(0),
              null,
              "The row does not say plainly what it is about.",
              "Give " + String.join(", ", kind.keys()) + " as the sheet had them.");
        }
      }
    }
    new MissingRows(now, kept, edits, options.removeMissing()).addTo(missing);
  }

  /** What a row is about; null when it does not say. */
  private @Nullable Key key(CsvTable.Row row) {
    String id = SheetCell.text(table.cell(row, kind.keys().get(0)));
    String name = kind == SheetKind.WIRES ? "" : SheetCell.text(table.cell(row, nameColumn()));
    SheetLevel level = level(row, name);
    return level == null || id.isEmpty() || (level.inner() == null) != name.isEmpty()
        ? null
        : new Key(level, id, name);
  }

  private String nameColumn() {
    return kind.keys().get(kind.keys().size() - 1);
  }

  private @Nullable SheetLevel level(CsvTable.Row row, String name) {
    if (kind != SheetKind.DEVICES) {
      return kind.levels().get(name.isEmpty() ? 0 : 1);
    }
    String what = table.cell(row, "what");
    for (SheetLevel level : kind.levels()) {
      if (level.word().equalsIgnoreCase(what)) {
        return level;
      }
    }
    return what.isEmpty() && name.isEmpty() ? SheetLevel.DEVICE : null;
  }

  private void merge(CsvTable.Row row, Key key) {
    String file = SheetCell.text(table.cell(row, SheetKind.FILE));
    List<Row> there = byKey.getOrDefault(key, List.of());
    boolean several = there.size() > 1;
    if (several) {
      there = there.stream().filter(known -> known.file().equals(file)).toList();
    }
    Integer before = several ? null : seen.putIfAbsent(key, row.number());
    String idColumn = kind.keys().get(0);
    if (before != null) {
      String in = there.isEmpty() ? file : there.get(0).file();
      String message = key.place() + " is in row " + before + " too.";
      fields.problem(row, idColumn, in, message, "Delete one of the two rows.");
    } else if (there.size() == 1) {
      known(row, there.get(0), file);
    } else if (several) {
      String message = key.place() + " is written in more than one file.";
      fields.problem(row, SheetKind.FILE, null, message, "Put the file back into its column.");
    } else if (!table.cell(row, SheetKind.STAMP).isEmpty()) {
      String message = key.place() + " is in no file any more.";
      fields.problem(row, idColumn, file, message, remedy(key));
    } else {
      added(row, key, file);
    }
  }

  private String remedy(Key key) {
    Set<String> known = new TreeSet<>();
    now.rows().forEach(row -> known.add(row.id()));
    String near = known.contains(key.id()) ? "" : Nearest.question(key.id(), known);
    return "Delete the row, or empty its stamp to add it as new"
        + (near.isEmpty() ? "." : "; " + near);
  }

  private void known(CsvTable.Row row, Row known, String file) {
    kept.add(known);
    if (!file.isEmpty() && !file.equals(known.file())) {
      fields.problem(
          row,
          SheetKind.FILE,
          known.file(),
          known.place() + " is written in " + known.file() + ", not in " + Quoted.text(file) + ".",
          "Put the file back; a thing is moved in the files themselves.");
      return;
    }
    List<String> differing = fields.differing(row, known);
    String stamp = table.cell(row, SheetKind.STAMP);
    if (differing.isEmpty()) {
      return;
    }
    if (!stamp.isEmpty() && !stamp.equalsIgnoreCase(known.stamp())) {
      fields.problem(
          row,
          differing.get(0),
          known.file(),
          known.place() + " was changed in " + known.file() + " after the sheet was written.",
          "Write the sheet anew and edit that.");
    } else if (isLibrary(known.file())) {
      fields.problem(
          row,
          differing.get(0),
          known.file(),
          known.file() + " is a shared library, which is never written to.",
          "Put the cell back.");
    } else {
      fields.change(row, known, differing);
      changed.put(known.place(), known.file());
    }
  }

  private void added(CsvTable.Row row, Key key, String named) {
    String file =
        key.isInner() ? fileOfOwner(key) : named.isEmpty() ? options.newRowsFile() : named;
    String column = key.isInner() ? nameColumn() : kind.keys().get(0);
    FileEdits edit = file == null ? null : edits.get(file);
    if (file == null && key.isInner()) {
      String message = Quoted.text(key.id()) + " is neither in the files nor in the sheet.";
      fields.problem(row, column, null, message, remedy(key));
    } else if (file == null) {
      String message = key.place() + " is new and names no file.";
      fields.problem(row, column, null, message, "Name one in the column file.");
    } else if (edit == null || isLibrary(file)) {
      String ours = String.join(", ", edits.keySet().stream().filter(f -> !isLibrary(f)).toList());
      String message = Quoted.text(file) + " is no file of this harness that can be written.";
      fields.problem(row, SheetKind.FILE, file, message, "Name one of " + ours + ".");
    } else {
      String why = refusal(key, edit);
      if (why != null) {
        fields.problem(row, column, file, why, "Choose another, or write it in the file.");
        return;
      }
      if (!key.isInner()) {
        fileOfNew.put(key.id(), file);
        ids.add(folded(key.id()));
      }
      Row empty = key.in(file);
      boolean endsList = FieldMerge.endsList(empty, edit);
      if (endsList && table.cell(row, "boltedTo").isEmpty()) {
        fields.problem(
            row, column, file, FieldMerge.endOfList(empty), "Write the pins in the file.");
        return;
      }
      if (!endsList) {
        edit.setIfMissing(key.path(), "{}", fields.cell(row, column));
      }
      fields.change(row, empty, fields.differing(row, empty));
      added.put(key.place(), file);
    }
  }

  /** Why a new thing cannot be written; null when it can. */
  private @Nullable String refusal(Key key, FileEdits edit) {
    if (!LegalNames.isId(key.id()) || !(key.name().isEmpty() || LegalNames.isPin(key.name()))) {
      return key.place() + " is no legal id: those are letters A to Z, digits, - and _.";
    }
    if (!key.isInner() && ids.contains(folded(key.id()))) {
      return Quoted.text(key.id()) + " is the id of something else already.";
    }
    if (!edit.fits(key.path())) {
      return "What stands around " + key.place() + " is no object.";
    }
    return null;
  }

  private @Nullable String fileOfOwner(Key key) {
    List<Row> owners = byKey.getOrDefault(new Key(kind.levels().get(0), key.id(), ""), List.of());
    return owners.isEmpty() ? fileOfNew.get(key.id()) : owners.get(0).file();
  }

  private static boolean isLibrary(String file) {
    return file.startsWith("../");
  }

  private static String folded(String id) {
    return id.toLowerCase(Locale.ROOT);
  }
}
