package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.rule.Ledger;
import org.tugtest.text.Series;

/**
 * References of sensors that come to the reference of the unit that reads them by a detour over
 * metal alone, on which loads return: an earth point, or the unit's own supply return.
 */
final class BorrowedReference {
  private static final int NAMED = 4;
  private final Facts facts;
  private final Map<Point, List<Elements.In<Element.Signal>>> byPin = new LinkedHashMap<>();

  /**
   * The references.
   *
   * @param measured the signals that are measured
   */
  BorrowedReference(Facts facts, List<Elements.In<Element.Signal>> measured) {
    this.facts = facts;
    for (Elements.In<Element.Signal> signal : measured) {
      Elements.net(facts, signal.device(), signal.element().pin())
          .ifPresent(net -> byPin.computeIfAbsent(net, none -> new ArrayList<>(2)).add(signal));
    }
  }

  /** A sensor's signal, what reads it, and the way between their references. */
  private record Borrowed(
      Elements.In<Element.Signal> sensor, Elements.In<Element.Signal> unit, Path way) {}

  /** Tells of them, one finding for each unit; returns the signals that are told of. */
  Set<Subject> judge(Ledger ledger) {
    Map<String, List<Borrowed>> byUnit = new LinkedHashMap<>();
    for (List<Elements.In<Element.Signal>> pair : byPin.values()) {
      if (pair.size() == 2 && !pair.get(0).device().equals(pair.get(1).device())) {
        boolean first = isSensor(pair.get(0), pair.get(1));
        Elements.In<Element.Signal> sensor = pair.get(first ? 0 : 1);
        Elements.In<Element.Signal> unit = pair.get(first ? 1 : 0);
        Path way = detour(sensor, unit);
        if (way != null) {
          byUnit
              .computeIfAbsent(unit.device(), none -> new ArrayList<>())
              .add(new Borrowed(sensor, unit, way));
        }
      }
    }
    Set<Subject> told = new LinkedHashSet<>();
    byUnit.values().forEach(all -> told.addAll(tell(all, ledger)));
    return told;
  }

  /** Of two that are joined the one in the device that holds less is the sensor. */
  private static boolean isSensor(
      Elements.In<Element.Signal> one, Elements.In<Element.Signal> other) {
    return one.type().elements().size() <= other.type().elements().size();
  }

  private static Point reference(Elements.In<Element.Signal> signal) {
    return Point.pin(signal.device(), String.valueOf(signal.element().reference()));
  }

  /** The way over metal where wires alone do not join the references; null where they do. */
  private @Nullable Path detour(
      Elements.In<Element.Signal> sensor, Elements.In<Element.Signal> unit) {
    Point from = reference(sensor);
    Point to = reference(unit);
    Optional<Point> here = Elements.net(facts, from);
    Optional<Point> there = Elements.net(facts, to);
    if (here.isEmpty() || there.isEmpty() || here.equals(there)) {
      return null;
    }
    return Reach.from(
            facts.network(),
            List.of(from),
            (edge, at) ->
                !(edge instanceof Edge.OfElement inside)
                    || inside.element() instanceof Element.Link)
        .path(to)
        .filter(
            way -> way.edges().stream().findFirst().filter(BorrowedReference::isLaid).isPresent())
        .orElse(null);
  }

  /** Whether an edge is a wire or a plug, and not metal that a sensor is bolted to. */
  private static boolean isLaid(Edge edge) {
    return edge instanceof Edge.OfWire || edge instanceof Edge.OfMating;
  }

  private Set<Subject> tell(List<Borrowed> all, Ledger ledger) {
    Set<Subject> over = new LinkedHashSet<>();
    Set<Subject> signals = new LinkedHashSet<>();
    Set<String> own = new LinkedHashSet<>();
    for (Borrowed one : all) {
      over.addAll(SensorEarthShared.things(one.way()));
      signals.add(one.sensor().subject());
      own.add(one.sensor().device());
      own.add(one.unit().device());
    }
    Set<Subject> shared = new LinkedHashSet<>();
    Set<Subject> loads = new LinkedHashSet<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement user && isUser(user) && !own.contains(user.device())) {
        Stream.of(user.a(), user.b())
            .flatMap(end -> facts.sides().back().path(end).stream())
            .findFirst()
            .map(SensorEarthShared::things)
            .orElse(List.of())
            .stream()
            .filter(over::contains)
            .forEach(
                thing -> {
                  shared.add(thing);
                  loads.add(user.subject());
                });
      }
    }
    if (shared.isEmpty()) {
      return Set.of();
    }
    Elements.In<Element.Signal> unit = all.get(0).unit();
    Finding.Draft draft =
        Finding.on(signals.iterator().next())
            .kind("borrowed")
            .message(
                "the reference of "
                    + names(signals)
                    + " comes to "
                    + reference(unit).text()
                    + " by way of "
                    + names(shared)
                    + ", where "
                    + names(loads)
                    + (loads.size() == 1 ? " returns" : " return"))
            .remedy(
                "lead the reference to "
                    + reference(unit).text()
                    + " by a wire that nothing else returns through")
            .basis(Basis.COMMON_PRACTICE)
            .detail(all.get(0).way().text());
    shared.forEach(draft::and);
    signals.forEach(draft::and);
    loads.forEach(draft::and);
    ledger.finding(draft, signals);
    return signals;
  }

  private static boolean isUser(Edge.OfElement edge) {
    return edge.element() instanceof Element.Load || edge.element() instanceof Element.Coil;
  }

  private static String names(Set<Subject> subjects) {
    return Series.and(subjects.stream().map(Subject::id).toList(), NAMED);
  }
}
