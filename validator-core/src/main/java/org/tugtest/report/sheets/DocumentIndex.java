package org.tugtest.report.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;

/** The page that lists the documents of a root, or the roots. */
final class DocumentIndex {
  private static final String TITLE = "Documents for bench and track";

  private DocumentIndex() {}

  /**
   * The list of a root's documents, by heading and by what they are about.
   *
   * @param missing the titles of those that there are none of
   * @param back the list of the roots; empty: there is none
   */
  static String of(Stamp stamp, List<Document> documents, List<String> missing, String back) {
    Map<String, List<Document>> byHeading = new LinkedHashMap<>();
    for (Document document : documents) {
      String about = document.scope().name();
      String heading = document.heading() + (about.isEmpty() ? "" : ", " + about);
      byHeading.computeIfAbsent(heading, none -> new ArrayList<>()).add(document);
    }
    Markup html = new Markup();
    byHeading.forEach(
        (heading, its) -> {
          html.element("h2", heading).raw("\n<ul class=\"list\">\n");
          its.forEach(document -> entry(html, document));
          html.raw("</ul>\n");
        });
    if (documents.isEmpty()) {
      html.raw("<p class=\"none\">There is nothing to make a document of.</p>");
    }
    if (!documents.isEmpty() && !missing.isEmpty()) {
      html.raw("<p class=\"none\">").text("Not made, as there is nothing to stand on them: ");
      html.text(String.join("; ", missing)).raw(".</p>");
    }
    return page(
        stamp, html, "Each opens from disk and prints on A4; tables are there as CSV too.", back);
  }

  /** The list of the roots with the page of each. */
  static String ofRoots(Report report, Map<HarnessReport, String> pages) {
    Markup html = new Markup().raw("<ul class=\"list\">\n");
    pages.forEach(
        (root, page) -> {
          html.raw("<li><a href=\"").text(page).raw("\">").text(root.title()).raw("</a>");
          html.raw("<span class=\"why\">").text(root.root());
          String lacks = String.join("; ", Incomplete.sentences(root));
          html.text(lacks.isEmpty() ? "" : ". Not complete: " + lacks).raw("</span></li>\n");
        });
    html.raw("</ul>");
    Stamp stamp =
        new Stamp(
            pages.size() + " harnesses",
            report.revision().shown(),
            Stamp.day(report.revision()),
            "",
            List.of(),
            report.version(),
            Scope.WHOLE);
    return page(stamp, html, "Each harness has its own list.", "");
  }

  private static String page(Stamp stamp, Markup html, String purpose, String back) {
    Sheet sheet =
        Sheet.titled(Scope.WHOLE, "index", TITLE)
            .purpose(purpose)
            .add(new Drawing(html.toString()))
            .build();
    return SheetPage.of(stamp, sheet, back);
  }

  private static void entry(Markup html, Document document) {
    List<String> files = document.files();
    html.raw("<li><a href=\"").text(files.get(0)).raw("\">").text(document.title()).raw("</a>");
    for (String more : files.subList(1, files.size())) {
      html.raw("<a class=\"more\" href=\"").text(more).raw("\">");
      html.text(more.substring(more.lastIndexOf('/') + 1)).raw("</a>");
    }
    html.raw("<span class=\"why\">").text(document.purpose()).raw("</span></li>\n");
  }
}
