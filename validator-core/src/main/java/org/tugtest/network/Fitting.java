package org.tugtest.network;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Connector;
import org.tugtest.model.Harness;
import org.tugtest.model.Housing;
import org.tugtest.model.Seal;
import org.tugtest.model.Terminal;
import org.tugtest.table.Cited;

/**
 * Which terminal and seal sit in a cavity: the one written for the cavity, else the first of the
 * connector's list, else of the housing's, that fits cavity and wires; where none fits, the first
 * of the list, so that a rule can say why not.
 */
public final class Fitting {
  private final Harness harness;
  private final Wiring wiring;
  private final WireSizes sizes;
  private final AtomicReferenceArray<Choice<Terminal>> terminals;

  /** The fitting of this harness. */
  public Fitting(Harness harness, Wiring wiring) {
    this.harness = harness;
    this.wiring = wiring;
    this.sizes = new WireSizes(harness);
    this.terminals = new AtomicReferenceArray<>(wiring.points().all().size());
  }

  /** How many points the harness has. */
  int points() {
    return wiring.points().all().size();
  }

  /** The sizes of the wires. */
  public WireSizes sizes() {
    return sizes;
  }

  /**
   * A choice among the parts that a cavity may have.
   *
   * @param part what is taken; null when no known part is named
   * @param fits whether it fits as far as its figures are known
   * @param named ids that are named for the cavity, in order of choice, known or not
   */
  public record Choice<T>(@Nullable T part, boolean fits, List<String> named) {}

  /** The terminal in a cavity for the wires that end there. */
  public Choice<Terminal> terminal(Point cavity) {
    int number = wiring.points().number(cavity);
    if (number < 0) {
      return chooseTerminal(cavity);
    }
    Choice<Terminal> known = terminals.get(number);
    if (known == null) {
      known = chooseTerminal(cavity);
      terminals.set(number, known);
    }
    return known;
  }

  private Choice<Terminal> chooseTerminal(Point cavity) {
    Connector connector = harness.connectors().get(cavity.owner());
    Housing housing = wiring.mating().housingOf(cavity.owner()).orElse(null);
    Connector.Cavity own = own(connector, cavity);
    List<String> named =
        named(
            own == null ? null : own.terminal(),
            connector == null ? List.of() : connector.terminals(),
            housing == null ? List.of() : housing.terminals());
    List<WireEnd> ends = wiring.endsAt(cavity);
    return choose(
        named,
        harness.parts().terminals(),
        part ->
            (housing == null || fitsCavity(part, housing, cavity.name()))
                && ends.size() <= Math.max(1, part.maxWires())
                && areaProblem(part, ends).isEmpty()
                && insulationProblem(part.insulationMinMm(), part.insulationMaxMm(), ends)
                    .isEmpty());
  }

  /**
   * Whether more wires end in a cavity than any terminal named for it takes; one, where none is
   * named. Nothing can then be said of the terminal or the seal of each.
   */
  public boolean overfilled(Point cavity) {
    int takes =
        terminal(cavity).named().stream()
            .map(harness.parts().terminals()::get)
            .filter(Objects::nonNull)
            .mapToInt(Terminal::maxWires)
            .max()
            .orElse(1);
    return wiring.endsAt(cavity).size() > Math.max(1, takes);
  }

  /** The seal in a cavity for the wires that end there; nothing named: no seal. */
  public Choice<Seal> seal(Point cavity) {
    Connector connector = harness.connectors().get(cavity.owner());
    Housing housing = wiring.mating().housingOf(cavity.owner()).orElse(null);
    Connector.Cavity own = own(connector, cavity);
    List<String> named =
        named(
            own == null ? null : own.seal(),
            connector == null ? List.of() : connector.seals(),
            housing == null ? List.of() : housing.seals());
    String family = housing == null ? null : housing.familyOf(cavity.name());
    List<WireEnd> ends = wiring.endsAt(cavity);
    return choose(
        named,
        harness.parts().seals(),
        part ->
            sameOrUnknown(part.family(), family)
                && insulationProblem(part.insulationMinMm(), part.insulationMaxMm(), ends)
                    .isEmpty());
  }

  /** Whether family and side of a terminal are those of a cavity, as far as they are given. */
  public static boolean fitsCavity(Terminal terminal, Housing housing, String cavity) {
    return sameOrUnknown(terminal.family(), housing.familyOf(cavity))
        && sameOrUnknown(terminal.side(), housing.side());
  }

  /**
   * A size that a part does not take.
   *
   * @param actual the size that is out of range
   * @param limit the bound it is past
   * @param over past the greatest, else under the least
   */
  public record Misfit(Cited actual, double limit, boolean over) {}

  /** The sum of the areas at these ends, in mm2; empty when one gives none. */
  public Optional<Cited> areaSum(List<WireEnd> ends) {
    double sum = 0;
    Basis basis = Basis.GIVEN;
    String source = "given";
    for (WireEnd end : ends) {
      Optional<Cited> area = sizes.areaMm2(end.wire());
      if (area.isEmpty()) {
        return Optional.empty();
      }
      sum += area.get().value();
      if (area.get().basis() != Basis.GIVEN) {
        basis = basis.weaker(area.get().basis());
        source = area.get().source();
      }
    }
    return Optional.of(new Cited(sum, source, basis));
  }

  /**
   * Why the conductors at these ends are not in a terminal's range, if they are known not to be.
   */
  public Optional<Misfit> areaProblem(Terminal terminal, List<WireEnd> ends) {
    return ends.isEmpty()
        ? Optional.empty()
        : areaSum(ends).flatMap(a -> misfit(a, terminal.areaMinMm2(), terminal.areaMaxMm2()));
  }

  /** Why the insulation of one of these wires is not in a range, if it is known not to be. */
  public Optional<Misfit> insulationProblem(
      @Nullable Double leastMm, @Nullable Double greatestMm, List<WireEnd> ends) {
    for (WireEnd end : ends) {
      Optional<Misfit> problem =
          sizes.outerMm(end.wire()).flatMap(size -> misfit(size, leastMm, greatestMm));
      if (problem.isPresent()) {
        return problem;
      }
    }
    return Optional.empty();
  }

  private static Optional<Misfit> misfit(
      Cited size, @Nullable Double least, @Nullable Double greatest) {
    if (least != null && size.value() < least) {
      return Optional.of(new Misfit(size, least, false));
    }
    return greatest != null && size.value() > greatest
        ? Optional.of(new Misfit(size, greatest, true))
        : Optional.empty();
  }

  private static Connector.@Nullable Cavity own(@Nullable Connector connector, Point cavity) {
    return connector == null ? null : connector.cavities().get(cavity.name());
  }

  private static List<String> named(
      @Nullable String own, List<String> connector, List<String> housing) {
    if (own != null) {
      return List.of(own);
    }
    return connector.isEmpty() ? housing : connector;
  }

  private static <T> Choice<T> choose(List<String> named, Map<String, T> parts, Predicate<T> fits) {
    T first = null;
    for (String id : named) {
      T part = parts.get(id);
      if (part != null && fits.test(part)) {
        return new Choice<>(part, true, named);
      }
      first = first == null ? part : first;
    }
    return new Choice<>(first, false, named);
  }

  private static boolean sameOrUnknown(@Nullable Object left, @Nullable Object right) {
    return left == null || right == null || left.equals(right);
  }
}
