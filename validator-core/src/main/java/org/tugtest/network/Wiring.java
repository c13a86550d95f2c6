package org.tugtest.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.text.NaturalOrder;

/**
 * What the references of a harness name, which wire ends sit on each contact, and which contacts
 * meet. In a sketch, what wires name exists by being named: an unknown owner with a pin is a
 * connector with that cavity, an unknown bare name is a splice, and a pin is added to a device or
 * connector that does not list its own.
 */
public final class Wiring {
  private final Harness harness;
  private final Mating mating;
  private final Map<String, Set<String>> pinsOf = new HashMap<>();
  private final Set<String> listing = new HashSet<>();
  private final Map<Point, List<WireEnd>> endsAt = new LinkedHashMap<>();
  private final Set<Point> implied = new TreeSet<>();
  private final Map<String, Set<String>> namedCavities = new HashMap<>();

  private Wiring(Harness harness) {
    this.harness = harness;
    this.mating = new Mating(harness);
    harness.devices().values().forEach(this::listPins);
    for (Wire wire : harness.wires().values()) {
      place(new WireEnd(wire, true));
      place(new WireEnd(wire, false));
    }
  }

  /** Reads a harness once; near linear in its size. */
  public static Wiring of(Harness harness) {
    return new Wiring(harness);
  }

  /** What mates with what. */
  public Mating mating() {
    return mating;
  }

  /** What the end of a wire names. */
  public Resolution resolve(Ref ref) {
    String owner = ref.owner();
    String pin = ref.pin();
    if (harness.splices().containsKey(owner)) {
      return pin == null && ref.member() == null
          ? new Resolution.Found(Point.splice(owner), false)
          : new Resolution.NoContact(
              ref.text(), "is no contact: " + owner + " is a splice", "write \"" + owner + "\"");
    }
    if (harness.connectors().containsKey(owner)) {
      return pin == null ? noContact(ref, "connector", "cavities") : inConnector(owner, pin);
    }
    if (harness.devices().containsKey(owner)) {
      return pin == null ? noContact(ref, "device", "pins") : onDevice(owner, pin);
    }
    if (harness.sketch() && ref.member() == null && !isNamedOtherwise(owner)) {
      return new Resolution.Found(
          pin == null ? Point.splice(owner) : Point.cavity(owner, pin), true);
    }
    return new Resolution.OwnerUnknown(owner);
  }

  /** The point that a reference names, when it names one. */
  public Optional<Point> pointOf(@Nullable Ref ref) {
    return ref != null && resolve(ref) instanceof Resolution.Found found
        ? Optional.of(found.point())
        : Optional.empty();
  }

  /** The wire ends on a point, in natural order of the wires. */
  public List<WireEnd> endsAt(Point point) {
    return Collections.unmodifiableList(endsAt.getOrDefault(point, List.of()));
  }

  /** Every point on which a wire ends, with its ends. */
  public Map<Point, List<WireEnd>> ends() {
    return Collections.unmodifiableMap(endsAt);
  }

  /** In a sketch, the points that exist only by being named, sorted. */
  public Set<Point> implied() {
    return Collections.unmodifiableSet(implied);
  }

  /** The pins of a device: those it lists, those behind its ports, else those its elements name. */
  public Set<String> pinsOf(String device) {
    return Collections.unmodifiableSet(pinsOf.getOrDefault(device, Set.of()));
  }

  /** The cavities of a connector: its housing's, else those that are written or named; in order. */
  public List<String> cavitiesOf(String connector) {
    return mating
        .cavitiesOf(connector)
        .orElseGet(
            () -> {
              Set<String> names = new TreeSet<>(NaturalOrder.NATURAL);
              Connector written = harness.connectors().get(connector);
              if (written != null) {
                names.addAll(written.cavities().keySet());
              }
              names.addAll(namedCavities.getOrDefault(connector, Set.of()));
              return List.copyOf(names);
            });
  }

  /** The contact that meets this one when its connector is plugged; empty when nothing does. */
  public Optional<Point> meets(Point contact) {
    return mating.meets(contact);
  }

  /** The node a connector stands at: its own, else that of its mate; empty when neither says. */
  public Optional<String> nodeOf(String connector) {
    Connector own = harness.connectors().get(connector);
    if (own != null && own.at() != null) {
      return Optional.of(own.at());
    }
    Mate mate = mating.mateOf(connector).orElse(null);
    if (mate instanceof Mate.OfConnector other) {
      Connector half = harness.connectors().get(other.connector());
      return half == null ? Optional.empty() : Optional.ofNullable(half.at());
    }
    Device device = mate instanceof Mate.OfPort port ? harness.devices().get(port.device()) : null;
    return device == null ? Optional.empty() : Optional.ofNullable(device.at());
  }

  private boolean isNamedOtherwise(String owner) {
    return owner.isEmpty()
        || harness.wires().containsKey(owner)
        || harness.groups().containsKey(owner);
  }

  private void place(WireEnd end) {
    Ref ref = end.ref();
    if (ref == null || !(resolve(ref) instanceof Resolution.Found found)) {
      return;
    }
    Point point = found.point();
    endsAt.computeIfAbsent(point, at -> new ArrayList<>(2)).add(end);
    if (found.implied()) {
      implied.add(point);
    }
    if (point.kind() == Point.Kind.CAVITY) {
      namedCavities.computeIfAbsent(point.owner(), id -> new HashSet<>()).add(point.name());
    }
  }

  private void listPins(Device device) {
    DeviceType type = harness.typeOf(device);
    Set<String> pins = new TreeSet<>(NaturalOrder.NATURAL);
    if (type != null) {
      pins.addAll(type.pins().keySet());
      type.ports().values().forEach(port -> pins.addAll(mating.pinsBehind(port)));
      if (type.pins().isEmpty() && type.ports().isEmpty()) {
        for (Element element : type.elements().values()) {
          pins.addAll(element.ends());
        }
      } else {
        listing.add(device.id());
      }
    }
    pins.addAll(device.boltedTo().keySet());
    pinsOf.put(device.id(), pins);
  }

  private Resolution inConnector(String connector, String cavity) {
    Optional<List<String>> cavities = mating.cavitiesOf(connector);
    Point point = Point.cavity(connector, cavity);
    if (cavities.isPresent()) {
      return cavities.get().contains(cavity)
          ? new Resolution.Found(point, false)
          : new Resolution.PinUnknown(Point.Kind.CAVITY, connector, cavity);
    }
    Connector written = harness.connectors().get(connector);
    boolean named = written != null && written.cavities().containsKey(cavity);
    return new Resolution.Found(point, harness.sketch() && !named);
  }

  private Resolution onDevice(String device, String pin) {
    Device found = harness.devices().get(device);
    DeviceType type = found == null ? null : harness.typeOf(found);
    if (type == null) {
      return new Resolution.Found(Point.pin(device, pin), false);
    }
    DeviceType.Pin listed = type.pins().get(pin);
    if (listed != null && listed.inside()) {
      return new Resolution.NoContact(
          device + ":" + pin,
          "is a point inside " + device + " that no wire reaches",
          "end the wire on one of the device's outer pins");
    }
    Optional<String> port = listed == null ? mating.portOfPin(device, pin) : Optional.empty();
    if (port.isPresent()) {
      String half = device + "." + port.get();
      return new Resolution.NoContact(
          device + ":" + pin,
          "lies in port " + half + "; a wire ends in the connector that mates it",
          mating
              .connectorAt(device, port.get())
              .map(connector -> "end the wire in connector " + connector + ", which mates " + half)
              .orElse("add a connector that mates " + half + " and end the wire there"));
    }
    if (pinsOf.getOrDefault(device, Set.of()).contains(pin)) {
      return new Resolution.Found(Point.pin(device, pin), false);
    }
    return harness.sketch() && !listing.contains(device)
        ? new Resolution.Found(Point.pin(device, pin), true)
        : new Resolution.PinUnknown(Point.Kind.PIN, device, pin);
  }

  private static Resolution noContact(Ref ref, String noun, String contacts) {
    String owner = ref.owner();
    return new Resolution.NoContact(
        ref.text(),
        ref.member() == null
            ? "is a " + noun + ", not a contact"
            : "names a port or an element of a " + noun + ", not a contact",
        "write \"" + owner + ":\" and one of its " + contacts);
  }
}
