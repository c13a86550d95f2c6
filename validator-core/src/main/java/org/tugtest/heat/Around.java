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
 * @param loading what flows through its neighbours
 */
public record Around(Cited ambientC, int neighbours, boolean covered, Loading loading) {
  /** Neighbours that are not known. */
  public static final int UNKNOWN = -1;

  /** With neighbours that are used to 20 % of what they may carry together. */
  public Around(Cited ambientC, int neighbours, boolean covered) {
    this(ambientC, neighbours, covered, Loading.CHART);
  }

  /**
   * What flows through neighbours.
   *
   * @param state in which their solved currents leave least; empty where they are not all known, so
   *     that they are taken as used to 20 % of what they may carry together
   * @param classC the lowest class among them where that is under the wire's own, else 0; below 0
   *     where they alone are too much, so that all are taken as used to the full, all alike
   */
  public record Loading(String state, double classC) {
    /** Currents that are not known. */
    static final Loading CHART = new Loading("", 0);

    /** Currents that alone are too much, so that all are taken as loaded alike. */
    static final Loading TOO_MUCH = new Loading("", -1);

    String words() {
      if (classC < 0) {
        return ", used to the full as their currents alone are too much there,";
      }
      String lowest = classC > 0 ? ", one of class " + Math.round(classC) + " °C," : "";
      return state.isEmpty()
          ? ", used to 20 % as not all their currents are known,"
          : lowest + " at their currents of state " + state;
    }
  }

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
