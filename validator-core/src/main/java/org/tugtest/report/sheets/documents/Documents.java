package org.tugtest.report.sheets.documents;

import java.util.List;
import org.tugtest.report.sheets.DocumentFolder;
import org.tugtest.report.sheets.DocumentMaker;
import org.tugtest.report.sheets.list.BuildOrder;
import org.tugtest.report.sheets.list.CoveringList;
import org.tugtest.report.sheets.list.CrimpTable;
import org.tugtest.report.sheets.list.CrossMates;
import org.tugtest.report.sheets.list.CutList;
import org.tugtest.report.sheets.list.LabelTexts;
import org.tugtest.report.sheets.list.Pinouts;
import org.tugtest.report.sheets.list.ShoppingList;
import org.tugtest.report.sheets.list.SpliceList;
import org.tugtest.report.sheets.list.WireList;
import org.tugtest.report.sheets.rework.MergeSheets;
import org.tugtest.report.sheets.ringout.RingOutSheets;
import org.tugtest.report.sheets.track.TrackPage;

/** The documents that the goal {@code documents} writes. */
public final class Documents {
  private static final List<DocumentMaker> MAKERS =
      List.of(
          new WireList(),
          new CutList(),
          new LabelTexts(),
          new SpliceList(),
          new CoveringList(),
          new CrimpTable(),
          new BuildOrder(),
          new Pinouts(),
          new ShoppingList(),
          new CrossMates(),
          new MergeSheets(),
          new RingOutSheets(),
          new TrackPage());

  private Documents() {}

  /** All of them, in the order in which they are listed. */
  public static DocumentFolder standard() {
    return new DocumentFolder(MAKERS);
  }
}
