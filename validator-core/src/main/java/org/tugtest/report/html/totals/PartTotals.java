package org.tugtest.report.html.totals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.report.html.text.Few;
import org.tugtest.report.html.text.Figures;
import org.tugtest.route.Totals;

/**
 * Metres and grams of what the looms are made of, ready for a page.
 *
 * @param looms each loom that has parts, what is in none or in several last
 * @param wants what the sums lack, and what to give so that they have it
 */
public record PartTotals(Of whole, Few<Of> looms, Few<Want> wants) {
  private static final int MOST_LOOMS = 40;
  private static final int MOST_PARTS = 200;
  private static final int MOST_IN_LOOMS = 1200;
  private static final int MOST_WANTS = 40;

  /**
   * The whole, or one loom.
   *
   * @param id of the loom; empty for the whole and for what is in no loom
   * @param metres of wire and cable, in words
   * @param grams of everything, in words
   */
  public record Of(String id, String metres, String grams, Few<Part> parts) {
    /** Whether a figure of some part lacks something. */
    public boolean lacks() {
      return parts.shown().stream().anyMatch(part -> !part.lacks().isEmpty());
    }

    /** The parts by their kind, in the order of the totals. */
    public Map<String, List<Part>> byKind() {
      Map<String, List<Part>> kinds = new LinkedHashMap<>();
      for (Part part : parts.shown()) {
        kinds.computeIfAbsent(part.kind(), kind -> new ArrayList<>()).add(part);
      }
      return kinds;
    }
  }

  /**
   * One kind of part.
   *
   * @param metres empty for what has no length
   * @param lacks what is missing from the figures; empty when nothing is
   */
  public record Part(
      String kind, String id, String count, String metres, String grams, String lacks) {}

  /** Something that the sums lack. */
  public record Want(String what, String give) {}

  /** The totals of a harness. */
  public static PartTotals of(Facts facts) {
    Totals totals = facts.totals();
    int inEach =
        Math.min(MOST_PARTS, MOST_IN_LOOMS / Math.min(MOST_LOOMS, 1 + totals.byLoom().size()));
    List<Of> looms = new ArrayList<>();
    totals.byLoom().entrySet().stream()
        .filter(loom -> !loom.getKey().isEmpty())
        .forEach(loom -> looms.add(of(loom.getKey(), loom.getValue(), inEach)));
    Totals.Sum loose = totals.byLoom().get("");
    if (loose != null && !loose.lines().isEmpty() && !looms.isEmpty()) {
      looms.add(of("", loose, inEach));
    }
    return new PartTotals(
        of("", totals.whole(), MOST_PARTS),
        Few.of(looms, MOST_LOOMS),
        Few.of(new Wants(facts.harness()).of(totals.whole()), MOST_WANTS));
  }

  private static Of of(String id, Totals.Sum sum, int most) {
    boolean lengths = sum.lines().stream().allMatch(line -> line.withoutLength() == 0);
    return new Of(
        id,
        (lengths ? "" : "at least ") + metres(sum.metres()),
        (sum.complete() ? "" : "at least ") + grams(sum.grams()),
        Few.of(sum.lines().stream().map(PartTotals::part).toList(), most));
  }

  private static Part part(Totals.Line line) {
    List<String> lacks = new ArrayList<>();
    if (line.withoutLength() > 0) {
      lacks.add(Figures.count(line.withoutLength()) + " without a length");
    }
    if (line.withoutMass() > 0) {
      lacks.add(Figures.count(line.withoutMass()) + " without a mass");
    }
    boolean hasLength = line.metres() > 0 || line.withoutLength() > 0;
    boolean someLength = line.withoutLength() < line.count();
    boolean someMass = line.withoutLength() + line.withoutMass() < line.count();
    return new Part(
        line.kind().word(),
        line.part(),
        Figures.count(line.count()),
        !hasLength ? "" : someLength ? metres(line.metres()) : "not known",
        someMass ? grams(line.grams()) : "not known",
        String.join(", ", lacks));
  }

  private static String metres(double metres) {
    return Figures.fixed(metres, metres < 10 ? 2 : 1) + " m";
  }

  private static String grams(double grams) {
    return grams < 100
        ? Figures.fixed(grams, 1) + " g"
        : Figures.count((int) Math.round(Math.min(grams, Integer.MAX_VALUE))) + " g";
  }
}
