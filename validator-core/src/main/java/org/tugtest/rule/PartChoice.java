package org.tugtest.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.heat.Ampacity;
import org.tugtest.model.Housing;
import org.tugtest.model.Seal;
import org.tugtest.model.Splice;
import org.tugtest.model.SplicePart;
import org.tugtest.model.Terminal;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.network.Edge;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.protect.Exposure;
import org.tugtest.table.Cited;

/**
 * Which stocked wire part a wire could be made of instead: one that stands what flows and what the
 * fuses let through, in that air, and that the terminals, seals and splices at its ends take. So a
 * remedy does not send anybody from one finding to the next.
 */
public final class PartChoice {
  private static final double PER_METRE = 1000;

  private static final String TERMINAL = "terminal";

  /** Half a gram is no gram. */
  private static final double SOME_GRAMS = 0.5;

  private final Facts facts;
  private final Uses uses;

  /** The choice among the wire parts of a harness. */
  public PartChoice(Facts facts) {
    this.facts = facts;
    this.uses = facts.once(Uses.class, Uses::of);
  }

  /** How many wires are made of each part. */
  private record Uses(Map<String, Integer> of) {
    static Uses of(Facts facts) {
      Map<String, Integer> uses = new HashMap<>();
      for (Wire wire : facts.harness().wires().values()) {
        if (wire.part() != null) {
          uses.merge(wire.part(), 1, Integer::sum);
        }
      }
      return new Uses(uses);
    }
  }

  /** Of parts of one area that first of which most wires are made, not one for a special use. */
  private Comparator<WirePart> usual() {
    return Comparator.comparingInt((WirePart part) -> -uses.of().getOrDefault(part.id(), 0))
        .thenComparing(WirePart::id);
  }

  /** The stocked parts that are larger than a wire is now, the smallest first. */
  public List<WirePart> larger(Wire wire) {
    double now = facts.fitting().sizes().areaMm2(wire).map(Cited::value).orElse(0.0);
    return facts.harness().parts().wires().values().stream()
        .filter(WirePart::stocked)
        .filter(part -> areaMm2(wire, part) > now)
        .sorted(
            Comparator.comparingDouble((WirePart part) -> areaMm2(wire, part))
                .thenComparing(usual()))
        .toList();
  }

  /** The stocked parts that are smaller than a wire is now, the largest first. */
  public List<WirePart> smaller(Wire wire) {
    double now = facts.fitting().sizes().areaMm2(wire).map(Cited::value).orElse(0.0);
    return facts.harness().parts().wires().values().stream()
        .filter(WirePart::stocked)
        .filter(part -> areaMm2(wire, part) > 0 && areaMm2(wire, part) < now)
        .sorted(
            Comparator.comparingDouble((WirePart part) -> -areaMm2(wire, part))
                .thenComparing(usual()))
        .toList();
  }

  /** The conductor area of a part in mm2; 0 when it gives none. */
  public double areaMm2(Wire wire, WirePart part) {
    return facts.fitting().sizes().areaMm2(wire.ofPart(part.id())).map(Cited::value).orElse(0.0);
  }

  /** Whether a part would stand what flows and what the fuses let through a wire. */
  public boolean stands(Edge.OfWire edge, WirePart part) {
    Wire wire = edge.wire();
    Ampacity ampacity = facts.ampacity().inPlaceOf(wire, part).orElse(null);
    if (ampacity == null) {
      return false;
    }
    boolean carries =
        LastingAmps.of(facts, edge).map(flow -> flow.amps() <= ampacity.amps()).orElse(true);
    if (!carries) {
      return false;
    }
    return bounded(facts.protection().exposure(wire.id()), ampacity)
        && bounded(ReturnFault.of(facts, wire.id()).map(ReturnFault::exposure), ampacity);
  }

  /** A wire that nothing bounds has a finding of its own, which no gauge puts right. */
  private static boolean bounded(Optional<Exposure> exposure, Ampacity ampacity) {
    return exposure.isEmpty()
        || exposure.get().unbounded()
        || exposure.get().leastA() <= ampacity.amps();
  }

  /**
   * What at the ends of a wire does not take a part, in words; empty when all of it does, as far as
   * its figures are known.
   */
  public String misfit(Wire wire, WirePart part) {
    List<String> misfits = new ArrayList<>();
    for (boolean from : new boolean[] {true, false}) {
      WireEnd end = new WireEnd(wire, from);
      Point at = facts.wiring().pointOf(end.ref()).orElse(null);
      if (at != null) {
        List<WireEnd> ends = new ArrayList<>();
        for (WireEnd there : facts.wiring().endsAt(at)) {
          ends.add(
              there.wire().id().equals(wire.id())
                  ? new WireEnd(wire.ofPart(part.id()), there.from())
                  : there);
        }
        String what = misfit(at, end, ends);
        if (!what.isEmpty()) {
          boolean lacks = what.equals(TERMINAL) && noneTakes(at, ends);
          misfits.add(
              lacks
                  ? "a terminal at " + at.text() + " that none of the parts is"
                  : "another " + what + " at " + at.text());
        }
      }
    }
    return String.join(" and ", misfits);
  }

  /** Whether the parts have terminals for a cavity, and none of them takes these wires. */
  private boolean noneTakes(Point at, List<WireEnd> ends) {
    Housing housing =
        at.kind() == Point.Kind.CAVITY
            ? facts.wiring().mating().housingOf(at.owner()).orElse(null)
            : null;
    if (housing == null || housing.familyOf(at.name()) == null) {
      return false;
    }
    List<Terminal> fitting =
        facts.harness().parts().terminals().values().stream()
            .filter(terminal -> terminal.family() != null)
            .filter(terminal -> Fitting.fitsCavity(terminal, housing, at.name()))
            .toList();
    return !fitting.isEmpty() && fitting.stream().noneMatch(terminal -> takes(terminal, ends));
  }

  private String misfit(Point at, WireEnd end, List<WireEnd> ends) {
    if (at.kind() == Point.Kind.SPLICE) {
      Splice splice = facts.harness().splices().get(at.owner());
      SplicePart part =
          splice == null || splice.part() == null
              ? null
              : facts.harness().parts().splices().get(splice.part());
      Double sum = facts.fitting().areaSum(ends).map(Cited::value).orElse(null);
      boolean over =
          part != null && part.areaMaxMm2() != null && sum != null && sum > part.areaMaxMm2();
      return over ? "splice" : "";
    }
    if (at.kind() == Point.Kind.PIN) {
      Terminal terminal =
          end.terminal() == null ? null : facts.harness().parts().terminals().get(end.terminal());
      return terminal == null || takes(terminal, ends) ? "" : TERMINAL;
    }
    Housing housing = facts.wiring().mating().housingOf(at.owner()).orElse(null);
    List<Terminal> terminals =
        named(facts.fitting().terminal(at), id -> facts.harness().parts().terminals().get(id));
    boolean held =
        terminals.stream()
            .anyMatch(
                terminal ->
                    (housing == null || Fitting.fitsCavity(terminal, housing, at.name()))
                        && takes(terminal, ends));
    if (!terminals.isEmpty() && !held) {
      return TERMINAL;
    }
    List<Seal> seals =
        named(facts.fitting().seal(at), id -> facts.harness().parts().seals().get(id));
    boolean sealed =
        seals.stream()
            .anyMatch(
                seal ->
                    facts
                        .fitting()
                        .insulationProblem(seal.insulationMinMm(), seal.insulationMaxMm(), ends)
                        .isEmpty());
    return seals.isEmpty() || sealed ? "" : "seal";
  }

  private boolean takes(Terminal terminal, List<WireEnd> ends) {
    Fitting fitting = facts.fitting();
    return fitting.areaProblem(terminal, ends).isEmpty()
        && fitting
            .insulationProblem(terminal.insulationMinMm(), terminal.insulationMaxMm(), ends)
            .isEmpty();
  }

  private static <T> List<T> named(Fitting.Choice<T> choice, Function<String, @Nullable T> parts) {
    List<T> all = new ArrayList<>();
    for (String id : choice.named()) {
      T part = parts.apply(id);
      if (part != null) {
        all.add(part);
      }
    }
    return all;
  }

  /** What a part costs in mass over the wire as it is: {@code 12 g more}; empty when not known. */
  public String grams(Wire wire, WirePart part) {
    OptionalDouble known = gramsMore(wire, part);
    if (known.isEmpty()) {
      return "";
    }
    double more = known.getAsDouble();
    return Math.abs(more) < SOME_GRAMS
        ? "no gram more"
        : String.format(Locale.ROOT, "%.0f g %s", Math.abs(more), more > 0 ? "more" : "less");
  }

  /** What a wire gains in mass when it is made of a part, in grams; empty when not known. */
  public OptionalDouble gramsMore(Wire wire, WirePart part) {
    WirePart now = wire.part() == null ? null : facts.harness().parts().wires().get(wire.part());
    Double before = now == null ? null : now.gramsPerM();
    Double after = part.gramsPerM();
    Double mm = facts.lengths().of(wire).map(length -> length.mm()).orElse(null);
    return before == null || after == null || mm == null
        ? OptionalDouble.empty()
        : OptionalDouble.of((after - before) * mm / PER_METRE);
  }

  /** What is to be said behind a part in a remedy: grams, and what at the ends changes with it. */
  public String costs(Wire wire, WirePart part) {
    String grams = grams(wire, part);
    String misfit = misfit(wire, part);
    return (grams.isEmpty() ? "" : ", " + grams) + (misfit.isEmpty() ? "" : ", with " + misfit);
  }
}
