package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.Resolution;
import org.tugtest.network.WireEnd;
import org.tugtest.route.Route;

/** Finds the chains of a harness; every wire whose ends are known is in exactly one. */
final class Chains {
  private final Facts facts;
  private final Set<String> done = new HashSet<>();

  /** Where a chain goes on after a wire end: through a mated pair or a splice. */
  private record Step(WireEnd next, Chain.@Nullable Joint joint) {}

  private Chains(Facts facts) {
    this.facts = facts;
  }

  /** All chains, in natural order of the first of their wires. */
  static List<Chain> of(Facts facts) {
    Chains chains = new Chains(facts);
    List<Chain> all = new ArrayList<>();
    for (Wire wire : facts.harness().wires().values()) {
      if (chains.point(new WireEnd(wire, true)).isPresent()
          && chains.point(new WireEnd(wire, false)).isPresent()
          && chains.done.add(wire.id())) {
        all.add(chains.through(wire));
      }
    }
    return all;
  }

  /** A chain with the routes of its wires; empty when one has none. */
  static Optional<Chain.Run> run(Facts facts, Chain chain) {
    List<Route> routes = new ArrayList<>();
    for (String wire : chain.wires()) {
      Route route = facts.routes().of(wire).orElse(null);
      if (route == null) {
        return Optional.empty();
      }
      routes.add(route);
    }
    return Optional.of(Chain.Run.of(chain, routes));
  }

  private Chain through(Wire wire) {
    List<Chain.Link> after = new ArrayList<>();
    List<Chain.Joint> jointsAfter = new ArrayList<>();
    Point to = follow(new WireEnd(wire, false), after, jointsAfter);
    List<Chain.Link> before = new ArrayList<>();
    List<Chain.Joint> joints = new ArrayList<>();
    Point from = follow(new WireEnd(wire, true), before, joints);
    Collections.reverse(before);
    Collections.reverse(joints);
    List<Chain.Link> links = new ArrayList<>();
    for (Chain.Link link : before) {
      links.add(new Chain.Link(link.wire(), !link.forward()));
    }
    links.add(new Chain.Link(wire, true));
    links.addAll(after);
    joints.addAll(jointsAfter);
    return new Chain(links, joints, from, to);
  }

  /** Follows a chain from a wire end outwards; the point where it ends. */
  private Point follow(WireEnd end, List<Chain.Link> links, List<Chain.Joint> joints) {
    WireEnd at = end;
    Point point = pointOf(at);
    for (Step step = step(at, point); step != null; step = step(at, point)) {
      if (!done.add(step.next().wire().id())) {
        return point;
      }
      if (step.joint() != null) {
        joints.add(step.joint());
      }
      links.add(new Chain.Link(step.next().wire(), step.next().from()));
      at = step.next().other();
      point = pointOf(at);
    }
    return facts.wiring().meets(point).filter(p -> p.kind() == Point.Kind.PIN).orElse(point);
  }

  private @Nullable Step step(WireEnd at, Point point) {
    List<WireEnd> here = facts.wiring().endsAt(point);
    if (point.kind() == Point.Kind.SPLICE) {
      return here.size() == 2 ? on(here.get(0).equals(at) ? here.get(1) : here.get(0), null) : null;
    }
    Point met = facts.wiring().meets(point).orElse(null);
    if (here.size() != 1 || met == null || met.kind() != Point.Kind.CAVITY) {
      return null;
    }
    List<WireEnd> there = facts.wiring().endsAt(met);
    return there.size() == 1 ? on(there.get(0), Chain.Joint.of(point.owner(), met.owner())) : null;
  }

  /** A step onto a wire, unless its other end is not known. */
  private @Nullable Step on(WireEnd next, Chain.@Nullable Joint joint) {
    return point(next.other()).isPresent() ? new Step(next, joint) : null;
  }

  private Optional<Point> point(WireEnd end) {
    return end.ref() != null && facts.wiring().resolve(end.ref()) instanceof Resolution.Found found
        ? Optional.of(found.point())
        : Optional.empty();
  }

  private Point pointOf(WireEnd end) {
    return point(end)
        .orElseThrow(() -> new IllegalStateException("a chain goes on where nothing is known"));
  }
}
