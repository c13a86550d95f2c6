package org.tugtest.operate;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.model.Zone;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Wiring;

/**
 * Wires as warm as the air at their warmer end: that of its zone, else {@code defaults.ambientC}.
 */
public final class AmbientTemperature implements ConductorTemperature {
  private final Harness harness;
  private final Wiring wiring;
  private final Map<String, Double> ofWire = new HashMap<>();

  /** The air around the wires of a harness. */
  public AmbientTemperature(Harness harness, Wiring wiring, Network network) {
    this.harness = harness;
    this.wiring = wiring;
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfWire wire) {
        ofWire.put(wire.wire().id(), Math.max(at(edge.a()), at(edge.b())));
      }
    }
  }

  @Override
  public double celsius(Wire wire) {
    return ofWire.getOrDefault(wire.id(), harness.defaults().ambientC());
  }

  private double at(Point point) {
    Double known = zoneOf(point);
    return known == null ? harness.defaults().ambientC() : known;
  }

  private @Nullable Double zoneOf(Point point) {
    if (point.kind() == Point.Kind.SPLICE) {
      Splice splice = harness.splices().get(point.owner());
      if (splice == null) {
        return null;
      }
      return splice.on() == null ? ofNode(splice.at()) : ofSegment(splice.on());
    }
    if (point.kind() == Point.Kind.CAVITY) {
      return ofNode(wiring.nodeOf(point.owner()).orElse(null));
    }
    Device device = harness.devices().get(point.owner());
    DeviceType type = device == null ? null : harness.typeOf(device);
    DeviceType.Pin pin = type == null ? null : type.pins().get(point.name());
    String own = pin == null ? null : pin.at();
    return ofNode(own != null || device == null ? own : device.at());
  }

  private @Nullable Double ofSegment(String id) {
    Layout.Segment segment = harness.layout().segments().get(id);
    if (segment == null) {
      return null;
    }
    Double own = ofZone(segment.zone());
    if (own != null) {
      return own;
    }
    Double from = ofNode(segment.from());
    Double to = ofNode(segment.to());
    return from == null || to == null
        ? (from == null ? to : from)
        : Double.valueOf(Math.max(from, to));
  }

  private @Nullable Double ofNode(@Nullable String id) {
    Layout.Node node = id == null ? null : harness.layout().nodes().get(id);
    return node == null ? null : ofZone(node.zone());
  }

  private @Nullable Double ofZone(@Nullable String id) {
    return Optional.ofNullable(id).map(harness.zones()::get).map(Zone::ambientC).orElse(null);
  }
}
