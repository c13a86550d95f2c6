package org.tugtest.heat;

import org.tugtest.finding.Basis;
import org.tugtest.text.Quoted;

/**
 * The lasting current that a wire stands: at which its conductor is as hot as its class in the
 * worst piece of its way, and no more than its maker allows.
 *
 * @param amps that current, in amperes
 * @param basis the weakest figure in it
 * @param sureAmps the same without coverings, and without bundle factors that are from memory, so
 *     that it is no less
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
    if (byMaker) {
      return "as its maker allows";
    }
    String air =
        " in still air of "
            + Quoted.number(around.ambientC().value())
            + " °C"
            + (around.covered() ? " inside a covering" : "");
    int neighbours = around.neighbours();
    if (neighbours <= 0) {
      return "alone" + air + (neighbours < 0 ? ", its neighbours not being known" : "");
    }
    return "with "
        + neighbours
        + (neighbours == 1 ? " other wire" : " other wires")
        + around.loading().words()
        + air
        + ", factor "
        + Quoted.number(Math.round(factor() * 1000) / 1000.0);
  }
}
