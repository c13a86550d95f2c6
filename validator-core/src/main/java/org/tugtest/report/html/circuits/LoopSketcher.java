package org.tugtest.report.html.circuits;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.report.PrintableText;
import org.tugtest.report.html.text.Swatch;

/** Draws the loop of a load's current. */
final class LoopSketcher {
  private static final int SLOT = 98;
  private static final int TOP = 44;
  private static final int BOTTOM = 168;
  private static final int SIDE = 66;
  private static final int LETTERS = 13;
  private static final int BESIDE = 68;
  private final Function<Edge, String> says;
  private final List<LoopDrawing.Glyph> glyphs = new ArrayList<>();
  private final List<LoopDrawing.Name> names = new ArrayList<>();

  private LoopSketcher(Function<Edge, String> says) {
    this.says = says;
  }

  /** The picture of a way to a load and back. */
  static LoopDrawing draw(Way way, Edge.OfElement load, Function<Edge, String> says) {
    return new LoopSketcher(says).draw(way, load);
  }

  private LoopDrawing draw(Way way, Edge.OfElement load) {
    List<Leg> feed = new ArrayList<>(way.feed());
    List<Leg> back = new ArrayList<>(way.back());
    Leg source = !feed.isEmpty() && isSource(feed.get(0)) ? feed.remove(0) : null;
    Leg sink =
        !back.isEmpty() && isSource(back.get(back.size() - 1))
            ? back.remove(back.size() - 1)
            : null;
    int slots = Math.max(2, Math.max(feed.size(), back.size()));
    int right = SIDE + slots * SLOT;
    row(feed, SIDE, right, TOP);
    row(back, right, SIDE, BOTTOM);
    glyph(LoopDrawing.Sort.LOAD, right, TOP, right, BOTTOM, load);
    name(right - BESIDE, (TOP + BOTTOM) / 2 + 4, load.text(), "thing");
    if (source != null && sink != null && source.edge().equals(sink.edge())) {
      glyph(LoopDrawing.Sort.SOURCE, SIDE, BOTTOM, SIDE, TOP, source.edge());
      name(SIDE + BESIDE, (TOP + BOTTOM) / 2 + 4, source.edge().text(), "thing");
    } else {
      int middle = (TOP + BOTTOM) / 2;
      if (source != null) {
        glyph(LoopDrawing.Sort.SOURCE, SIDE, middle - 6, SIDE, TOP, source.edge());
        name(SIDE + BESIDE, TOP + 34, source.edge().text(), "thing");
      }
      if (sink != null) {
        glyph(LoopDrawing.Sort.SOURCE, SIDE, BOTTOM, SIDE, middle + 6, sink.edge());
        name(SIDE + BESIDE, BOTTOM - 24, sink.edge().text(), "thing");
      }
    }
    return new LoopDrawing(right + SIDE, BOTTOM + 36, glyphs, names);
  }

  private static boolean isSource(Leg leg) {
    return leg.edge() instanceof Edge.OfElement inside
        && inside.element() instanceof Element.Source;
  }

  private void row(List<Leg> legs, int from, int to, int y) {
    for (int i = 0; i < legs.size(); i++) {
      Leg leg = legs.get(i);
      int x1 = from + (to - from) * i / legs.size();
      int x2 = from + (to - from) * (i + 1) / legs.size();
      glyph(sort(leg.edge()), x1, y, x2, y, leg.edge());
      boolean joint = leg.edge() instanceof Edge.OfMating || leg.edge() instanceof Edge.OfBolt;
      if (!joint) {
        name((x1 + x2) / 2, y - 14, called(leg.edge()), "thing");
      }
      point(leg.from(), x1, y);
      if (i == legs.size() - 1) {
        point(leg.to(), x2, y);
      }
    }
    if (legs.isEmpty()) {
      glyphs.add(
          new LoopDrawing.Glyph(LoopDrawing.Sort.LINK, from, y, to, y, null, "the same pin"));
    }
  }

  private static String called(Edge edge) {
    String colour = edge instanceof Edge.OfWire wire ? wire.wire().colour() : null;
    return edge.text() + (colour == null ? "" : " " + colour);
  }

  private void point(Point point, int x, int y) {
    boolean splice = point.kind() == Point.Kind.SPLICE;
    glyphs.add(
        new LoopDrawing.Glyph(
            splice ? LoopDrawing.Sort.SPLICE : LoopDrawing.Sort.POINT,
            x,
            y,
            x,
            y,
            null,
            (splice ? "splice " : "") + point.text()));
    name(x, y + 20, point.text(), "point");
  }

  private void glyph(LoopDrawing.Sort sort, int x1, int y1, int x2, int y2, Edge edge) {
    Swatch swatch = edge instanceof Edge.OfWire wire ? Swatch.of(wire.wire().colour()) : null;
    glyphs.add(new LoopDrawing.Glyph(sort, x1, y1, x2, y2, swatch, says.apply(edge)));
  }

  private void name(int x, int y, String text, String kind) {
    names.add(new LoopDrawing.Name(x, y, PrintableText.cut(PrintableText.of(text), LETTERS), kind));
  }

  private static LoopDrawing.Sort sort(Edge edge) {
    if (edge instanceof Edge.OfElement inside) {
      Element element = inside.element();
      return element instanceof Element.Fuse
          ? LoopDrawing.Sort.FUSE
          : element instanceof Element.Contact
              ? LoopDrawing.Sort.CONTACT
              : element instanceof Element.Diode
                  ? LoopDrawing.Sort.DIODE
                  : element instanceof Element.Source
                      ? LoopDrawing.Sort.SOURCE
                      : element instanceof Element.Link
                          ? LoopDrawing.Sort.LINK
                          : LoopDrawing.Sort.LOAD;
    }
    return edge instanceof Edge.OfWire
        ? LoopDrawing.Sort.WIRE
        : edge instanceof Edge.OfMating ? LoopDrawing.Sort.PLUG : LoopDrawing.Sort.BOLT;
  }
}
