package org.tugtest.report.html;

import gg.jte.output.StringOutput;
import java.util.LinkedHashMap;
import java.util.Map;
import org.tugtest.compare.Comparison;
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
    JtecircuitsGenerated.render(new PageOutput(html), null, room, "report.json");
    return html.toString();
  }

  /** The fuse map; loads in it lead to their circuits. */
  public static String fuses(FusesRoom room) {
    StringOutput html = new StringOutput();
    JtefusesGenerated.render(new PageOutput(html), null, room);
    return html.toString();
  }

  /**
   * The connectors of which a cavity holds something else than before, before and after, with the
   * cavities that changed marked, by id; an empty text for what is left out.
   *
   * @param mostCavities how many cavities are drawn in all
   */
  public static Map<String, String> changedFaces(Comparison comparison, int mostCavities) {
    Map<String, String> drawn = new LinkedHashMap<>();
    int left = mostCavities;
    for (ChangedFaces faces : ChangedFaces.of(comparison)) {
      StringOutput html = new StringOutput();
      left -= faces.cavities();
      if (left >= 0) {
        JtechangedfaceGenerated.render(
            new PageOutput(html), null, "Before", faces.before(), faces.changed());
        JtechangedfaceGenerated.render(
            new PageOutput(html), null, "After", faces.after(), faces.changed());
      }
      drawn.put(faces.id(), html.toString());
    }
    return drawn;
  }
}
