package org.tugtest.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How warm the wires of a harness are for good under certain currents. */
public final class LoomWarmth {
  private static final double MICRO = 1e6;

  private final LoomSections sections;
  private final double[][] amps;
  private final BundleHeat[] heats;
  private final double[] risen;

  /**
   * How warm.
   *
   * @param before an earlier answer, which has the same arrays of currents where nothing changed
   */
  LoomWarmth(
      LoomSections sections, double[][] amps, BundleHeat[] heats, @Nullable LoomWarmth before) {
    this.sections = sections;
    this.amps = amps;
    this.heats = heats;
    this.risen = new double[heats.length];
    for (int i = 0; i < risen.length; i++) {
      risen[i] =
          before != null && before.amps[i] == amps[i]
              ? before.risen[i]
              : risen(heats[i], amps[i], sections.all().get(i).ambientC().value());
    }
  }

  /** By how much a bundle is hotter than the hottest of its wires, by its greatest heat. */
  private static double risen(BundleHeat heat, double[] amps, double airC) {
    double hottest = airC;
    for (int k = 0; k < amps.length; k++) {
      hottest = amps[k] == 0 ? hottest : Math.max(hottest, heat.celsius().get(k));
    }
    return heat.steady() ? Math.max(0, heat.hottestC() - hottest) : 0;
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

  /** What flows through one conductor of a section, to a tenth of a milliampere. */
  public double amps(LoomSections.Stretch stretch) {
    return amps[stretch.section()][stretch.place()];
  }

  /** The heat of a section as if no covering were round it. */
  BundleHeat bare(int section) {
    Section its = sections.all().get(section);
    return its.enclosed()
        ? its.with(amps[section], Envelope.BARE, new FreeAirAmps()).heat()
        : heats[section];
  }

  /** How many wires of a section count as hot; over 20 the published chart ends. */
  public double counted(int section) {
    Section its = sections.all().get(section);
    return its.with(amps[section], its.envelope(), new FreeAirAmps()).counted();
  }

  /** What each conductor of a section makes of the heat in it, 0 to 1, in their order. */
  public List<Double> shares(int section) {
    Section its = sections.all().get(section);
    List<Double> watts = new ArrayList<>();
    double sum = 0;
    for (int i = 0; i < amps[section].length; i++) {
      Insulated wire = its.conductors().get(i).form().insulated();
      double celsius = heats[section].celsius().get(i);
      double makes = amps[section][i] * amps[section][i] * wire.ohmPerM(celsius);
      watts.add(makes);
      sum += makes;
    }
    double all = sum;
    return watts.stream().map(one -> all > 0 ? one / all : 0).toList();
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
    return judged(heats[stretch.section()], stretch, risen[stretch.section()]);
  }

  /** The same as if no covering were round it. */
  public double judgedBareC(LoomSections.Stretch stretch) {
    int section = stretch.section();
    BundleHeat heat = bare(section);
    double air = sections.all().get(section).ambientC().value();
    return judged(heat, stretch, risen(heat, amps[section], air));
  }

  private static double judged(BundleHeat heat, LoomSections.Stretch stretch, double risen) {
    double own = heat.celsius().get(stretch.place());
    return heat.steady() ? Math.min(heat.hottestC(), own + risen) : own;
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
   * which rises straight with it. To a millionth of a kelvin, so that the order of its pieces does
   * not matter. Empty when its size is not known.
   */
  public Optional<Double> mean(String wire) {
    return mean(sections.of(wire));
  }

  /** Whether nothing flows otherwise on any of these stretches than in another answer. */
  public boolean same(List<LoomSections.Stretch> stretches, LoomWarmth other) {
    for (LoomSections.Stretch stretch : stretches) {
      if (amps[stretch.section()] != other.amps[stretch.section()]) {
        return false;
      }
    }
    return true;
  }

  /** The mean temperature of a wire that runs by these stretches, by length; empty without any. */
  public Optional<Double> mean(List<LoomSections.Stretch> stretches) {
    double sum = 0;
    double mm = 0;
    for (LoomSections.Stretch stretch : stretches) {
      sum += stretch.mm() * heats[stretch.section()].celsius().get(stretch.place());
      mm += stretch.mm();
    }
    return mm > 0 ? Optional.of(Math.rint(sum / mm * MICRO) / MICRO) : Optional.empty();
  }
}
