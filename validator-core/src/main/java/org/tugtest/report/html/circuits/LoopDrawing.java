package org.tugtest.report.html.circuits;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.report.html.text.Swatch;

/**
 * A circuit as a picture: the feed above from left to right, the load at the right end, the return
 * below from right to left.
 */
public record LoopDrawing(int width, int height, List<Glyph> glyphs, List<Name> names) {
  public LoopDrawing {
    glyphs = List.copyOf(glyphs);
    names = List.copyOf(names);
  }

  /** What a glyph is the picture of. */
  public enum Sort {
    WIRE,
    FUSE,
    CONTACT,
    PLUG,
    BOLT,
    LINK,
    DIODE,
    SOURCE,
    LOAD,
    POINT,
    SPLICE
  }

  /**
   * One thing: a line from one place to another with its picture in the middle, or a point.
   *
   * @param swatch of a wire; null for everything else
   */
  public record Glyph(
      Sort sort, int x1, int y1, int x2, int y2, @Nullable Swatch swatch, String title) {
    /** The middle of it, across. */
    public int x() {
      return (x1 + x2) / 2;
    }

    /** The middle of it, down. */
    public int y() {
      return (y1 + y2) / 2;
    }

    /** Whether it runs from right to left. */
    public boolean leftwards() {
      return x2 < x1;
    }
  }

  /** A text centred on a place. */
  public record Name(int x, int y, String text, String kind) {}
}
