package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Layout;
import org.tugtest.model.Splice;
import org.tugtest.network.Point;
import org.tugtest.route.Stand;
import org.tugtest.text.NaturalOrder;

/**
 * Where splices are along the layout, and how far from breakouts and from each other. A breakout is
 * a node where at least three segments with wires meet, or where a wire ends in a connector or on a
 * pin.
 */
final class SplicePlaces {
  private static final Comparator<Near<String>> NEAREST =
      Comparator.<Near<String>>comparingDouble(Near::mm)
          .thenComparing(Near::what, NaturalOrder.NATURAL);

  private final Facts facts;
  private final Map<String, List<Layout.Segment>> at = new HashMap<>();
  private final Set<String> contacts = new HashSet<>();
  private final Map<String, List<Placed>> onSegment = new HashMap<>();
  private final Map<String, List<Placed>> onNode = new HashMap<>();
  private final List<Placed> all = new ArrayList<>();

  /** A splice and where it is. */
  record Placed(Splice splice, Stand stand) {}

  /** Something near a place, and how far along the layout. */
  record Near<T>(T what, double mm) {}

  SplicePlaces(Facts facts) {
    this.facts = facts;
    for (Layout.Segment segment : facts.harness().layout().segments().values()) {
      if (!facts.bundles().of(segment.id()).isEmpty() && segment.lengthMm() != null) {
        put(segment.from(), segment);
        put(segment.to(), segment);
      }
    }
    for (Point point : facts.wiring().ends().keySet()) {
      if (point.kind() != Point.Kind.SPLICE
          && facts.routes().standOf(point).orElse(null) instanceof Stand.AtNode node) {
        contacts.add(node.node());
      }
    }
    for (Splice splice : facts.harness().splices().values()) {
      facts
          .routes()
          .standOf(Point.splice(splice.id()))
          .ifPresent(stand -> add(new Placed(splice, stand)));
    }
    onSegment.values().forEach(list -> list.sort(Comparator.comparingDouble(SplicePlaces::offset)));
  }

  private void put(@Nullable String node, Layout.Segment segment) {
    if (node != null) {
      at.computeIfAbsent(node, id -> new ArrayList<>()).add(segment);
    }
  }

  private void add(Placed placed) {
    all.add(placed);
    if (placed.stand() instanceof Stand.OnSegment on) {
      onSegment.computeIfAbsent(on.segment(), id -> new ArrayList<>()).add(placed);
    } else {
      String node = ((Stand.AtNode) placed.stand()).node();
      onNode.computeIfAbsent(node, id -> new ArrayList<>()).add(placed);
    }
  }

  private static double offset(Placed placed) {
    return placed.stand() instanceof Stand.OnSegment on ? on.offsetMm() : 0;
  }

  List<Placed> all() {
    return all;
  }

  private boolean breakout(String node) {
    return at.getOrDefault(node, List.of()).size() >= 3 || contacts.contains(node);
  }

  /** The breakouts nearer than {@code within}, the nearest first. */
  List<Near<String>> breakouts(Placed from, double within) {
    List<Near<String>> found = new ArrayList<>();
    for (Near<String> node : nodes(from.stand(), within)) {
      if (breakout(node.what())) {
        found.add(node);
      }
    }
    return found;
  }

  /** Other splices nearer than {@code within}, the nearest first. */
  List<Near<Placed>> splices(Placed from, double within) {
    Map<Placed, Double> near = new HashMap<>();
    if (from.stand() instanceof Stand.OnSegment on) {
      collect(near, on.segment(), on.offsetMm(), within);
    }
    for (Near<String> node : nodes(from.stand(), within)) {
      for (Placed other : onNode.getOrDefault(node.what(), List.of())) {
        near.merge(other, node.mm(), Math::min);
      }
      for (Layout.Segment segment : at.getOrDefault(node.what(), List.of())) {
        Double length = segment.lengthMm();
        if (length != null && node.what().equals(segment.from())) {
          collect(near, segment.id(), -node.mm(), within);
        }
        if (length != null && node.what().equals(segment.to())) {
          collect(near, segment.id(), length + node.mm(), within);
        }
      }
    }
    near.remove(from);
    List<Near<Placed>> sorted = new ArrayList<>();
    near.forEach((other, mm) -> sorted.add(new Near<>(other, mm)));
    sorted.sort(
        Comparator.<Near<Placed>>comparingDouble(Near::mm)
            .thenComparing(one -> one.what().splice().id(), NaturalOrder.NATURAL));
    return sorted;
  }

  /** Splices on a segment nearer to {@code offset} than {@code within}; it may lie outside. */
  private void collect(Map<Placed, Double> near, String segment, double offset, double within) {
    for (Placed other : onSegment.getOrDefault(segment, List.of())) {
      double mm = Math.abs(offset(other) - offset);
      if (mm < within) {
        near.merge(other, mm, Math::min);
      }
    }
  }

  /** The nodes nearer than {@code within} along segments with wires. */
  private List<Near<String>> nodes(Stand from, double within) {
    Map<String, Double> reached = new HashMap<>();
    PriorityQueue<Near<String>> open = new PriorityQueue<>(NEAREST);
    if (from instanceof Stand.AtNode node) {
      open.add(new Near<>(node.node(), 0));
    } else {
      Stand.OnSegment on = (Stand.OnSegment) from;
      Layout.Segment segment = facts.harness().layout().segments().get(on.segment());
      if (segment != null && segment.lengthMm() != null) {
        open(open, segment.from(), on.offsetMm());
        open(open, segment.to(), segment.lengthMm() - on.offsetMm());
      }
    }
    while (!open.isEmpty()) {
      Near<String> next = open.remove();
      if (next.mm() >= within || reached.containsKey(next.what())) {
        continue;
      }
      reached.put(next.what(), next.mm());
      for (Layout.Segment segment : at.getOrDefault(next.what(), List.of())) {
        Double length = segment.lengthMm();
        String other = next.what().equals(segment.from()) ? segment.to() : segment.from();
        if (length != null) {
          open(open, other, next.mm() + length);
        }
      }
    }
    List<Near<String>> sorted = new ArrayList<>();
    reached.forEach((node, mm) -> sorted.add(new Near<>(node, mm)));
    sorted.sort(NEAREST);
    return sorted;
  }

  private static void open(PriorityQueue<Near<String>> open, @Nullable String node, double mm) {
    if (node != null) {
      open.add(new Near<>(node, mm));
    }
  }
}
