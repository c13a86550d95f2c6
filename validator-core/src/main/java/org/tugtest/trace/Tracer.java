package org.tugtest.trace;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Group;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Mate;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Nearest;
import org.tugtest.text.Place;

/** Answers "what is on this?" for one harness. */
public final class Tracer {
  private static final Set<String> SECTIONS =
      Set.of("connectors", "devices", "groups", "splices", "wires");
  private final Facts facts;
  private final Harness harness;
  private final Sayings sayings;

  /** A tracer of this harness. */
  public Tracer(Facts facts) {
    this.facts = facts;
    this.harness = facts.harness();
    this.sayings = new Sayings(facts);
  }

  /**
   * Everything on a thing, both ways.
   *
   * @param thing a cavity or pin ({@code R1:3}), a wire, connector, device, splice or group by its
   *     id, a port or element ({@code ECU.A}); or the place string of one ({@code wires/W1})
   * @return empty when the harness has no such thing
   */
  public Optional<List<TraceLine>> trace(String thing) {
    Ref ref = Ref.parse(withoutSection(thing));
    String owner = ref.owner();
    String member = ref.member();
    if (ref.pin() != null) {
      return facts.wiring().pointOf(ref).filter(this::named).map(this::point);
    }
    if (member != null) {
      return member(owner, member);
    }
    Wire wire = harness.wires().get(owner);
    Group group = harness.groups().get(owner);
    if (wire != null) {
      return Optional.of(wire(wire));
    }
    if (group != null) {
      return Optional.of(group(group));
    }
    if (facts.wiring().splices().contains(owner)) {
      return Optional.of(point(Point.splice(owner)));
    }
    if (facts.wiring().connectors().contains(owner)) {
      return Optional.of(connector(owner));
    }
    return harness.devices().containsKey(owner) ? Optional.of(device(owner)) : Optional.empty();
  }

  /** Whether anything names a contact: in a sketch any could come about by being named. */
  private boolean named(Point point) {
    return facts.network().points().contains(point)
        || facts.wiring().pinsOf(point.owner()).contains(point.name())
        || facts.wiring().cavitiesOf(point.owner()).contains(point.name());
  }

  /** Why there is no such thing and what is near, in one sentence without a full stop. */
  public String notFound(String thing) {
    String text = withoutSection(thing);
    String owner = Ref.parse(text).owner();
    boolean connector = facts.wiring().connectors().contains(owner);
    Collection<String> contacts =
        connector ? facts.wiring().cavitiesOf(owner) : facts.wiring().pinsOf(owner);
    if (text.indexOf(':') >= 0 && !contacts.isEmpty()) {
      return (connector ? "connector " : "device ")
          + owner
          + " has no "
          + text.substring(owner.length() + 1)
          + "; it has "
          + String.join(", ", contacts);
    }
    String near = Nearest.question(text, names());
    return "there is no "
        + text
        + (near.isEmpty()
            ? "; name a contact such as R1:3, or the id of a wire, connector, device or splice"
            : "; " + near);
  }

  private Set<String> names() {
    Set<String> names = new TreeSet<>(NaturalOrder.NATURAL);
    names.addAll(harness.wires().keySet());
    names.addAll(harness.groups().keySet());
    names.addAll(facts.wiring().splices());
    names.addAll(facts.wiring().connectors());
    for (String device : harness.devices().keySet()) {
      names.add(device);
      sayings.elements(device).keySet().forEach(name -> names.add(device + "." + name));
    }
    facts.network().points().forEach(point -> names.add(point.text()));
    return names;
  }

  private static String withoutSection(String thing) {
    String text = thing.strip();
    int slash = text.indexOf('/');
    return slash >= 0 && SECTIONS.contains(text.substring(0, slash))
        ? text.substring(slash + 1)
        : text;
  }

  private List<TraceLine> point(Point point) {
    List<TraceLine> lines = new ArrayList<>();
    String fitted = point.kind() == Point.Kind.CAVITY ? sayings.fitted(point) : "";
    lines.add(
        line(
            0,
            sayings.point(point) + (fitted.isEmpty() ? "" : ", " + fitted),
            point.subject().place()));
    new Branches(facts, sayings, lines).add(point, 1, point);
    if (lines.size() == 1) {
      lines.add(new TraceLine(1, "nothing is on it", null));
    }
    lines.addAll(new SupplyLines(facts, sayings).of(point));
    lines.addAll(new StateLines(facts).of(point));
    return lines;
  }

  private List<TraceLine> wire(Wire wire) {
    List<TraceLine> lines = new ArrayList<>();
    lines.add(
        line(
            0,
            sayings.wire(wire) + (wire.loom() == null ? ", wire" : ", wire of loom " + wire.loom()),
            "wires/" + wire.id()));
    Branches branches = new Branches(facts, sayings, lines);
    Point some = null;
    for (WireEnd end : List.of(new WireEnd(wire, true), new WireEnd(wire, false))) {
      Ref ref = end.ref();
      Optional<Point> at = facts.wiring().pointOf(ref);
      String what =
          ref == null
              ? "nothing"
              : at.map(sayings::point).orElse(ref.text() + ", which is not known");
      lines.add(
          new TraceLine(
              1, end.field() + " " + what, facts.places().of("wires/" + wire.id(), end.field())));
      at.ifPresent(point -> branches.add(point, 2, wire.id()));
      some = some == null ? at.orElse(null) : some;
    }
    if (some != null) {
      lines.addAll(new SupplyLines(facts, sayings).of(some));
    }
    edge(wire.id()).ifPresent(edge -> lines.addAll(new StateLines(facts).of(edge)));
    return lines;
  }

  private List<TraceLine> group(Group group) {
    List<TraceLine> lines = new ArrayList<>();
    lines.add(line(0, "group " + group.id(), "groups/" + group.id()));
    for (String id : group.wires()) {
      Wire wire = harness.wires().get(id);
      lines.add(
          line(
              1,
              wire == null
                  ? id + ", which is not known"
                  : sayings.wire(wire) + " from " + end(wire.from()) + " to " + end(wire.to()),
              "wires/" + id));
    }
    return lines;
  }

  private List<TraceLine> connector(String id) {
    List<TraceLine> lines = new ArrayList<>();
    String mate =
        facts
            .wiring()
            .mating()
            .mateOf(id)
            .map(Mate::text)
            .map(other -> ", plugged into " + other)
            .orElse(", plugged into nothing");
    lines.add(line(0, sayings.connector(id) + mate, "connectors/" + id));
    for (String cavity : facts.wiring().cavitiesOf(id)) {
      Point point = Point.cavity(id, cavity);
      lines.add(line(1, cavity + ": " + contact(point), placeOf(point)));
    }
    return lines;
  }

  private List<TraceLine> device(String id) {
    List<TraceLine> lines = new ArrayList<>();
    lines.add(line(0, sayings.device(id), "devices/" + id));
    for (String pin : facts.wiring().pinsOf(id)) {
      Point point = Point.pin(id, pin);
      lines.add(line(1, pin + ": " + contact(point), placeOf(point)));
    }
    sayings
        .elements(id)
        .forEach(
            (name, element) ->
                lines.add(
                    line(
                        1,
                        sayings.element(id, name, element) + between(element),
                        "devices/" + id + "." + name)));
    return lines;
  }

  private Optional<List<TraceLine>> member(String device, String name) {
    Element element = sayings.elements(device).get(name);
    if (element != null) {
      List<TraceLine> lines = new ArrayList<>();
      lines.add(line(0, sayings.element(device, name, element), "devices/" + device + "." + name));
      Branches branches = new Branches(facts, sayings, lines);
      for (String pin : element.ends()) {
        Point point = Point.pin(device, pin);
        lines.add(line(1, sayings.point(point), point.subject().place()));
        branches.add(point, 2, device + "." + name);
        new SupplyLines(facts, sayings)
            .of(point)
            .forEach(said -> lines.add(new TraceLine(2, said.text(), null)));
      }
      edge(device + "." + name).ifPresent(edge -> lines.addAll(new StateLines(facts).of(edge)));
      return Optional.of(lines);
    }
    @Nullable DeviceType type =
        harness.devices().containsKey(device)
            ? harness.typeOf(harness.devices().get(device))
            : null;
    if (type == null || !type.ports().containsKey(name)) {
      return Optional.empty();
    }
    Place at = facts.places().of("devices/" + device + "." + name);
    return Optional.of(
        facts
            .wiring()
            .mating()
            .connectorAt(device, name)
            .map(this::connector)
            .orElseGet(
                () ->
                    List.of(
                        new TraceLine(
                            0, "port " + device + "." + name + ": nothing is plugged in", at))));
  }

  private Optional<Edge> edge(String text) {
    return facts.network().edges().stream().filter(edge -> edge.text().equals(text)).findFirst();
  }

  private String contact(Point point) {
    List<String> parts = new ArrayList<>();
    for (WireEnd end : facts.wiring().endsAt(point)) {
      parts.add(sayings.wire(end.wire()) + " to " + end(end.other().ref()));
    }
    if (parts.isEmpty() && facts.wiring().meets(point).isEmpty()) {
      return point.kind() == Point.Kind.CAVITY ? "no wire" : "nothing";
    }
    if (parts.isEmpty() && point.kind() == Point.Kind.CAVITY) {
      parts.add("no wire");
    }
    facts.wiring().meets(point).ifPresent(other -> parts.add("meets " + other));
    return String.join("; ", parts);
  }

  private String placeOf(Point point) {
    List<WireEnd> ends = facts.wiring().endsAt(point);
    return ends.isEmpty() ? point.subject().place() : "wires/" + ends.get(0).wire().id();
  }

  private static String between(Element element) {
    return element.ends().isEmpty()
        ? ""
        : element.ends().stream().collect(Collectors.joining(" and ", " between ", ""));
  }

  private static String end(@Nullable Ref ref) {
    return ref == null ? "nothing" : ref.text();
  }

  private TraceLine line(int depth, String text, String place) {
    return new TraceLine(depth, text, facts.places().of(place));
  }
}
