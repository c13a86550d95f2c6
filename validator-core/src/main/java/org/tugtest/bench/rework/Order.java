package org.tugtest.bench.rework;

/** In which order terminals change their places. */
public enum Order {
  /**
   * One connector at a time, with those it exchanges wires with: all that move are pulled and
   * tagged with their new cavity, then inserted in the order of the face.
   */
  BY_CONNECTOR,
  /**
   * Each terminal goes straight into its new cavity once that is free; only one of each ring waits
   * elsewhere.
   */
  FEWEST_PARKED
}
