package org.tugtest.heat;

/** The heat that a wire gives off for good, against the temperature of its conductor. */
@FunctionalInterface
public interface Cooling {
  /** No heat is given off: what the adiabatic formula assumes. */
  Cooling NONE = celsius -> 0;

  /** Watts per metre at a conductor temperature in degrees Celsius; rising with it. */
  double wattsPerM(double celsius);

  /** This, with only a share of the current that it allows: in a bundle or a covering. */
  default Cooling atFactor(double currentFactor) {
    return new AtFactor(this, currentFactor);
  }

  /**
   * A cooling that allows only a share of the current of another; those alike are equal.
   *
   * @param full the other
   * @param currentFactor the share
   */
  record AtFactor(Cooling full, double currentFactor) implements Cooling {
    @Override
    public double wattsPerM(double celsius) {
      return full.wattsPerM(celsius) * currentFactor * currentFactor;
    }
  }
}
