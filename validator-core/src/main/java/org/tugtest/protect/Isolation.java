package org.tugtest.protect;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.network.ClosedTogether;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Positions;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;

/**
 * What is left of the feed and return side when every {@code isolator} contact is open: their
 * switches stand in positions in which none of them is closed. All other contacts of switches count
 * as closed as far as they can be closed together; a relay counts as pulled unless its coil is
 * dead, so that one that holds itself stays pulled. A source that is fed by a load of its device
 * gives nothing when that load is dead.
 */
public final class Isolation {
  /** So many relays in a row are followed as they let go; those behind count as pulled. */
  private static final int MOST_ROUNDS = 50;

  private final Network network;
  private final ClosedTogether together;
  private final Set<Edge> shorted;
  private final List<Edge.OfElement> isolators = new ArrayList<>();
  private final Map<String, List<Element.Contact>> isolatorsOf = new HashMap<>();
  private final Map<String, Set<String>> openPositions = new HashMap<>();
  private final Positions positions;
  private final Set<String> deadCoils = new TreeSet<>();
  private final Set<Edge.OfElement> deadSources = new LinkedHashSet<>();
  private Reach live;
  private Reach home;

  private Isolation(Harness harness, Network network, ClosedTogether together, Set<Edge> shorted) {
    this.network = network;
    this.together = together;
    this.shorted = shorted;
    for (Edge edge : network.edges()) {
      if (isIsolator(edge)) {
        isolators.add((Edge.OfElement) edge);
      }
    }
    for (Edge.OfElement isolator : isolators) {
      Element.Contact contact = (Element.Contact) isolator.element();
      isolatorsOf.computeIfAbsent(isolator.device(), none -> new ArrayList<>(1)).add(contact);
      Device device = harness.devices().get(isolator.device());
      DeviceType type = device == null ? null : harness.typeOf(device);
      if (contact.coil() == null && type != null) {
        openPositions
            .computeIfAbsent(isolator.device(), none -> new TreeSet<>(type.positions()))
            .removeAll(contact.closedIn());
      }
    }
    positions = together.open(Isolation::isIsolator);
    live = from(plus(), true);
    home = from(minus(), false);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      boolean coils = moreDeadCoils();
      if (!moreDeadSources() && !coils) {
        break;
      }
      live = from(plus(), true);
      home = from(minus(), false);
    }
  }

  private List<Point> plus() {
    return network.sources().stream()
        .filter(source -> !deadSources.contains(source))
        .map(Edge.OfElement::a)
        .toList();
  }

  /** The returns of dead sources are still joined to what returns. */
  private List<Point> minus() {
    return network.sources().stream().map(Edge.OfElement::b).toList();
  }

  private boolean moreDeadSources() {
    boolean more = false;
    for (Edge.OfElement source : network.sources()) {
      String input = source.element() instanceof Element.Source its ? its.fedBy() : null;
      if (input != null && !deadSources.contains(source)) {
        Edge.OfElement load = load(source.device(), input);
        more |= load != null && !isFed(load) && deadSources.add(source);
      }
    }
    return more;
  }

  private Edge.@Nullable OfElement load(String device, String name) {
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.device().equals(device)
          && inside.name().equals(name)) {
        return inside;
      }
    }
    return null;
  }

  private boolean isFed(Edge.OfElement user) {
    return (live.reaches(user.a()) && home.reaches(user.b()))
        || (live.reaches(user.b()) && home.reaches(user.a()));
  }

  private boolean moreDeadCoils() {
    boolean more = false;
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Coil) {
        more |= !isFed(inside) && deadCoils.add(edge.text());
      }
    }
    return more;
  }

  /**
   * The isolation of a harness.
   *
   * @param shorted what makes plus and minus meet; it is left out
   */
  static Isolation of(
      Harness harness, Network network, ClosedTogether together, Set<Edge> shorted) {
    return new Isolation(harness, network, together, shorted);
  }

  private static boolean isIsolator(Edge edge) {
    return edge instanceof Edge.OfElement inside
        && inside.element() instanceof Element.Contact contact
        && contact.isolator();
  }

  /** Whether a contact can be closed while all isolators are open. */
  private boolean mayBeClosed(Edge.OfElement inside, Element.Contact contact) {
    if (contact.isolator()) {
      return false;
    }
    if (contact.coil() != null) {
      if (!contact.restClosed() && deadCoils.contains(inside.device() + "." + contact.coil())) {
        return false;
      }
      return isolatorsOf.getOrDefault(inside.device(), List.of()).stream()
          .noneMatch(
              isolator ->
                  contact.coil().equals(isolator.coil())
                      && contact.restClosed() == isolator.restClosed());
    }
    Set<String> open = openPositions.get(inside.device());
    return open == null || open.isEmpty() || !Collections.disjoint(open, contact.closedIn());
  }

  private boolean conducts(Edge edge) {
    return !shorted.contains(edge)
        && !(edge instanceof Edge.OfElement inside
            && inside.element() instanceof Element.Contact contact
            && !mayBeClosed(inside, contact));
  }

  private Reach from(List<Point> starts, boolean forth) {
    return Reach.from(
        network,
        together,
        positions,
        starts,
        (edge, from) -> conducts(edge) && Sides.feeds(edge, forth ? from : edge.across(from)));
  }

  /** Every isolator contact, in the order of the devices. */
  public List<Edge.OfElement> isolators() {
    return Collections.unmodifiableList(isolators);
  }

  /** The sources that give nothing, since the load that feeds them is dead. */
  public Set<Edge.OfElement> deadSources() {
    return Collections.unmodifiableSet(deadSources);
  }

  /** What is still joined to the plus of a source. */
  public Reach live() {
    return live;
  }

  /** What is still joined to the minus of a source. */
  public Reach home() {
    return home;
  }

  /** What is still joined to the plus of one source. */
  public Reach live(Edge.OfElement source) {
    return from(List.of(source.a()), true);
  }

  /** What is still joined to the minus of one source. */
  public Reach home(Edge.OfElement source) {
    return from(List.of(source.b()), false);
  }

  /** What still returns to a point. */
  public Reach returning(Point point) {
    return from(List.of(point), false);
  }

  /**
   * The way on which a load is still live: from a plus to one of its pins while the other is still
   * joined to a minus; empty when it is dead.
   */
  public Optional<Path> liveWay(Edge.OfElement load) {
    Path toA = home.reaches(load.b()) ? live.path(load.a()).orElse(null) : null;
    Path toB = home.reaches(load.a()) ? live.path(load.b()).orElse(null) : null;
    boolean first = toA != null && (toB == null || toA.edges().size() <= toB.edges().size());
    return Optional.ofNullable(first ? toA : toB);
  }

  /**
   * The way to the far side of an isolator contact that is live though it is open; empty when at
   * least one of its sides is dead. The far side is that with the longer way from a source.
   */
  public Optional<Path> wayAround(Edge.OfElement isolator) {
    Path toA = live.path(isolator.a()).orElse(null);
    Path toB = live.path(isolator.b()).orElse(null);
    if (toA == null || toB == null) {
      return Optional.empty();
    }
    return Optional.of(toB.edges().size() >= toA.edges().size() ? toB : toA);
  }

  /** The way to the near side of an isolator contact of which both sides are live. */
  public Path wayTo(Edge.OfElement isolator) {
    Path around = wayAround(isolator).orElseThrow();
    Point near = around.end().equals(isolator.b()) ? isolator.a() : isolator.b();
    return Objects.requireNonNull(live.path(near).orElse(null));
  }

  /** The wires of the network that are still joined to a plus, in the order of the network. */
  public List<Edge.OfWire> liveWires() {
    List<Edge.OfWire> wires = new ArrayList<>();
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfWire wire && live.reaches(wire.a())) {
        wires.add(wire);
      }
    }
    return wires;
  }
}
