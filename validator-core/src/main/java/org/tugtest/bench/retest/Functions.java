package org.tugtest.bench.retest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tugtest.bench.rework.Touched;
import org.tugtest.facts.Facts;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Ref;
import org.tugtest.model.State;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.text.NaturalOrder;

/**
 * Which elements hang on what a change touched: loads and coils whose shortest way from plus or to
 * minus runs over a touched wire, what such a coil switches, and signals on a touched net.
 */
final class Functions {
  private final Facts facts;
  private final Touched touched;
  private final Map<String, Set<String>> why = new TreeMap<>(NaturalOrder.NATURAL);
  private final Map<String, Set<String>> passed = new TreeMap<>();

  private Functions(Facts facts, Touched touched) {
    this.facts = facts;
    this.touched = touched;
  }

  static List<Function> of(Facts facts, Touched touched) {
    if (touched.wires().isEmpty()) {
      return List.of();
    }
    Functions functions = new Functions(facts, touched);
    functions.powered();
    functions.switched();
    functions.signals();
    List<Function> all = new ArrayList<>();
    functions.why.forEach(
        (element, reasons) ->
            all.add(new Function(element, List.copyOf(reasons), functions.states(element))));
    return all;
  }

  private void powered() {
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && (inside.element() instanceof Element.Load
              || inside.element() instanceof Element.Coil)) {
        for (Point end : List.of(inside.a(), inside.b())) {
          look(inside.text(), facts.sides().feed(), end);
          look(inside.text(), facts.sides().back(), end);
        }
      }
    }
  }

  private void look(String element, Reach side, Point end) {
    List<Edge> way = side.path(end).map(Path::edges).orElse(List.of());
    for (Edge edge : way) {
      if (edge instanceof Edge.OfWire wire && touched.wires().contains(wire.wire().id())) {
        note(element, wire.wire().id());
      } else if (edge instanceof Edge.OfElement contact
          && contact.element() instanceof Element.Contact its
          && its.coil() != null) {
        passed
            .computeIfAbsent(element, none -> new TreeSet<>())
            .add(contact.device() + "." + its.coil());
      }
    }
  }

  /** What a coil switches hangs on the coil, and so on for coils that switch coils. */
  private void switched() {
    for (boolean more = true; more; ) {
      more = false;
      for (Map.Entry<String, Set<String>> entry : passed.entrySet()) {
        for (String coil : entry.getValue()) {
          if (why.containsKey(coil) && !why.containsKey(entry.getKey())) {
            note(entry.getKey(), coil);
            more = true;
          }
        }
      }
    }
  }

  private void signals() {
    Set<String> nets = new TreeSet<>();
    for (Point point : touched.points()) {
      facts.nets().of(point).ifPresent(net -> nets.add(net.name()));
    }
    for (Device device : facts.harness().devices().values()) {
      DeviceType type = facts.harness().typeOf(device);
      if (type == null) {
        continue;
      }
      type.elements()
          .forEach(
              (name, element) -> {
                if (element instanceof Element.Signal signal) {
                  for (String pin : signal.ends()) {
                    facts
                        .nets()
                        .of(Point.pin(device.id(), pin))
                        .filter(net -> nets.contains(net.name()))
                        .ifPresent(
                            net ->
                                net.wires().stream()
                                    .filter(wire -> touched.wires().contains(wire.id()))
                                    .forEach(wire -> note(device.id() + "." + name, wire.id())));
                  }
                }
              });
    }
  }

  private void note(String element, String reason) {
    why.computeIfAbsent(element, none -> new TreeSet<>(NaturalOrder.NATURAL)).add(reason);
  }

  private List<String> states(String element) {
    Ref ref = Ref.parse(element);
    return facts.harness().states().values().stream()
        .filter(
            state ->
                state.on().stream()
                    .anyMatch(
                        on ->
                            on.equals(ref)
                                || (on.member() == null
                                    && on.pin() == null
                                    && on.owner().equals(ref.owner()))))
        .map(State::id)
        .toList();
  }
}
