package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;

/** What each contact would meet if connectors of a group were plugged into each other's places. */
final class CrossMateStudy {
  private static final int LINES = 60;

  /** Up to so many slots, each is compared with each. */
  private static final int EACH = 100;

  private final Facts facts;
  private final Reachable reachable;
  private final Roles roles;
  private final Map<String, Integer> kinds = new HashMap<>();
  private final IdentityHashMap<Slot, Integer> kindOf = new IdentityHashMap<>();

  CrossMateStudy(Facts facts, Reachable reachable) {
    this.facts = facts;
    this.reachable = reachable;
    this.roles = new Roles(facts);
  }

  /**
   * What came of a group.
   *
   * @param involved the slots that can be exchanged and are not the same anyway
   * @param worst where feed would meet return or a signal; null when it would nowhere
   * @param lines what meets what
   */
  record Result(List<Slot> involved, @Nullable String worst, List<String> lines) {}

  /**
   * Studies slots of one group, in natural order. In a large group, slots at one node whose
   * contacts carry the same stand for each other.
   */
  Result of(List<Slot> group) {
    List<List<Slot>> bunches = bunches(group);
    Map<String, List<Integer>> atNode = new HashMap<>();
    for (int i = 0; i < bunches.size(); i++) {
      String node = bunches.get(i).get(0).node();
      atNode.computeIfAbsent(node, key -> new ArrayList<>()).add(i);
    }
    Exchange exchange = new Exchange();
    for (int i = 0; i < bunches.size(); i++) {
      List<Slot> bunch = bunches.get(i);
      if (bunch.size() > 1 && exchange.add(bunch.get(0), bunch.get(1))) {
        exchange.involved.addAll(bunch);
      }
      for (int j : nearby(bunch.get(0).node(), atNode).tailSet(i, false)) {
        if (exchange.add(bunch.get(0), bunches.get(j).get(0))) {
          exchange.involved.addAll(bunch);
          exchange.involved.addAll(bunches.get(j));
        }
      }
    }
    List<Slot> involved = group.stream().filter(exchange.involved::contains).toList();
    return new Result(involved, exchange.worst, cut(exchange.lines));
  }

  private NavigableSet<Integer> nearby(String node, Map<String, List<Integer>> atNode) {
    NavigableSet<Integer> nearby = new TreeSet<>();
    reachable.from(node).forEach(near -> nearby.addAll(atNode.getOrDefault(near, List.of())));
    return nearby;
  }

  private List<List<Slot>> bunches(List<Slot> group) {
    if (group.size() <= EACH) {
      return group.stream().map(List::of).toList();
    }
    Map<String, List<Slot>> bunches = new LinkedHashMap<>();
    for (Slot slot : group) {
      String key = slot.node() + "|" + kind(slot);
      bunches.computeIfAbsent(key, text -> new ArrayList<>()).add(slot);
    }
    return List.copyOf(bunches.values());
  }

  /** Collects what two slots would do to each other. */
  private final class Exchange {
    private final Set<Slot> involved = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<String> lines = new ArrayList<>();
    private final Set<Long> told = new HashSet<>();
    private @Nullable String worst;

    /** Whether one goes into the place of the other and something there is not the same anyway. */
    boolean add(Slot one, Slot other) {
      boolean untold = told.add(((long) kind(one) << Integer.SIZE) | kind(other));
      if (!untold && involved.contains(one) && involved.contains(other)) {
        return true;
      }
      boolean any = false;
      for (Slot.Crossing crossing : one.crossings(other)) {
        Meeting meeting = meeting(crossing);
        if (meeting.differs()) {
          any = true;
          worst = worst == null ? meeting.clash() : worst;
          lines.add(crossing.one().text() + " plugged into " + crossing.other().text() + ":");
          lines.addAll(meeting.lines());
        }
      }
      if (any) {
        involved.add(one);
        involved.add(other);
      }
      return any;
    }
  }

  private static List<String> cut(List<String> lines) {
    if (lines.size() <= LINES) {
      return lines;
    }
    List<String> cut = new ArrayList<>(lines.subList(0, LINES));
    cut.add("and " + (lines.size() - LINES) + " lines more");
    return cut;
  }

  /** Slots whose contacts carry the same are of one kind: what meets one has met them all. */
  private int kind(Slot slot) {
    Integer known = kindOf.get(slot);
    if (known != null) {
      return known;
    }
    StringBuilder key = new StringBuilder();
    for (Slot.Half half : slot.halves()) {
      key.append(half.housing().id()).append(half.onDevice() ? "|device" : "|loom");
      for (String cavity : half.housing().cavityNames()) {
        Point contact = half.contact(cavity);
        key.append('|').append(cavity).append(isUsed(contact) ? '=' : '-');
        key.append(roles.of(contact));
      }
      key.append('#');
    }
    int kind = kinds.computeIfAbsent(key.toString(), text -> kinds.size());
    kindOf.put(slot, kind);
    return kind;
  }

  /**
   * What meets in one wrong plug.
   *
   * @param differs whether anything there is not joined anyway
   * @param clash where feed meets return or a signal; null for nowhere
   */
  private record Meeting(boolean differs, @Nullable String clash, List<String> lines) {}

  private Meeting meeting(Slot.Crossing crossing) {
    boolean differs = false;
    String clash = null;
    List<String> lines = new ArrayList<>();
    for (String cavity : crossing.one().housing().cavityNames()) {
      if (!crossing.other().housing().hasCavity(cavity)) {
        continue;
      }
      Point one = crossing.one().contact(cavity);
      Point other = crossing.other().contact(cavity);
      if (!isUsed(one) && !isUsed(other)) {
        continue;
      }
      differs |= !facts.nets().joined(one, other);
      Roles.Role oneRole = roles.of(one);
      Roles.Role otherRole = roles.of(other);
      lines.add("  " + shown(one, oneRole) + " meets " + shown(other, otherRole));
      if (clash == null && isUsed(one) && isUsed(other) && oneRole.clashesWith(otherRole)) {
        clash =
            (oneRole == Roles.Role.FEED ? one : other).text()
                + " would put feed onto "
                + (oneRole == Roles.Role.FEED
                    ? other.text() + otherRole.shown()
                    : one.text() + oneRole.shown());
      }
    }
    return new Meeting(differs, clash, lines);
  }

  /** A cavity with a wire; pins of a device are its own matter and always count. */
  private boolean isUsed(Point point) {
    return point.kind() == Point.Kind.PIN || !facts.wiring().endsAt(point).isEmpty();
  }

  private String shown(Point point, Roles.Role role) {
    List<String> wires =
        facts.wiring().endsAt(point).stream().map(WireEnd::wire).map(wire -> wire.id()).toList();
    String with = wires.isEmpty() ? "" : " " + String.join("+", wires);
    return point.text() + with + role.shown();
  }
}
