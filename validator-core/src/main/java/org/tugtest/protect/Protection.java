package org.tugtest.protect;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.network.ClosedTogether;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.text.NaturalOrder;

/**
 * What fuses keep each wire and load from. Where plus and minus meet, what joins them is left out
 * of everything else, so that one short is one finding.
 */
public final class Protection {
  private final Network network;
  private final ClosedTogether together;
  private final Shorts shorts;
  private final Reach feed;
  private final Reach unfused;
  private final Reach back;
  private final ReturnTree tree;
  private final FirstPieces firstPieces;
  private final Limits limits;
  private final Ratings ratings;
  private final Map<Pins, Boolean> alone = new HashMap<>();
  private final List<Edge.OfElement> unrated = new ArrayList<>();
  private final Map<String, Exposure> exposures = new LinkedHashMap<>();
  private final Map<String, Exposure> returning = new LinkedHashMap<>();
  private final Map<String, OneFault> oneFaults = new LinkedHashMap<>();
  private final Map<String, Integer> blocks = new LinkedHashMap<>();
  private final Map<String, LimitedReturns.Bound> boundBack = new LinkedHashMap<>();
  private final Map<String, Map<Integer, Integer>> standing = new LinkedHashMap<>();

  /** The pins of a source. */
  private record Pins(Point plus, Point minus) {}

  private Protection(Harness harness, Network network, ClosedTogether together) {
    this.network = network;
    this.together = together;
    this.ratings = new Ratings(harness);
    this.shorts = new Shorts(network, together);
    Set<Edge> out = shorts.culprits();
    List<Point> plus = new ArrayList<>();
    List<Point> unlimited = new ArrayList<>();
    List<Point> minus = new ArrayList<>();
    for (Edge.OfElement source : network.sources()) {
      plus.add(source.a());
      minus.add(source.b());
      if (Double.isInfinite(Ratings.ofSource((Element.Source) source.element()))) {
        unlimited.add(source.a());
      }
    }
    Reach.Step forth = this::goesOn;
    Reach.Step home = (edge, from) -> !out.contains(edge) && Sides.feeds(edge, edge.across(from));
    feed = Reach.from(network, together, plus, forth);
    unfused =
        Reach.from(
            network,
            together,
            unlimited,
            (edge, from) -> !Sides.isFuse(edge) && forth.may(edge, from));
    back = Reach.from(network, together, minus, home);
    tree = new ReturnTree(network, feed, unfused, back, this::ownSource);
    firstPieces =
        new FirstPieces(
            network,
            unfused,
            unlimited,
            feed,
            load -> CrankingMotor.is(load, harness.defaults().nominalV()));
    limits = new Limits(network, together, plus, forth, tree);
    for (Edge edge : network.edges()) {
      if (edge instanceof Edge.OfElement fuse
          && Sides.isFuse(edge)
          && fuse.fitted()
          && ratings.ofFuse(fuse).isEmpty()) {
        unrated.add(fuse);
      }
    }
    judge();
  }

  /** The protection of a network; near linear in its size. */
  public static Protection of(Harness harness, Network network, ClosedTogether together) {
    return new Protection(harness, network, together);
  }

  private void judge() {
    LimitedReturns limited = new LimitedReturns(network, back, tree, limits);
    Limits.Found most = limits.with(fuse -> rating(fuse, Double.POSITIVE_INFINITY));
    Limits.Found least = unrated.isEmpty() ? most : limits.with(fuse -> rating(fuse, 0));
    for (int i : wires()) {
      if (network.edges().get(i) instanceof Edge.OfWire wire) {
        String id = wire.wire().id();
        Limit limit = most.feed().get(i);
        if (limit != null) {
          Limit sure = least.feed().getOrDefault(i, Limit.DEAD);
          Path way = unfusedWay(wire);
          exposures.put(id, new Exposure(wire, limit.amps(), sure.amps(), limit.cut(), way));
        }
        int block = back.takes(i) ? tree.blocks().block(wire) : -1;
        if (block >= 0 && tree.used(block)) {
          blocks.put(id, block);
          Limits.Returned returned = most.back().get(block);
          standing.put(id, returned.set());
          double amps = returned.amps();
          double sure = least.back().get(block).amps();
          LimitedReturns.Bound bound =
              limited.of(wire, amps, fuse -> rating(fuse, Double.POSITIVE_INFINITY)).orElse(null);
          if (bound != null) {
            amps = bound.amps();
            sure = Math.min(sure, amps);
            boundBack.put(id, bound);
          }
          oneFaults.put(id, returned.one().atLeast(least.back().get(block).one().leastA()));
          returning.put(id, new Exposure(wire, amps, sure, List.of(), null));
        }
      }
    }
  }

  /**
   * The numbers of the wires, in natural order of their ids, in which they mostly stand already.
   */
  private List<Integer> wires() {
    Map<Integer, String> ids = new LinkedHashMap<>();
    for (int i = 0; i < network.edges().size(); i++) {
      if (network.edges().get(i) instanceof Edge.OfWire wire) {
        ids.put(i, wire.wire().id());
      }
    }
    return ids.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(NaturalOrder.NATURAL))
        .map(Map.Entry::getKey)
        .toList();
  }

  private boolean goesOn(Edge edge, Point from) {
    return !shorts.culprits().contains(edge) && Sides.feeds(edge, from);
  }

  /** Whether these are the pins of a source, and no other source feeds the first. */
  private boolean ownSource(Point plus, Point minus) {
    boolean own =
        network.sources().stream()
            .anyMatch(source -> source.a().equals(plus) && source.b().equals(minus));
    return own && alone.computeIfAbsent(new Pins(plus, minus), this::feedsAlone);
  }

  /** Whether no source with other pins feeds the first of these. */
  private boolean feedsAlone(Pins pins) {
    int part = network.partOf(network.index(pins.plus()));
    List<Point> others = new ArrayList<>();
    for (Edge.OfElement source : network.sources()) {
      boolean here = source.a().equals(pins.plus()) && source.b().equals(pins.minus());
      if (!here && network.partOf(network.index(source.a())) == part) {
        others.add(source.a());
      }
    }
    return others.isEmpty()
        || !Reach.from(network, together, others, this::goesOn).reaches(pins.plus());
  }

  private double rating(Edge.OfElement fuse, double whenUnknown) {
    return ratings.ofFuse(fuse).orElse(whenUnknown);
  }

  /** A way from a source to the nearer end of a wire and through it; null when none is unfused. */
  private @Nullable Path unfusedWay(Edge.OfWire wire) {
    Path toA = unfused.path(wire.a()).orElse(null);
    Path toB = unfused.path(wire.b()).orElse(null);
    if (toA == null || toB == null) {
      return null;
    }
    Path nearer = toB.edges().size() < toA.edges().size() ? toB : toA;
    List<Edge> edges = new ArrayList<>(nearer.edges());
    edges.add(wire);
    return new Path(nearer.start(), edges);
  }

  /** What stays live when every isolator contact is open. */
  public Isolation isolation(Harness harness) {
    return Isolation.of(harness, network, together, shorts.culprits());
  }

  /** Where plus and minus meet without a diode but one in the device of a source. */
  public List<DeadShort> shorts() {
    return shorts.plain();
  }

  /** Where plus and minus meet through diodes. */
  public List<DeadShort> shortsThroughDiodes() {
    return shorts.throughDiodes();
  }

  /** Whether a state lasts: not where its contacts stand so that plus and minus meet. */
  public boolean lasts(OperatingPoint state) {
    return Stream.concat(shorts.plain().stream(), shorts.throughDiodes().stream())
        .noneMatch(dead -> dead.way().edges().stream().allMatch(state::conducts));
  }

  /** What can be reached from the plus of a source when no short is left. */
  public Reach feed() {
    return feed;
  }

  /** What can be reached from the plus of one source when no short is left. */
  public Reach feed(Edge.OfElement source) {
    return Reach.from(network, together, List.of(source.a()), this::goesOn);
  }

  /** The part of it that is reached without a fuse from a source that does not limit itself. */
  public Reach unfused() {
    return unfused;
  }

  /** What can be reached from the minus of a source when no short is left. */
  public Reach back() {
    return back;
  }

  /**
   * Whether a wire lies between a source and the first fuse behind it: on a simple way that has no
   * fuse and ends at one.
   */
  public boolean leadsToFirstFuse(Edge.OfWire wire) {
    return firstPieces.leadsToFuse(wire);
  }

  /** Whether an unfused wire lies on a simple way from a source to a cranking motor. */
  public boolean leadsToCrankingMotor(Edge.OfWire wire) {
    return firstPieces.leadsToCranking(wire);
  }

  /**
   * The first fuses behind every source that does not limit itself, with the shortest way to each.
   *
   * @param lengths length of a wire in mm; empty when it is not known
   */
  public List<FirstFuse> firstFuses(Function<Wire, OptionalDouble> lengths) {
    FirstFuses ways = new FirstFuses(network, feed, lengths);
    List<FirstFuse> all = new ArrayList<>();
    for (Edge.OfElement source : network.sources()) {
      if (Double.isInfinite(Ratings.ofSource((Element.Source) source.element()))) {
        Reach reach =
            Reach.from(
                network,
                together,
                List.of(source.a()),
                (edge, from) -> !Sides.isFuse(edge) && goesOn(edge, from));
        all.addAll(ways.behind(source, reach));
      }
    }
    return all;
  }

  /**
   * Whether a free load sits in the device of a source that limits itself, as the field of an
   * alternator, which is its maker's matter; any other there may hang on a battery as well.
   */
  public boolean insideSelfLimiting(Edge.OfElement element) {
    boolean free =
        element.element() instanceof Element.Load load && load.use() == Element.Load.Use.FREE;
    return free
        && network.sources().stream()
            .anyMatch(
                source ->
                    source.device().equals(element.device())
                        && Double.isFinite(Ratings.ofSource((Element.Source) source.element())));
  }

  /** What a wire of the feed side can see; empty for any other. */
  public Optional<Exposure> exposure(String wire) {
    return Optional.ofNullable(exposures.get(wire));
  }

  /** All wires of the feed side, in natural order of their ids. */
  public List<Exposure> exposures() {
    return List.copyOf(exposures.values());
  }

  /**
   * What faults inside all loads at the same time can send through a wire of the return side, loads
   * without a fuse left out; its fuses are named by {@link #fusesBehind}. Empty for a wire that no
   * load returns through.
   */
  public Optional<Exposure> returning(String wire) {
    return Optional.ofNullable(returning.get(wire));
  }

  /**
   * What the fault inside one load can send through a wire of the return side; empty for a wire
   * that no load returns through.
   */
  public Optional<OneFault> oneFault(String wire) {
    return Optional.ofNullable(oneFaults.get(wire));
  }

  /** Whether all loads that return through a wire are without a fuse. */
  public boolean returnsUnfusedAlone(String wire) {
    Integer block = blocks.get(wire);
    return block != null && !tree.usedByFused(block);
  }

  /** All wires through which loads return, in natural order of their ids. */
  public List<Exposure> returning() {
    return List.copyOf(returning.values());
  }

  /** The fuses that bound what faults inside loads can send through a wire of the return side. */
  public List<Edge.OfElement> fusesBehind(String wire) {
    Integer block = blocks.get(wire);
    LimitedReturns.Bound bound = boundBack.get(wire);
    if (bound != null) {
      return bound.cut();
    }
    return block == null
        ? List.of()
        : limits.cutBehind(
            block,
            standing.getOrDefault(wire, Map.of()),
            fuse -> rating(fuse, Double.POSITIVE_INFINITY));
  }

  /**
   * The fused loads and coils whose faults send more through a wire than the sources that limit
   * themselves beyond it give.
   */
  public List<Edge.OfElement> strongFaultsBehind(String wire) {
    LimitedReturns.Bound bound = boundBack.get(wire);
    return bound == null ? loadsBehind(wire, false) : bound.loads();
  }

  /** The fused loads and coils whose faults make up the limit of a wire of the return side. */
  public List<Edge.OfElement> faultsBehind(String wire) {
    LimitedReturns.Bound bound = boundBack.get(wire);
    return bound == null || bound.bySources() ? loadsBehind(wire, false) : bound.loads();
  }

  /** The loads and coils that return through a wire, each once. */
  public List<Edge.OfElement> loadsBehind(String wire, boolean unfusedToo) {
    Integer block = blocks.get(wire);
    if (block == null) {
      return List.of();
    }
    return tree.through(block).stream()
        .filter(draw -> unfusedToo || !draw.unfused())
        .map(ReturnTree.Draw::load)
        .distinct()
        .toList();
  }

  /**
   * What the wires of the feed side can see when some fuses and trips never open: in amperes by the
   * wire's id, and what bounds it; infinite where nothing does, or only a fuse without a rating.
   */
  public Map<String, Exposure> holding(Predicate<Edge.OfElement> held) {
    double never = Double.POSITIVE_INFINITY;
    Limits.Found found = limits.with(fuse -> held.test(fuse) ? never : rating(fuse, never));
    Map<String, Exposure> seen = new TreeMap<>(NaturalOrder.NATURAL);
    found
        .feed()
        .forEach(
            (number, limit) -> {
              Edge.OfWire wire = (Edge.OfWire) network.edges().get(number);
              double amps = limit.amps();
              seen.put(wire.wire().id(), new Exposure(wire, amps, amps, limit.cut(), null));
            });
    return seen;
  }

  /** The fuses that are there and whose rating is not known. */
  public List<Edge.OfElement> unrated() {
    return Collections.unmodifiableList(unrated);
  }

  /** What fuses are rated at. */
  public Ratings ratings() {
    return ratings;
  }
}
