package org.tugtest.compare.match;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.NaturalOrder;

/**
 * Finds connectors and splices that are alike with all around them, whatever they are called. Each
 * gets a colour from what it is and what its wires are; then, round after round, from the colours
 * of what its wires lead to. What is matched already, and every device, has a colour of its own. A
 * colour that one thing on each side has is a match; of several of one colour the first pair is
 * matched in natural order and the rest follows from it along the wires. (Colour refinement, as for
 * testing graphs for isomorphism; each round is linear.)
 */
final class Likeness {
  private static final int ROUNDS = 5;
  private static final int PASSES = 8;
  private final Map<String, Owner> before;
  private final Map<String, Owner> after;
  private final UnaryOperator<@Nullable String> afterOf;
  private final Take take;
  private final Set<String> takenAfter = new HashSet<>();
  private final List<Map<String, Integer>> levelsBefore = new ArrayList<>();
  private final List<Map<String, Integer>> levelsAfter = new ArrayList<>();

  /** Matches two things unless one is matched already. */
  @FunctionalInterface
  interface Take {
    boolean take(Owner one, Owner other, String why);
  }

  /**
   * Begins with what is matched so far.
   *
   * @param afterOf what a thing of before is called after; null while that is not known
   */
  Likeness(
      Map<String, Owner> before,
      Map<String, Owner> after,
      UnaryOperator<@Nullable String> afterOf,
      Take take) {
    this.before = before;
    this.after = after;
    this.afterOf = afterOf;
    this.take = take;
    for (String id : before.keySet()) {
      String other = afterOf.apply(id);
      if (other != null) {
        takenAfter.add(other);
      }
    }
  }

  void match() {
    boolean found = true;
    for (int pass = 0; pass < PASSES && found; pass++) {
      colour();
      found = false;
      for (int level = ROUNDS - 1; level >= 1; level--) {
        found |= unique(level);
      }
    }
    colour();
    several();
  }

  private void colour() {
    levelsBefore.clear();
    levelsAfter.clear();
    Map<String, Integer> old = Map.of();
    Map<String, Integer> oldAfter = Map.of();
    for (int round = 0; round < ROUNDS; round++) {
      Map<String, Integer> numbers = new HashMap<>();
      Map<String, Integer> now = new HashMap<>();
      Map<String, Integer> nowAfter = new HashMap<>();
      for (Owner owner : before.values()) {
        if (afterOf.apply(owner.id()) == null && !(owner.implied() && !owner.splice())) {
          now.put(owner.id(), number(numbers, text(owner, round, old, afterOf)));
        }
      }
      for (Owner owner : after.values()) {
        if (!takenAfter.contains(owner.id()) && !(owner.implied() && !owner.splice())) {
          nowAfter.put(owner.id(), number(numbers, text(owner, round, oldAfter, this::known)));
        }
      }
      levelsBefore.add(now);
      levelsAfter.add(nowAfter);
      old = now;
      oldAfter = nowAfter;
    }
  }

  private @Nullable String known(@Nullable String id) {
    return id == null || (after.containsKey(id) && !takenAfter.contains(id)) ? null : id;
  }

  private static int number(Map<String, Integer> numbers, String text) {
    return numbers.computeIfAbsent(text, none -> numbers.size());
  }

  private static String text(
      Owner owner, int round, Map<String, Integer> old, UnaryOperator<@Nullable String> names) {
    List<String> lines = new ArrayList<>();
    for (Owner.Contact contact : owner.contacts()) {
      String line = contact.cavity() + "|" + contact.label() + "|" + contact.farPin();
      lines.add(round == 0 ? line : line + "|" + colour(contact.farOwner(), old, names));
    }
    Collections.sort(lines);
    String mate = owner.mate();
    String plugged = mate == null ? "" : round == 0 ? "?" : colour(mate, old, names);
    return owner.splice() + "|" + owner.part() + "|" + owner.port() + "|" + plugged + lines;
  }

  private static String colour(
      String id, Map<String, Integer> old, UnaryOperator<@Nullable String> names) {
    String name = names.apply(id);
    return name != null ? "=" + name : "#" + old.get(id);
  }

  private static Map<Integer, List<String>> blocks(Map<String, Integer> colours) {
    Map<Integer, List<String>> blocks = new LinkedHashMap<>();
    colours.forEach(
        (id, colour) -> blocks.computeIfAbsent(colour, none -> new ArrayList<>()).add(id));
    blocks.values().forEach(ids -> ids.sort(NaturalOrder.NATURAL));
    return blocks;
  }

  private boolean unique(int level) {
    Map<Integer, List<String>> others = blocks(levelsAfter.get(level));
    boolean found = false;
    for (Map.Entry<Integer, List<String>> block : blocks(levelsBefore.get(level)).entrySet()) {
      List<String> alike = others.getOrDefault(block.getKey(), List.of());
      if (block.getValue().size() == 1 && alike.size() == 1) {
        found |= take(block.getValue().get(0), alike.get(0));
      }
    }
    return found;
  }

  private boolean take(String id, String otherId) {
    Owner one = before.get(id);
    Owner other = after.get(otherId);
    boolean taken =
        one != null && other != null && take.take(one, other, "the same with the same contents");
    if (taken) {
      takenAfter.add(otherId);
    }
    return taken;
  }

  /** Blocks of several, the one with the least id of either side first. */
  private void several() {
    int last = ROUNDS - 1;
    Map<Integer, List<String>> others = blocks(levelsAfter.get(last));
    List<List<List<String>>> pairs = new ArrayList<>();
    blocks(levelsBefore.get(last))
        .forEach(
            (colour, ids) -> {
              List<String> alike = others.getOrDefault(colour, List.of());
              if (alike.size() == ids.size()) {
                pairs.add(List.of(ids, alike));
              }
            });
    pairs.sort(Comparator.comparing(Likeness::least, NaturalOrder.NATURAL));
    for (List<List<String>> pair : pairs) {
      Deque<String> free = new ArrayDeque<>(pair.get(1));
      for (String id : pair.get(0)) {
        if (afterOf.apply(id) == null) {
          while (!free.isEmpty() && takenAfter.contains(free.peek())) {
            free.remove();
          }
          if (!free.isEmpty()) {
            follow(id, free.remove());
          }
        }
      }
    }
  }

  private static String least(List<List<String>> pair) {
    String one = pair.get(0).get(0);
    String other = pair.get(1).get(0);
    return NaturalOrder.NATURAL.compare(one, other) <= 0 ? one : other;
  }

  /** Matches two things and then, along their wires and plugs, what follows from that. */
  private void follow(String start, String otherStart) {
    Deque<String[]> open = new ArrayDeque<>();
    open.add(new String[] {start, otherStart});
    while (!open.isEmpty()) {
      String[] pair = open.remove();
      if (!take(pair[0], pair[1])) {
        continue;
      }
      Owner one = before.get(pair[0]);
      Owner other = after.get(pair[1]);
      if (one == null || other == null) {
        continue;
      }
      Map<String, List<String>> next = neighbours(one, levelsBefore.get(ROUNDS - 1));
      Map<String, List<String>> nextOther = neighbours(other, levelsAfter.get(ROUNDS - 1));
      next.forEach(
          (key, ids) -> {
            List<String> alike = nextOther.getOrDefault(key, List.of());
            for (int i = 0; i < ids.size() && i < alike.size(); i++) {
              open.add(new String[] {ids.get(i), alike.get(i)});
            }
          });
    }
  }

  /** What a thing leads to, free things alone, by the way there and their colour. */
  private static Map<String, List<String>> neighbours(Owner owner, Map<String, Integer> colours) {
    Map<String, Set<String>> found = new LinkedHashMap<>();
    for (Owner.Contact contact : owner.contacts()) {
      Integer colour = colours.get(contact.farOwner());
      if (colour != null) {
        String key =
            contact.cavity() + "|" + contact.label() + "|" + contact.farPin() + "|" + colour;
        found.computeIfAbsent(key, none -> new HashSet<>()).add(contact.farOwner());
      }
    }
    String mate = owner.mate();
    if (mate != null && colours.containsKey(mate)) {
      found.put("mate", Set.of(mate));
    }
    Map<String, List<String>> sorted = new LinkedHashMap<>();
    found.forEach(
        (key, ids) -> {
          List<String> list = new ArrayList<>(ids);
          list.sort(NaturalOrder.NATURAL);
          sorted.put(key, list);
        });
    return sorted;
  }
}
