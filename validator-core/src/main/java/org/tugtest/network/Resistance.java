package org.tugtest.network;

import org.tugtest.finding.Basis;

/**
 * The resistance of something between two points.
 *
 * @param ohms never negative
 * @param basis the weakest figure in it
 * @param missing what is not known and therefore left out of {@code ohms}, in a few words: {@code
 *     its length}; empty when all is known
 */
public record Resistance(double ohms, Basis basis, String missing) {
  /** Whether all of it is known. */
  public boolean known() {
    return missing.isEmpty();
  }

  /** A known resistance. */
  static Resistance of(double ohms, Basis basis) {
    return new Resistance(ohms, basis, "");
  }

  /** Both in a row. */
  Resistance plus(double more, Basis moreBasis) {
    return new Resistance(ohms + more, basis.weaker(moreBasis), missing);
  }
}
