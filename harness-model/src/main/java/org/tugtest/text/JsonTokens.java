package org.tugtest.text;

/**
 * The tokens of a JSON text with their exact offsets (UTF-16 units), one after the other. It knows
 * words and marks, not the grammar; what is no token of JSON is {@link Kind#WRONG}. A token is read
 * without recursion and without copying.
 */
public final class JsonTokens {
  private final String text;
  private Kind kind = Kind.END;
  private int start;
  private int end;
  private boolean escaped;

  /** Tokens of {@code text} from {@code offset} on; call {@link #next} for the first. */
  public JsonTokens(String text, int offset) {
    this.text = text;
    this.start = offset;
    this.end = offset;
  }

  /** The sort of a token. */
  public enum Kind {
    OPEN_OBJECT,
    CLOSE_OBJECT,
    OPEN_LIST,
    CLOSE_LIST,
    COLON,
    COMMA,
    TEXT,
    NUMBER,
    /** {@code true}, {@code false} or {@code null}. */
    WORD,
    /** Nothing but white space is left. */
    END,
    /** No token of JSON; it reaches to the end of what was meant as one. */
    WRONG;

    /** Whether a value begins with it. */
    public boolean beginsValue() {
      return this == OPEN_OBJECT
          || this == OPEN_LIST
          || this == TEXT
          || this == NUMBER
          || this == WORD;
    }
  }

  /** Moves to the next token and says its sort. */
  public Kind next() {
    int at = end;
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
    start = at;
    if (at == text.length()) {
      end = at;
      kind = Kind.END;
    } else {
      end = at + 1;
      kind = read(text.charAt(at));
    }
    return kind;
  }

  /** Goes to {@code offset}, where a token begins, and reads it. */
  public Kind moveTo(int offset) {
    end = offset;
    return next();
  }

  private Kind read(char first) {
    return switch (first) {
      case '{' -> Kind.OPEN_OBJECT;
      case '}' -> Kind.CLOSE_OBJECT;
      case '[' -> Kind.OPEN_LIST;
      case ']' -> Kind.CLOSE_LIST;
      case ':' -> Kind.COLON;
      case ',' -> Kind.COMMA;
      case '"' -> readText();
      default -> readRun();
    };
  }

  private Kind readText() {
    escaped = false;
    while (end < text.length()) {
      char c = text.charAt(end);
      if (c == '"') {
        end++;
        return Kind.TEXT;
      }
      if (c < ' ') {
        return Kind.WRONG;
      }
      if (c == '\\') {
        int length = escapeLength(end);
        if (length == 0) {
          return Kind.WRONG;
        }
        escaped = true;
        end += length;
      } else {
        end++;
      }
    }
    return Kind.WRONG;
  }

  private int escapeLength(int at) {
    if (at + 1 >= text.length()) {
      return 0;
    }
    char c = text.charAt(at + 1);
    if (c != 'u') {
      return "\"\\/bfnrt".indexOf(c) >= 0 ? 2 : 0;
    }
    if (at + 6 > text.length()) {
      return 0;
    }
    for (int i = at + 2; i < at + 6; i++) {
      if (Character.digit(text.charAt(i), 16) < 0 || text.charAt(i) > 'f') {
        return 0;
      }
    }
    return 6;
  }

  private Kind readRun() {
    while (end < text.length() && isRun(text.charAt(end))) {
      end++;
    }
    char first = text.charAt(start);
    if (first == '-' || isDigit(first)) {
      return isNumber() ? Kind.NUMBER : Kind.WRONG;
    }
    return is("true") || is("false") || is("null") ? Kind.WORD : Kind.WRONG;
  }

  private boolean isNumber() {
    int at = text.charAt(start) == '-' ? start + 1 : start;
    int digits = digitsEnd(at);
    if (digits == at || (text.charAt(at) == '0' && digits > at + 1)) {
      return false;
    }
    at = digits;
    if (at < end && text.charAt(at) == '.') {
      digits = digitsEnd(at + 1);
      if (digits == at + 1) {
        return false;
      }
      at = digits;
    }
    if (at < end && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
      at++;
      if (at < end && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
        at++;
      }
      digits = digitsEnd(at);
      if (digits == at) {
        return false;
      }
      at = digits;
    }
    return at == end;
  }

  private int digitsEnd(int from) {
    int at = from;
    while (at < end && isDigit(text.charAt(at))) {
      at++;
    }
    return at;
  }

  /** The sort of the token that {@link #next} moved to. */
  public Kind kind() {
    return kind;
  }

  /** Offset of its first character. */
  public int start() {
    return start;
  }

  /** Offset behind its last character. */
  public int end() {
    return end;
  }

  /** Whether the token stands there letter by letter as {@code word}. */
  public boolean is(String word) {
    return end - start == word.length() && text.startsWith(word, start);
  }

  /** Whether a {@link Kind#TEXT} says {@code value}, escapes read. */
  public boolean says(String value) {
    if (escaped) {
      return value().equals(value);
    }
    return end - start - 2 == value.length() && text.startsWith(value, start + 1);
  }

  /** What a {@link Kind#TEXT} says, escapes read. */
  public String value() {
    return escaped ? unescaped(text, start + 1, end - 1) : text.substring(start + 1, end - 1);
  }

  private static String unescaped(String text, int from, int to) {
    StringBuilder value = new StringBuilder(to - from);
    int at = from;
    while (at < to) {
      char c = text.charAt(at++);
      if (c != '\\') {
        value.append(c);
        continue;
      }
      char mark = text.charAt(at++);
      if (mark == 'u') {
        value.append((char) Integer.parseInt(text.substring(at, at + 4), 16));
        at += 4;
      } else {
        int plain = "bfnrt".indexOf(mark);
        value.append(plain < 0 ? mark : "\b\f\n\r\t".charAt(plain));
      }
    }
    return value.toString();
  }

  /** Moves over the rest of the value whose first token is the present one. */
  public void skipValue() {
    int depth = 0;
    while (true) {
      switch (kind) {
        case OPEN_OBJECT, OPEN_LIST -> depth++;
        case CLOSE_OBJECT, CLOSE_LIST -> depth--;
        case END, WRONG -> {
          return;
        }
        default -> {}
      }
      if (depth <= 0) {
        return;
      }
      next();
    }
  }

  private static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isRun(char c) {
    return !isSpace(c) && "{}[]:,\"".indexOf(c) < 0;
  }
}
