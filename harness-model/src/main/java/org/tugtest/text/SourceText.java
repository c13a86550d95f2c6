package org.tugtest.text;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The text of one file and where its lines begin. LF, CR and CRLF end a line. A byte-order mark is
 * no part of the text.
 */
public final class SourceText {
  private final String path;
  private final String text;
  private final int[] lineStarts;

  private SourceText(String path, String text, int[] lineStarts) {
    this.path = path;
    this.text = text;
    this.lineStarts = lineStarts;
  }

  /** The text of the file at {@code path} (relative to the harness folder, with {@code /}). */
  public static SourceText of(String path, String text) {
    int[] starts = new int[Math.max(16, text.length() / 40)];
    int lines = 1;
    int feed = text.indexOf('\n');
    int carriage = text.indexOf('\r');
    while (feed >= 0 || carriage >= 0) {
      boolean first = carriage >= 0 && (feed < 0 || carriage < feed);
      int start = first && feed != carriage + 1 ? carriage + 1 : feed + 1;
      if (lines == starts.length) {
        starts = Arrays.copyOf(starts, lines * 2);
      }
      starts[lines++] = start;
      feed = feed >= 0 && feed < start ? text.indexOf('\n', start) : feed;
      carriage = carriage >= 0 && carriage < start ? text.indexOf('\r', start) : carriage;
    }
    return new SourceText(path, text, Arrays.copyOf(starts, lines));
  }

  public String path() {
    return path;
  }

  public String text() {
    return text;
  }

  /** Number of lines; an empty text has one. */
  public int lineCount() {
    return lineStarts.length;
  }

  /** The line (from 1) that holds the character at {@code offset}. */
  public int lineAt(int offset) {
    int found = Arrays.binarySearch(lineStarts, offset);
    return found >= 0 ? found + 1 : -found - 1;
  }

  /** The column (from 1, UTF-16 units) of the character at {@code offset}. */
  public int columnAt(int offset) {
    return offset - lineStarts[lineAt(offset) - 1] + 1;
  }

  /** The offset of the character at a line and column, both from 1 and inside the text. */
  public int offset(int line, int column) {
    return lineStarts[line - 1] + column - 1;
  }

  /** The text of a line (from 1) without its line end. */
  public String line(int number) {
    int start = lineStarts[number - 1];
    int end = number == lineStarts.length ? text.length() : lineStarts[number];
    while (end > start && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
      end--;
    }
    return text.substring(start, end);
  }

  /** The lines from {@code first} to {@code last} (from 1, both in), cut to what there is. */
  public List<String> lines(int first, int last) {
    int from = Math.max(1, first);
    int to = Math.min(lineCount(), last);
    return IntStream.rangeClosed(from, to).mapToObj(this::line).toList();
  }

  /** The place of the text from {@code start} to before {@code end} (offsets in UTF-16 units). */
  public Place place(int start, int end, String pointer) {
    return new Place(path, lineAt(start), columnAt(start), lineAt(end), columnAt(end), pointer);
  }
}
