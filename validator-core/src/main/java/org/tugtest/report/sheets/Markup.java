package org.tugtest.report.sheets;

import org.tugtest.report.PrintableText;
import org.tugtest.report.html.text.Swatch;

/**
 * HTML that is put together piece by piece. What files say goes through {@link #text}, which
 * escapes it and spells out characters that are not to be seen.
 */
public final class Markup {
  private final StringBuilder html = new StringBuilder();

  /** Adds tags, or text that is known to need no escaping. */
  public Markup raw(String tags) {
    html.append(tags);
    return this;
  }

  /** Adds a text, escaped for an element or a quoted attribute. */
  public Markup text(String said) {
    String shown = PrintableText.of(said);
    for (int i = 0; i < shown.length(); i++) {
      char c = shown.charAt(i);
      switch (c) {
        case '&' -> html.append("&amp;");
        case '<' -> html.append("&lt;");
        case '>' -> html.append("&gt;");
        case '"' -> html.append("&#34;");
        case '\'' -> html.append("&#39;");
        default -> html.append(c);
      }
    }
    return this;
  }

  /** Adds an element with a text in it: {@code element("h2", "Wires")}. */
  public Markup element(String tag, String said) {
    return raw("<" + tag + ">").text(said).raw("</" + tag + ">");
  }

  /** Adds the picture of a wire colour and its letters. */
  public Markup swatch(Swatch swatch) {
    if (!swatch.letters().isEmpty()) {
      raw("<span class=\"sw b-" + swatch.base());
      raw(swatch.stripe().isEmpty() ? "" : " s-" + swatch.stripe());
      raw("\" aria-hidden=\"true\"></span>");
    }
    return raw("<span class=\"letters\">").text(swatch.letters()).raw("</span>");
  }

  @Override
  public String toString() {
    return html.toString();
  }
}
