package org.tugtest.report.sheets.list;

import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.network.Point;

/** Which cavities are closed with a blank. */
final class Blanks {
  private Blanks() {}

  /** Whether a cavity without a wire is plugged, as it says itself, else as its connector does. */
  static boolean isBlanked(Facts facts, Point cavity) {
    Connector connector = facts.harness().connectors().get(cavity.owner());
    if (connector == null || !facts.wiring().endsAt(cavity).isEmpty()) {
      return false;
    }
    Connector.Cavity own = connector.cavities().get(cavity.name());
    Boolean blank = own == null ? null : own.blank();
    return blank == null ? connector.blanked() : blank;
  }
}
