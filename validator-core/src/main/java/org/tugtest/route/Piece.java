package org.tugtest.route;

/**
 * The part of a segment that a wire covers, in the direction of the wire.
 *
 * @param fromMm where it enters, from the start of the segment
 * @param toMm where it leaves; less than {@code fromMm} when it runs against the segment
 */
public record Piece(String segment, double fromMm, double toMm) {
  /** How much of the segment it covers, in mm. */
  public double lengthMm() {
    return Math.abs(toMm - fromMm);
  }

  /** The end nearer to the start of the segment. */
  public double lowMm() {
    return Math.min(fromMm, toMm);
  }

  /** The end farther from the start of the segment. */
  public double highMm() {
    return Math.max(fromMm, toMm);
  }
}
