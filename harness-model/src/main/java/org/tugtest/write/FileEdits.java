package org.tugtest.write;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.schema.Mismatch;
import org.tugtest.schema.PublishedSchema;
import org.tugtest.text.SourceText;
import tools.jackson.databind.json.JsonMapper;

/** The changes of one file, and which cell asked for each. */
final class FileEdits {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private final JsonText tree;
  private final JsonEdit edit;
  private final Map<List<String>, Cell> cells = new LinkedHashMap<>();

  /** A cell of the sheet; rows and columns from 1. */
  record Cell(int row, int column) {}

  FileEdits(JsonText tree) {
    this.tree = tree;
    this.edit = new JsonEdit(tree);
  }

  JsonText tree() {
    return tree;
  }

  /** Whether something that is no object is in the way. */
  boolean fits(List<String> path) {
    return edit.fits(path);
  }

  void set(List<String> path, String raw, Cell cell) {
    edit.set(path, raw);
    cells.put(path, cell);
  }

  void setIfMissing(List<String> path, String raw, Cell cell) {
    edit.setIfMissing(path, raw);
    cells.put(path, cell);
  }

  void remove(List<String> path, @Nullable Cell cell) {
    edit.remove(path);
    if (cell != null) {
      cells.put(path, cell);
    }
  }

  boolean isEmpty() {
    return edit.isEmpty();
  }

  String text() {
    return edit.text();
  }

  /** What the schema does not allow in the new text and what it did not find in the old one. */
  List<CellProblem> problems() {
    String path = tree.source().path();
    String after = edit.text();
    JsonText.Parsed parsed = JsonText.parse(SourceText.of(path, after));
    if (parsed.text() == null) {
      return parsed.problems().stream()
          .map(problem -> new CellProblem(0, 0, path, problem.message(), problem.remedy()))
          .toList();
    }
    Set<String> before = new HashSet<>();
    check(tree.source().text()).forEach(mismatch -> before.add(key(mismatch)));
    List<CellProblem> problems = new ArrayList<>();
    for (Mismatch mismatch : check(after)) {
      if (!before.contains(key(mismatch))) {
        Cell cell = cellOf(mismatch.names());
        problems.add(
            new CellProblem(
                cell.row(), cell.column(), path, mismatch.message(), mismatch.remedy()));
      }
    }
    return problems;
  }

  private static List<Mismatch> check(String text) {
    return PublishedSchema.HARNESS.check(MAPPER.readTree(TidyWriter.withoutMark(text)));
  }

  private static String key(Mismatch mismatch) {
    return mismatch.names() + " " + mismatch.message();
  }

  /** The cell whose change lies nearest to a value. */
  private Cell cellOf(List<String> names) {
    Cell nearest = new Cell(0, 0);
    int most = -1;
    for (Map.Entry<List<String>, Cell> change : cells.entrySet()) {
      int shared = shared(change.getKey(), names);
      if (shared > most) {
        most = shared;
        nearest = change.getValue();
      }
    }
    return nearest;
  }

  private static int shared(List<String> left, List<String> right) {
    int shared = 0;
    while (shared < Math.min(left.size(), right.size())
        && left.get(shared).equals(right.get(shared))) {
      shared++;
    }
    return shared;
  }
}
