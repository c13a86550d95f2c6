package org.tugtest.route;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.tugtest.finding.Basis;

/**
 * What lies side by side on a piece of a segment. Its body at a splice is not counted: the format
 * gives splices no diameter.
 */
public final class Bundle {
  /** Up to as many circles the formula is held against a packing. */
  private static final int FEW = 20;

  private final String segment;
  private final double fromMm;
  private final double toMm;
  private final List<Strand> strands;
  private final List<String> unsized;
  private final int wires;
  private final List<Double> diameters;
  private final Function<List<Double>, Packing> packer;

  /**
   * A bundle.
   *
   * @param strands circles of known diameter, the thickest first, of equal ones by id
   * @param unsized wires and cables without a diameter
   * @param wires conductors in it, those of cables one by one
   * @param packer lays out circles, the largest first
   */
  Bundle(
      String segment,
      double fromMm,
      double toMm,
      List<Strand> strands,
      List<String> unsized,
      int wires,
      Function<List<Double>, Packing> packer) {
    this.segment = segment;
    this.fromMm = fromMm;
    this.toMm = toMm;
    this.strands = List.copyOf(strands);
    this.unsized = List.copyOf(unsized);
    this.wires = wires;
    this.diameters = strands.stream().map(strand -> strand.outerMm().value()).toList();
    this.packer = packer;
  }

  /** The segment. */
  public String segment() {
    return segment;
  }

  /** Where the piece begins, in mm from the start of the segment. */
  public double fromMm() {
    return fromMm;
  }

  /** Where the piece ends, in mm from the start of the segment. */
  public double toMm() {
    return toMm;
  }

  /** The length of the piece in mm. */
  public double lengthMm() {
    return toMm - fromMm;
  }

  /** Its circles of known diameter, the thickest first. */
  public List<Strand> strands() {
    return strands;
  }

  /** Ids of the wires and cables in it that have no diameter; what is said of sizes lacks them. */
  public List<String> unsized() {
    return unsized;
  }

  /** How many conductors lie in it; a wire that runs out and back counts twice. */
  public int wires() {
    return wires;
  }

  /** The diameters of its circles in mm, the largest first. */
  public List<Double> diametersMm() {
    return diameters;
  }

  /**
   * The expected diameter in mm: by {@link BundleDiameter#expectedMm}, which a few circles of
   * different sizes can exceed by some percent; with few of them never less than {@link #leastMm}.
   */
  public double expectedMm() {
    double formula = BundleDiameter.expectedMm(diameters);
    return diameters.size() <= FEW ? Math.max(formula, leastMm()) : formula;
  }

  /** The diameter in mm when it is laid loosely; never less than expected. */
  public double looseMm() {
    return Math.max(expectedMm(), BundleDiameter.looseMm(diameters));
  }

  /**
   * Its circles, in the order of {@link #strands()}, in the least circle that was found for them.
   * Computed when asked for; bundles of the same circles share it.
   */
  public Packing packing() {
    return packer.apply(diameters);
  }

  /** The least diameter in mm: that of its packing. */
  public double leastMm() {
    return packing().diameterMm();
  }

  /** What its expected and loose diameters rest on. */
  public Basis basis() {
    Basis basis = strands.size() > 2 ? Basis.COMMON_PRACTICE : Basis.GIVEN;
    for (Strand strand : strands) {
      basis = basis.weaker(strand.outerMm().basis());
    }
    return basis;
  }

  /** Where it lies, as people say it: {@code segment e1} or {@code segment e1 from 0 to 200 mm}. */
  public String text(double segmentMm) {
    boolean whole = fromMm <= 0 && toMm >= segmentMm;
    return "segment "
        + segment
        + (whole
            ? ""
            : " from "
                + org.tugtest.text.Quoted.number(fromMm)
                + " to "
                + org.tugtest.text.Quoted.number(toMm)
                + " mm");
  }

  /** All wires in it by id, once each, in natural order. */
  public List<String> wireIds() {
    List<String> ids = new ArrayList<>();
    strands.forEach(strand -> ids.addAll(strand.wires()));
    ids.addAll(unsized);
    return ids.stream().distinct().sorted(org.tugtest.text.NaturalOrder.NATURAL).toList();
  }
}
