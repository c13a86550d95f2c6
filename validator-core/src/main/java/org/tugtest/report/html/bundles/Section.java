package org.tugtest.report.html.bundles;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.report.html.text.Few;
import org.tugtest.report.html.text.Swatch;

/**
 * A section through the thickest piece of a segment.
 *
 * @param where the segment, and the piece of it if it is not all of it
 * @param picture null when there are too many circles to lay out, or no room for more pictures
 * @param sizes its diameters, in words
 * @param layers its coverings with how full they are, inside first
 * @param missing wires without a diameter, which the figures lack
 */
public record Section(
    String segment,
    String where,
    int wires,
    @Nullable Picture picture,
    String sizes,
    List<Layer> layers,
    List<Strand> strands,
    Few<String> missing,
    String basis) {
  public Section {
    layers = List.copyOf(layers);
    strands = List.copyOf(strands);
  }

  /**
   * A covering.
   *
   * @param says how full it is, in words
   * @param over whether the bundle does not go into it
   */
  public record Layer(String covering, String says, boolean over) {}

  /**
   * A wire or cable.
   *
   * @param number in the picture, from 1
   */
  public record Strand(int number, String id, boolean cable, Swatch swatch, String mm) {}

  /**
   * Circles in whole units.
   *
   * @param half half its width and height
   * @param rings radii of the coverings, the inside first
   * @param bundle radius of the least circle round all wires
   */
  public record Picture(int half, int bundle, List<Integer> rings, List<Disc> discs) {
    public Picture {
      rings = List.copyOf(rings);
      discs = List.copyOf(discs);
    }

    /** What an SVG gives as its view box. */
    public String viewBox() {
      return -half + " " + -half + " " + 2 * half + " " + 2 * half;
    }
  }

  /**
   * A wire in the picture.
   *
   * @param number shown in it; 0 when it is too small for that
   */
  public record Disc(int x, int y, int r, int number, boolean cable, Swatch swatch, String title) {
    /** How thick its stripe is drawn. */
    public int stripe() {
      return Math.max(1, r * 2 / 5);
    }

    /** Whether a light letter is read better on it. */
    public boolean dark() {
      return switch (swatch.base()) {
        case "BK", "BN", "RD", "BU", "VT", "GN" -> true;
        default -> false;
      };
    }
  }
}
