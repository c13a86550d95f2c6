package org.tugtest.network;

import java.util.ArrayList;
import java.util.HashMap;
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

/** Which connector is plugged into what. Said on one side, it is true of both. */
public final class Mating {
  private final Harness harness;
  private final Set<String> impliedConnectors;
  private final Map<String, Cavities> cavities = new HashMap<>();
  private final Map<String, Mate> mates = new HashMap<>();
  private final Map<Mate.OfPort, String> connectorAtPort = new HashMap<>();
  private final List<Conflict> conflicts = new ArrayList<>();

  /**
   * A connector that claims a mate which cannot be its own.
   *
   * @param mate what it claims
   * @param kept what is plugged together instead, as the files write it: the mate that {@code mate}
   *     has already or, when {@code mate} is the refused connector itself, that it has already
   * @param refused the connector whose claim does not hold
   */
  public record Conflict(Mate mate, String kept, String refused) {}

  /** The cavities of one housing, in the order of its rows. */
  private record Cavities(List<String> inOrder, Set<String> names) {}

  Mating(Harness harness, Set<String> impliedConnectors) {
    this.harness = harness;
    this.impliedConnectors = impliedConnectors;
    for (Housing housing : harness.parts().housings().values()) {
      Set<String> names = new LinkedHashSet<>(housing.cavityNames());
      cavities.put(housing.id(), new Cavities(List.copyOf(names), names));
    }
    harness.connectors().values().stream().filter(this::isMutual).forEach(this::join);
    harness.connectors().values().stream().filter(one -> !isMutual(one)).forEach(this::join);
  }

  /** What a connector is plugged into. */
  public Optional<Mate> mateOf(String connector) {
    return Optional.ofNullable(mates.get(connector));
  }

  /** The connector that is plugged into a port. */
  public Optional<String> connectorAt(String device, String port) {
    return Optional.ofNullable(connectorAtPort.get(new Mate.OfPort(device, port)));
  }

  /**
   * Claims that were refused. What two connectors say of each other comes first; of two other
   * claims on one mate, the one of the later connector in natural order loses.
   */
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
        && (harness.connectors().containsKey(owner) || impliedConnectors.contains(owner))) {
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

  /** The device's half of a connector, when device, type and port are known. */
  public Optional<DeviceType.Port> portAt(Mate.OfPort mate) {
    DeviceType type = typeOf(mate.device());
    return type == null ? Optional.empty() : Optional.ofNullable(type.ports().get(mate.port()));
  }

  /** The cavities of a connector's housing in the order of its rows, when the housing is known. */
  Optional<List<String>> cavitiesOf(String connector) {
    return housingOf(connector).flatMap(this::inOrder);
  }

  /** Whether a connector's housing has that cavity; empty when the housing is not known. */
  Optional<Boolean> hasCavity(String connector, String cavity) {
    return housingOf(connector)
        .map(housing -> cavities.get(housing.id()))
        .map(known -> known.names().contains(cavity));
  }

  /** The cavities of the device's half in the order of its rows, when its housing is known. */
  Optional<List<String>> cavitiesOf(DeviceType.Port port) {
    return housing(port.housing()).flatMap(this::inOrder);
  }

  /** The names of the pins behind a port: those of its housing's cavities and those it renames. */
  List<String> pinsBehind(DeviceType.Port port) {
    Set<String> names = new LinkedHashSet<>();
    cavitiesOf(port).ifPresent(known -> known.forEach(cavity -> names.add(port.pinAt(cavity))));
    names.addAll(port.pins().values());
    return List.copyOf(names);
  }

  private boolean isMutual(Connector connector) {
    Ref ref = connector.mates();
    Connector other =
        ref == null || ref.pin() != null || ref.member() != null
            ? null
            : harness.connectors().get(ref.owner());
    return other != null
        && other.mates() != null
        && other.mates().text().equals(connector.id())
        && !other.id().equals(connector.id());
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

  private Optional<List<String>> inOrder(Housing housing) {
    return Optional.ofNullable(cavities.get(housing.id())).map(Cavities::inOrder);
  }

  private @Nullable DeviceType typeOf(String device) {
    Device found = harness.devices().get(device);
    return found == null ? null : harness.typeOf(found);
  }

  private Optional<Housing> housing(@Nullable String id) {
    return id == null ? Optional.empty() : Optional.ofNullable(harness.parts().housings().get(id));
  }
}
