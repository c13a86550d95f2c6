package org.tugtest.compare.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/**
 * The nets that two revisions do not share. Nets hang together by the pins that they share; where a
 * net before shares pins with one net after alone, it gained or lost pins; with several, it was
 * split, or merged with others. Where many meet many, each is held against the net that has most of
 * its pins.
 */
final class NetDifference {
  private static final int NAMED = 6;
  private final Side before;
  private final Side after;
  private final Causes causes;
  private final List<NetChange> changes = new ArrayList<>();

  /** Nets that share pins, by their numbers. */
  private record Cluster(TreeSet<Integer> before, TreeSet<Integer> after) {}

  NetDifference(Side before, Side after, Causes causes) {
    this.before = before;
    this.after = after;
    this.causes = causes;
  }

  List<NetChange> changes() {
    for (Cluster cluster : clusters()) {
      judge(cluster);
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

  /** What hangs together by shared pins and is not one and the same net. */
  private List<Cluster> clusters() {
    List<Cluster> clusters = new ArrayList<>();
    Set<Integer> seenBefore = new HashSet<>();
    Set<Integer> seenAfter = new HashSet<>();
    for (int net = 0; net < before.count(); net++) {
      if (before.joins(net) && seenBefore.add(net) && !staysWhole(net)) {
        clusters.add(around(net, -1, seenBefore, seenAfter));
      }
    }
    for (int net = 0; net < after.count(); net++) {
      if (after.joins(net) && !seenAfter.contains(net) && !cameWhole(net)) {
        seenAfter.add(net);
        clusters.add(around(-1, net, seenBefore, seenAfter));
      }
    }
    return clusters;
  }

  private boolean staysWhole(int net) {
    int other = after.netOf(before.pins(net).get(0));
    return other >= 0
        && after.pins(other).size() == before.pins(net).size()
        && before.pins(net).stream().allMatch(pin -> after.netOf(pin) == other);
  }

  private boolean cameWhole(int net) {
    int other = before.netOf(after.pins(net).get(0));
    return other >= 0 && staysWhole(other) && before.pins(other).size() == after.pins(net).size();
  }

  private Cluster around(
      int startBefore, int startAfter, Set<Integer> seenBefore, Set<Integer> seenAfter) {
    List<Integer> befores = new ArrayList<>();
    List<Integer> afters = new ArrayList<>();
    if (startBefore >= 0) {
      befores.add(startBefore);
    }
    if (startAfter >= 0) {
      afters.add(startAfter);
    }
    int nextBefore = 0;
    int nextAfter = 0;
    while (nextBefore < befores.size() || nextAfter < afters.size()) {
      if (nextBefore < befores.size()) {
        for (String pin : before.pins(befores.get(nextBefore++))) {
          int net = after.netOf(pin);
          if (after.joins(net) && seenAfter.add(net)) {
            afters.add(net);
          }
        }
      } else {
        for (String pin : after.pins(afters.get(nextAfter++))) {
          int net = before.netOf(pin);
          if (before.joins(net) && seenBefore.add(net)) {
            befores.add(net);
          }
        }
      }
    }
    return new Cluster(new TreeSet<>(befores), new TreeSet<>(afters));
  }

  private void judge(Cluster cluster) {
    if (cluster.before().size() == 1 && cluster.after().size() > 1) {
      split(cluster);
    } else if (cluster.before().size() > 1 && cluster.after().size() == 1) {
      merged(List.copyOf(cluster.before()), cluster.after().first());
    } else if (cluster.before().isEmpty()) {
      gained(-1, cluster.after().first());
    } else if (cluster.after().isEmpty()) {
      lost(cluster.before().first(), -1);
    } else {
      pairwise(cluster);
    }
  }

  private void split(Cluster cluster) {
    int net = cluster.before().first();
    List<Integer> parts = List.copyOf(cluster.after());
    Map<String, Integer> part = parts(before, net, after);
    Causes.Found found = causes.in(before, net, after, part);
    List<String> pins = own(before, before.pins(net));
    List<List<String>> pieces = pieces(after, parts, before.pins(net));
    String into = Series.and(pieces.stream().map(NetDifference::named).toList());
    add(
        NetChange.Kind.SPLIT,
        List.of(own(before, before.pins(net))),
        pieces,
        pins,
        found,
        "The net of " + named(pins) + " falls apart into " + into + by(found));
    for (int one : parts) {
      Set<String> come = new LinkedHashSet<>(after.pins(one));
      before.pins(net).forEach(come::remove);
      if (!come.isEmpty()) {
        gainedPins(net, one, come);
      }
    }
  }

  private void merged(List<Integer> nets, int into) {
    Map<String, Integer> part = parts(after, into, before);
    Causes.Found found = causes.in(after, into, before, part);
    List<String> pins = own(after, after.pins(into));
    List<List<String>> pieces = pieces(before, nets, after.pins(into));
    String which = Series.and(pieces.stream().map(NetDifference::named).toList());
    add(
        NetChange.Kind.MERGED,
        pieces,
        List.of(own(after, after.pins(into))),
        pins,
        found,
        "The nets of " + which + " become one" + by(found));
    for (int one : nets) {
      Set<String> gone = new LinkedHashSet<>(before.pins(one));
      gone.removeIf(pin -> after.netOf(pin) == into);
      if (!gone.isEmpty()) {
        lostPins(one, into, gone);
      }
    }
  }

  /** Each net before against the net after that has most of its pins, and the other way round. */
  private void pairwise(Cluster cluster) {
    Map<Integer, Integer> partner = partners(cluster);
    Map<Integer, Integer> back = new HashMap<>();
    partner.forEach((one, other) -> back.put(other, one));
    for (int one : cluster.before()) {
      lost(one, partner.getOrDefault(one, -1));
    }
    for (int other : cluster.after()) {
      gained(back.getOrDefault(other, -1), other);
    }
  }

  private Map<Integer, Integer> partners(Cluster cluster) {
    record Shared(int before, int after, int count, String least) {}

    List<Shared> all = new ArrayList<>();
    for (int one : cluster.before()) {
      Map<Integer, Integer> counts = new TreeMap<>();
      Map<Integer, String> least = new HashMap<>();
      for (String pin : before.pins(one)) {
        int other = after.netOf(pin);
        if (after.joins(other)) {
          counts.merge(other, 1, Integer::sum);
          least.merge(other, pin, (a, b) -> NaturalOrder.NATURAL.compare(a, b) <= 0 ? a : b);
        }
      }
      counts.forEach(
          (other, count) -> all.add(new Shared(one, other, count, least.getOrDefault(other, ""))));
    }
    all.sort(
        Comparator.comparingInt(Shared::count)
            .reversed()
            .thenComparing(Shared::least, NaturalOrder.NATURAL));
    Map<Integer, Integer> partner = new TreeMap<>();
    Set<Integer> taken = new HashSet<>();
    for (Shared shared : all) {
      if (!partner.containsKey(shared.before()) && taken.add(shared.after())) {
        partner.put(shared.before(), shared.after());
      }
    }
    return partner;
  }

  private void lost(int net, int partner) {
    Set<String> gone = new LinkedHashSet<>(before.pins(net));
    gone.removeIf(pin -> partner >= 0 && after.netOf(pin) == partner);
    if (!gone.isEmpty()) {
      lostPins(net, partner, gone);
    }
  }

  private void lostPins(int net, int partner, Set<String> gone) {
    Map<String, Integer> part = parts(before, net, after);
    Causes.Found found = causes.in(before, net, after, part);
    List<String> pins = own(before, List.copyOf(gone));
    String sentence =
        partner < 0
            ? "The net of " + named(own(before, before.pins(net))) + " is no more"
            : "The net of " + named(own(before, before.pins(net))) + " loses " + named(pins);
    add(
        NetChange.Kind.LOST,
        List.of(own(before, before.pins(net))),
        partner < 0 ? List.of() : List.of(own(after, after.pins(partner))),
        pins,
        found,
        sentence + by(found));
  }

  private void gained(int partner, int net) {
    Set<String> come = new LinkedHashSet<>(after.pins(net));
    come.removeIf(pin -> partner >= 0 && before.netOf(pin) == partner);
    if (!come.isEmpty()) {
      gainedPins(partner, net, come);
    }
  }

  private void gainedPins(int partner, int net, Set<String> come) {
    Map<String, Integer> part = parts(after, net, before);
    Causes.Found found = causes.in(after, net, before, part);
    List<String> pins = own(after, List.copyOf(come));
    String sentence =
        partner < 0
            ? "There is a new net of " + named(pins)
            : "The net of " + named(own(before, before.pins(partner))) + " gains " + named(pins);
    add(
        NetChange.Kind.GAINED,
        partner < 0 ? List.of() : List.of(own(before, before.pins(partner))),
        List.of(own(after, after.pins(net))),
        pins,
        found,
        sentence + by(found));
  }

  private void add(
      NetChange.Kind kind,
      List<List<String>> befores,
      List<List<String>> afters,
      List<String> pins,
      Causes.Found found,
      String sentence) {
    changes.add(
        new NetChange(kind, befores, afters, pins, found.wires(), found.contacts(), sentence));
  }

  /** The pins of these nets, and each of {@code pins} that is alone on that side. */
  private static List<List<String>> pieces(Side side, List<Integer> nets, List<String> pins) {
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
  private static Map<String, Integer> parts(Side side, int net, Side other) {
    Map<String, Integer> parts = new LinkedHashMap<>();
    int alone = -1;
    for (String pin : side.pins(net)) {
      int its = other.netOf(pin);
      parts.put(pin, its >= 0 ? its : alone--);
    }
    return parts;
  }

  private static String by(Causes.Found found) {
    List<String> all = new ArrayList<>(found.wires());
    all.addAll(found.contacts());
    return all.isEmpty() ? "." : ", by " + Series.and(all, NAMED) + ".";
  }

  private static List<String> own(Side side, List<String> labels) {
    return labels.stream().map(side::own).toList();
  }

  private static String named(List<String> pins) {
    return Series.and(pins, NAMED);
  }
}
