package org.tugtest.model;

import org.jspecify.annotations.Nullable;

/**
 * A kind of wire.
 *
 * @param areaMm2 conductor area; null when {@code awg} gives it
 * @param awg American wire gauge as text ({@code "4/0"} to {@code "30"})
 * @param maxC temperature class, degrees Celsius
 * @param milliohmPerM resistance at 20 °C
 * @param maxA a limit of the maker's
 */
public record WirePart(
    String id,
    @Nullable Double areaMm2,
    @Nullable String awg,
    @Nullable Double maxC,
    Wall wall,
    @Nullable Double milliohmPerM,
    @Nullable Double outerMm,
    @Nullable Double conductorMm,
    @Nullable Double gramsPerM,
    @Nullable Double minBendMm,
    @Nullable Double maxA,
    boolean stocked) {

  /** How thick the insulation is (the wall of ISO 6722). */
  public enum Wall implements Word {
    THIN,
    ULTRA_THIN,
    THICK
  }
}
