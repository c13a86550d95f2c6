package org.tugtest.heat;

import org.tugtest.finding.Basis;

/**
 * The lasting current that a wire stands: at which its conductor is as hot as its class in the
 * worst piece of its way, and no more than its maker allows.
 *
 * @param amps that current, in amperes
 * @param basis the weakest figure in it
 * @param sureAmps the same without the bundle factors that are from memory, so that it is no less
 * @param sureBasis the weakest figure in that
 * @param freeAirA the same alone in air of that piece
 * @param around that piece
 * @param byMaker whether the limit of its maker is the lower one
 */
public record Ampacity(
    double amps,
    Basis basis,
    double sureAmps,
    Basis sureBasis,
    double freeAirA,
    Around around,
    boolean byMaker) {

  /** What it may carry as a share of what it may in free air. */
  public double factor() {
    return freeAirA > 0 ? Math.min(1, amps / freeAirA) : 1;
  }

  /** How it came about, to be put behind the figure: {@code alone in still air of 40 °C}. */
  public String how() {
    String air = " in still air of " + trimmed(around.ambientC().value()) + " °C";
    if (byMaker) {
      return "as its maker allows";
    }
    int neighbours = around.neighbours();
    return neighbours > 0
        ? "with "
            + neighbours
            + (neighbours == 1 ? " other wire" : " other wires")
            + air
            + ", factor "
            + trimmed(Math.round(factor() * 1000) / 1000.0)
        : "alone" + air + (neighbours < 0 ? ", its neighbours not being known" : "");
  }

  private static String trimmed(double value) {
    return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
