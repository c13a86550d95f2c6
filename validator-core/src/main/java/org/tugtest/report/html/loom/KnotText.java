package org.tugtest.report.html.loom;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.report.PrintableText;

/** What stands beside a knot of the drawing. */
final class KnotText {
  private static final int LONGEST_LINE = 24;
  private static final int MOST_LINES = 3;

  private KnotText() {}

  /** The name, then what is here as far as it fits. */
  static List<String> of(Skeleton.Knot knot) {
    List<String> lines = new ArrayList<>();
    lines.add(shown(knot.id()));
    StringBuilder line = new StringBuilder();
    int left = knot.here().size();
    for (String thing : knot.here()) {
      String shown = shown(thing);
      String more = left > 1 ? " +" + (left - 1) : "";
      boolean last = lines.size() == MOST_LINES - 1;
      int fits = LONGEST_LINE - (last ? more.length() : 0);
      if (line.length() > 0 && line.length() + 1 + shown.length() > fits) {
        if (last) {
          lines.add(line + " +" + left);
          return lines;
        }
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(shown);
      left--;
    }
    if (line.length() > 0) {
      lines.add(line.toString());
    }
    return lines;
  }

  private static String shown(String text) {
    return PrintableText.cut(PrintableText.of(text), LONGEST_LINE);
  }
}
