package org.tugtest.compare.consequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.entry.Renames;
import org.tugtest.model.Wire;
import org.tugtest.network.Net;
import org.tugtest.network.Point;

/** The nets that join the same device pins before and after, whatever they are made of. */
final class StayedNets {
  private final Map<String, Point> netOfWire = new HashMap<>();
  private final List<List<Pin>> all = new ArrayList<>();

  /**
   * A device pin of a net that stayed.
   *
   * @param before as it was called
   * @param after as it is called now
   */
  record Pin(Point before, Point after) {}

  StayedNets(Comparison comparison) {
    Renames back = comparison.matches().backwards();
    for (Net net : comparison.after().facts().nets().all()) {
      List<Pin> pins =
          net.points().stream()
              .filter(point -> point.kind() == Point.Kind.PIN)
              .map(pin -> new Pin(renamed(pin, back), pin))
              .toList();
      Set<Point> renamed = new HashSet<>();
      pins.forEach(pin -> renamed.add(pin.before()));
      if (!pins.isEmpty()
          && comparison
              .before()
              .facts()
              .nets()
              .of(pins.get(0).before())
              .filter(was -> pins(was).equals(renamed))
              .isPresent()) {
        all.add(pins);
        for (Wire wire : net.wires()) {
          netOfWire.put(wire.id(), pins.get(0).after());
        }
      }
    }
  }

  private static Set<Point> pins(Net net) {
    Set<Point> pins = new HashSet<>();
    net.points().stream().filter(point -> point.kind() == Point.Kind.PIN).forEach(pins::add);
    return pins;
  }

  private static Point renamed(Point point, Renames back) {
    return new Point(point.kind(), back.owner(point.owner()), point.name());
  }

  /** The pins of each. */
  List<List<Pin>> all() {
    return all;
  }

  /**
   * Of the wires of each net the one that moved most, with how many others moved too; wires of nets
   * that did not stay each by itself.
   *
   * @param wires what moved, by the id that the wire has now
   */
  List<Moved> worst(Map<String, Moved> wires) {
    Map<String, List<Moved>> byNet = new LinkedHashMap<>();
    wires.forEach(
        (wire, moved) -> {
          Point net = netOfWire.get(wire);
          String key = net == null ? "wire " + wire : net.text();
          byNet.computeIfAbsent(key, none -> new ArrayList<>()).add(moved);
        });
    List<Moved> worst = new ArrayList<>();
    for (List<Moved> net : byNet.values()) {
      Moved first = Moved.sorted(net).get(0);
      int others = net.size() - 1;
      worst.add(
          others == 0
              ? first
              : first.with(
                  "and "
                      + others
                      + (others == 1 ? " other wire" : " other wires")
                      + " of its net by no more"));
    }
    return Moved.sorted(worst);
  }
}
