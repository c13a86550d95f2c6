package org.tugtest.heat;

import org.tugtest.table.Copper;

/**
 * How long a wire takes from one temperature to another under a lasting current: one lumped
 * transient, (Qc · S) · dT/dt = I² · R(T) − q(T), for all times. For short ones it becomes the
 * adiabatic formula I²t = k²S² of IEC 60364-5-54 Annex A, for long ones the heat balance of the
 * wire.
 *
 * <p>The cooling is taken as straight between {@value #PIECES} equal steps of temperature; the time
 * over each step is then exact: Qc · S · ΔT · ln(p₁/p₀) / (p₁ − p₀) with the heat p left over at
 * its ends. So the time is never shorter than the adiabatic one, and its logarithm is convex in the
 * logarithm of the current.
 */
public final class Warming {
  /** Volumetric heat capacity of copper, J/(K·mm³) (IEC 60364-5-54 Annex A). */
  private static final double QC = 0.00345;

  private static final double MM_PER_M = 1000;
  private static final double MILLI = 1e-3;
  private static final int PIECES = 32;
  private static final double NEARLY_EQUAL = 1e-4;
  private final double stepJoulePerM;
  private final double[] ohmPerM = new double[PIECES + 1];
  private final double[] lossWattPerM = new double[PIECES + 1];
  private final boolean nothingToDo;

  /**
   * A wire that warms up.
   *
   * @param areaMm2 conductor area, above 0
   * @param milliohmPerM resistance at 20 °C, above 0
   * @param cooling what it gives off meanwhile; below 0 counts as 0
   * @param fromC conductor temperature at the start
   * @param toC conductor temperature at the end; not above {@code fromC}: it is there at once
   */
  public Warming(double areaMm2, double milliohmPerM, Cooling cooling, double fromC, double toC) {
    this(areaMm2, milliohmPerM, losses(cooling, fromC, toC), 1, fromC, toC);
  }

  /**
   * The same for a cooling of which these are the losses.
   *
   * @param lossWattPerM as {@link #losses} gives them
   * @param currentFactor as of {@link Cooling#atFactor}
   */
  Warming(
      double areaMm2,
      double milliohmPerM,
      double[] lossWattPerM,
      double currentFactor,
      double fromC,
      double toC) {
    nothingToDo = !(toC > fromC);
    double step = step(fromC, toC);
    stepJoulePerM = QC * areaMm2 * MM_PER_M * step;
    for (int i = 0; i <= PIECES; i++) {
      ohmPerM[i] = milliohmPerM * MILLI * Copper.factor(fromC + i * step);
      this.lossWattPerM[i] = Math.max(0, lossWattPerM[i] * currentFactor * currentFactor);
    }
  }

  /** What a cooling gives off at the ends of all pieces between two temperatures, W/m. */
  static double[] losses(Cooling cooling, double fromC, double toC) {
    double[] losses = new double[PIECES + 1];
    double step = step(fromC, toC);
    for (int i = 0; i <= PIECES; i++) {
      losses[i] = cooling.wattsPerM(fromC + i * step);
    }
    return losses;
  }

  private static double step(double fromC, double toC) {
    return toC > fromC ? (toC - fromC) / PIECES : 0;
  }

  /** Seconds under a current in amperes; infinite when it never gets there. */
  public double seconds(double amps) {
    if (nothingToDo) {
      return 0;
    }
    double squared = amps * amps;
    double seconds = 0;
    double before = squared * ohmPerM[0] - lossWattPerM[0];
    for (int i = 1; i <= PIECES; i++) {
      double after = squared * ohmPerM[i] - lossWattPerM[i];
      if (!(before > 0) || !(after > 0)) {
        return Double.POSITIVE_INFINITY;
      }
      seconds += stepJoulePerM * meanInverse(before, after);
      before = after;
    }
    return seconds;
  }

  /** The greatest current in amperes under which it never gets there. */
  public double lastingAmps() {
    double most = 0;
    for (int i = 0; i <= PIECES && !nothingToDo; i++) {
      most = Math.max(most, lossWattPerM[i] / ohmPerM[i]);
    }
    return Math.sqrt(most);
  }

  /** The mean of 1/p where p goes straight from one value to another, both above 0. */
  private static double meanInverse(double from, double to) {
    double relative = (to - from) / from;
    return Math.abs(relative) < NEARLY_EQUAL
        ? (1 - relative / 2 + relative * relative / 3) / from
        : Math.log(to / from) / (to - from);
  }
}
