package org.tugtest.report.markdown;

import java.util.regex.Pattern;
import org.tugtest.report.PrintableText;

/**
 * The one place where text is made fit for Markdown. Code hosts turn more than markup into
 * something else: {@code @name} calls people, {@code #12} and {@code !12} write into other threads,
 * {@code :100:} is a picture, and addresses become links.
 */
final class MarkdownText {
  private static final String MARKUP = "\\`*_[]|~$";

  /** Parts a word so that nothing is seen and nothing is recognised. */
  private static final String APART = "\u200B";

  private static final Pattern CALL = Pattern.compile("([@#!%](?=[\\p{L}\\p{N}\"_]))");
  private static final Pattern PICTURE = Pattern.compile(":(?=[A-Za-z0-9+_-]+:)");
  private static final Pattern ADDRESS = Pattern.compile("(?i)(https?|ftp|mailto|www)(?=[:.])");

  private MarkdownText() {}

  /** A text inside a line, at most {@code most} characters of it, shown as it is. */
  static String plain(String text, int most) {
    String shown = PrintableText.cut(PrintableText.of(text), most);
    shown = CALL.matcher(shown).replaceAll("$1" + APART);
    shown = PICTURE.matcher(shown).replaceAll(":" + APART);
    shown = ADDRESS.matcher(shown).replaceAll("$1" + APART);
    StringBuilder plain = new StringBuilder(shown.length() + 16);
    for (int i = 0; i < shown.length(); i++) {
      char c = shown.charAt(i);
      switch (c) {
        case '&' -> plain.append("&amp;");
        case '<' -> plain.append("&lt;");
        case '>' -> plain.append("&gt;");
        default -> {
          if (MARKUP.indexOf(c) >= 0) {
            plain.append('\\');
          }
          plain.append(c);
        }
      }
    }
    return plain.toString();
  }

  /** A text as code, at most {@code most} characters of it. Not for the cells of a table. */
  static String code(String text, int most) {
    String shown = PrintableText.cut(PrintableText.of(text), most);
    int longest = 0;
    int run = 0;
    for (int i = 0; i < shown.length(); i++) {
      run = shown.charAt(i) == '`' ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    String fence = "`".repeat(longest + 1);
    boolean padded = shown.startsWith("`") || shown.endsWith("`");
    return padded ? fence + " " + shown + " " + fence : fence + shown + fence;
  }
}
