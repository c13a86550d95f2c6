package org.tugtest.report.sarif;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.tugtest.report.PrintableText;

/** The one place where text is made fit for SARIF. */
final class SarifText {
  private static final String UNRESERVED =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~/";

  private SarifText() {}

  /**
   * A message of one line. Braces would be placeholders (SARIF 2.1.0, 3.11.5) and brackets before a
   * parenthesis a link (3.11.6), so both are written as the standard has it.
   */
  static String message(String text) {
    return lines(PrintableText.of(text));
  }

  /** The same for a text of several lines. */
  static String lines(String text) {
    String braces = text.replace("{", "{{").replace("}", "}}");
    return braces.contains("](") ? braces.replace("[", "\\[").replace("]", "\\]") : braces;
  }

  /** A relative path as a URI reference (RFC 3986): every byte but the unreserved is encoded. */
  static String uri(String path) {
    StringBuilder uri = new StringBuilder(path.length() + 8);
    for (byte b : PrintableText.wellFormed(path).getBytes(StandardCharsets.UTF_8)) {
      if (b > 0 && UNRESERVED.indexOf((char) b) >= 0) {
        uri.append((char) b);
      } else {
        uri.append(String.format(Locale.ROOT, "%%%02X", b & 0xFF));
      }
    }
    return uri.toString();
  }
}
