package org.tugtest.bench.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;

/** All single faults of a harness that the what-if table looks at. */
final class Faults {
  private final Facts facts;
  private final Network network;
  private final List<Fault> faults = new ArrayList<>();

  private Faults(Facts facts) {
    this.facts = facts;
    this.network = facts.network();
  }

  static List<Fault> of(Facts facts) {
    Faults all = new Faults(facts);
    all.addElements();
    all.addConnectors();
    all.addEarths();
    all.addWires();
    all.faults.sort(Comparator.comparing(Fault::kind).thenComparing(Fault::subject));
    return List.copyOf(all.faults);
  }

  private void addElements() {
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfElement inside) {
        Element element = inside.element();
        if (element instanceof Element.Fuse fuse && inside.fitted()) {
          String what =
              fuse.electronic()
                  ? "trip " + edge.text() + " open"
                  : "fuse " + edge.text() + " blown";
          add(Fault.Kind.FUSE_BLOWN, edge.subject(), what, List.of(edge));
        } else if (element instanceof Element.Diode) {
          add(
              Fault.Kind.DIODE_SHORTED,
              edge.subject(),
              "diode " + edge.text() + " shorted",
              List.of(edge));
        } else if (element instanceof Element.Contact contact && contact.isolator()) {
          add(
              Fault.Kind.ISOLATOR_WELDED,
              edge.subject(),
              "isolator contact " + edge.text() + " welded",
              List.of(edge));
        }
      }
    }
  }

  /**
   * The cavities of one connector that meet something; of a pair the first half stands for both.
   */
  private void addConnectors() {
    Map<String, List<Edge>> mated = new LinkedHashMap<>();
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfMating) {
        mated.computeIfAbsent(edge.a().owner(), connector -> new ArrayList<>()).add(edge);
      }
    }
    mated.forEach(
        (connector, edges) -> {
          String other = edges.get(0).b().owner();
          add(
              Fault.Kind.CONNECTOR_OFF,
              Subject.connector(connector),
              connector + " off " + other,
              edges);
        });
  }

  /** Studs and faces on the return side; the source's own terminals are wires' ends. */
  private void addEarths() {
    for (Device device : facts.harness().devices().values()) {
      DeviceType type = facts.harness().typeOf(device);
      if (type == null) {
        continue;
      }
      for (Map.Entry<String, DeviceType.Pin> pin : type.pins().entrySet()) {
        Point point = Point.pin(device.id(), pin.getKey());
        if (isEarth(pin.getValue()) && network.index(point) >= 0) {
          List<Edge> held =
              network.edgesAt(point).stream()
                  .filter(edge -> !(edge instanceof Edge.OfElement))
                  .toList();
          boolean back =
              facts.sides().back().reaches(point) && !facts.sides().feed().reaches(point);
          if (back && !held.isEmpty()) {
            add(Fault.Kind.EARTH_OPEN, point.subject(), "earth " + point.text() + " loose", held);
          }
        }
      }
    }
  }

  private static boolean isEarth(DeviceType.Pin pin) {
    String family = pin.family();
    return family != null && (family.startsWith("stud") || family.equals("face"));
  }

  private void addWires() {
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfWire) {
        add(Fault.Kind.WIRE_OPEN, edge.subject(), "wire " + edge.text() + " broken", List.of(edge));
      }
    }
  }

  private void add(Fault.Kind kind, Subject subject, String text, List<Edge> edges) {
    faults.add(new Fault(kind, subject, text, edges));
  }
}
