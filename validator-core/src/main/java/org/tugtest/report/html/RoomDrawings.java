package org.tugtest.report.html;

import gg.jte.output.StringOutput;
import org.tugtest.report.html.circuits.CircuitsRoom;
import org.tugtest.report.html.fuses.FusesRoom;

/**
 * Rooms of the report for other pages, as HTML that is safe inside a page. They want {@link
 * Assets#shared}, {@link Assets#rooms} and {@link FaceDrawings#signs} on the page.
 */
public final class RoomDrawings {
  private RoomDrawings() {}

  /** The circuits, each to unfold; the anchor of one is {@code circuit-N}. */
  public static String circuits(CircuitsRoom room) {
    StringOutput html = new StringOutput();
    JtecircuitsGenerated.render(new PageOutput(html), null, room);
    return html.toString();
  }

  /** The fuse map; loads in it lead to their circuits. */
  public static String fuses(FusesRoom room) {
    StringOutput html = new StringOutput();
    JtefusesGenerated.render(new PageOutput(html), null, room);
    return html.toString();
  }
}
