package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.network.Net;
import org.tugtest.network.Point;
import org.tugtest.route.Piece;

/**
 * Branches that run back along the way they came: from a pin that feeds or takes (fuse, contact,
 * source, bus bar) over a splice to a load. Two loads on one splice may well lie on the same side
 * of it, so only ways between a load and what it hangs on are looked at; of several such pins the
 * one from which least is run back.
 */
final class BranchReturns {
  /** Pins of one net that are searched from; further ones are left out. */
  private static final int MOST = 20;

  private final Facts facts;

  private final Map<Point, List<Chain.Run>> at = new TreeMap<>();
  private final Map<Point, Boolean> loads = new HashMap<>();

  /**
   * A branch that runs back.
   *
   * @param load the pin of the load
   * @param way all chains from what it hangs on to the load, turned so
   */
  record Return(Point load, List<Chain.Run> way, Doubled doubled) {
    /** The last chain of the way: the one that runs back. */
    Chain.Run last() {
      return way.get(way.size() - 1);
    }
  }

  BranchReturns(Facts facts, List<Chain.Run> runs) {
    this.facts = facts;
    for (Chain.Run run : runs) {
      put(run);
      put(turned(run));
    }
    for (Device device : facts.harness().devices().values()) {
      DeviceType type = facts.harness().typeOf(device);
      if (type != null) {
        type.elements().values().forEach(element -> sort(device.id(), element));
      }
    }
  }

  private void put(Chain.Run run) {
    at.computeIfAbsent(run.chain().from(), point -> new ArrayList<>()).add(run);
  }

  private static Chain.Run turned(Chain.Run run) {
    List<Piece> back = new ArrayList<>();
    for (int i = run.pieces().size() - 1; i >= 0; i--) {
      Piece piece = run.pieces().get(i);
      back.add(new Piece(piece.segment(), /* fromMm= */ piece.toMm(), /* toMm= */ piece.fromMm()));
    }
    return new Chain.Run(run.chain().turned(), back, /* from= */ run.to(), /* to= */ run.from());
  }

  /** Notes whether pins are of loads alone; {@code false} where something else is on them too. */
  private void sort(String device, Element element) {
    boolean load = element instanceof Element.Load || element instanceof Element.Coil;
    boolean hangsOn =
        element instanceof Element.Fuse
            || element instanceof Element.Contact
            || element instanceof Element.Source
            || element instanceof Element.Diode
            || element instanceof Element.Link;
    if (load || hangsOn) {
      for (String pin : element.ends()) {
        loads.merge(Point.pin(device, pin), load, Boolean::logicalAnd);
      }
    }
  }

  /** For each load on a branch the way to it, the one that runs back least. */
  List<Return> all() {
    Map<Point, Return> best = new LinkedHashMap<>();
    IdentityHashMap<Net, Integer> searched = new IdentityHashMap<>();
    for (Point point : at.keySet()) {
      Net net = facts.nets().of(point).orElse(null);
      if (net != null
          && Boolean.FALSE.equals(loads.get(point))
          && branches(point)
          && searched.merge(net, 1, Integer::sum) <= MOST) {
        search(point, best);
      }
    }
    return List.copyOf(best.values());
  }

  private boolean branches(Point point) {
    return at.getOrDefault(point, List.of()).stream()
        .anyMatch(run -> run.chain().to().kind() == Point.Kind.SPLICE);
  }

  private record Open(Point at, double mm, Chain.@Nullable Run by) {
    static final Comparator<Open> NEAREST =
        Comparator.<Open>comparingDouble(Open::mm).thenComparing(Open::at);
  }

  private void search(Point source, Map<Point, Return> best) {
    Map<Point, Chain.Run> by = new LinkedHashMap<>();
    PriorityQueue<Open> open = new PriorityQueue<>(Open.NEAREST);
    open.add(new Open(source, 0, null));
    Map<Point, Boolean> reached = new LinkedHashMap<>();
    while (!open.isEmpty()) {
      Open next = open.remove();
      if (reached.put(next.at(), Boolean.TRUE) != null) {
        continue;
      }
      if (next.by() != null) {
        by.put(next.at(), next.by());
      }
      if (next.at().kind() == Point.Kind.SPLICE || next.by() == null) {
        for (Chain.Run run : at.getOrDefault(next.at(), List.of())) {
          open.add(new Open(run.chain().to(), next.mm() + run.mm(), run));
        }
      }
    }
    for (Point load : by.keySet()) {
      if (Boolean.TRUE.equals(loads.get(load))) {
        List<Chain.Run> way = way(source, load, by);
        List<Piece> pieces = new ArrayList<>();
        way.forEach(run -> pieces.addAll(run.pieces()));
        Return found = new Return(load, way, Doubled.of(pieces));
        if (way.size() > 1) {
          best.merge(load, found, (a, b) -> b.doubled().mm() < a.doubled().mm() ? b : a);
        }
      }
    }
  }

  private static List<Chain.Run> way(Point source, Point load, Map<Point, Chain.Run> by) {
    List<Chain.Run> way = new ArrayList<>();
    for (Point point = load; !point.equals(source); ) {
      Chain.Run run = by.get(point);
      if (run == null) {
        throw new IllegalStateException("a way that was found does not lead back");
      }
      way.add(0, run);
      point = run.chain().from();
    }
    return way;
  }
}
