package org.tugtest.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
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
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.text.NaturalOrder;

/**
 * What the references of a harness name, which wire ends sit on each contact, and which contacts
 * meet. In a sketch, what wires name exists by being named: an unknown owner with a pin is a
 * connector with that cavity, an owner that is only ever named alone is a splice, and a pin is
 * added to a device or connector that does not list its own.
 */
public final class Wiring {
  private final Harness harness;
  private final Implied impliedOwners;
  private final Mating mating;
  private final DevicePins pins;
  private final Map<Point, List<WireEnd>> endsAt;
  private final IdentityHashMap<Ref, Resolution> ofEnds = new IdentityHashMap<>();
  private final Set<Point> implied = new TreeSet<>();
  private final Map<String, Set<String>> namedCavities = new HashMap<>();
  private final Set<String> connectors;
  private final Set<String> splices;
  private final List<Point> wiredCavities;
  private final Points points;
  private final @Nullable Point[] met;
  private final List<List<WireEnd>> endsAtNumber;

  private Wiring(Harness harness) {
    this.harness = harness;
    this.impliedOwners = Implied.by(harness);
    this.connectors = union(harness.connectors().keySet(), impliedOwners.connectors());
    this.splices = union(harness.splices().keySet(), impliedOwners.splices());
    this.mating = new Mating(harness, impliedOwners.connectors());
    this.pins = new DevicePins(harness, mating);
    Map<Point, List<WireEnd>> placed = new LinkedHashMap<>();
    for (Wire wire : harness.wires().values()) {
      place(new WireEnd(wire, true), placed);
      place(new WireEnd(wire, false), placed);
    }
    for (Device device : harness.devices().values()) {
      device.boltedTo().values().forEach(this::addBolted);
    }
    Contacts contacts = new Contacts(harness, mating, connectors, this::cavitiesOf);
    for (String connector : connectors) {
      for (String cavity : cavitiesOf(connector)) {
        contacts
            .meets(Point.cavity(connector, cavity))
            .filter(other -> other.kind() == Point.Kind.PIN)
            .ifPresent(pin -> pins.add(pin.owner(), pin.name()));
      }
    }
    this.points = new Points(harness.devices().keySet(), this, contacts);
    this.met = contacts.among(points);
    this.endsAtNumber = new ArrayList<>(Collections.nCopies(points.all().size(), List.of()));
    this.endsAt = new LinkedHashMap<>();
    placed.forEach(this::keep);
    this.wiredCavities =
        endsAt.keySet().stream()
            .filter(point -> point.kind() == Point.Kind.CAVITY)
            .sorted()
            .toList();
  }

  private void keep(Point point, List<WireEnd> ends) {
    List<WireEnd> kept = Collections.unmodifiableList(ends);
    Point own = points.own(point);
    endsAt.put(own, kept);
    if (own.number() >= 0) {
      endsAtNumber.set(own.number(), kept);
    }
    for (WireEnd end : ends) {
      ofEnds.computeIfPresent(
          end.ref(),
          (ref, known) ->
              known instanceof Resolution.Found found
                  ? new Resolution.Found(own, found.implied())
                  : known);
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
    Resolution known = ofEnds.get(ref);
    return known == null ? lookUp(ref) : known;
  }

  private Resolution lookUp(Ref ref) {
    String owner = ref.owner();
    if (owner.isEmpty()) {
      return new Resolution.NoContact(
          "\"" + ref.text() + "\"", "names nothing", "write a connector and one of its cavities");
    }
    if (harness.splices().containsKey(owner)) {
      return inSplice(ref, false);
    }
    if (harness.connectors().containsKey(owner)) {
      return lacksPin(ref) ? noContact(ref, "connector", "cavities") : inConnector(owner, ref);
    }
    if (harness.devices().containsKey(owner)) {
      return lacksPin(ref) ? noContact(ref, "device", "pins") : onDevice(owner, ref);
    }
    if (impliedOwners.connectors().contains(owner)) {
      return lacksPin(ref)
          ? noContact(ref, "connector", "cavities")
          : new Resolution.Found(Point.cavity(owner, pinOf(ref)), true);
    }
    if (impliedOwners.splices().contains(owner)) {
      return inSplice(ref, true);
    }
    return new Resolution.OwnerUnknown(owner);
  }

  /**
   * The point that a reference names, when it names one. Unlike the end of a wire this may be a pin
   * behind a port or inside a device.
   */
  public Optional<Point> pointOf(@Nullable Ref ref) {
    if (ref == null) {
      return Optional.empty();
    }
    if (resolve(ref) instanceof Resolution.Found found) {
      return Optional.of(points.own(found.point()));
    }
    return ref.pin() != null && pins.of(ref.owner()).contains(ref.pin())
        ? Optional.of(points.own(Point.pin(ref.owner(), ref.pin())))
        : Optional.empty();
  }

  /** The wire ends on a point, in natural order of the wires. */
  public List<WireEnd> endsAt(Point point) {
    int number = points.number(point);
    return number < 0 ? endsAt.getOrDefault(point, List.of()) : endsAtNumber.get(number);
  }

  /** Every point on which a wire ends, with its ends. */
  public Map<Point, List<WireEnd>> ends() {
    return Collections.unmodifiableMap(endsAt);
  }

  /** The cavities on which wires end, sorted. */
  public List<Point> wiredCavities() {
    return wiredCavities;
  }

  /** In a sketch, the points that exist only by being named, sorted. */
  public Set<Point> implied() {
    return Collections.unmodifiableSet(implied);
  }

  /** All connectors in natural order: those of the files and, in a sketch, those wires name. */
  public Set<String> connectors() {
    return connectors;
  }

  /** All splices in natural order: those of the files and, in a sketch, those wires name. */
  public Set<String> splices() {
    return splices;
  }

  /** The pins of a device: those it lists, those behind its ports, else those named; in order. */
  public Set<String> pinsOf(String device) {
    return pins.of(device);
  }

  /** Whether the pins of a device are all it has: none more can come about by being named. */
  public boolean pinsComplete(String device) {
    return pins.closed(device);
  }

  /** The port of a device in which a pin lies. */
  public Optional<String> portOfPin(String device, String pin) {
    return pins.portOf(device, pin);
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
                names.addAll(written.pinMap().keySet());
              }
              names.addAll(namedCavities.getOrDefault(connector, Set.of()));
              return List.copyOf(names);
            });
  }

  /**
   * The points of a connector's cavities, in the same order; a point that is taken from here is
   * found everywhere without a look-up.
   */
  public List<Point> cavityPoints(String connector) {
    return points.ofConnector(connector);
  }

  /** All points. */
  Points points() {
    return points;
  }

  /**
   * The contact that meets this one when its connector is plugged; empty when nothing does. Of the
   * cavities that lead to one pin, the first meets it.
   */
  public Optional<Point> meets(Point contact) {
    int number = points.number(contact);
    return number < 0 ? Optional.empty() : Optional.ofNullable(met[number]);
  }

  /** The node a connector stands at: its own, else that of its mate; empty when neither says. */
  public Optional<String> nodeOf(String connector) {
    return mating.nodeOf(connector);
  }

  private static Set<String> union(Set<String> written, Set<String> named) {
    if (named.isEmpty()) {
      return written;
    }
    Set<String> all = new TreeSet<>(NaturalOrder.NATURAL);
    all.addAll(written);
    all.addAll(named);
    return Collections.unmodifiableSet(all);
  }

  private void place(WireEnd end, Map<Point, List<WireEnd>> placed) {
    Ref ref = end.ref();
    if (ref == null) {
      return;
    }
    Resolution resolution = lookUp(ref);
    ofEnds.put(ref, resolution);
    if (!(resolution instanceof Resolution.Found found)) {
      return;
    }
    Point point = found.point();
    placed.computeIfAbsent(point, at -> new ArrayList<>(2)).add(end);
    if (found.implied()) {
      implied.add(point);
    }
    if (point.kind() == Point.Kind.CAVITY) {
      namedCavities.computeIfAbsent(point.owner(), id -> new HashSet<>()).add(point.name());
    } else if (point.kind() == Point.Kind.PIN) {
      pins.add(point.owner(), point.name());
    }
  }

  /** A pin that is bolted to is there, unless its device lists others only. */
  private void addBolted(Ref ref) {
    if (ref.pin() != null
        && resolve(ref) instanceof Resolution.Found found
        && found.point().kind() == Point.Kind.PIN) {
      pins.add(ref.owner(), ref.pin());
    }
  }

  private static Resolution inSplice(Ref ref, boolean implied) {
    String owner = ref.owner();
    return ref.pin() == null && ref.member() == null
        ? new Resolution.Found(Point.splice(owner), implied)
        : new Resolution.NoContact(
            ref.text(), "is no contact: " + owner + " is a splice", "write \"" + owner + "\"");
  }

  private Resolution inConnector(String connector, Ref ref) {
    String cavity = pinOf(ref);
    Point point = Point.cavity(connector, cavity);
    Optional<Boolean> listed = mating.hasCavity(connector, cavity);
    if (listed.isPresent()) {
      return listed.get()
          ? new Resolution.Found(point, false)
          : new Resolution.PinUnknown(Point.Kind.CAVITY, connector, cavity);
    }
    Connector written = harness.connectors().get(connector);
    boolean named = written != null && written.cavities().containsKey(cavity);
    return new Resolution.Found(point, harness.sketch() && !named);
  }

  private Resolution onDevice(String device, Ref ref) {
    String pin = pinOf(ref);
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
    Optional<String> port = listed == null ? pins.portOf(device, pin) : Optional.empty();
    if (port.isPresent()) {
      return inPort(device, pin, port.get());
    }
    if (pins.of(device).contains(pin) && !implied.contains(Point.pin(device, pin))) {
      return new Resolution.Found(Point.pin(device, pin), false);
    }
    return pins.closed(device)
        ? new Resolution.PinUnknown(Point.Kind.PIN, device, pin)
        : new Resolution.Found(Point.pin(device, pin), harness.sketch());
  }

  private Resolution inPort(String device, String pin, String port) {
    String half = device + "." + port;
    return new Resolution.NoContact(
        device + ":" + pin,
        "lies in port " + half + "; a wire ends in the connector that mates it",
        mating
            .connectorAt(device, port)
            .map(connector -> "end the wire in connector " + connector + ", which mates " + half)
            .orElse("add a connector that mates " + half + " and end the wire there"));
  }

  private static boolean lacksPin(Ref ref) {
    return ref.pin() == null || ref.pin().isEmpty();
  }

  private static String pinOf(Ref ref) {
    String pin = ref.pin();
    return pin == null ? "" : pin;
  }

  private static Resolution noContact(Ref ref, String noun, String contacts) {
    String owner = ref.owner();
    String why =
        ref.member() != null
            ? "names a port or an element of a " + noun + ", not a contact"
            : ref.pin() != null ? "names no contact" : "is a " + noun + ", not a contact";
    return new Resolution.NoContact(
        ref.text(), why, "write \"" + owner + ":\" and one of its " + contacts);
  }
}
