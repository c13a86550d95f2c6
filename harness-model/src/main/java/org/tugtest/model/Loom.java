package org.tugtest.model;

import org.jspecify.annotations.Nullable;

/**
 * One physical assembly of wires.
 *
 * @param evidence default of its wires
 */
public record Loom(
    String id,
    @Nullable String title,
    @Nullable String revision,
    @Nullable Evidence evidence,
    Stage stage) {

  /** How far a loom has come. */
  public enum Stage implements Word {
    /** It shall be built as written. */
    PLANNED,
    /** As taken from the donor; decisions are plans, not faults. */
    FOUND
  }
}
