package org.tugtest.model;

import org.jspecify.annotations.Nullable;

/** A seal on one wire in one cavity. */
public record Seal(
    String id,
    @Nullable String family,
    @Nullable Double insulationMinMm,
    @Nullable Double insulationMaxMm,
    @Nullable Double grams) {}
