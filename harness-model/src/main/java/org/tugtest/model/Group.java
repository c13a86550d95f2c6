package org.tugtest.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Wires that run together.
 *
 * @param screen wire id of the screen
 * @param pitchMm length of one full twist
 * @param outerMm of a cable
 * @param gramsPerM of a cable
 */
public record Group(
    String id,
    @Nullable String loom,
    @Nullable Kind kind,
    List<String> wires,
    @Nullable String screen,
    @Nullable Double pitchMm,
    @Nullable Double outerMm,
    @Nullable Double gramsPerM,
    @Nullable Double minBendMm) {

  public Group {
    wires = List.copyOf(wires);
  }

  /** The sort of group. */
  public enum Kind implements Word {
    TWISTED,
    CABLE
  }
}
