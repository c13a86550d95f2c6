package org.tugtest.report.sheets.list;

import org.jspecify.annotations.Nullable;
import org.tugtest.model.Covering;
import org.tugtest.report.sheets.Cell;
import org.tugtest.route.CoverLayers;
import org.tugtest.text.Quoted;

/** What the list of coverings says of a part. */
final class CoveringCells {
  private CoveringCells() {}

  static Cell kind(@Nullable Covering part) {
    return Cell.text(part == null || part.kind() == null ? "" : part.kind().word());
  }

  static Cell inside(@Nullable Covering part) {
    Double least = part == null ? null : CoverLayers.least(part);
    Double most = part == null ? null : CoverLayers.most(part);
    if (least == null || most == null) {
      return Cell.unknown("");
    }
    String text = Quoted.number(most);
    return Cell.text(least.equals(most) ? text : Quoted.number(least) + " to " + text);
  }
}
