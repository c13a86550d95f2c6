package org.tugtest.model;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What goes round a bundle. Either {@code innerMm}, or the range it takes. */
public record Covering(
    String id,
    @Nullable Kind kind,
    @Nullable Double innerMm,
    @Nullable Double innerMinMm,
    @Nullable Double innerMaxMm,
    @Nullable Double wallMm,
    @Nullable Double maxC,
    @Nullable Double gramsPerM,
    Set<Need> protects) {

  public Covering {
    protects = Set.copyOf(protects);
  }

  /** The sort of covering. */
  public enum Kind implements Word {
    SPLIT_CONDUIT,
    BRAIDED_SLEEVE,
    HEAT_SHRINK,
    TAPE,
    HEAT_SHIELD
  }
}
