package org.tugtest.heat;

import java.util.List;
import org.tugtest.finding.Basis;
import org.tugtest.model.Wire;
import org.tugtest.table.Cited;

/**
 * What is round a wire on one piece of its way.
 *
 * @param ambientC temperature of the air, degrees Celsius
 * @param neighbours other wires beside it; -1 when that is not known, which counts as alone
 * @param covered whether a covering is round it
 */
public record Around(Cited ambientC, int neighbours, boolean covered) {
  /** Neighbours that are not known. */
  public static final int UNKNOWN = -1;

  /** Alone in air of a temperature, as far as is known. */
  public static Around alone(double ambientC, Basis basis) {
    return new Around(new Cited(ambientC, "given", basis), UNKNOWN, false);
  }

  /** What is round wires, piece by piece. */
  @FunctionalInterface
  public interface Wires {
    /** The different surroundings along a wire; never empty. */
    List<Around> of(Wire wire);
  }
}
