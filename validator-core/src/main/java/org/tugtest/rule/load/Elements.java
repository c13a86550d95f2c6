package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.network.Point;

/** The elements of a harness of one kind, with the devices they sit in. */
final class Elements {
  private Elements() {}

  /**
   * An element in its device.
   *
   * @param type what else the device holds
   */
  record In<T extends Element>(String device, DeviceType type, String name, T element) {
    Subject subject() {
      return Subject.element(device, name);
    }

    String text() {
      return device + "." + name;
    }
  }

  /** All elements of one kind, in natural order of the devices. */
  static <T extends Element> List<In<T>> of(Facts facts, Class<T> kind) {
    List<In<T>> all = new ArrayList<>();
    for (Device device : facts.harness().devices().values()) {
      DeviceType type = facts.harness().typeOf(device);
      if (type != null) {
        for (Map.Entry<String, Element> entry : type.elements().entrySet()) {
          if (kind.isInstance(entry.getValue())) {
            all.add(new In<>(device.id(), type, entry.getKey(), kind.cast(entry.getValue())));
          }
        }
      }
    }
    return all;
  }

  /** The first point of the net that a pin is in, by which nets are told apart. */
  static Optional<Point> net(Facts facts, String device, @Nullable String pin) {
    return pin == null ? Optional.empty() : net(facts, Point.pin(device, pin));
  }

  /** The first point of the net that a point is in. */
  static Optional<Point> net(Facts facts, Point point) {
    return facts.nets().of(point).map(net -> net.points().get(0));
  }
}
