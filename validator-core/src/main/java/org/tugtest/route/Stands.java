package org.tugtest.route;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.model.Ref;
import org.tugtest.model.Splice;
import org.tugtest.network.Point;
import org.tugtest.network.Resolution;
import org.tugtest.network.WireEnd;
import org.tugtest.network.Wiring;

/**
 * Where the ends of wires stand: a connector at its own node or that of its mate, a pin of a device
 * at its own node or that of the device, a splice at its node or along its segment.
 */
final class Stands {
  private final Harness harness;
  private final Wiring wiring;

  /** Either a place or why there is none, in words that go on after "W1 has no route:". */
  record Looked(@Nullable Stand stand, NoRoute.Why why, String text) {
    static Looked at(String node) {
      return new Looked(new Stand.AtNode(node), NoRoute.Why.NO_STAND, "");
    }

    static Looked nowhere(NoRoute.Why why, String text) {
      return new Looked(null, why, text);
    }
  }

  Stands(Harness harness, Wiring wiring) {
    this.harness = harness;
    this.wiring = wiring;
  }

  /** Where an end of a wire stands. */
  Looked of(WireEnd end) {
    Ref ref = end.ref();
    if (ref == null || !(wiring.resolve(ref) instanceof Resolution.Found found)) {
      return Looked.nowhere(
          NoRoute.Why.END_OPEN, "its \"" + end.field() + "\" ends on nothing that is known");
    }
    return of(found.point());
  }

  /** Where a contact or splice stands. */
  Looked of(Point point) {
    if (point.kind() == Point.Kind.SPLICE) {
      return ofSplice(point.owner());
    }
    return node(point)
        .map(Looked::at)
        .orElseGet(
            () ->
                Looked.nowhere(
                    NoRoute.Why.NO_STAND, "nothing says at which node " + point.text() + " is"));
  }

  private Optional<String> node(Point point) {
    if (point.kind() == Point.Kind.CAVITY) {
      return wiring.nodeOf(point.owner());
    }
    Device device = harness.devices().get(point.owner());
    if (device == null) {
      return Optional.empty();
    }
    DeviceType type = harness.typeOf(device);
    DeviceType.Pin pin = type == null ? null : type.pins().get(point.name());
    return pin != null && pin.at() != null
        ? Optional.of(pin.at())
        : Optional.ofNullable(device.at());
  }

  private Looked ofSplice(String id) {
    Splice splice = harness.splices().get(id);
    if (splice != null && splice.at() != null) {
      return Looked.at(splice.at());
    }
    String on = splice == null ? null : splice.on();
    if (on == null || splice == null) {
      return Looked.nowhere(
          NoRoute.Why.NO_STAND, "nothing says at which node or on which segment " + id + " is");
    }
    Layout.Segment segment = harness.layout().segments().get(on);
    Double offset = splice.offsetMm();
    if (segment == null || offset == null || offset < 0) {
      return Looked.nowhere(
          NoRoute.Why.NO_STAND,
          segment == null
              ? "splice " + id + " is on segment " + on + ", which is not defined"
              : "splice " + id + " gives no offsetMm on segment " + on);
    }
    Double length = LoomWays.length(segment);
    if (length == null) {
      return Looked.nowhere(NoRoute.Why.NO_LENGTH, "segment " + on + " gives no length");
    }
    if (offset > length) {
      return Looked.nowhere(
          NoRoute.Why.NO_STAND, "splice " + id + " lies past the end of segment " + on);
    }
    return new Looked(new Stand.OnSegment(on, offset), NoRoute.Why.NO_STAND, "");
  }
}
