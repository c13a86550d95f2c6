package org.tugtest.heat;

import org.tugtest.finding.Basis;
import org.tugtest.table.BundleFactorTable;
import org.tugtest.table.Cited;

/**
 * What wires stand beside neighbours of which only the number is known: the heat balance of the
 * wire alone in still air, times the published factor for that number. The bundle is taken as used
 * to {@value #LOADING_PERCENT} % of its capacity, as FAA AC 43.13-1B table 11-9 takes it; where
 * they alone are too much, as loaded alike to the full: a wire with no more than that is not the
 * one to blame.
 */
final class ChartAmps {
  private static final int LOADING_PERCENT = 20;
  private static final int FULL_PERCENT = 100;
  private final FreeAirAmps freeAir = new FreeAirAmps();

  /** The wire alone at its class. */
  double alone(WireForm form, double airC) {
    return freeAir.of(form.insulated(), form.maxC(), airC);
  }

  /**
   * What a wire stands.
   *
   * @param most what its maker allows; infinite when nothing says so
   */
  Standing at(WireForm form, double most, Around around) {
    double air = around.ambientC().value();
    double free = alone(form, air);
    boolean full = around.loading().equals(Around.Loading.TOO_MUCH);
    Cited factor = factor(around.neighbours(), full ? FULL_PERCENT : LOADING_PERCENT);
    Cited sure =
        factor.basis() == Basis.MEMORY
            ? factor(BundleFactorTable.lastRead() - 1, LOADING_PERCENT)
            : factor;
    Basis basis = form.basis().weaker(around.ambientC().basis());
    boolean byMaker = most < free * factor.value();
    boolean surelyByMaker = most < free * sure.value();
    Ampacity ampacity =
        new Ampacity(
            Math.min(free * factor.value(), most),
            byMaker ? Basis.GIVEN : basis.weaker(factor.basis()),
            Math.min(free * sure.value(), most),
            surelyByMaker ? Basis.GIVEN : basis.weaker(sure.basis()),
            free,
            around,
            byMaker);
    return new Standing(
        ampacity,
        amps -> FreeAir.celsius(form.insulated(), amps / factor.value(), air),
        alone(form.insulated(), air).atFactor(factor.value()));
  }

  /** What a wire alone gives off. */
  static Cooling alone(Insulated wire, double airC) {
    return new Alone(wire, airC);
  }

  /** A wire alone in air; those alike are equal. */
  private record Alone(Insulated wire, double airC) implements Cooling {
    @Override
    public double wattsPerM(double celsius) {
      return FreeAir.wattsPerM(wire, celsius, airC);
    }
  }

  private static Cited factor(int neighbours, int percent) {
    return neighbours <= 0 ? Cited.given(1) : BundleFactorTable.factor(neighbours + 1, percent);
  }
}
