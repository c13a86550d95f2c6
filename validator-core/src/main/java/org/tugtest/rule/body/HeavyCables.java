package org.tugtest.rule.body;

import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.Resolution;
import org.tugtest.network.WireEnd;
import org.tugtest.table.Cited;

/**
 * Which wires carry much: thick ones, and those that end on the plus of a generator or on the feed
 * of a load of many amps.
 */
final class HeavyCables {
  private final Facts facts;
  private final double amps;
  private final Set<Point> pins = new HashSet<>();

  /**
   * Looks through the devices once.
   *
   * @param amps current from which a load is heavy
   */
  HeavyCables(Facts facts, double amps) {
    this.facts = facts;
    this.amps = amps;
    for (Device device : facts.harness().devices().values()) {
      DeviceType type = facts.harness().typeOf(device);
      if (type != null) {
        type.elements().values().forEach(element -> add(device, type, element));
      }
    }
  }

  private void add(Device device, DeviceType type, Element element) {
    if (element instanceof Element.Source source && source.generator() && source.plus() != null) {
      pins.add(Point.pin(device.id(), source.plus()));
      for (Element other : type.elements().values()) {
        boolean passes = other instanceof Element.Diode || other instanceof Element.Link;
        if (passes && other.ends().contains(source.plus())) {
          other.ends().forEach(pin -> pins.add(Point.pin(device.id(), pin)));
        }
      }
    } else if (element instanceof Element.Load load && most(load) >= amps) {
      for (String pin : load.ends()) {
        Point point = Point.pin(device.id(), pin);
        if (facts.sides().feed().reaches(point)) {
          pins.add(point);
        }
      }
    }
  }

  private double most(Element.Load load) {
    double volts = load.atVolts() == null ? facts.harness().defaults().nominalV() : load.atVolts();
    double byWatts = load.watts() == null ? 0 : load.watts() / volts;
    double byOhms = load.ohms() == null || load.ohms() <= 0 ? 0 : volts / load.ohms();
    return Math.max(
        Math.max(orNone(load.amps()), orNone(load.inrushA())), Math.max(byWatts, byOhms));
  }

  private static double orNone(@Nullable Double figure) {
    return figure == null ? 0 : figure;
  }

  /**
   * Whether a wire is heavy.
   *
   * @param leastMm2 area from which it is heavy whatever it ends on
   */
  boolean is(Wire wire, double leastMm2) {
    Cited area = facts.fitting().sizes().areaMm2(wire).orElse(null);
    return (area != null && area.value() >= leastMm2)
        || ends(new WireEnd(wire, true))
        || ends(new WireEnd(wire, false));
  }

  private boolean ends(WireEnd end) {
    if (end.ref() == null
        || !(facts.wiring().resolve(end.ref()) instanceof Resolution.Found found)) {
      return false;
    }
    return pins.contains(found.point())
        || facts.wiring().meets(found.point()).filter(pins::contains).isPresent();
  }
}
