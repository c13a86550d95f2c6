package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.operate.OperatingPoint;

/**
 * Which batteries stand beside a generator in one state: their plus is joined to its plus through
 * what conducts, no load, coil or source crossed. A converter's output beside the battery that it
 * draws from has none: the two share the return alone.
 */
final class Abreast {
  private final OperatingPoint state;
  private final Network network;
  private final Map<Point, Reach> joined = new ConcurrentHashMap<>();
  private final Map<Edge.OfElement, Optional<Edge.OfElement>> beside = new ConcurrentHashMap<>();

  /** What stands abreast in each state that was asked for. */
  private record InStates(Map<OperatingPoint, Abreast> known) {}

  private Abreast(OperatingPoint state, Network network) {
    this.state = state;
    this.network = network;
  }

  static Abreast of(Facts facts, OperatingPoint state) {
    return facts
        .once(InStates.class, none -> new InStates(new ConcurrentHashMap<>()))
        .known()
        .computeIfAbsent(state, point -> new Abreast(point, facts.network()));
  }

  /** The first source that is no generator and stands beside one. */
  Optional<Edge.OfElement> steady(Edge.OfElement generator) {
    return beside.computeIfAbsent(
        generator,
        it ->
            network.sources().stream()
                .filter(other -> other.element() instanceof Element.Source its && !its.generator())
                .filter(other -> state.volts(other.a()).isPresent())
                .filter(other -> joined(it.a()).reaches(other.a()))
                .findFirst());
  }

  /**
   * The way between a source and a load where that of most of the current leads elsewhere: along it
   * as long as the source lies on that side, then straight to the source.
   *
   * @param plus whether it is the way from plus
   */
  Way from(Edge.OfElement source, Way most, boolean plus) {
    Point terminal = plus ? source.a() : source.b();
    Reach reach = joined(terminal);
    List<Way.Step> steps = new ArrayList<>();
    Set<Edge> passed = new HashSet<>();
    Point at = most.start();
    for (Way.Step step : most.steps()) {
      Path rest = reach.path(at).orElse(null);
      if (rest == null || !rest.edges().contains(step.edge())) {
        break;
      }
      steps.add(step);
      passed.add(step.edge());
      at = step.edge().across(at);
    }
    Path rest = reach.path(at).orElse(null);
    if (rest == null || rest.edges().stream().anyMatch(passed::contains)) {
      return most;
    }
    for (int i = rest.edges().size() - 1; i >= 0; i--) {
      Edge edge = rest.edges().get(i);
      steps.add(new Way.Step(edge, Math.abs(state.across(edge)), Math.abs(state.amps(edge))));
    }
    return new Way(most.start(), steps, terminal, source);
  }

  private Reach joined(Point start) {
    return joined.computeIfAbsent(
        start, point -> Reach.from(network, List.of(point), (edge, from) -> passes(edge)));
  }

  private boolean passes(Edge edge) {
    if (!(edge instanceof Edge.OfElement inside)) {
      return true;
    }
    Element element = inside.element();
    return !(element instanceof Element.Load
            || element instanceof Element.Coil
            || element instanceof Element.Source)
        && state.conducts(edge);
  }
}
