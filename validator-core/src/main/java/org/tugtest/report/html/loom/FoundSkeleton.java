package org.tugtest.report.html.loom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Layout;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.network.Mate;
import org.tugtest.network.Point;
import org.tugtest.route.Piece;
import org.tugtest.text.NaturalOrder;

/**
 * The skeleton of a harness and the runs of its wires: of its layout when it has segments, else of
 * what its wires join.
 *
 * @param unplaced segments that lack an end and cannot be drawn
 */
record FoundSkeleton(Skeleton skeleton, Runs runs, List<String> unplaced) {

  static FoundSkeleton of(Facts facts) {
    return facts.harness().layout().segments().isEmpty() ? ofWires(facts) : ofLayout(facts);
  }

  private static FoundSkeleton ofLayout(Facts facts) {
    Layout layout = facts.harness().layout();
    Map<String, Set<String>> here = here(facts);
    Map<String, Integer> knots = new LinkedHashMap<>();
    Set<String> ids = new LinkedHashSet<>(layout.nodes().keySet());
    List<String> unplaced = new ArrayList<>();
    List<Layout.Segment> drawn = new ArrayList<>();
    for (Layout.Segment segment : layout.segments().values()) {
      if (segment.from() == null || segment.to() == null) {
        unplaced.add(segment.id());
      } else {
        drawn.add(segment);
        ids.add(segment.from());
        ids.add(segment.to());
      }
    }
    List<Skeleton.Knot> places = new ArrayList<>();
    for (String id : ids) {
      Layout.Node node = layout.nodes().get(id);
      knots.put(id, places.size());
      places.add(
          new Skeleton.Knot(
              places.size(),
              id,
              List.copyOf(here.getOrDefault(id, Set.of())),
              node == null ? List.of() : node.xyzMm()));
    }
    Map<String, Integer> numbers = new LinkedHashMap<>();
    drawn.forEach(segment -> numbers.put(segment.id(), numbers.size()));
    Runs runs = routed(facts, numbers);
    Map<Integer, List<String>> wires = runs.wires();
    Map<String, List<Skeleton.Along>> splices = along(facts);
    List<Skeleton.Arm> arms = new ArrayList<>();
    for (Layout.Segment segment : drawn) {
      Double mm = segment.lengthMm();
      arms.add(
          new Skeleton.Arm(
              arms.size(),
              segment.id(),
              knots.getOrDefault(segment.from(), 0),
              knots.getOrDefault(segment.to(), 0),
              mm == null ? Double.NaN : mm,
              wires.getOrDefault(arms.size(), List.of()).size(),
              splices.getOrDefault(segment.id(), List.of())));
    }
    return new FoundSkeleton(
        new Skeleton(true, places, arms), runs, Collections.unmodifiableList(unplaced));
  }

  private static Runs routed(Facts facts, Map<String, Integer> numbers) {
    Runs.Builder runs = new Runs.Builder();
    facts
        .routes()
        .all()
        .forEach(
            (wire, route) -> {
              List<Integer> arms = new ArrayList<>();
              for (Piece piece : route.pieces()) {
                Integer arm = numbers.get(piece.segment());
                if (arm != null) {
                  arms.add(arm);
                }
              }
              runs.add(wire, arms);
            });
    return runs.build();
  }

  private static Map<String, List<Skeleton.Along>> along(Facts facts) {
    Map<String, List<Skeleton.Along>> along = new TreeMap<>();
    for (Splice splice : facts.harness().splices().values()) {
      String on = splice.on();
      Layout.Segment segment = on == null ? null : facts.harness().layout().segments().get(on);
      Double mm = segment == null ? null : segment.lengthMm();
      if (on != null && mm != null && mm > 0) {
        double at = splice.offsetMm() == null ? mm / 2 : splice.offsetMm();
        along
            .computeIfAbsent(on, none -> new ArrayList<>())
            .add(new Skeleton.Along(splice.id(), Math.max(0, Math.min(1, at / mm))));
      }
    }
    return along;
  }

  /** What stands at each node: plugged pairs as one, devices that no pair names, splices. */
  private static Map<String, Set<String>> here(Facts facts) {
    Map<String, Set<String>> here = new LinkedHashMap<>();
    Set<String> told = new LinkedHashSet<>();
    for (String connector : facts.wiring().connectors()) {
      String node = facts.wiring().nodeOf(connector).orElse(null);
      Mate mate = facts.wiring().mating().mateOf(connector).orElse(null);
      if (node != null) {
        put(here, node, pair(connector, mate));
        if (mate instanceof Mate.OfPort port) {
          told.add(node + "\n" + port.device());
        }
      }
    }
    for (Device device : facts.harness().devices().values()) {
      String at = device.at();
      if (at != null && !told.contains(at + "\n" + device.id())) {
        put(here, at, device.id());
      }
      DeviceType type = facts.harness().typeOf(device);
      if (type != null) {
        type.pins()
            .forEach(
                (name, pin) -> {
                  if (pin.at() != null && !pin.at().equals(at)) {
                    put(here, pin.at(), device.id() + ":" + name);
                  }
                });
      }
    }
    for (Splice splice : facts.harness().splices().values()) {
      if (splice.at() != null) {
        put(here, splice.at(), splice.id());
      }
    }
    return here;
  }

  private static String pair(String connector, @Nullable Mate mate) {
    if (mate instanceof Mate.OfConnector other) {
      boolean first = NaturalOrder.NATURAL.compare(connector, other.connector()) <= 0;
      return first ? connector + "=" + other.connector() : other.connector() + "=" + connector;
    }
    return mate instanceof Mate.OfPort port ? connector + "=" + port.device() : connector;
  }

  private static void put(Map<String, Set<String>> here, String node, String thing) {
    here.computeIfAbsent(node, none -> new LinkedHashSet<>()).add(thing);
  }

  private static FoundSkeleton ofWires(Facts facts) {
    Map<String, Integer> knots = new LinkedHashMap<>();
    Map<List<Integer>, Integer> arms = new LinkedHashMap<>();
    Map<List<Integer>, Integer> counts = new LinkedHashMap<>();
    Runs.Builder runs = new Runs.Builder();
    for (Wire wire : facts.harness().wires().values()) {
      Point from = facts.wiring().pointOf(wire.from()).orElse(null);
      Point to = facts.wiring().pointOf(wire.to()).orElse(null);
      if (from != null && to != null) {
        int a = knots.computeIfAbsent(pairOf(facts, from), none -> knots.size());
        int b = knots.computeIfAbsent(pairOf(facts, to), none -> knots.size());
        List<Integer> ends = List.of(Math.min(a, b), Math.max(a, b));
        counts.merge(ends, 1, Integer::sum);
        runs.add(wire.id(), List.of(arms.computeIfAbsent(ends, none -> arms.size())));
      }
    }
    List<String> ids = List.copyOf(knots.keySet());
    List<Skeleton.Knot> places = new ArrayList<>();
    ids.forEach(id -> places.add(new Skeleton.Knot(places.size(), id, List.of(), List.of())));
    List<Skeleton.Arm> drawn = new ArrayList<>();
    for (List<Integer> ends : arms.keySet()) {
      String id = ids.get(ends.get(0)) + " – " + ids.get(ends.get(1));
      drawn.add(
          new Skeleton.Arm(
              drawn.size(),
              id,
              ends.get(0),
              ends.get(1),
              Double.NaN,
              counts.getOrDefault(ends, 0),
              List.of()));
    }
    return new FoundSkeleton(new Skeleton(false, places, drawn), runs.build(), List.of());
  }

  private static String pairOf(Facts facts, Point point) {
    if (point.kind() != Point.Kind.CAVITY) {
      return point.owner();
    }
    Mate mate = facts.wiring().mating().mateOf(point.owner()).orElse(null);
    return mate instanceof Mate.OfPort port ? port.device() : pair(point.owner(), mate);
  }
}
