package org.tugtest.report.sheets.documents;

import java.util.List;
import org.tugtest.report.sheets.DocumentFolder;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.list.WireList;

/** The documents that the goal {@code documents} writes. */
public final class Documents {
  private static final List<DocumentMaker> MAKERS = List.of(new WireList());

  private Documents() {}

  /** All of them, in the order in which they are listed. */
  public static DocumentFolder standard() {
    return new DocumentFolder(MAKERS);
  }
}
