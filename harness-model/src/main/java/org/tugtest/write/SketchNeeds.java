package org.tugtest.write;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.read.ReadHarness;
import org.tugtest.text.NaturalOrder;

/**
 * What the wires of one sketch name and no file says: connectors with their cavities, splices,
 * cavities of connectors whose housing is not known, pins of devices that list neither pins nor
 * ports.
 */
final class SketchNeeds {
  private final Harness harness;
  private final Map<String, SortedSet<String>> connectors = names();
  private final SortedSet<String> splices = new TreeSet<>(NaturalOrder.NATURAL);
  private final Map<String, SortedSet<String>> cavities = names();
  private final Map<String, SortedSet<String>> pins = names();
  private final Map<String, SortedSet<String>> files = new HashMap<>();

  private final Map<String, String> loomOfFile = new HashMap<>();

  SketchNeeds(ReadHarness read) {
    this.harness = read.harness();
    for (Wire wire : harness.wires().values()) {
      String file = read.places().of("wires/" + wire.id()).file();
      loomOfFile.put(file, wire.loom() == null ? "" : wire.loom());
      look(wire.from(), file);
      look(wire.to(), file);
    }
    splices.removeAll(connectors.keySet());
  }

  /** Cavities by connector that is not there. */
  Map<String, SortedSet<String>> connectors() {
    return connectors;
  }

  /** Splices that are not there. */
  Set<String> splices() {
    return splices;
  }

  /** Cavities that are not there, by connector that is. */
  Map<String, SortedSet<String>> cavities() {
    return cavities;
  }

  /** Pins by device; where one is not there, with the pins that the elements name. */
  Map<String, SortedSet<String>> pins() {
    return pins;
  }

  /** The files whose wires name a connector or splice that is not there, in order. */
  SortedSet<String> filesNaming(String owner) {
    return files.getOrDefault(owner, new TreeSet<>());
  }

  /** Whether the wires of these files are of one loom. */
  boolean areOneLoom(Collection<String> paths) {
    String first = null;
    for (String path : paths) {
      String loom = loomOfFile.getOrDefault(path, "");
      if (loom.isEmpty() || (first != null && !first.equals(loom))) {
        return false;
      }
      first = loom;
    }
    return true;
  }

  private void look(@Nullable Ref ref, String file) {
    if (ref == null || ref.member() != null || ref.owner().isEmpty()) {
      return;
    }
    String owner = ref.owner();
    String pin = ref.pin();
    if (harness.connectors().containsKey(owner) || harness.devices().containsKey(owner)) {
      if (pin != null && !pin.isEmpty()) {
        inConnector(harness.connectors().get(owner), pin);
        onDevice(harness.devices().get(owner), pin);
      }
    } else if (!isOther(owner)) {
      files.computeIfAbsent(owner, id -> new TreeSet<>(NaturalOrder.NATURAL)).add(file);
      if (pin == null) {
        splices.add(owner);
      } else if (!pin.isEmpty()) {
        add(connectors, owner, pin);
      }
    }
  }

  private boolean isOther(String owner) {
    return harness.splices().containsKey(owner)
        || harness.wires().containsKey(owner)
        || harness.groups().containsKey(owner);
  }

  private void inConnector(@Nullable Connector connector, String cavity) {
    if (connector == null || connector.cavities().containsKey(cavity)) {
      return;
    }
    String housing = connector.housing();
    if (housing == null || !harness.parts().housings().containsKey(housing)) {
      add(cavities, connector.id(), cavity);
    }
  }

  private void onDevice(@Nullable Device device, String pin) {
    DeviceType type = device == null ? null : harness.typeOf(device);
    if (device == null || type == null || !type.pins().isEmpty() || !type.ports().isEmpty()) {
      return;
    }
    Set<String> named = new TreeSet<>();
    type.elements().values().forEach(element -> named.addAll(element.ends()));
    if (!named.contains(pin) && !device.boltedTo().containsKey(pin)) {
      add(pins, device.id(), pin);
      named.forEach(name -> add(pins, device.id(), name));
    }
  }

  private static void add(Map<String, SortedSet<String>> to, String id, String name) {
    to.computeIfAbsent(id, first -> new TreeSet<>(NaturalOrder.NATURAL)).add(name);
  }

  private static Map<String, SortedSet<String>> names() {
    return new TreeMap<>(NaturalOrder.NATURAL);
  }
}
