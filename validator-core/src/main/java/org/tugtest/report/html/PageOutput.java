package org.tugtest.report.html;

import gg.jte.TemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import org.tugtest.report.PrintableText;

/**
 * Where the templates write. What the files of a harness say is escaped for its place in the page,
 * and characters that are not to be seen, such as those that turn the reading direction, are
 * spelled out.
 */
final class PageOutput extends OwaspHtmlTemplateOutput {
  PageOutput(TemplateOutput to) {
    super(to);
  }

  @Override
  public void writeUserContent(String text) {
    super.writeUserContent(text == null ? null : PrintableText.of(text));
  }
}
