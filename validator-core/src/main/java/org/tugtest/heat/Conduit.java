package org.tugtest.heat;

/**
 * A tube round a bundle: heat goes through an annulus of still air and by radiation in parallel,
 * through the wall, and from its outside to the air or the next covering. The bundle is taken as
 * lying in the middle; in reality it lies on the bore, which is cooler. No published figure checks
 * this, so a result inside one is at most a warning.
 *
 * <p>The air of the gap conducts better by its own convection by the factor for concentric
 * cylinders (from memory), which is 1 in all gaps of a loom.
 *
 * @param boreMm inside diameter; where the bundle fills it there is no gap
 * @param wallMm thickness of the wall, 0 or more
 * @param beyond what lies outside of it
 */
public record Conduit(double boreMm, double wallMm, Envelope beyond) implements Envelope {
  /** Conductivity of a plastic wall, W/(m·K) (IEC 60287-2-1: 5.0 K·m/W). */
  private static final double WALL = 0.2;

  /** A loose tube of plastic in the air. */
  public static Conduit plastic(double boreMm, double wallMm) {
    return new Conduit(boreMm, wallMm, Envelope.BARE);
  }

  /** A wall that lies tight on the bundle. */
  public static Conduit tight(double wallMm, Envelope beyond) {
    return new Conduit(0, wallMm, beyond);
  }

  /** The same for a bundle of a share of the size: bores shrink with it, walls do not. */
  Conduit scaled(double share) {
    Envelope outside = beyond instanceof Conduit conduit ? conduit.scaled(share) : beyond;
    return new Conduit(boreMm * share, wallMm, outside);
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

  /**
   * From inside to outside at that heat: the drop of each part, then what the outside gives off.
   */
  @Override
  public double over(double bundleMm, double surfaceC, double airC, double watts) {
    double wall = surfaceC;
    if (boreMm > bundleMm) {
      double most = surfaceC > airC ? gapWatts(bundleMm, surfaceC, airC) : 0;
      if (most <= watts) {
        return most - 2 * watts;
      }
      wall = Root.of(at -> watts - gapWatts(bundleMm, surfaceC, at), airC, surfaceC);
    }
    double outside = wall - watts * wallKelvin(bundleMm);
    return outside > airC
        ? beyond.over(bore(bundleMm) + 2 * wallMm, outside, airC, watts)
        : outside - airC - watts;
  }

  /** What passes when the bundle's surface has a temperature. */
  Passing passing(double bundleMm, double surfaceC, double airC) {
    if (!(surfaceC > airC)) {
      return new Passing(0, airC, airC);
    }
    double kelvin = wallKelvin(bundleMm);
    boolean tight = boreMm <= bundleMm;
    double outside =
        Root.of(
            at -> {
              double watts = outsideWatts(bundleMm, at, airC);
              double wall = at + watts * kelvin;
              return tight ? wall - surfaceC : watts - gapWatts(bundleMm, surfaceC, wall);
            },
            airC,
            surfaceC);
    double watts = outsideWatts(bundleMm, outside, airC);
    return new Passing(watts, outside + watts * kelvin, outside);
  }

  /** The inside diameter round a bundle: a tight one is as wide as the bundle. */
  private double bore(double bundleMm) {
    return Math.max(boreMm, bundleMm);
  }

  double outsideWatts(double bundleMm, double outsideC, double airC) {
    return beyond.wattsPerM(bore(bundleMm) + 2 * wallMm, outsideC, airC);
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
            * stirring(bundleMm, Math.abs(surfaceC - wallC), mean)
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
            * kelvin
            * length
            * length
            * length
            * prandtl
            / (viscosity * viscosity);
    return Math.max(1, 0.386 * Math.pow(prandtl / (0.861 + prandtl) * rayleigh, 0.25));
  }
}
