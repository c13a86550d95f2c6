package org.tugtest.bench.rework;

import org.jspecify.annotations.Nullable;
import org.tugtest.model.Wire;

/**
 * A wire on the bench.
 *
 * @param name no other piece has it: its id to be, or its id as it is where it is taken out
 * @param now the wire as it is; null: it comes new
 * @param target the wire that it becomes; null: it is taken out
 * @param turned its {@code from} becomes its {@code to}
 */
public record Piece(String name, @Nullable Wire now, @Nullable Wire target, boolean turned) {

  /** Whether it is there already and stays. */
  public boolean kept() {
    return now != null && target != null;
  }

  /** The wire to look at: as it is, else as it will be. */
  Wire seen() {
    Wire wire = now != null ? now : target;
    if (wire == null) {
      throw new IllegalStateException(name + " is no wire");
    }
    return wire;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Piece that && name.equals(that.name);
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }

  @Override
  public String toString() {
    return name;
  }
}
