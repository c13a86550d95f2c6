package org.tugtest.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;

/**
 * The lasting currents that the wires of a harness stand: at which the wire, its neighbours at
 * their solved currents in the state that leaves least, brings the hottest piece of its way to the
 * lowest class there; see {@link ShrunkBundle}. Where not all currents beside it are known, no more
 * than the published factor for that many neighbours used to 20 % allows; see {@link ChartAmps}.
 */
public final class Ampacities {
  private final WireForms forms;
  private final Around.Wires surroundings;
  private final @Nullable Beside beside;
  private final ChartAmps chart = new ChartAmps();
  private final Map<String, Optional<Standing>> known = new ConcurrentHashMap<>();

  /** The ampacities of wires of these forms, by the chart alone. */
  public Ampacities(WireForms forms, Around.Wires surroundings) {
    this(forms, surroundings, null);
  }

  /**
   * The ampacities of wires of these forms in these surroundings.
   *
   * @param beside what flows beside them; null: not known
   */
  public Ampacities(WireForms forms, Around.Wires surroundings, @Nullable Beside beside) {
    this.forms = forms;
    this.surroundings = surroundings;
    this.beside = beside;
  }

  /** What a wire stands; empty when its size is not known. */
  public Optional<Ampacity> of(Wire wire) {
    return standing(wire).map(Standing::ampacity);
  }

  /** What a wire part would stand in the place of a wire; empty when its size is not known. */
  public Optional<Ampacity> inPlaceOf(Wire wire, WirePart part) {
    return standing(wire, part).map(Standing::ampacity);
  }

  /**
   * The temperature that a wire's conductor comes to rest at under a lasting current, in the piece
   * of its way where it stands least; empty when it does not under {@link FreeAir#HOTTEST_C}, or
   * its size is not known.
   */
  public OptionalDouble steadyCelsius(Wire wire, double amps) {
    return standing(wire).map(at -> at.celsius(amps)).orElse(OptionalDouble.empty());
  }

  /** The same for a wire part in the place of a wire. */
  public OptionalDouble steadyCelsius(Wire wire, WirePart part, double amps) {
    return standing(wire, part).map(at -> at.celsius(amps)).orElse(OptionalDouble.empty());
  }

  /** What cools a wire in the piece of its way where it stands least; empty without its size. */
  public Optional<Cooling> cooling(Wire wire) {
    return standing(wire).map(Standing::cooling);
  }

  /** The forms of the wires. */
  public WireForms forms() {
    return forms;
  }

  private Optional<Standing> standing(Wire wire) {
    return known.computeIfAbsent(
        wire.id(),
        id -> {
          WirePart part = forms.part(wire);
          return forms.of(wire).map(form -> stands(wire, form, part, false));
        });
  }

  private Optional<Standing> standing(Wire wire, WirePart part) {
    return WireForms.of(part).map(form -> stands(wire, form, part, true));
  }

  private Standing stands(Wire wire, WireForm form, @Nullable WirePart part, boolean inPlace) {
    Double maker = part == null ? null : part.maxA();
    double most = maker == null ? Double.POSITIVE_INFINITY : maker;
    List<Standing> pieces = new ArrayList<>();
    Beside here = beside;
    List<LoomSections.Stretch> stretches = here == null ? List.of() : here.sections().of(wire.id());
    if (here == null || stretches.isEmpty() || unrouted(here, stretches)) {
      surroundings.of(wire).forEach(around -> pieces.add(chart.at(form, most, around)));
    } else {
      new LoadedAmps(here, chart, form, most, inPlace ? wire.id() : "").add(stretches, pieces);
    }
    return least(pieces);
  }

  private static boolean unrouted(Beside beside, List<LoomSections.Stretch> stretches) {
    String where = beside.sections().at(stretches.get(0)).where();
    return where.equals(LoomSections.ALL_ITS_WAY);
  }

  /** The piece in which it stands least, with the least of all that is sure. */
  private static Standing least(List<Standing> pieces) {
    Standing least = null;
    double sure = Double.POSITIVE_INFINITY;
    Basis sureBasis = Basis.GIVEN;
    for (Standing piece : pieces) {
      Ampacity its = piece.ampacity();
      if (least == null || its.amps() < least.ampacity().amps()) {
        least = piece;
      }
      if (its.sureAmps() < sure) {
        sure = its.sureAmps();
        sureBasis = its.sureBasis();
      }
    }
    if (least == null) {
      throw new IllegalArgumentException("a wire without surroundings");
    }
    return least.withSure(sure, sureBasis);
  }
}
