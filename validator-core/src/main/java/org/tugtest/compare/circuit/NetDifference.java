package org.tugtest.compare.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** Tells what became of each net: split, merged, or pins lost and gained. */
final class NetDifference {
  private static final int NAMED = 6;
  private final Side before;
  private final Side after;
  private final Joiners joiners;
  private final List<NetChange> changes = new ArrayList<>();

  NetDifference(Side before, Side after, Joiners joiners) {
    this.before = before;
    this.after = after;
    this.joiners = joiners;
  }

  List<NetChange> changes() {
    for (Cluster cluster : Cluster.of(before, after)) {
      cluster.befores().forEach(net -> fate(cluster, net));
      cluster.afters().forEach(net -> origin(cluster, net));
    }
    changes.sort(
        Comparator.comparing(NetDifference::first, NaturalOrder.NATURAL)
            .thenComparing(NetChange::kind)
            .thenComparing(NetChange::sentence));
    return List.copyOf(changes);
  }

  private static String first(NetChange change) {
    return change.before().isEmpty() ? change.after().get(0).get(0) : change.before().get(0).get(0);
  }

  /** What a net before was split into and lost. */
  private void fate(Cluster cluster, int net) {
    int heir = cluster.heir(net);
    List<Integer> parts = new ArrayList<>(cluster.splitOff(net));
    Set<String> gone = new LinkedHashSet<>(before.pins(net));
    gone.removeIf(pin -> heir >= 0 && after.netOf(pin) == heir);
    if (!parts.isEmpty()) {
      if (heir >= 0) {
        parts.add(0, heir);
      }
      List<List<String>> pieces = pieces(after, parts, gone);
      Set<String> told = told(after, parts, before.pins(net));
      add(
          NetChange.Kind.SPLIT,
          List.of(own(before, before.pins(net))),
          pieces,
          own(before, List.copyOf(told)),
          joiners.in(before, net, after, parts(told, after)),
          "The net of "
              + named(own(before, before.pins(net)))
              + " falls apart into "
              + listed(pieces));
      gone.removeAll(told);
    }
    if (!gone.isEmpty()) {
      Set<String> told = new LinkedHashSet<>(gone);
      before.pins(net).stream()
          .filter(pin -> heir >= 0 && after.netOf(pin) == heir)
          .forEach(told::add);
      List<String> pins = own(before, List.copyOf(gone));
      String itself = "The net of " + named(own(before, before.pins(net)));
      boolean whole = heir < 0 && parts.isEmpty();
      add(
          NetChange.Kind.LOST,
          List.of(own(before, before.pins(net))),
          heir < 0 ? List.of() : List.of(own(after, after.pins(heir))),
          pins,
          joiners.in(before, net, after, parts(told, after)),
          whole ? itself + " is no more" : itself + " loses " + named(pins));
    }
  }

  /** What a net after was merged from and gained. */
  private void origin(Cluster cluster, int net) {
    int parent = cluster.parent(net);
    List<Integer> parts = new ArrayList<>(cluster.mergedInto(net));
    Set<String> come = new LinkedHashSet<>(after.pins(net));
    come.removeIf(pin -> parent >= 0 && before.netOf(pin) == parent);
    if (!parts.isEmpty()) {
      if (parent >= 0) {
        parts.add(0, parent);
      }
      List<List<String>> pieces = pieces(before, parts, come);
      Set<String> told = told(before, parts, after.pins(net));
      add(
          NetChange.Kind.MERGED,
          pieces,
          List.of(own(after, after.pins(net))),
          own(after, List.copyOf(told)),
          joiners.in(after, net, before, parts(told, before)),
          "The nets of " + listed(pieces) + " become one");
      come.removeAll(told);
    }
    if (!come.isEmpty()) {
      Set<String> told = new LinkedHashSet<>(come);
      after.pins(net).stream()
          .filter(pin -> parent >= 0 && before.netOf(pin) == parent)
          .forEach(told::add);
      List<String> pins = own(after, List.copyOf(come));
      boolean whole = parent < 0 && parts.isEmpty();
      add(
          NetChange.Kind.GAINED,
          parent < 0 ? List.of() : List.of(own(before, before.pins(parent))),
          List.of(own(after, after.pins(net))),
          pins,
          joiners.in(after, net, before, parts(told, before)),
          whole
              ? "There is a new net of " + named(pins)
              : "The net of "
                  + named(parent < 0 ? pins : own(before, before.pins(parent)))
                  + " gains "
                  + named(pins));
    }
  }

  private void add(
      NetChange.Kind kind,
      List<List<String>> befores,
      List<List<String>> afters,
      List<String> pins,
      Joiners.Found found,
      String sentence) {
    List<String> by = new ArrayList<>(found.wires());
    by.addAll(found.contacts());
    changes.add(
        new NetChange(
            kind,
            befores,
            afters,
            pins,
            found.wires(),
            found.contacts(),
            sentence + (by.isEmpty() ? "." : ", by " + Series.and(by, NAMED) + ".")));
  }

  /** Of some pins, those that are in these nets on a side, or alone there. */
  private static Set<String> told(Side side, List<Integer> nets, List<String> pins) {
    Set<String> told = new LinkedHashSet<>();
    for (String pin : pins) {
      int net = side.netOf(pin);
      if (nets.contains(net) || (net >= 0 && !side.joins(net))) {
        told.add(pin);
      }
    }
    return told;
  }

  /** The pins of these nets, and each of {@code pins} that is alone on that side. */
  private static List<List<String>> pieces(Side side, List<Integer> nets, Set<String> pins) {
    List<List<String>> pieces = new ArrayList<>();
    nets.forEach(net -> pieces.add(own(side, side.pins(net))));
    for (String pin : pins) {
      int net = side.netOf(pin);
      if (net >= 0 && !side.joins(net)) {
        pieces.add(List.of(side.own(pin)));
      }
    }
    return pieces;
  }

  /** The net of each pin on the other side; a pin that it has not got is alone there. */
  private static Map<String, Integer> parts(Set<String> pins, Side other) {
    Map<String, Integer> parts = new LinkedHashMap<>();
    int alone = -1;
    for (String pin : pins) {
      int its = other.netOf(pin);
      parts.put(pin, its >= 0 ? its : alone--);
    }
    return parts;
  }

  private static List<String> own(Side side, List<String> labels) {
    return labels.stream().map(side::own).toList();
  }

  /** {@code A:1, A:2 | A:3}. */
  private static String listed(List<List<String>> pieces) {
    return pieces.stream()
        .map(
            pins ->
                String.join(", ", pins.subList(0, Math.min(NAMED, pins.size())))
                    + (pins.size() > NAMED ? " and " + (pins.size() - NAMED) + " more" : ""))
        .collect(Collectors.joining(" | "));
  }

  private static String named(List<String> pins) {
    return Series.and(pins, NAMED);
  }
}
