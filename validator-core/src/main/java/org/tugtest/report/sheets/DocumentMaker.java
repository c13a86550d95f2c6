package org.tugtest.report.sheets;

import java.util.List;
import org.tugtest.report.HarnessReport;

/** Makes the documents of one kind. Stateless. */
public interface DocumentMaker {
  /** The documents of a root: one for each scope it deals with; none when there is nothing. */
  List<Document> of(HarnessReport harness);

  /** What an index calls them where there are none; empty: it does not miss them. */
  default String title() {
    return "";
  }
}
