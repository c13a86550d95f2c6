package org.tugtest.heat;

import java.util.Arrays;
import java.util.List;

/**
 * The surface that hot wires add to a bundle: their share of heat times the square of their
 * diameter, but for the judgement of one wire no more than wires like it would add for the same
 * heat. Without that bound a thick lukewarm cable would let a thin wire beside it carry more than
 * if it were cold.
 */
final class Credit {
  private final double[] ratio;
  private final double[] square;
  private final double[] sorted;
  private final double[] squaresUpTo;
  private final double[] heatUpTo;
  private final double[] beside;

  /**
   * The surface of these wires.
   *
   * @param alone current of each alone at the limit, above 0
   */
  Credit(List<BundledWire> wires, double[] alone, double limitC) {
    int count = wires.size();
    beside = new double[count];
    ratio = new double[count];
    square = new double[count];
    double[] heat = new double[count];
    Integer[] order = new Integer[count];
    for (int i = 0; i < count; i++) {
      BundledWire wire = wires.get(i);
      double surface = wire.wire().outerMm() * wire.wire().outerMm();
      double ohms = wire.wire().ohmPerM(limitC);
      heat[i] = wire.amps() * wire.amps() * ohms;
      ratio[i] = surface / (alone[i] * alone[i] * ohms);
      square[i] = ratio[i] * heat[i];
      order[i] = i;
    }
    Arrays.sort(order, (one, other) -> Double.compare(ratio[one], ratio[other]));
    sorted = new double[count];
    squaresUpTo = new double[count + 1];
    heatUpTo = new double[count + 1];
    for (int i = 0; i < count; i++) {
      int at = order[i];
      sorted[i] = ratio[at];
      squaresUpTo[i + 1] = squaresUpTo[i] + square[at];
      heatUpTo[i + 1] = heatUpTo[i] + heat[at];
    }
    for (int i = 0; i < count; i++) {
      beside[i] = reckoned(i);
    }
  }

  /** What the others add beside one wire, in mm² of heat's shares. */
  double beside(int wire) {
    return beside[wire];
  }

  private double reckoned(int wire) {
    int at = Arrays.binarySearch(sorted, ratio[wire]);
    int upTo = at < 0 ? -at - 1 : at;
    double thinner = squaresUpTo[upTo];
    double thicker = heatUpTo[sorted.length] - heatUpTo[upTo];
    return Math.max(0, thinner + ratio[wire] * thicker - square[wire]);
  }
}
