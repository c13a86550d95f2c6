package org.tugtest.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A crimp contact.
 *
 * @param areaMinMm2 least conductor area it takes; for several wires their sum
 * @param areaMaxMm2 greatest conductor area it takes; for several wires their sum
 * @param maxWires how many wires one terminal takes
 * @param maxA current rating
 * @param crimps how it is crimped, by the conductor area in it
 */
public record Terminal(
    String id,
    @Nullable String family,
    @Nullable ContactSide side,
    @Nullable Double areaMinMm2,
    @Nullable Double areaMaxMm2,
    @Nullable Double insulationMinMm,
    @Nullable Double insulationMaxMm,
    int maxWires,
    @Nullable Double maxA,
    @Nullable Double contactMilliohm,
    @Nullable Double crimpMilliohm,
    @Nullable Double stripMm,
    List<Crimp> crimps,
    @Nullable Double grams) {

  public Terminal {
    crimps = List.copyOf(crimps);
  }

  /**
   * What a crimp measures when it is right; for several wires in one terminal by the sum of their
   * areas.
   *
   * @param areaMinMm2 least conductor area that it holds for
   * @param areaMaxMm2 greatest conductor area that it holds for
   * @param heightMm height over the conductor
   * @param toleranceMm how far the height may be off either way
   * @param widthMm width over the conductor
   * @param insulationHeightMm height over the insulation
   * @param pullN force that it holds at least
   */
  public record Crimp(
      double areaMinMm2,
      double areaMaxMm2,
      double heightMm,
      @Nullable Double toleranceMm,
      @Nullable Double widthMm,
      @Nullable Double insulationHeightMm,
      @Nullable Double pullN) {}
}
