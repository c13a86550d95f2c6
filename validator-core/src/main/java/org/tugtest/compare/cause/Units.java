package org.tugtest.compare.cause;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.change.ChangeKind;
import org.tugtest.compare.change.FieldNames;
import org.tugtest.compare.entry.Leaf;
import org.tugtest.compare.entry.Leaves;
import org.tugtest.compare.entry.Named;
import org.tugtest.compare.entry.Renames;
import org.tugtest.compare.entry.Sections;
import org.tugtest.finding.Subject;

/** Sorts what differs between the entries of two revisions to the changes that people speak of. */
final class Units {
  private static final List<Set<String>> TOGETHER =
      List.of(
          Set.of("part", "areaMm2", "awg"),
          Set.of("at", "on", "offsetMm"),
          Set.of("from", "to", "fromTerminal", "toTerminal"),
          Set.of("type", "own"));
  private final Renames renames;
  private final Map<String, List<Integer>> groupsAt = new HashMap<>();
  private final Map<String, Integer> renamedIds = new HashMap<>();
  private final List<List<Change>> groups = new ArrayList<>();
  private final List<List<Leaf>> leaves = new ArrayList<>();

  private Units(Comparison comparison) {
    this.renames = comparison.matches().renames();
    List<Change> changes = comparison.changes();
    for (Change change : changes) {
      if (change.kind() == ChangeKind.RENAMED || change.kind() == ChangeKind.IDS_EXCHANGED) {
        change.subjects().forEach(subject -> renamedIds.put(subject.id(), groups.size()));
        open(change);
      }
    }
    for (Change change : changes) {
      if (change.kind() != ChangeKind.RENAMED && change.kind() != ChangeKind.IDS_EXCHANGED) {
        Integer renamed = renamed(change);
        if (renamed == null) {
          open(change);
        } else {
          groups.get(renamed).add(change);
        }
      }
    }
  }

  /**
   * The units of a comparison, in the order of its changes; all leaves are in one of them.
   *
   * @param before the entries that the units start from: those before, by the ids before or after
   */
  static List<Unit> of(Comparison comparison, Map<String, Map<String, Object>> before) {
    Units units = new Units(comparison);
    Map<String, Map<String, Object>> after = Sections.of(comparison.after().harness());
    Map<String, List<Leaf>> alone = new LinkedHashMap<>();
    for (Leaf leaf : Leaves.between(before, after)) {
      Integer group = units.groupOf(leaf);
      if (group == null) {
        alone.computeIfAbsent(leaf.entry(), none -> new ArrayList<>()).add(leaf);
      } else {
        units.leaves.get(group).add(leaf);
      }
    }
    List<Unit> all = new ArrayList<>();
    for (int i = 0; i < units.groups.size(); i++) {
      if (!units.leaves.get(i).isEmpty()) {
        all.add(new Unit(units.groups.get(i), units.leaves.get(i)));
      }
    }
    alone.values().forEach(leaf -> all.add(new Unit(List.of(), leaf)));
    return all;
  }

  private void open(Change change) {
    for (Subject subject : change.subjects()) {
      groupsAt.computeIfAbsent(subject.place(), none -> new ArrayList<>()).add(groups.size());
    }
    groups.add(new ArrayList<>(List.of(change)));
    leaves.add(new ArrayList<>());
  }

  /** The group of the thing's new id. */
  private @Nullable Integer renamed(Change change) {
    for (int group : groupsAt.getOrDefault(change.subject().place(), List.of())) {
      ChangeKind kind = groups.get(group).get(0).kind();
      if (kind == ChangeKind.RENAMED || kind == ChangeKind.IDS_EXCHANGED) {
        return group;
      }
    }
    return null;
  }

  private @Nullable Integer groupOf(Leaf leaf) {
    List<Integer> here = groupsAt.getOrDefault(place(leaf), List.of());
    List<String> path = leaf.path().stream().map(Object::toString).toList();
    String field = FieldNames.joined(path);
    String head = path.isEmpty() ? "" : path.get(0);
    for (int group : here) {
      Change change = groups.get(group).get(0);
      if (path.isEmpty() || change.field().equals(field) || change.field().equals("id")) {
        return group;
      }
    }
    for (int group : here) {
      String changed = groups.get(group).get(0).field();
      if (TOGETHER.stream().anyMatch(set -> set.contains(head) && set.contains(changed))
          && !isRename(leaf)) {
        return group;
      }
    }
    Integer named = byName(leaf);
    return named != null || here.isEmpty() ? named : here.get(0);
  }

  /** Whether the value differs only because what it names is called anew. */
  private boolean isRename(Leaf leaf) {
    Object before = leaf.before();
    return before != null && renames.in(before).equals(leaf.after());
  }

  /** What names a thing by its new id goes with that thing. */
  private @Nullable Integer byName(Leaf leaf) {
    Set<String> names = new LinkedHashSet<>();
    for (Object value : new @Nullable Object[] {leaf.before(), leaf.after()}) {
      if (value != null) {
        names.addAll(Named.in("", "", value));
        names.add(value.toString());
      }
    }
    for (String name : names) {
      String id = name.startsWith(Named.OWNER) ? name.substring(Named.OWNER.length()) : name;
      Integer group = renamedIds.get(id);
      if (group != null) {
        return group;
      }
    }
    return null;
  }

  private static String place(Leaf leaf) {
    return Sections.subject(leaf.section(), leaf.id()).place();
  }
}
