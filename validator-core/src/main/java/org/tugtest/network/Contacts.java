package org.tugtest.network;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Connector;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Harness;
import org.tugtest.text.NaturalOrder;

/**
 * Which contact meets which when everything is plugged together. Cavities meet by name, except
 * those that {@code pinMap} of either half names; a cavity without a counterpart meets nothing. Two
 * cavities of a port may lead to one pin of the device.
 */
final class Contacts {
  private final Harness harness;
  private final Mating mating;
  private final Function<String, List<String>> cavitiesOf;
  private final Map<Point, Point> met = new HashMap<>();

  /**
   * One side of a plug.
   *
   * @param names its cavities, as far as they are known
   * @param open whether there may be others
   */
  private record Half(List<String> names, boolean open, Function<String, Point> at) {}

  /**
   * All contacts of the connectors {@code ids}.
   *
   * @param cavitiesOf the cavities of a connector that are listed or named
   */
  Contacts(
      Harness harness,
      Mating mating,
      Iterable<String> ids,
      Function<String, List<String>> cavitiesOf) {
    this.harness = harness;
    this.mating = mating;
    this.cavitiesOf = cavitiesOf;
    for (String connector : ids) {
      mating.mateOf(connector).ifPresent(mate -> meet(connector, mate));
    }
  }

  /** The contact that meets this one. */
  Optional<Point> meets(Point contact) {
    return Optional.ofNullable(met.get(contact));
  }

  /** For each of these points, in their order, the one of them that meets it, or null. */
  @Nullable Point[] among(Points points) {
    @Nullable Point[] among = new Point[points.all().size()];
    for (int i = 0; i < among.length; i++) {
      Point other = met.get(points.all().get(i));
      among[i] = other == null ? null : points.own(other);
    }
    return among;
  }

  private void meet(String connector, Mate mate) {
    if (mate instanceof Mate.OfPort port) {
      mating
          .portAt(port)
          .ifPresent(half -> meet(half(connector), half(port, half), pinMap(connector), Map.of()));
    } else if (mate instanceof Mate.OfConnector other
        && NaturalOrder.NATURAL.compare(connector, other.connector()) < 0) {
      meet(half(connector), half(other.connector()), pinMap(connector), pinMap(other.connector()));
    }
  }

  private static void putBoth(
      Map<String, String> to, Map<String, String> back, String a, String b) {
    if (!to.containsKey(a) && !back.containsKey(b)) {
      to.put(a, b);
      back.put(b, a);
    }
  }

  private void meet(Half one, Half other, Map<String, String> map, Map<String, String> mapBack) {
    Map<String, String> to = new HashMap<>();
    Map<String, String> back = new HashMap<>();
    map.forEach((cavity, contact) -> putBoth(to, back, cavity, contact));
    mapBack.forEach((contact, cavity) -> putBoth(to, back, cavity, contact));
    Set<String> has = new HashSet<>(one.names());
    Set<String> hasOther = new HashSet<>(other.names());
    for (String cavity : one.names()) {
      String contact = to.getOrDefault(cavity, back.containsKey(cavity) ? null : cavity);
      if (contact != null && (other.open() || hasOther.contains(contact))) {
        link(one.at().apply(cavity), other.at().apply(contact));
      }
    }
    for (String contact : other.names()) {
      String cavity = back.getOrDefault(contact, to.containsKey(contact) ? null : contact);
      if (cavity != null && (one.open() || has.contains(cavity))) {
        link(one.at().apply(cavity), other.at().apply(contact));
      }
    }
  }

  private void link(Point cavity, Point contact) {
    met.putIfAbsent(cavity, contact);
    met.putIfAbsent(contact, cavity);
  }

  private Half half(String connector) {
    return new Half(
        cavitiesOf.apply(connector),
        mating.housingOf(connector).isEmpty(),
        cavity -> Point.cavity(connector, cavity));
  }

  private Half half(Mate.OfPort mate, DeviceType.Port port) {
    Optional<List<String>> listed = mating.cavitiesOf(port);
    return new Half(
        listed.orElseGet(() -> List.copyOf(port.pins().keySet())),
        listed.isEmpty(),
        cavity -> Point.pin(mate.device(), port.pinAt(cavity)));
  }

  private Map<String, String> pinMap(String connector) {
    Connector found = harness.connectors().get(connector);
    return found == null ? Map.of() : found.pinMap();
  }
}
