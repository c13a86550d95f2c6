package org.tugtest.write;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.write.SheetRows.Row;

/**
 * Things that are written in the files and no longer in a sheet.
 *
 * @param now the rows of the files
 * @param kept those of them that are in the sheet
 * @param remove whether they are taken out
 */
record MissingRows(SheetRows now, Set<Row> kept, Map<String, FileEdits> edits, boolean remove) {

  /** Adds the place strings of what is missing, and takes it out where that was asked for. */
  void addTo(List<String> missing) {
    Set<String> partly = new HashSet<>();
    kept.forEach(row -> partly.add(row.id()));
    Set<String> gone = new HashSet<>();
    for (Row row : now.rows()) {
      boolean inner = row.level().inner() != null;
      if (kept.contains(row) || !row.written() || (inner && gone.contains(row.id()))) {
        continue;
      }
      if (!inner && partly.contains(row.id())) {
        continue;
      }
      missing.add(row.place());
      if (!inner) {
        gone.add(row.id());
      }
      FileEdits edit = edits.get(row.file());
      if (remove && edit != null && !row.file().startsWith("../")) {
        take(row, edit);
      }
    }
  }

  private static void take(Row row, FileEdits edit) {
    edit.remove(row.level().entry(row.id(), row.name()), null);
    String aside = row.level().aside();
    if (aside != null) {
      edit.remove(row.level().path(row.id(), row.name(), aside), null);
    }
  }
}
