package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.tugtest.report.PrintableText;
import org.tugtest.text.Place;
import org.tugtest.text.SourceText;

/** The lines of a file around some places, with the places marked. */
record Snippet(List<Line> lines) {
  private static final int MOST_MARKED_LINES = 4;
  private static final int MOST_BEFORE = 64;
  private static final int MOST_BETWEEN = 80;
  private static final int MOST_MARKED = 150;
  private static final int LEAST_AFTER = 40;
  private static final int MOST_IN_LINE = 180;

  Snippet {
    lines = List.copyOf(lines);
  }

  /** One line. Of a long line only what is near the marks is kept. */
  record Line(int number, List<Piece> pieces) {
    Line {
      pieces = List.copyOf(pieces);
    }

    boolean marked() {
      return pieces.stream().anyMatch(Piece::marked);
    }
  }

  /** A stretch of a line. */
  record Piece(String text, boolean marked) {}

  /** The lines that a place needs: one before and after; of a place over many lines the first. */
  static Window window(Place place) {
    int last = lastMarked(place);
    return new Window(Math.max(1, place.line() - 1), last == place.endLine() ? last + 1 : last);
  }

  /** Lines from {@code first} to {@code last}, both in. */
  record Window(int first, int last) {
    boolean touches(Window other) {
      return first <= other.last + 1 && other.first <= last + 1;
    }

    Window with(Window other) {
      return new Window(Math.min(first, other.first), Math.max(last, other.last));
    }
  }

  /** The window of a file with these places marked in it. */
  static Snippet of(SourceText text, Window window, Collection<Place> places) {
    List<Line> lines = new ArrayList<>();
    for (int number = window.first();
        number <= Math.min(window.last(), text.lineCount());
        number++) {
      lines.add(new Line(number, pieces(text.line(number), marks(text, number, places))));
    }
    return new Snippet(lines);
  }

  private static int lastMarked(Place place) {
    return Math.min(place.endLine(), place.line() + MOST_MARKED_LINES - 1);
  }

  private record Mark(int from, int to) implements Comparable<Mark> {
    private static final Comparator<Mark> ORDER =
        Comparator.comparingInt(Mark::from).thenComparingInt(Mark::to);

    @Override
    public int compareTo(Mark other) {
      return ORDER.compare(this, other);
    }
  }

  private static TreeSet<Mark> marks(SourceText text, int number, Collection<Place> places) {
    TreeSet<Mark> marks = new TreeSet<>();
    for (Place place : places) {
      if (number >= place.line() && number <= lastMarked(place)) {
        String line = text.line(number);
        int from = number == place.line() ? place.column() - 1 : indent(line);
        int to = number == place.endLine() ? place.endColumn() - 1 : line.length();
        from = Math.min(Math.max(0, from), line.length());
        marks.add(new Mark(from, Math.min(Math.max(from, to), line.length())));
      }
    }
    return marks;
  }

  private static List<Piece> pieces(String line, Collection<Mark> marks) {
    List<Piece> pieces = new ArrayList<>();
    int at = 0;
    int used = 0;
    for (Mark mark : marks) {
      if (mark.to() < at || (mark.to() == at && at > 0)) {
        continue;
      }
      int from = Math.max(at, mark.from());
      String before = shown(line.substring(at, from));
      before = pieces.isEmpty() ? end(before, MOST_BEFORE) : middle(before);
      String marked = PrintableText.cut(shown(line.substring(from, mark.to())), MOST_MARKED);
      pieces.add(new Piece(before, false));
      pieces.add(new Piece(marked, true));
      used += before.length() + marked.length();
      at = mark.to();
    }
    int left = Math.max(LEAST_AFTER, MOST_IN_LINE - used);
    pieces.add(new Piece(PrintableText.cut(shown(line.substring(at)), left), false));
    return pieces;
  }

  private static int indent(String line) {
    int at = 0;
    while (at < line.length() && (line.charAt(at) == ' ' || line.charAt(at) == '\t')) {
      at++;
    }
    return at;
  }

  private static String shown(String text) {
    return PrintableText.of(text.replace("\t", "  "));
  }

  private static String middle(String text) {
    int half = MOST_BETWEEN / 2;
    return text.length() <= MOST_BETWEEN
        ? text
        : PrintableText.cut(text, half) + end(text, half).substring(1);
  }

  /** The end of a text; what is cut off in front is shown by an ellipsis. */
  private static String end(String text, int most) {
    if (text.length() <= most) {
      return text;
    }
    int from = text.length() - most + 1;
    return "…" + text.substring(Character.isLowSurrogate(text.charAt(from)) ? from + 1 : from);
  }
}
