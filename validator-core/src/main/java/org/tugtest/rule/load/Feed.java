package org.tugtest.rule.load;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.model.Element;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;

/**
 * What arrives at a load that draws, and what is lost on the way there and back. The reference is
 * the terminals of the source that feeds it; where that is a generator, those of the first other
 * source whose plus is joined to its own as the contacts stand. The ways are then those from that
 * source.
 *
 * @param load a load or coil that current flows through
 * @param volts at its ends, 0 or more
 * @param reference the source that drops are counted from
 * @param supplyDrop from the source's plus to the load
 * @param returnDrop from the load to the source's minus
 */
public record Feed(
    OperatingPoint state,
    Edge.OfElement load,
    double volts,
    Edge.OfElement reference,
    double supplyDrop,
    double returnDrop,
    Way supply,
    Way back) {

  /** The ways of the current of a load in a state. */
  private record Ways(Point high, Point low, Way supply, Way back) {
    static Ways of(Facts facts, OperatingPoint state, Edge.OfElement load) {
      boolean forward = state.amps(load) >= 0;
      Point high = forward ? load.a() : load.b();
      Point low = forward ? load.b() : load.a();
      Flows flows = Flows.in(facts, state);
      return new Ways(high, low, Way.supply(state, flows, high), Way.back(state, flows, low));
    }

    boolean shared() {
      return supply.source() == null || back.source() == null;
    }
  }

  /** The feed of a load in a state; empty when no current of a source flows through it. */
  public static Optional<Feed> of(Facts facts, OperatingPoint state, Edge.OfElement load) {
    return state.draws(load)
        ? of(facts, state, load, Ways.of(facts, state, load))
        : Optional.empty();
  }

  /**
   * The feed of a load in a state.
   *
   * @param feed it, when there is one and it is not shared
   * @param shared whether the current of the load passes another load or coil as well, before it or
   *     behind it: the two share the volts, and what one does not get is no loss
   */
  record Own(Optional<Feed> feed, boolean shared) {}

  /** The feed of a load in a state that it shares with no other. */
  static Own own(Facts facts, OperatingPoint state, Edge.OfElement load) {
    if (!state.draws(load)) {
      return new Own(Optional.empty(), false);
    }
    Ways ways = Ways.of(facts, state, load);
    return ways.shared()
        ? new Own(Optional.empty(), true)
        : new Own(of(facts, state, load, ways), false);
  }

  private static Optional<Feed> of(
      Facts facts, OperatingPoint state, Edge.OfElement load, Ways ways) {
    Point high = ways.high();
    Point low = ways.low();
    Way supply = ways.supply();
    Way back = ways.back();
    Edge.OfElement source = supply.source();
    if (source == null) {
      return Optional.empty();
    }
    Edge.OfElement reference = source;
    if (isGenerator(source)) {
      Abreast abreast = Abreast.of(facts, state);
      reference = abreast.steady(source).orElse(source);
      supply = reference.equals(source) ? supply : abreast.from(reference, supply, true);
      back = reference.equals(source) ? back : abreast.from(reference, back, false);
    }
    OptionalDouble plus = state.volts(reference.a());
    OptionalDouble minus = state.volts(reference.b());
    OptionalDouble in = state.volts(high);
    OptionalDouble out = state.volts(low);
    if (plus.isEmpty() || minus.isEmpty() || in.isEmpty() || out.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Feed(
            state,
            load,
            Math.abs(state.across(load)),
            reference,
            plus.getAsDouble() - in.getAsDouble(),
            out.getAsDouble() - minus.getAsDouble(),
            supply,
            back));
  }

  private static boolean isGenerator(Edge.OfElement edge) {
    return edge.element() instanceof Element.Source source && source.generator();
  }

  /** Volts lost there and back. */
  public double drop() {
    return supplyDrop + returnDrop;
  }

  /** The weakest figure on both ways. */
  public Basis basis() {
    return supply.basis(state).weaker(back.basis(state));
  }

  /** The resistance of both ways together, that of the source left out, in ohms. */
  public double wayOhms() {
    double ohms = 0;
    for (Way way : List.of(supply, back)) {
      for (Way.Step step : way.steps()) {
        ohms += step.amps() == 0 ? 0 : Math.abs(step.volts() / step.amps());
      }
    }
    return ohms;
  }

  /** Something on the way of which a part of the resistance is not known. */
  public Optional<Edge> unknown() {
    return supply.unknown(state).or(() -> back.unknown(state));
  }

  /** The wires on the way there and back. */
  public List<Wire> wires() {
    return Stream.concat(supply.steps().stream(), back.steps().stream())
        .map(Way.Step::edge)
        .filter(Edge.OfWire.class::isInstance)
        .map(edge -> ((Edge.OfWire) edge).wire())
        .toList();
  }
}
