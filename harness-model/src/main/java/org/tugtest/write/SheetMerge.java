package org.tugtest.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.read.ReadHarness;

/**
 * Merges a table that {@link SheetExport} wrote and a person edited back into the files. Rows go by
 * id. Only fields whose cell says something else now are touched, and only their characters change;
 * a table merged as it was written changes nothing. An empty cell takes a field away. What cannot
 * be merged is listed with row and column, and the file it belongs to is left alone as a whole.
 */
public final class SheetMerge {
  private SheetMerge() {}

  /**
   * What a person chooses.
   *
   * @param newRowsFile path of the file for rows with a new id that name no file; null for none
   * @param removeMissing whether things that are no longer in the table are taken out of the files
   */
  public record Options(@Nullable String newRowsFile, boolean removeMissing) {}

  /** Merges the content of an edited table. */
  public static SheetMergeResult merge(
      SheetKind kind, byte[] content, ReadHarness read, Options options) {
    SheetTable table = SheetTable.read(kind, content);
    if (!table.problems().isEmpty()) {
      return new SheetMergeResult(Map.of(), List.of(), List.of(), List.of(), table.problems());
    }
    RowMerge merge = new RowMerge(kind, table, new SheetRows(kind, read.texts()), options);
    merge.run();
    return result(merge);
  }

  private static SheetMergeResult result(RowMerge merge) {
    List<CellProblem> problems = new ArrayList<>(merge.problems());
    Map<String, String> files = new TreeMap<>();
    boolean all = problems.stream().anyMatch(problem -> problem.file() == null);
    merge
        .edits()
        .forEach(
            (path, edits) -> {
              boolean blocked = problems.stream().anyMatch(p -> path.equals(p.file()));
              List<CellProblem> wrong = edits.isEmpty() ? List.of() : edits.problems();
              problems.addAll(wrong);
              if (!all && !blocked && wrong.isEmpty() && !edits.isEmpty()) {
                String text = edits.text();
                if (!text.equals(edits.tree().source().text())) {
                  files.put(path, text);
                }
              }
            });
    problems.sort(Comparator.comparingInt(CellProblem::row).thenComparingInt(CellProblem::column));
    return new SheetMergeResult(
        files, in(files, merge.changed()), in(files, merge.added()), merge.missing(), problems);
  }

  /** The things of those files. */
  private static List<String> in(Map<String, String> files, Map<String, String> fileOfThing) {
    return fileOfThing.entrySet().stream()
        .filter(thing -> files.containsKey(thing.getValue()))
        .map(Map.Entry::getKey)
        .toList();
  }
}
