package org.tugtest.report.sheets;

import java.util.List;
import org.tugtest.report.Cautions;
import org.tugtest.report.html.Assets;
import org.tugtest.report.html.FaceDrawings;
import org.tugtest.report.html.PageMargins;

/** A sheet as one file that opens from disk, needs no network and prints on A4. */
final class SheetPage {
  /** Name of the page that lists the documents of a folder. */
  static final String INDEX = "index.html";

  private static final String ACROSS = "@page { size: A4 landscape; }\n";

  private SheetPage() {}

  /** The page of a sheet, with a link back to the index of its root. */
  static String of(Stamp stamp, Sheet sheet) {
    int up = (int) sheet.page().chars().filter(c -> c == '/').count();
    return of(stamp, sheet, "../".repeat(up) + INDEX);
  }

  /**
   * The same.
   *
   * @param back the page that lists it; empty: none
   */
  static String of(Stamp stamp, Sheet sheet, String back) {
    NarrowTables narrow = new NarrowTables();
    Markup content = content(stamp, sheet, narrow);
    String style =
        Assets.shared()
            + Assets.read(SheetPage.class, "sheets.css")
            + (sheet.landscape() ? ACROSS : "")
            + PageMargins.style(
                stamp.margin() + " · " + sheet.title(), stamp.commit() + " · " + stamp.day())
            + sheet.style()
            + narrow.style();
    Assets assets = new Assets(style, sheet.script());
    Markup html = new Markup();
    head(html, stamp, sheet, back, assets);
    html.raw(content.toString());
    html.raw("<footer class=\"foot\">\n");
    Cautions.SENTENCES.forEach(sentence -> html.element("p", sentence).raw("\n"));
    html.raw("</footer>\n");
    if (!sheet.script().isEmpty()) {
      html.raw("<script>").raw(sheet.script()).raw("</script>\n");
    }
    return html.raw("</body>\n</html>\n").toString();
  }

  private static Markup content(Stamp stamp, Sheet sheet, NarrowTables narrow) {
    Markup html = new Markup().raw("<main>\n");
    incomplete(html, stamp);
    notes(html, sheet.notes());
    for (Block block : sheet.blocks()) {
      if (block instanceof Table table) {
        TableMarkup.add(html, table, narrow);
      } else if (block instanceof Words words) {
        words(html, words);
      } else if (block instanceof Drawing drawing) {
        html.raw(drawing.html()).raw("\n");
      }
    }
    if (sheet.signed()) {
      html.raw("<p class=\"signed\"><span>Done by</span><span>Date</span>");
      html.raw("<span>Looked over by</span><span>Date</span></p>\n");
    }
    return html.raw("</main>\n");
  }

  private static void head(Markup html, Stamp stamp, Sheet sheet, String back, Assets assets) {
    html.raw("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    html.raw("<meta http-equiv=\"Content-Security-Policy\" content=\"").text(assets.policy());
    html.raw("\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    html.raw("<meta name=\"color-scheme\" content=\"light dark\">\n");
    String about = stamp.scope().name().isEmpty() ? stamp.harness() : stamp.scope().name();
    html.element("title", sheet.title() + " · " + about)
        .raw("\n<style>")
        .raw(assets.style())
        .raw("</style>\n</head>\n<body>\n");
    html.raw(FaceDrawings.signs());
    html.raw("<header class=\"head\">\n");
    if (!back.isEmpty()) {
      html.raw("<p class=\"back\"><a href=\"").text(back).raw("\">All documents</a></p>\n");
    }
    html.element("h1", sheet.title()).raw("\n");
    html.raw("<p class=\"purpose\">").text(sheet.purpose()).raw("</p>\n<dl class=\"stamp\">\n");
    said(html, "Harness", stamp.harness());
    said(html, "Part", stamp.scope().name());
    said(html, "Commit", stamp.commit());
    said(html, "Date of the commit", stamp.day());
    said(html, "Check", stamp.check());
    html.raw("</dl>\n</header>\n");
  }

  private static void said(Markup html, String term, String text) {
    if (!text.isEmpty()) {
      html.raw("<div>").element("dt", term).element("dd", text).raw("</div>\n");
    }
  }

  private static void incomplete(Markup html, Stamp stamp) {
    if (stamp.incomplete().isEmpty()) {
      return;
    }
    html.raw("<div class=\"incomplete\" role=\"note\"><b>Not complete</b>");
    stamp.incomplete().forEach(sentence -> html.element("p", sentence));
    html.raw("</div>\n");
  }

  private static void notes(Markup html, List<String> notes) {
    if (!notes.isEmpty()) {
      html.raw("<ul class=\"notes\">\n");
      notes.forEach(note -> html.element("li", note).raw("\n"));
      html.raw("</ul>\n");
    }
  }

  private static void words(Markup html, Words words) {
    html.raw("<section>\n");
    if (!words.heading().isEmpty()) {
      html.element("h2", words.heading()).raw("\n");
    }
    String list = words.numbered() ? "ol" : "ul";
    html.raw("<" + list + " class=\"words\">\n");
    words.lines().forEach(line -> html.element("li", line).raw("\n"));
    html.raw("</" + list + ">\n</section>\n");
  }
}
