package org.tugtest.heat;

/**
 * A wire in a bundle with what flows through it.
 *
 * @param limitC the temperature its insulation lasts at, °C
 * @param amps lasting current (root mean square), either way; 0 for an idle wire
 */
public record BundledWire(Insulated wire, double limitC, double amps) {
  /** The same with another current. */
  public BundledWire withAmps(double other) {
    return new BundledWire(wire, limitC, other);
  }
}
