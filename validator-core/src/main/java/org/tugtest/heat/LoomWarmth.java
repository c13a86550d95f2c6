package org.tugtest.heat;

import java.util.List;
import java.util.Optional;

/** How warm the wires of a harness are for good under certain currents. */
public final class LoomWarmth {
  private final LoomSections sections;
  private final double[][] amps;
  private final BundleHeat[] heats;
  private final double[] risen;

  LoomWarmth(LoomSections sections, double[][] amps, BundleHeat[] heats) {
    this.sections = sections;
    this.amps = amps;
    this.heats = heats;
    this.risen = new double[heats.length];
    for (int i = 0; i < risen.length; i++) {
      double hottest = sections.all().get(i).ambientC().value();
      for (int k = 0; k < amps[i].length; k++) {
        hottest = amps[i][k] == 0 ? hottest : Math.max(hottest, heats[i].celsius().get(k));
      }
      risen[i] = heats[i].steady() ? Math.max(0, heats[i].hottestC() - hottest) : 0;
    }
  }

  /**
   * The hottest piece of a wire.
   *
   * @param celsius that is held against its class; {@link FreeAir#HOTTEST_C} at most
   * @param steady whether there is a steady temperature at all
   */
  public record Hottest(LoomSections.Stretch stretch, double celsius, boolean steady) {}

  /** The sections. */
  public LoomSections sections() {
    return sections;
  }

  /** What flows in a section, in the order of its conductors; to a tenth of a milliampere. */
  double[] amps(int section) {
    return amps[section];
  }

  /** The heat of a section. */
  public BundleHeat of(int section) {
    return heats[section];
  }

  /**
   * The temperature that a conductor is held against its class with: by its place in the bundle,
   * and as much more as the bundle is hotter than the hottest of them by its greatest heat; one
   * that carries nothing is no hotter than the hottest that does.
   */
  public double judgedC(LoomSections.Stretch stretch) {
    BundleHeat heat = heats[stretch.section()];
    double own = heat.celsius().get(stretch.place());
    return heat.steady() ? Math.min(heat.hottestC(), own + risen[stretch.section()]) : own;
  }

  /** The hottest piece of a wire; the first of equal ones; empty when its size is not known. */
  public Optional<Hottest> hottest(String wire) {
    Hottest most = null;
    for (LoomSections.Stretch stretch : sections.of(wire)) {
      double here = judgedC(stretch);
      boolean steady = heats[stretch.section()].steady() || here < FreeAir.HOTTEST_C;
      if (most == null || here > most.celsius()) {
        most = new Hottest(stretch, here, steady);
      }
    }
    return Optional.ofNullable(most);
  }

  /**
   * The mean temperature of a wire along its way, by length: the one that gives its resistance,
   * which rises straight with it. Empty when its size is not known.
   */
  public Optional<Double> mean(String wire) {
    List<LoomSections.Stretch> stretches = sections.of(wire);
    double sum = 0;
    double mm = 0;
    for (LoomSections.Stretch stretch : stretches) {
      sum += stretch.mm() * heats[stretch.section()].celsius().get(stretch.place());
      mm += stretch.mm();
    }
    return mm > 0 ? Optional.of(sum / mm) : Optional.empty();
  }
}
