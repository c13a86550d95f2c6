package org.tugtest.heat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.table.BundleFactorTable;
import org.tugtest.table.Cited;

/**
 * The lasting currents that the wires of a harness stand: the heat balance of the wire alone in
 * still air, times the published factor for its number of neighbours, in the worst piece of its
 * way. The bundle is taken as used to {@value #LOADING_PERCENT} % of its capacity, as FAA AC
 * 43.13-1B table 11-9 takes it.
 */
public final class Ampacities {
  private static final int LOADING_PERCENT = 20;
  private final WireForms forms;
  private final Around.Wires surroundings;
  private final Map<Alone, Double> known = new ConcurrentHashMap<>();

  private record Alone(WireForm form, double ambientC) {}

  /** The ampacities of wires of these forms in these surroundings. */
  public Ampacities(WireForms forms, Around.Wires surroundings) {
    this.forms = forms;
    this.surroundings = surroundings;
  }

  /** What a wire stands; empty when its size is not known. */
  public Optional<Ampacity> of(Wire wire) {
    WirePart part = forms.part(wire);
    return forms
        .of(wire)
        .map(form -> worst(form, part == null ? null : part.maxA(), surroundings.of(wire)));
  }

  /** What a wire part would stand in the place of a wire; empty when its size is not known. */
  public Optional<Ampacity> inPlaceOf(Wire wire, WirePart part) {
    return WireForms.of(part).map(form -> worst(form, part.maxA(), surroundings.of(wire)));
  }

  /**
   * The temperature that a wire's conductor comes to rest at under a lasting current, in the
   * hottest piece of its way; empty when it does not under {@link FreeAir#HOTTEST_C}, or its size
   * is not known.
   */
  public OptionalDouble steadyCelsius(Wire wire, double amps) {
    WireForm form = forms.of(wire).orElse(null);
    return form == null ? OptionalDouble.empty() : hottest(form, amps, surroundings.of(wire));
  }

  /** The same for a wire part in the place of a wire. */
  public OptionalDouble steadyCelsius(Wire wire, WirePart part, double amps) {
    WireForm form = WireForms.of(part).orElse(null);
    return form == null ? OptionalDouble.empty() : hottest(form, amps, surroundings.of(wire));
  }

  /** What cools a wire in the piece of its way where it stands least; empty without its size. */
  public Optional<Cooling> cooling(Wire wire) {
    WireForm form = forms.of(wire).orElse(null);
    if (form == null) {
      return Optional.empty();
    }
    Around worst = worst(form, null, surroundings.of(wire)).around();
    double airC = worst.ambientC().value();
    return Optional.of(new InAir(form.insulated(), airC, factor(worst).value()));
  }

  /** A wire in still air, with a share of the current that it stands alone; equal for equals. */
  private record InAir(Insulated wire, double airC, double currentFactor) implements Cooling {
    @Override
    public double wattsPerM(double celsius) {
      return FreeAir.wattsPerM(wire, celsius, airC) * currentFactor * currentFactor;
    }
  }

  /** The forms of the wires. */
  public WireForms forms() {
    return forms;
  }

  private Ampacity worst(WireForm form, @Nullable Double makerA, List<Around> pieces) {
    Ampacity least = null;
    for (Around around : pieces) {
      Ampacity here = at(form, makerA, around);
      if (least == null || here.amps() < least.amps()) {
        least = here;
      }
    }
    if (least == null) {
      throw new IllegalArgumentException("a wire without surroundings");
    }
    return least;
  }

  private Ampacity at(WireForm form, @Nullable Double makerA, Around around) {
    double free =
        known.computeIfAbsent(
            new Alone(form, around.ambientC().value()),
            alone -> FreeAir.amps(alone.form().insulated(), alone.form().maxC(), alone.ambientC()));
    Cited factor = factor(around);
    Cited sure =
        factor.basis() == Basis.MEMORY
            ? BundleFactorTable.factor(BundleFactorTable.lastRead(), LOADING_PERCENT)
            : factor;
    double most = makerA == null ? Double.POSITIVE_INFINITY : makerA;
    Basis basis = form.basis().weaker(around.ambientC().basis());
    return new Ampacity(
        Math.min(free * factor.value(), most),
        most < free * factor.value() ? Basis.GIVEN : basis.weaker(factor.basis()),
        Math.min(free * sure.value(), most),
        most < free * sure.value() ? Basis.GIVEN : basis.weaker(sure.basis()),
        free,
        around,
        most < free * factor.value());
  }

  private static Cited factor(Around around) {
    return around.neighbours() <= 0
        ? Cited.given(1)
        : BundleFactorTable.factor(around.neighbours() + 1, LOADING_PERCENT);
  }

  private static OptionalDouble hottest(WireForm form, double amps, List<Around> pieces) {
    double hottest = Double.NEGATIVE_INFINITY;
    for (Around around : pieces) {
      double share = amps / factor(around).value();
      OptionalDouble here = FreeAir.celsius(form.insulated(), share, around.ambientC().value());
      if (here.isEmpty()) {
        return here;
      }
      hottest = Math.max(hottest, here.getAsDouble());
    }
    return OptionalDouble.of(hottest);
  }
}
