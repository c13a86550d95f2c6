package org.tugtest.heat;

/**
 * A wire of a bundle and where it lies in the section.
 *
 * @param xMm middle of the wire
 * @param yMm middle of the wire
 */
public record Placed(BundledWire wire, double xMm, double yMm) {
  /** Distance between the middles of two wires in mm. */
  double distance(Placed other) {
    return Math.hypot(xMm - other.xMm, yMm - other.yMm);
  }

  double radius() {
    return wire.wire().outerMm() / 2;
  }
}
