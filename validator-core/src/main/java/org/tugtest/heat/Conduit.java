package org.tugtest.heat;

/**
 * A loose tube round a bundle: heat goes through an annulus of still air and by radiation in
 * parallel, through the wall, and from its outside to the air. The bundle is taken as lying in the
 * middle; in reality it lies on the bore, which is cooler. No published figure checks this, so a
 * result inside one is at most a warning.
 *
 * <p>The air of the gap conducts better by its own convection by the factor for concentric
 * cylinders (from memory), which is 1 in all gaps of a loom.
 *
 * @param boreMm inside diameter; where the bundle fills it there is no gap
 * @param wallMm thickness of the wall, 0 or more
 * @param emissivity of its outside
 */
public record Conduit(double boreMm, double wallMm, double emissivity) implements Envelope {
  /** Conductivity of a plastic wall, W/(m·K) (IEC 60287-2-1: 5.0 K·m/W). */
  private static final double WALL = 0.2;

  private static final int HALVINGS = 50;

  /** A tube of plastic. */
  public static Conduit plastic(double boreMm, double wallMm) {
    return new Conduit(boreMm, wallMm, Surface.EMISSIVITY);
  }

  /**
   * Temperatures from inside to outside.
   *
   * @param watts that pass, per metre
   * @param wallC inside of the wall, °C
   * @param outsideC outside of the wall, °C
   */
  record Passing(double watts, double wallC, double outsideC) {}

  @Override
  public double wattsPerM(double bundleMm, double surfaceC, double airC) {
    return passing(bundleMm, surfaceC, airC).watts();
  }

  /** What passes when the bundle's surface has a temperature. */
  Passing passing(double bundleMm, double surfaceC, double airC) {
    double low = Math.min(airC, surfaceC);
    double high = Math.max(airC, surfaceC);
    for (int i = 0; i < HALVINGS; i++) {
      double outside = (low + high) / 2;
      double watts = outsideWatts(bundleMm, outside, airC);
      double wall = outside + watts * wallKelvin(bundleMm);
      boolean takesMore = wall < surfaceC && gapWatts(bundleMm, surfaceC, wall) > watts;
      if (takesMore) {
        low = outside;
      } else {
        high = outside;
      }
    }
    double outside = (low + high) / 2;
    double watts = outsideWatts(bundleMm, outside, airC);
    return new Passing(watts, outside + watts * wallKelvin(bundleMm), outside);
  }

  /** The inside diameter round a bundle: a tight one is as wide as the bundle. */
  private double bore(double bundleMm) {
    return Math.max(boreMm, bundleMm);
  }

  double outsideWatts(double bundleMm, double outsideC, double airC) {
    double outer = bore(bundleMm) + 2 * wallMm;
    double transfer =
        Surface.convection(outer, outsideC, airC)
            + emissivity * Surface.radiationOfBlack(outsideC, airC);
    return Math.PI * outer / 1000 * transfer * (outsideC - airC);
  }

  /** Thermal resistance of the wall, K·m/W. */
  double wallKelvin(double bundleMm) {
    double bore = bore(bundleMm);
    return Math.log((bore + 2 * wallMm) / bore) / (2 * Math.PI * WALL);
  }

  private double gapWatts(double bundleMm, double surfaceC, double wallC) {
    return Math.PI * bundleMm / 1000 * gapTransfer(bundleMm, surfaceC, wallC) * (surfaceC - wallC);
  }

  /** Heat transfer across the gap per area of the bundle, W/(m²·K). */
  double gapTransfer(double bundleMm, double surfaceC, double wallC) {
    if (boreMm <= bundleMm) {
      return Double.POSITIVE_INFINITY;
    }
    double mean = (surfaceC + wallC) / 2 + Air.ZERO_C;
    double logarithm = Math.log(boreMm / bundleMm);
    double conducting =
        2000
            * Air.conductivity(mean)
            * stirring(bundleMm, surfaceC - wallC, mean)
            / (bundleMm * logarithm);
    return conducting + gapRadiation(bundleMm, surfaceC, wallC);
  }

  /** The part of radiation in it: both surfaces of plastic, one inside the other. */
  double gapRadiation(double bundleMm, double surfaceC, double wallC) {
    double inside = 1 / Surface.EMISSIVITY;
    return Surface.radiationOfBlack(surfaceC, wallC) / (inside + bundleMm / boreMm * (inside - 1));
  }

  private double stirring(double bundleMm, double kelvin, double mean) {
    double inner = bundleMm / 2000;
    double outer = boreMm / 2000;
    double length =
        2
            * Math.pow(Math.log(outer / inner), 4.0 / 3)
            / Math.pow(Math.pow(inner, -0.6) + Math.pow(outer, -0.6), 5.0 / 3);
    double prandtl = Air.prandtl(mean);
    double viscosity = Air.viscosity(mean);
    double rayleigh =
        Surface.GRAVITY
            / mean
            * Math.abs(kelvin)
            * Math.pow(length, 3)
            * prandtl
            / (viscosity * viscosity);
    return Math.max(1, 0.386 * Math.pow(prandtl / (0.861 + prandtl) * rayleigh, 0.25));
  }
}
