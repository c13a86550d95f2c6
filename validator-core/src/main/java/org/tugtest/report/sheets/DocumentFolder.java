package org.tugtest.report.sheets;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Sink;
import org.tugtest.report.html.PageNames;

/**
 * Writes the documents of all roots and {@code index.html}, which lists them. Several roots have a
 * folder each, named like their pages of the report, with an index of its own.
 *
 * @param makers of the documents, in the order in which they are listed
 */
public record DocumentFolder(List<DocumentMaker> makers) {
  public DocumentFolder {
    makers = List.copyOf(makers);
  }

  /**
   * Writes everything. Equal reports give equal bytes.
   *
   * @return the paths of all files, the index first
   * @throws IOException when the sink cannot take them, or two documents have one name
   */
  public List<String> write(Report report, Sink sink) throws IOException {
    Set<String> paths = new LinkedHashSet<>();
    Sink noted =
        path -> {
          if (!paths.add(path)) {
            throw new IOException("two documents are named " + path);
          }
          return sink.open(path);
        };
    List<HarnessReport> roots = report.harnesses();
    if (roots.size() == 1) {
      root(report, roots.get(0), "", noted);
      return new ArrayList<>(paths);
    }
    Map<String, String> stems = PageNames.stems(roots.stream().map(HarnessReport::root).toList());
    Map<HarnessReport, String> pages = new LinkedHashMap<>();
    roots.forEach(root -> pages.put(root, stems.get(root.root()) + "/" + SheetPage.INDEX));
    Sheet.put(noted, SheetPage.INDEX, DocumentIndex.ofRoots(report, pages));
    for (HarnessReport root : roots) {
      root(report, root, stems.get(root.root()) + "/", noted);
    }
    return new ArrayList<>(paths);
  }

  private void root(Report report, HarnessReport root, String folder, Sink sink)
      throws IOException {
    Stamp stamp = Stamp.of(report, root);
    List<Document> documents = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (DocumentMaker maker : makers) {
      List<Document> its = maker.of(root);
      documents.addAll(its);
      if (its.isEmpty() && !maker.title().isEmpty()) {
        missing.add(maker.title());
      }
    }
    Sink its = path -> sink.open(folder + path);
    String back = folder.isEmpty() ? "" : "../" + SheetPage.INDEX;
    Sheet.put(its, SheetPage.INDEX, DocumentIndex.of(stamp, documents, missing, back));
    for (Document document : documents) {
      document.write(stamp.about(document.scope()), its);
    }
  }
}
