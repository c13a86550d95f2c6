package org.tugtest.report.html;

import java.io.StringWriter;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.SerializableString;
import tools.jackson.core.io.CharacterEscapes;
import tools.jackson.core.io.SerializedString;
import tools.jackson.core.json.JsonFactory;

/**
 * JSON that may stand inside a script element: it holds no character that could end the element,
 * begin a comment or break a line of script.
 */
public final class PageJson {
  private static final JsonFactory FACTORY =
      JsonFactory.builder().characterEscapes(new ForPages()).build();

  private PageJson() {}

  /** A generator that writes to {@code to}. */
  public static JsonGenerator to(StringWriter to) {
    return FACTORY.createGenerator(ObjectWriteContext.empty(), to);
  }

  private static final class ForPages extends CharacterEscapes {
    private static final long serialVersionUID = 1L;
    private final int[] ascii = standardAsciiEscapesForJSON();

    ForPages() {
      for (char c : new char[] {'<', '>', '&', '\''}) {
        ascii[c] = ESCAPE_STANDARD;
      }
    }

    @Override
    public int[] getEscapeCodesForAscii() {
      return ascii.clone();
    }

    @Override
    public SerializableString getEscapeSequence(int c) {
      return c == 0x2028 || c == 0x2029
          ? new SerializedString(c == 0x2028 ? "\\u2028" : "\\u2029")
          : null;
    }
  }
}
