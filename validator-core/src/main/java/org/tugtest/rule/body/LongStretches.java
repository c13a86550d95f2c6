package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/**
 * Stretches that are too long, put together by what a person would change: those that go through
 * the same nodes that are not held are one.
 */
final class LongStretches {
  private static final int NAMED = 6;
  private final List<Group> groups = new ArrayList<>();
  private final Map<String, Group> byNode = new HashMap<>();

  /** Stretches with the same cause. */
  static final class Group {
    private final List<LongStretch> stretches = new ArrayList<>();

    /** The segments that are judged by it. */
    List<Subject> members() {
      return stretches.stream().map(LongStretch::subject).toList();
    }

    Finding.Draft finding() {
      LongStretch worst =
          stretches.stream()
              .min(
                  Comparator.comparing((LongStretch one) -> !one.grave())
                      .thenComparing(one -> -one.over()))
              .orElseThrow();
      List<String> nodes = nodes();
      Set<Subject> subjects = new LinkedHashSet<>();
      nodes.forEach(node -> subjects.add(Subject.of("nodes", node)));
      subjects.add(worst.subject());
      stretches.forEach(
          one -> one.span().segments().forEach(id -> subjects.add(Subject.of("segments", id))));
      Finding.Draft draft = null;
      for (Subject subject : subjects) {
        draft = draft == null ? Finding.on(subject) : draft.and(subject);
      }
      boolean grave = worst.grave();
      Objects.requireNonNull(draft)
          .message(worst.sentence() + through(nodes))
          .remedy(nodes.isEmpty() ? worst.remedy() : hold(nodes))
          .measured(worst.measured())
          .basis(grave ? Basis.SOURCE : Basis.COMMON_PRACTICE)
          .level(grave ? Level.ERROR : Level.WARNING);
      others(worst).forEach(draft::detail);
      int ties = worst.span().ties();
      if (ties > 0) {
        draft.detail(
            "its "
                + ties
                + (ties == 1 ? " tie is" : " ties are")
                + " not counted: a tie holds the wires together, not the loom to the vehicle");
      }
      return draft;
    }

    /** The nodes that are not held, that through which most go first. */
    private List<String> nodes() {
      Map<String, Integer> counts = new TreeMap<>(NaturalOrder.NATURAL);
      stretches.forEach(
          one -> one.span().nodes().forEach(node -> counts.merge(node, 1, Integer::sum)));
      List<String> nodes = new ArrayList<>(counts.keySet());
      nodes.sort(Comparator.comparingInt(node -> -counts.getOrDefault(node, 0)));
      return nodes;
    }

    private static String through(List<String> nodes) {
      if (nodes.isEmpty()) {
        return "";
      }
      return (nodes.size() == 1 ? "; node " : "; nodes ")
          + Series.and(nodes, NAMED)
          + (nodes.size() == 1 ? " is" : " are")
          + " not held";
    }

    private static String hold(List<String> nodes) {
      return nodes.size() == 1
          ? "hold node " + nodes.get(0) + ", or add clips near it"
          : "hold nodes " + Series.and(nodes, NAMED) + ", or add clips near them";
    }

    /** The other stretches, each once. */
    private List<String> others(LongStretch worst) {
      Map<List<String>, String> others = new LinkedHashMap<>();
      for (LongStretch one : stretches) {
        if (!one.span().segments().equals(worst.span().segments())) {
          others.putIfAbsent(one.span().segments(), one.sentence());
        }
      }
      return List.copyOf(others.values());
    }
  }

  void add(LongStretch stretch) {
    Group its = new Group();
    its.stretches.add(stretch);
    groups.add(its);
    for (String node : stretch.span().nodes()) {
      Group there = byNode.get(node);
      if (there != null && there != its) {
        its = merged(there, its);
      }
      byNode.put(node, its);
    }
  }

  /** The larger takes the smaller one in, so that many stretches stay cheap. */
  private Group merged(Group one, Group other) {
    Group large = one.stretches.size() >= other.stretches.size() ? one : other;
    Group small = large == one ? other : one;
    large.stretches.addAll(small.stretches);
    for (LongStretch stretch : small.stretches) {
      stretch.span().nodes().forEach(node -> byNode.replace(node, small, large));
    }
    small.stretches.clear();
    return large;
  }

  /** The groups, in the order of their first segments. */
  List<Group> groups() {
    List<Group> standing = new ArrayList<>();
    for (Group group : groups) {
      if (!group.stretches.isEmpty()) {
        group.stretches.sort(Comparator.comparing(one -> one.segment().id(), NaturalOrder.NATURAL));
        standing.add(group);
      }
    }
    return standing;
  }
}
