package org.tugtest.network;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.text.NaturalOrder;

/**
 * The pins of the devices: those a device lists, those behind its ports, else those that its
 * elements name; and whether there can be others.
 */
final class DevicePins {
  private final Map<String, Set<String>> pins = new HashMap<>();
  private final Map<String, Map<String, String>> portOfPin = new HashMap<>();
  private final Set<String> closed = new HashSet<>();

  DevicePins(Harness harness, Mating mating) {
    for (Device device : harness.devices().values()) {
      Set<String> names = new TreeSet<>(NaturalOrder.NATURAL);
      DeviceType type = harness.typeOf(device);
      if (type != null) {
        names.addAll(type.pins().keySet());
        if (list(device.id(), type, mating, harness.sketch())) {
          closed.add(device.id());
        } else {
          addElementEnds(type, names);
        }
        if (type.pins().isEmpty() && type.ports().isEmpty()) {
          addElementEnds(type, names);
        }
        names.addAll(portOfPin.getOrDefault(device.id(), Map.of()).keySet());
      }
      names.addAll(device.boltedTo().keySet());
      pins.put(device.id(), names);
    }
  }

  private static void addElementEnds(DeviceType type, Set<String> names) {
    for (Element element : type.elements().values()) {
      names.addAll(element.ends());
    }
  }

  /** Notes the pins behind the ports; whether what is listed is all there is. */
  private boolean list(String device, DeviceType type, Mating mating, boolean sketch) {
    Map<String, String> ports = new HashMap<>();
    boolean housingsKnown = true;
    for (Map.Entry<String, DeviceType.Port> entry : type.ports().entrySet()) {
      DeviceType.Port port = entry.getValue();
      housingsKnown &= mating.cavitiesOf(port).isPresent();
      mating.pinsBehind(port).forEach(pin -> ports.putIfAbsent(pin, entry.getKey()));
    }
    if (!ports.isEmpty()) {
      portOfPin.put(device, ports);
    }
    boolean lists = !type.pins().isEmpty() || !type.ports().isEmpty();
    return lists ? housingsKnown : !sketch;
  }

  /** A pin turned out to be there by being named. */
  void add(String device, String pin) {
    pins.computeIfAbsent(device, id -> new TreeSet<>(NaturalOrder.NATURAL)).add(pin);
  }

  /** The pins of a device, in natural order. */
  Set<String> of(String device) {
    return Collections.unmodifiableSet(pins.getOrDefault(device, Set.of()));
  }

  /** Whether the pins that are listed are all that a device has. */
  boolean closed(String device) {
    return closed.contains(device);
  }

  /** The port of a device in which a pin lies. */
  Optional<String> portOf(String device, String pin) {
    return Optional.ofNullable(portOfPin.getOrDefault(device, Map.of()).get(pin));
  }
}
