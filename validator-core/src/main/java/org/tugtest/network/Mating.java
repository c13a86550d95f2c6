package org.tugtest.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Harness;
import org.tugtest.model.Housing;
import org.tugtest.model.Ref;

/** Which connector is plugged into what, and which contacts meet there. Said once, true twice. */
public final class Mating {
  private final Harness harness;
  private final Map<String, Mate> mates = new HashMap<>();
  private final Map<Mate.OfPort, String> connectorAtPort = new HashMap<>();
  private final Map<String, Map<String, String>> portOfPin = new HashMap<>();
  private final List<Conflict> conflicts = new ArrayList<>();
  private final Set<String> implied = new HashSet<>();

  /**
   * A connector that claims a mate which another has already.
   *
   * @param mate what both claim
   * @param kept the one that has it, as the files write it
   * @param refused the connector that does not get it
   */
  public record Conflict(Mate mate, String kept, String refused) {}

  Mating(Harness harness) {
    this.harness = harness;
    for (Device device : harness.devices().values()) {
      DeviceType type = harness.typeOf(device);
      if (type != null) {
        Map<String, String> ports = new HashMap<>();
        type.ports().forEach((name, port) -> pinsBehind(port).forEach(p -> ports.put(p, name)));
        portOfPin.put(device.id(), ports);
      }
    }
    if (harness.sketch()) {
      harness.wires().values().forEach(wire -> imply(wire.from(), wire.to()));
    }
    harness.connectors().values().forEach(this::join);
  }

  private void imply(@Nullable Ref from, @Nullable Ref to) {
    for (Ref ref : new Ref[] {from, to}) {
      if (ref != null && ref.pin() != null && !isWritten(ref.owner())) {
        implied.add(ref.owner());
      }
    }
  }

  private boolean isWritten(String owner) {
    return harness.connectors().containsKey(owner)
        || harness.devices().containsKey(owner)
        || harness.splices().containsKey(owner);
  }

  /** What a connector is plugged into. */
  public Optional<Mate> mateOf(String connector) {
    return Optional.ofNullable(mates.get(connector));
  }

  /** The connector that is plugged into a port. */
  public Optional<String> connectorAt(String device, String port) {
    return Optional.ofNullable(connectorAtPort.get(new Mate.OfPort(device, port)));
  }

  /** Claims that were refused; of two, the later in natural order of the ids loses. */
  public List<Conflict> conflicts() {
    return List.copyOf(conflicts);
  }

  /**
   * What {@code mates} of a connector names, or empty when it names nothing that can be mated. In a
   * sketch a connector that only wires name can be mated too.
   */
  public Optional<Mate> target(Ref ref) {
    String owner = ref.owner();
    if (ref.pin() != null) {
      return Optional.empty();
    }
    if (ref.member() == null
        && (harness.connectors().containsKey(owner) || implied.contains(owner))) {
      return Optional.of(new Mate.OfConnector(owner));
    }
    DeviceType type = typeOf(owner);
    if (type == null) {
      return Optional.empty();
    }
    String port = ref.member();
    if (port == null && type.ports().size() == 1) {
      port = type.ports().keySet().iterator().next();
    }
    return port != null && type.ports().containsKey(port)
        ? Optional.of(new Mate.OfPort(owner, port))
        : Optional.empty();
  }

  /** The housing of a connector, when it has one that is known. */
  public Optional<Housing> housingOf(String connector) {
    Connector found = harness.connectors().get(connector);
    return found == null ? Optional.empty() : housing(found.housing());
  }

  /** The housing of the other half, when it is known. */
  public Optional<Housing> housingOf(Mate mate) {
    return mate instanceof Mate.OfPort port
        ? portAt(port).flatMap(half -> housing(half.housing()))
        : housingOf(((Mate.OfConnector) mate).connector());
  }

  /** The node a connector stands at: the one written for it, else that of its mate. */
  public Optional<String> nodeOf(String connector) {
    Connector found = harness.connectors().get(connector);
    if (found != null && found.at() != null) {
      return Optional.of(found.at());
    }
    Mate mate = mates.get(connector);
    if (mate instanceof Mate.OfPort port) {
      Device device = harness.devices().get(port.device());
      return device == null ? Optional.empty() : Optional.ofNullable(device.at());
    }
    Connector other =
        mate instanceof Mate.OfConnector half ? harness.connectors().get(half.connector()) : null;
    return other == null ? Optional.empty() : Optional.ofNullable(other.at());
  }

  /** The port of a device in which a pin lies. */
  public Optional<String> portOfPin(String device, String pin) {
    return Optional.ofNullable(portOfPin.getOrDefault(device, Map.of()).get(pin));
  }

  /** The device's half of a connector, when device, type and port are known. */
  public Optional<DeviceType.Port> portAt(Mate.OfPort mate) {
    DeviceType type = typeOf(mate.device());
    return type == null ? Optional.empty() : Optional.ofNullable(type.ports().get(mate.port()));
  }

  /** The contact that meets this one; empty when its connector is unplugged or has none there. */
  public Optional<Point> meets(Point contact) {
    if (contact.kind() == Point.Kind.PIN) {
      return meetsPin(contact);
    }
    Mate mate = contact.kind() == Point.Kind.CAVITY ? mates.get(contact.owner()) : null;
    if (mate instanceof Mate.OfPort port) {
      String at = mapped(contact.owner(), contact.name());
      return portAt(port)
          .filter(half -> exists(housing(half.housing()), at))
          .map(half -> Point.pin(port.device(), half.pinAt(at)));
    }
    if (mate instanceof Mate.OfConnector other) {
      String at = across(contact.owner(), contact.name(), other.connector());
      return exists(housingOf(other.connector()), at)
          ? Optional.of(Point.cavity(other.connector(), at))
          : Optional.empty();
    }
    return Optional.empty();
  }

  /** The names of the cavities of a connector's housing; empty when the housing is not known. */
  Optional<List<String>> cavitiesOf(String connector) {
    return housingOf(connector).map(Housing::cavityNames);
  }

  /** The names of the pins behind a port: those of its housing's cavities and those it renames. */
  List<String> pinsBehind(DeviceType.Port port) {
    Set<String> names = new LinkedHashSet<>();
    housing(port.housing())
        .ifPresent(known -> known.cavityNames().forEach(cavity -> names.add(port.pinAt(cavity))));
    names.addAll(port.pins().values());
    return List.copyOf(names);
  }

  private Optional<Point> meetsPin(Point pin) {
    String port = portOfPin(pin.owner(), pin.name()).orElse(null);
    if (port == null) {
      return Optional.empty();
    }
    Mate.OfPort mate = new Mate.OfPort(pin.owner(), port);
    String connector = connectorAtPort.get(mate);
    DeviceType.Port half = portAt(mate).orElse(null);
    if (connector == null || half == null) {
      return Optional.empty();
    }
    return candidates(connector, half, pin.name()).stream()
        .filter(cavity -> half.pinAt(mapped(connector, cavity)).equals(pin.name()))
        .filter(cavity -> exists(housingOf(connector), cavity))
        .map(cavity -> Point.cavity(connector, cavity))
        .findFirst();
  }

  private List<String> candidates(String connector, DeviceType.Port half, String pin) {
    Set<String> names = new LinkedHashSet<>();
    cavitiesOf(connector).ifPresent(names::addAll);
    half.pins().entrySet().stream()
        .filter(entry -> entry.getValue().equals(pin))
        .forEach(entry -> names.add(entry.getKey()));
    names.add(pin);
    return List.copyOf(names);
  }

  private void join(Connector connector) {
    Ref ref = connector.mates();
    Mate target = ref == null ? null : target(ref).orElse(null);
    if (target instanceof Mate.OfPort port) {
      joinPort(connector.id(), port);
    } else if (target instanceof Mate.OfConnector other
        && !other.connector().equals(connector.id())) {
      joinConnector(connector.id(), other);
    }
  }

  private void joinPort(String connector, Mate.OfPort port) {
    String present = connectorAtPort.get(port);
    Mate own = mates.get(connector);
    if (present != null) {
      conflicts.add(new Conflict(port, present, connector));
    } else if (own != null) {
      conflicts.add(new Conflict(new Mate.OfConnector(connector), own.text(), connector));
    } else {
      connectorAtPort.put(port, connector);
      mates.put(connector, port);
    }
  }

  private void joinConnector(String connector, Mate.OfConnector other) {
    Mate self = new Mate.OfConnector(connector);
    Mate own = mates.get(connector);
    Mate theirs = mates.get(other.connector());
    if (theirs != null && !theirs.equals(self)) {
      conflicts.add(new Conflict(other, theirs.text(), connector));
    } else if (own != null && !own.equals(other)) {
      conflicts.add(new Conflict(self, own.text(), connector));
    } else {
      mates.put(connector, other);
      mates.put(other.connector(), self);
    }
  }

  private String mapped(String connector, String cavity) {
    Connector found = harness.connectors().get(connector);
    return found == null ? cavity : found.pinMap().getOrDefault(cavity, cavity);
  }

  private String across(String connector, String cavity, String other) {
    Connector own = harness.connectors().get(connector);
    if (own != null && own.pinMap().containsKey(cavity)) {
      return own.pinMap().getOrDefault(cavity, cavity);
    }
    Connector mate = harness.connectors().get(other);
    if (mate != null) {
      for (Map.Entry<String, String> entry : mate.pinMap().entrySet()) {
        if (entry.getValue().equals(cavity)) {
          return entry.getKey();
        }
      }
    }
    return cavity;
  }

  private @Nullable DeviceType typeOf(String device) {
    Device found = harness.devices().get(device);
    return found == null ? null : harness.typeOf(found);
  }

  private Optional<Housing> housing(@Nullable String id) {
    return id == null ? Optional.empty() : Optional.ofNullable(harness.parts().housings().get(id));
  }

  private static boolean exists(Optional<Housing> housing, String cavity) {
    return housing.map(known -> known.hasCavity(cavity)).orElse(true);
  }
}
