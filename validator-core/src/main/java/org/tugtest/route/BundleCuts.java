package org.tugtest.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Group;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.network.WireSizes;
import org.tugtest.table.Cited;
import org.tugtest.text.NaturalOrder;

/** Cuts segments where wires begin and end, and says what lies on each piece. */
final class BundleCuts {
  /**
   * Wires times pieces of one segment that are told apart; one with more is taken as one piece that
   * holds all its wires.
   */
  private static final long MOST = 1_000_000;

  private static final Comparator<Strand> THICKEST_FIRST =
      Comparator.<Strand>comparingDouble(strand -> strand.outerMm().value())
          .reversed()
          .thenComparing(Strand::id, NaturalOrder.NATURAL);

  private final Harness harness;
  private final Cables cables;
  private final WireSizes sizes;
  private final Function<List<Double>, Packing> packer;
  private final Map<String, List<Run>> runs = new HashMap<>();

  /** A wire on a part of a segment, in thousandths of a millimetre. */
  private record Run(String wire, long low, long high) {}

  BundleCuts(
      Harness harness, Cables cables, WireSizes sizes, Function<List<Double>, Packing> packer) {
    this.harness = harness;
    this.cables = cables;
    this.sizes = sizes;
    this.packer = packer;
  }

  /** A wire covers a piece. */
  void add(String wire, Piece piece) {
    long low = LoomWays.thousandths(piece.lowMm());
    long high = LoomWays.thousandths(piece.highMm());
    runs.computeIfAbsent(piece.segment(), id -> new ArrayList<>()).add(new Run(wire, low, high));
  }

  /** The bundles along a segment. */
  List<Bundle> of(String segment) {
    List<Run> its = runs.getOrDefault(segment, List.of());
    SortedSet<Long> cuts = new TreeSet<>();
    for (Run run : its) {
      cuts.add(run.low());
      cuts.add(run.high());
    }
    if (cuts.size() < 2) {
      return List.of();
    }
    if ((long) its.size() * cuts.size() > MOST) {
      return List.of(bundle(segment, cuts.first(), cuts.last(), count(its)));
    }
    return swept(segment, its, cuts);
  }

  private List<Bundle> swept(String segment, List<Run> its, SortedSet<Long> cuts) {
    Map<Long, List<String>> begin = new HashMap<>();
    Map<Long, List<String>> end = new HashMap<>();
    for (Run run : its) {
      if (run.high() > run.low()) {
        begin.computeIfAbsent(run.low(), at -> new ArrayList<>()).add(run.wire());
        end.computeIfAbsent(run.high(), at -> new ArrayList<>()).add(run.wire());
      }
    }
    Map<String, Integer> present = new TreeMap<>(NaturalOrder.NATURAL);
    List<Bundle> bundles = new ArrayList<>();
    Long last = null;
    for (Long cut : cuts) {
      if (last != null && !present.isEmpty()) {
        bundles.add(bundle(segment, last, cut, present));
      }
      begin.getOrDefault(cut, List.of()).forEach(wire -> present.merge(wire, 1, Integer::sum));
      for (String wire : end.getOrDefault(cut, List.of())) {
        present.computeIfPresent(wire, (id, times) -> times > 1 ? times - 1 : null);
      }
      last = cut;
    }
    return bundles;
  }

  private static Map<String, Integer> count(List<Run> its) {
    Map<String, Integer> present = new TreeMap<>(NaturalOrder.NATURAL);
    its.forEach(run -> present.put(run.wire(), 1));
    return present;
  }

  private Bundle bundle(String segment, long from, long to, Map<String, Integer> present) {
    Map<String, List<String>> together = new TreeMap<>(NaturalOrder.NATURAL);
    for (String wire : present.keySet()) {
      Group cable = cables.of(wire);
      if (cable != null) {
        together.computeIfAbsent(cable.id(), group -> new ArrayList<>()).add(wire);
      }
    }
    together.values().removeIf(inside -> !whole(inside));
    List<Strand> strands = new ArrayList<>();
    List<String> unsized = new ArrayList<>();
    int wires = 0;
    for (Map.Entry<String, Integer> entry : present.entrySet()) {
      wires += entry.getValue();
      Group cable = cables.of(entry.getKey());
      if (cable == null || !together.containsKey(cable.id())) {
        Wire wire = harness.wires().get(entry.getKey());
        Cited outer = wire == null ? null : sizes.outerMm(wire).orElse(null);
        List<String> alone = List.of(entry.getKey());
        add(strands, unsized, false, entry.getKey(), alone, outer, entry.getValue());
      }
    }
    together.forEach(
        (id, inside) -> {
          int times = inside.stream().mapToInt(w -> present.getOrDefault(w, 1)).max().orElse(1);
          Group cable = cables.of(inside.get(0));
          Cited outer = cable == null ? null : cables.outerMm(cable).orElse(null);
          add(strands, unsized, true, id, inside, outer, times);
        });
    strands.sort(THICKEST_FIRST);
    return new Bundle(segment, from / 1000.0, to / 1000.0, strands, unsized, wires, packer);
  }

  /** A cable is there where two of its wires are, or the one it has; a single core is a wire. */
  private boolean whole(List<String> inside) {
    Group cable = cables.of(inside.get(0));
    return cable != null && inside.size() >= Math.min(2, cables.members(cable).size());
  }

  private static void add(
      List<Strand> strands,
      List<String> unsized,
      boolean cable,
      String id,
      List<String> wires,
      @Nullable Cited outer,
      int times) {
    for (int i = 0; i < times; i++) {
      if (outer == null || outer.value() <= 0) {
        unsized.add(id);
      } else {
        strands.add(new Strand(id, cable, wires, outer));
      }
    }
  }
}
