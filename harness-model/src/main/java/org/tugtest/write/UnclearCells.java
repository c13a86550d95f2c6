package org.tugtest.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gathers what is unclear; the same said of the same text in one column becomes one entry. */
final class UnclearCells {
  private static final int LONGEST = 80;

  private record Key(int column, String cell, String message, String done) {}

  private final Map<Key, List<Integer>> rows = new LinkedHashMap<>();

  /** Of one cell; {@code column} counts from 0. */
  void cell(int row, int column, String cell, String message, String done) {
    add(row, column + 1, cell, message, done);
  }

  /** Of a whole row. */
  void row(int row, String message, String done) {
    add(row, 0, "", message, done);
  }

  /** Of the whole file. */
  void file(String message, String done) {
    add(0, 0, "", message, done);
  }

  private void add(int row, int column, String cell, String message, String done) {
    Key key = new Key(column, brief(cell), message, done);
    rows.computeIfAbsent(key, first -> new ArrayList<>()).add(row);
  }

  /** A cell's text, cut where it is too long to be shown. */
  private static String brief(String cell) {
    return cell.length() <= LONGEST ? cell : cell.substring(0, LONGEST) + "...";
  }

  List<Unclear> sorted() {
    List<Unclear> all = new ArrayList<>();
    rows.forEach(
        (key, at) -> {
          List<Integer> distinct = at.stream().distinct().sorted().toList();
          List<Integer> more = distinct.subList(1, distinct.size());
          all.add(
              new Unclear(
                  distinct.get(0), key.column(), key.cell(), key.message(), key.done(), more));
        });
    all.sort(Comparator.comparingInt(Unclear::row).thenComparingInt(Unclear::column));
    return List.copyOf(all);
  }
}
