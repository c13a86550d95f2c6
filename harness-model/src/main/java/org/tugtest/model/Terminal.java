package org.tugtest.model;

import org.jspecify.annotations.Nullable;

/**
 * A crimp contact.
 *
 * @param areaMinMm2 least conductor area it takes; for several wires their sum
 * @param areaMaxMm2 greatest conductor area it takes; for several wires their sum
 * @param maxWires how many wires one terminal takes
 * @param maxA current rating
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
    @Nullable Double grams) {}
