package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** The reference of a sensor runs over a wire or splice that also carries a load's return. */
public final class SensorEarthShared implements Rule {
  private static final String NO_PIN = "its reference is no pin of the harness";
  private static final int NAMED = 6;
  private static final RuleInfo INFO =
      RuleInfo.of("sensor-earth-shared", Heading.LOAD, Level.ERROR)
          .summary("the reference of a sensor shares a wire or splice with a load's return")
          .subjects("analog and pulse signals with a reference")
          .looksFor(
              """
              Analog and pulse signals whose reference is joined to another unit's reference over a
              wire or splice that the return of a load also takes on its way to a source's minus.
              Loads of a device that has a signal on this reference are the sensor's own and do not
              count. A reference pin that is also an end of a load of its own device is no sensor
              reference. Also signals whose reference is wired to an earth point or a supply return
              instead, and comes from there over metal to the reference of the unit that reads them:
              one finding for each unit. A sensor that is bolted to what it is measured against is
              its maker's matter.
              """)
          .why(
              """
              The load's current makes volts along the shared wire, and the control unit takes them
              for a change of temperature, pressure or speed, only while the load works.
              """)
          .remedy(
              """
              Give the load a return of its own to an earth point, and keep the sensor's reference
              for sensors.
              """)
          .basis("Common practice: sensor references carry no power currents.")
          .failing(
              """
              {"format": 1,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
                 "ECU": {"elements": {"temp": {"kind": "signal", "pin": "1", "type": "analog", "reference": "2"},
                                      "bar": {"kind": "link", "a": "2", "b": "31"}}},
                 "SENSOR": {"elements": {"out": {"kind": "signal", "pin": "1", "type": "analog", "reference": "2"}}},
                 "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 8}}}},
               "splices": {"S1": {}},
               "wires": {"W1": {"from": "ECU:2", "to": "S1"}, "W2": {"from": "S1", "to": "SENSOR:2"},
                         "W3": {"from": "S1", "to": "FAN:2"}, "W4": {"from": "ECU:31", "to": "BAT:-"},
                         "W5": {"from": "ECU:1", "to": "SENSOR:1"}}}
              """)
          .passing(
              """
              {"format": 1,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
                 "ECU": {"elements": {"temp": {"kind": "signal", "pin": "1", "type": "analog", "reference": "2"},
                                      "bar": {"kind": "link", "a": "2", "b": "31"}}},
                 "SENSOR": {"elements": {"out": {"kind": "signal", "pin": "1", "type": "analog", "reference": "2"}}},
                 "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 8}}}},
               "wires": {"W1": {"from": "ECU:2", "to": "SENSOR:2"}, "W3": {"from": "FAN:2", "to": "BAT:-"},
                         "W4": {"from": "ECU:31", "to": "BAT:-"}, "W5": {"from": "ECU:1", "to": "SENSOR:1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** A load and what it shares with references. */
  private static final class Sharing {
    final Set<Subject> signals = new TreeSet<>();
    final Set<Subject> things = new LinkedHashSet<>();
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<Point, List<Elements.In<Element.Signal>>> byNet = new LinkedHashMap<>();
    List<Elements.In<Element.Signal>> measured =
        Elements.of(facts, Element.Signal.class).stream()
            .filter(SensorEarthShared::isMeasured)
            .toList();
    Set<Subject> found = new LinkedHashSet<>(borrowed(facts, measured, ledger));
    for (Elements.In<Element.Signal> signal : measured) {
      if (!found.contains(signal.subject())) {
        Point net = Elements.net(facts, signal.device(), signal.element().reference()).orElse(null);
        if (net == null) {
          ledger.notJudged(signal.subject(), NO_PIN);
        } else if (isOwnReturn(signal)) {
          ledger.fine();
        } else {
          byNet.computeIfAbsent(net, key -> new ArrayList<>()).add(signal);
        }
      }
    }
    Map<Edge.OfElement, Sharing> shared = new LinkedHashMap<>();
    Map<Point, List<Edge.OfElement>> loads = loadsByNet(facts);
    byNet.forEach((net, signals) -> gather(facts, loads, net, signals, shared));
    shared.forEach(
        (load, sharing) -> {
          found.addAll(sharing.signals);
          ledger.finding(finding(load, sharing), sharing.signals);
        });
    byNet.values().stream()
        .flatMap(List::stream)
        .filter(signal -> !found.contains(signal.subject()))
        .forEach(signal -> ledger.fine());
  }

  private static Set<Subject> borrowed(
      Facts facts, List<Elements.In<Element.Signal>> measured, Ledger ledger) {
    List<Elements.In<Element.Signal>> sensors =
        measured.stream().filter(signal -> !isOwnReturn(signal)).toList();
    return new BorrowedReference(facts, sensors).judge(ledger);
  }

  private static boolean isMeasured(Elements.In<Element.Signal> signal) {
    Element.Signal.Type type = signal.element().type();
    return signal.element().reference() != null
        && (type == Element.Signal.Type.ANALOG || type == Element.Signal.Type.PULSE);
  }

  private static boolean isOwnReturn(Elements.In<Element.Signal> signal) {
    return signal.type().elements().values().stream()
        .anyMatch(
            other ->
                other instanceof Element.Load load
                    && load.ends().contains(signal.element().reference()));
  }

  /** The loads with an end in each net, by the net's first point. */
  private static Map<Point, List<Edge.OfElement>> loadsByNet(Facts facts) {
    Map<Point, List<Edge.OfElement>> loads = new HashMap<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Load) {
        for (Point end : List.of(edge.a(), edge.b())) {
          Elements.net(facts, end)
              .ifPresent(net -> loads.computeIfAbsent(net, key -> new ArrayList<>()).add(inside));
        }
      }
    }
    return loads;
  }

  private static void gather(
      Facts facts,
      Map<Point, List<Edge.OfElement>> loadsByNet,
      Point net,
      List<Elements.In<Element.Signal>> signals,
      Map<Edge.OfElement, Sharing> shared) {
    Set<String> own = new LinkedHashSet<>();
    signals.forEach(signal -> own.add(signal.device()));
    List<Edge.OfElement> strangers =
        loadsByNet.getOrDefault(net, List.of()).stream()
            .filter(load -> !own.contains(load.device()))
            .toList();
    if (strangers.isEmpty()) {
      return;
    }
    Map<Subject, Set<Subject>> signalsOver = signalsOver(facts, signals);
    for (Edge.OfElement load : strangers) {
      Point end =
          Elements.net(facts, load.a()).filter(net::equals).isPresent() ? load.a() : load.b();
      Path way = facts.sides().back().path(end).orElse(null);
      for (Subject thing : way == null ? List.<Subject>of() : things(way, facts, net)) {
        Set<Subject> over = signalsOver.getOrDefault(thing, Set.of());
        if (!over.isEmpty()) {
          Sharing sharing = shared.computeIfAbsent(load, key -> new Sharing());
          sharing.signals.addAll(over);
          sharing.things.add(thing);
        }
      }
    }
  }

  /** Which signals are measured over each wire and splice of one net. */
  private static Map<Subject, Set<Subject>> signalsOver(
      Facts facts, List<Elements.In<Element.Signal>> signals) {
    Map<Subject, Set<Subject>> over = new HashMap<>();
    Point first = reference(signals.get(0));
    Reach reach =
        Reach.from(
            facts.network(), List.of(first), (edge, from) -> !(edge instanceof Edge.OfElement));
    for (Elements.In<Element.Signal> signal : signals) {
      Point end = reference(signal);
      for (Subject thing : reach.path(end).map(SensorEarthShared::things).orElse(List.of())) {
        Set<Subject> its = over.computeIfAbsent(thing, key -> new LinkedHashSet<>());
        its.add(signal.subject());
        signals.stream()
            .filter(other -> reference(other).equals(first))
            .forEach(other -> its.add(other.subject()));
      }
      for (Edge edge : facts.network().edgesAt(end)) {
        if (edge instanceof Edge.OfWire && signals.size() == 1) {
          over.computeIfAbsent(edge.subject(), key -> new LinkedHashSet<>()).add(signal.subject());
        }
      }
    }
    return over;
  }

  private static Point reference(Elements.In<Element.Signal> signal) {
    return Point.pin(signal.device(), String.valueOf(signal.element().reference()));
  }

  /** The wires and splices of a way. */
  static List<Subject> things(Path way) {
    List<Subject> things = new ArrayList<>();
    way.edges().stream()
        .filter(Edge.OfWire.class::isInstance)
        .forEach(edge -> things.add(edge.subject()));
    way.points().stream()
        .filter(point -> point.kind() == Point.Kind.SPLICE)
        .forEach(point -> things.add(point.subject()));
    return things;
  }

  /** The wires and splices of a way that are in one net. */
  private static List<Subject> things(Path way, Facts facts, Point net) {
    List<Subject> things = new ArrayList<>();
    for (Edge edge : way.edges()) {
      boolean inside = Elements.net(facts, edge.a()).filter(net::equals).isPresent();
      if (edge instanceof Edge.OfWire && inside) {
        things.add(edge.subject());
      }
    }
    for (Point point : way.points()) {
      if (point.kind() == Point.Kind.SPLICE
          && Elements.net(facts, point).filter(net::equals).isPresent()) {
        things.add(point.subject());
      }
    }
    return things;
  }

  private static Finding.Draft finding(Edge.OfElement load, Sharing sharing) {
    List<String> names = sharing.signals.stream().map(Subject::id).toList();
    List<String> over = sharing.things.stream().map(Subject::id).toList();
    Finding.Draft draft =
        Finding.on(load.subject())
            .message(
                "the return of load "
                    + load.text()
                    + " takes "
                    + Series.and(over, NAMED)
                    + ", over which "
                    + Series.and(names, NAMED)
                    + (names.size() == 1 ? " is" : " are")
                    + " measured")
            .remedy("give " + load.text() + " a return of its own to an earth point")
            .basis(Basis.COMMON_PRACTICE);
    sharing.things.forEach(draft::and);
    sharing.signals.forEach(draft::and);
    return draft;
  }
}
