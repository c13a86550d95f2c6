package org.tugtest.heat;

/** What lies between the outside of a bundle and the air round it. */
public interface Envelope {
  /** Nothing, or tape, which adds surface and takes about as much. */
  Envelope BARE = Surface::wattsPerM;

  /** Bright foil on the outside, which hardly radiates (aluminium: 0.04 in tables). */
  Envelope BRIGHT = Surface::brightWattsPerM;

  /**
   * Heat in W/m that a bundle gives off for good, rising with its surface temperature; 0 where that
   * is the air's.
   *
   * @param bundleMm diameter of the bundle, above 0
   * @param surfaceC temperature of its outside, °C
   * @param airC air round it all, °C
   */
  double wattsPerM(double bundleMm, double surfaceC, double airC);

  /**
   * Whether a bundle gives off a heat: 0 or more where it gives off as much or more, below 0 where
   * it is less. Falls as that heat rises, and rises with the surface temperature.
   *
   * @param watts per metre, 0 or more
   */
  default double over(double bundleMm, double surfaceC, double airC, double watts) {
    return wattsPerM(bundleMm, surfaceC, airC) - watts;
  }
}
