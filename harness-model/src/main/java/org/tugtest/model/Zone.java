package org.tugtest.model;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A part of the vehicle with its own air, wet and neighbours. */
public record Zone(
    String id,
    @Nullable Double ambientC,
    @Nullable Moisture moisture,
    Set<Need> needs,
    Set<Near> near) {

  public Zone {
    needs = Set.copyOf(needs);
    near = Set.copyOf(near);
  }

  /** How wet it gets; the order is from dry to wet. */
  public enum Moisture implements Word {
    DRY,
    SPLASH,
    WET
  }
}
