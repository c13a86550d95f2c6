package org.tugtest.write;

/** JSON texts: from characters to a quoted token and back. */
final class Quoting {
  private Quoting() {}

  /** The token of a text; only what JSON demands is escaped. */
  static String quote(String text) {
    StringBuilder out = new StringBuilder(text.length() + 2).append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          if (c < ' ') {
            out.append(String.format(java.util.Locale.ROOT, "\\u%04x", (int) c));
          } else {
            out.append(c);
          }
        }
      }
    }
    return out.append('"').toString();
  }

  /** The text of a well-formed token. */
  static String unquote(String token) {
    if (token.indexOf('\\') < 0) {
      return token.substring(1, token.length() - 1);
    }
    StringBuilder out = new StringBuilder(token.length());
    for (int i = 1; i < token.length() - 1; i++) {
      char c = token.charAt(i);
      if (c != '\\') {
        out.append(c);
        continue;
      }
      char escaped = token.charAt(++i);
      switch (escaped) {
        case 'n' -> out.append('\n');
        case 'r' -> out.append('\r');
        case 't' -> out.append('\t');
        case 'b' -> out.append('\b');
        case 'f' -> out.append('\f');
        case 'u' -> {
          out.append((char) Integer.parseInt(token.substring(i + 1, i + 5), 16));
          i += 4;
        }
        default -> out.append(escaped);
      }
    }
    return out.toString();
  }
}
