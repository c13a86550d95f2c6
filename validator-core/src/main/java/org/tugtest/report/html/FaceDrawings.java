package org.tugtest.report.html;

import gg.jte.output.StringOutput;
import java.util.LinkedHashMap;
import java.util.Map;
import org.tugtest.facts.Facts;

/** The faces of connectors as the report draws them, without its findings, for other pages. */
public final class FaceDrawings {
  private FaceDrawings() {}

  /**
   * Both sides of each connector, by its id, loom by loom, as HTML that is safe inside a page. It
   * wants {@link Assets#shared} and {@link #signs} on the page.
   */
  public static Map<String, String> of(Facts facts) {
    Map<String, String> drawn = new LinkedHashMap<>();
    for (Face face : FacesRoom.of(facts, Map.of()).faces()) {
      StringOutput html = new StringOutput();
      JtefaceGenerated.render(new PageOutput(html), null, face, true);
      drawn.put(face.id(), html.toString());
    }
    return drawn;
  }

  /** The symbols that the drawings refer to, to stand once on a page. */
  public static String signs() {
    StringOutput html = new StringOutput();
    JtesignsGenerated.render(new PageOutput(html), null);
    return html.toString();
  }
}
