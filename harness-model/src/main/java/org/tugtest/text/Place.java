package org.tugtest.text;

import java.util.Comparator;

/**
 * Where something was written. Lines and columns count from 1; columns are UTF-16 units, a tab is
 * one. The end is one past the last character. {@code pointer} is the JSON Pointer (RFC 6901) of
 * the value, empty for the whole file and for files that are not JSON.
 *
 * @param file path relative to the harness folder, with {@code /}
 */
public record Place(String file, int line, int column, int endLine, int endColumn, String pointer)
    implements Comparable<Place> {

  private static final Comparator<Place> ORDER =
      Comparator.comparing(Place::file)
          .thenComparingInt(Place::line)
          .thenComparingInt(Place::column)
          .thenComparingInt(Place::endLine)
          .thenComparingInt(Place::endColumn)
          .thenComparing(Place::pointer);

  /** A place that is a single point. */
  public static Place point(String file, int line, int column, String pointer) {
    return new Place(file, line, column, line, column + 1, pointer);
  }

  /** {@code path:line:column}, as compilers print it. */
  public String shown() {
    return file + ":" + line + ":" + column;
  }

  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }
}
