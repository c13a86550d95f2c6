package org.tugtest.heat;

/**
 * Heat from one conductor to another beside it, per metre and kelvin: parallel slices between two
 * facing arcs of 30 degrees to either side, each through both insulations and the air between.
 */
final class PairConductance {
  private static final int SLICES = 64;

  private PairConductance() {}

  /**
   * W/(m·K) between two wires.
   *
   * @param apartMm distance of their middles; less than touching counts as touching
   * @param gap conductivity of what fills the gap, W/(m·K)
   */
  static double of(Insulated one, Insulated other, double apartMm, double gap) {
    double r1 = one.outerMm() / 2;
    double r2 = other.outerMm() / 2;
    double l1 = Math.log(one.outerMm() / one.conductorMm()) / one.insulation();
    double l2 = Math.log(other.outerMm() / other.conductorMm()) / other.insulation();
    double most = Math.min(r1, r2) / 2;
    double sum = 0;
    for (int i = 0; i <= SLICES; i++) {
      double y = most * i / SLICES;
      double c1 = Math.sqrt(r1 * r1 - y * y);
      double c2 = Math.sqrt(r2 * r2 - y * y);
      double slice = 1 / (l1 * c1 + l2 * c2 + Math.max(0, apartMm - c1 - c2) / gap);
      sum += i == 0 || i == SLICES ? slice : i % 2 == 1 ? 4 * slice : 2 * slice;
    }
    return 2 * sum * most / (3 * SLICES);
  }
}
