package org.tugtest.report.html;

import java.util.Locale;
import org.tugtest.report.Cautions;
import org.tugtest.report.PrintableText;

/** What stands in the margins of every printed page. */
public final class PageMargins {
  private static final int MOST = 110;

  private PageMargins() {}

  /** The style that puts these words at the top of each page and the cautions at its foot. */
  public static String style(String left, String right) {
    return "@page{@top-left{content:"
        + quoted(PrintableText.cut(left, MOST))
        + "}@top-right{content:"
        + quoted(right)
        + "}@bottom-left{content:"
        + quoted(Cautions.LINE)
        + "}}\n";
  }

  /** A string of CSS in which nothing but letters, digits and blanks stands for itself. */
  public static String quoted(String text) {
    StringBuilder css = new StringBuilder("\"");
    PrintableText.of(text)
        .codePoints()
        .forEach(
            c -> {
              if (c == ' ' || (c < 0x80 && Character.isLetterOrDigit(c))) {
                css.appendCodePoint(c);
              } else {
                css.append(String.format(Locale.ROOT, "\\%06x ", c));
              }
            });
    return css.append('"').toString();
  }
}
