package org.tugtest.model;

import org.jspecify.annotations.Nullable;

/**
 * A kind of splice.
 *
 * @param areaMinMm2 least sum of the areas of all ends
 * @param areaMaxMm2 greatest sum of the areas of all ends
 */
public record SplicePart(
    String id,
    @Nullable Double areaMinMm2,
    @Nullable Double areaMaxMm2,
    @Nullable Integer maxWires,
    @Nullable Double milliohm,
    @Nullable Double maxC,
    boolean sealed,
    @Nullable Double grams) {}
