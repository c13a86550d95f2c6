package org.tugtest.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Harness;
import org.tugtest.model.Housing;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;

/**
 * The nets of a harness without sketch, written down from the format alone: a matrix of what is
 * joined, closed by Warshall's algorithm. It shares no code with the network.
 */
final class Closure {
  private final Harness harness;
  private final List<String> points = new ArrayList<>();
  private final Map<String, Integer> index = new HashMap<>();
  private final Set<String> labelled = new TreeSet<>();
  private boolean[][] joined = new boolean[0][0];

  Closure(Harness harness) {
    this.harness = harness;
    for (Device device : harness.devices().values()) {
      DeviceType type = device.own();
      if (type != null) {
        Set<String> pins = new TreeSet<>(type.pins().keySet());
        type.ports()
            .values()
            .forEach(port -> cavities(port.housing()).forEach(c -> pins.add(port.pinAt(c))));
        if (type.pins().isEmpty() && type.ports().isEmpty()) {
          type.elements().values().forEach(element -> pins.addAll(element.ends()));
        }
        pins.forEach(pin -> add(device.id() + ":" + pin, true));
      }
    }
    for (Connector connector : harness.connectors().values()) {
      boolean open = mate(connector) == null;
      cavities(connector.housing()).forEach(c -> add(connector.id() + ":" + c, open));
    }
    harness.splices().keySet().forEach(id -> add(id, false));
    joined = new boolean[points.size()][points.size()];
    join();
    close();
  }

  private void add(String point, boolean label) {
    if (index.putIfAbsent(point, points.size()) == null) {
      points.add(point);
      if (label) {
        labelled.add(point);
      }
    }
  }

  private List<String> cavities(@Nullable String housing) {
    Housing found = housing == null ? null : harness.parts().housings().get(housing);
    return found == null ? List.of() : found.cavityNames();
  }

  /** What a connector is plugged into, as it or the other half says. */
  private @Nullable String mate(Connector connector) {
    if (connector.mates() != null) {
      return connector.mates().text();
    }
    for (Connector other : harness.connectors().values()) {
      if (other.mates() != null && other.mates().text().equals(connector.id())) {
        return other.id();
      }
    }
    return null;
  }

  private void join() {
    for (Wire wire : harness.wires().values()) {
      join(text(wire.from()), text(wire.to()));
    }
    for (Connector connector : harness.connectors().values()) {
      String mate = mate(connector);
      for (String cavity : mate == null ? List.<String>of() : cavities(connector.housing())) {
        int dot = mate.indexOf('.');
        if (dot < 0) {
          join(connector.id() + ":" + cavity, mate + ":" + cavity);
        } else {
          String device = mate.substring(0, dot);
          DeviceType type = harness.devices().get(device).own();
          String pin = type.ports().get(mate.substring(dot + 1)).pinAt(cavity);
          join(connector.id() + ":" + cavity, device + ":" + pin);
        }
      }
    }
  }

  private static String text(@Nullable Ref ref) {
    return ref == null ? "" : ref.text();
  }

  private void join(String one, String other) {
    Integer a = index.get(one);
    Integer b = index.get(other);
    if (a != null && b != null) {
      joined[a][b] = true;
      joined[b][a] = true;
    }
  }

  private void close() {
    for (int k = 0; k < joined.length; k++) {
      for (int i = 0; i < joined.length; i++) {
        if (joined[i][k]) {
          for (int j = 0; j < joined.length; j++) {
            joined[i][j] |= joined[k][j];
          }
        }
      }
    }
  }

  /** The nets of two or more pins with an identity, each by their names. */
  Set<Set<String>> nets(UnaryOperator<String> name) {
    Set<Set<String>> nets = new HashSet<>();
    for (String point : labelled) {
      Set<String> net = new TreeSet<>();
      for (String other : labelled) {
        if (other.equals(point) || joined[index.get(point)][index.get(other)]) {
          net.add(name.apply(other));
        }
      }
      if (net.size() > 1) {
        nets.add(net);
      }
    }
    return nets;
  }

  /** What lies in the devices of a generated loom, by device. */
  static Map<String, Set<String>> elements(Harness harness) {
    Map<String, Set<String>> all = new TreeMap<>();
    for (Device device : harness.devices().values()) {
      Set<String> lines = new TreeSet<>();
      if (device.own() != null) {
        device
            .own()
            .elements()
            .forEach(
                (name, element) ->
                    lines.add(
                        element.kind()
                            + element.ends()
                            + (element.kind().equals("fuse")
                                && !harness.fitted().containsKey(device.id() + "." + name))));
      }
      all.put(device.id(), lines);
    }
    return all;
  }
}
