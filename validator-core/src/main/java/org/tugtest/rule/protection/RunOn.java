package org.tugtest.rule.protection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Ref;
import org.tugtest.model.State;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.operate.AmbientTemperature;
import org.tugtest.operate.FedWay;
import org.tugtest.operate.Operating;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.solve.Grids;

/**
 * What keeps running when the isolators open while a generator turns: every state with a running
 * generator is solved again, entered from itself, with all isolator contacts open.
 */
final class RunOn {
  private static final String OFF = "off";
  private final Facts facts;
  private final AmbientTemperature air;
  private final Grids grids = new Grids();
  private final Map<Edge.OfElement, Still> found = new LinkedHashMap<>();
  private final List<String> unsettled = new ArrayList<>();

  /**
   * A load that still works.
   *
   * @param volts across it
   * @param state from which the isolators were opened
   * @param way that feeds it, from a source on, in one line; more than one where current joins
   */
  record Still(Edge.OfElement load, double volts, String state, Basis basis, List<String> way) {}

  RunOn(Facts facts) {
    this.facts = facts;
    this.air = new AmbientTemperature(facts.harness(), facts.wiring(), facts.network());
    for (State state : facts.harness().states().values()) {
      if (!state.running().isEmpty() && !state.brief()) {
        judge(state);
      }
    }
  }

  /** The loads that keep running, the worst state of each. */
  List<Still> found() {
    return List.copyOf(found.values());
  }

  /** The states from which no steady answer was found. */
  List<String> unsettled() {
    return List.copyOf(unsettled);
  }

  private void judge(State state) {
    String id = state.id() + ", isolator open";
    State opened =
        new State(id, opened(state), state.on(), running(state), state.volts(), state.id(), false);
    OperatingPoint turning = facts.operating().in(state.id()).orElse(null);
    if (turning == null || opened.set().equals(state.set())) {
      return;
    }
    OperatingPoint point =
        Operating.entered(
            facts.harness(),
            facts.network(),
            facts.operating().resistances(),
            air,
            opened,
            turning.solution().allPulled(),
            grids);
    if (!point.troubles().isEmpty()) {
      unsettled.add(state.id());
    }
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement load
          && load.element() instanceof Element.Load drawn
          && point.wanted(load)) {
        judge(load, drawn, point, state.id());
      }
    }
  }

  private void judge(Edge.OfElement load, Element.Load drawn, OperatingPoint point, String state) {
    double volts = Math.abs(point.across(load));
    Double given = drawn.minV();
    double least = given == null ? facts.harness().defaults().nominalV() / 2 : given;
    Still before = found.get(load);
    if (volts >= least && volts > 0 && (before == null || volts > before.volts())) {
      Basis basis = point.rests(load.a()).basis();
      found.put(
          load,
          new Still(
              load,
              volts,
              state,
              given == null ? basis.weaker(Basis.COMMON_PRACTICE) : basis,
              way(point, load)));
    }
  }

  /** The way by which current comes to a load, through whatever it comes. */
  private List<String> way(OperatingPoint point, Edge.OfElement load) {
    return FedWay.to(facts.network(), point, load).stream().map(Path::text).toList();
  }

  /** The generators that still turn: a converter without its input gives nothing. */
  private List<Ref> running(State state) {
    Set<Edge.OfElement> dead = facts.isolation().deadSources();
    return state.running().stream()
        .filter(
            ref ->
                dead.stream()
                    .noneMatch(
                        source ->
                            source.device().equals(ref.owner())
                                && (ref.member() == null || ref.member().equals(source.name()))))
        .toList();
  }

  /** What a state sets, with every isolator contact open. */
  private Map<Ref, String> opened(State state) {
    Map<Ref, String> set = new TreeMap<>(state.set());
    for (Edge.OfElement pole : facts.isolation().isolators()) {
      Ref own = new Ref(pole.device(), null, pole.name());
      Ref device = new Ref(pole.device(), null, null);
      Optional<String> open = openPosition(pole);
      if (((Element.Contact) pole.element()).coil() == null && open.isPresent()) {
        set.put(device, open.get());
        set.remove(own);
      } else {
        set.put(own, OFF);
      }
    }
    return set;
  }

  /** A position of an isolator in which none of its isolator contacts is closed. */
  private Optional<String> openPosition(Edge.OfElement pole) {
    Device device = facts.harness().devices().get(pole.device());
    DeviceType type = device == null ? null : facts.harness().typeOf(device);
    if (type == null) {
      return Optional.empty();
    }
    return type.positions().stream()
        .filter(
            position ->
                facts.isolation().isolators().stream()
                    .filter(other -> other.device().equals(pole.device()))
                    .map(other -> (Element.Contact) other.element())
                    .noneMatch(contact -> contact.closedIn().contains(position)))
        .findFirst();
  }
}
