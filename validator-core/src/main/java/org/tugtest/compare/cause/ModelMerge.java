package org.tugtest.compare.cause;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.tugtest.compare.entry.Leaf;
import org.tugtest.compare.entry.Leaves;
import org.tugtest.compare.entry.Sections;
import org.tugtest.model.Harness;

/**
 * Two revisions merged on the model: what either changed against the base is changed. Where both
 * change one value to different ones, ours holds and the value is in conflict; an entry that one
 * deletes and the other changes stays as it was changed, and is in conflict too.
 *
 * @param harness with the root and files of ours
 * @param conflicts places of what both changed otherwise ({@code wires/W1}, {@code wires/W1 cutMm})
 */
public record ModelMerge(Harness harness, List<String> conflicts) {
  public ModelMerge {
    conflicts = List.copyOf(conflicts);
  }

  /** Merges two revisions with their common base. */
  public static ModelMerge of(Harness base, Harness ours, Harness theirs) {
    Map<String, Map<String, Object>> entries = Sections.of(base);
    List<Leaf> mine = Leaves.between(entries, Sections.of(ours));
    List<Leaf> other = Leaves.between(entries, Sections.of(theirs));
    Map<String, List<Leaf>> byEntry = new HashMap<>();
    mine.forEach(
        leaf -> byEntry.computeIfAbsent(leaf.entry(), none -> new ArrayList<>()).add(leaf));
    Map<String, Map<String, Object>> merged = new LinkedHashMap<>();
    entries.forEach((section, map) -> merged.put(section, new LinkedHashMap<>(map)));
    List<String> conflicts = new ArrayList<>();
    mine.forEach(leaf -> Leaves.apply(merged, leaf));
    for (Leaf leaf : other) {
      List<Leaf> here = byEntry.getOrDefault(leaf.entry(), List.of());
      boolean same =
          here.stream()
              .anyMatch(one -> one.sameSpot(leaf) && Objects.equals(one.after(), leaf.after()));
      boolean clash =
          !same
              && here.stream()
                  .anyMatch(one -> one.sameSpot(leaf) || one.path().isEmpty() || leaf.removes());
      if (clash) {
        conflicts.add(leaf.entry() + (leaf.path().isEmpty() ? "" : " " + path(leaf)));
      }
      if (clash && here.stream().anyMatch(Leaf::removes)) {
        restore(merged, entries, leaf);
      } else if (!clash) {
        Leaves.apply(merged, leaf);
      }
    }
    return new ModelMerge(Sections.harness(ours, merged), conflicts);
  }

  /** Ours deleted what theirs changed: it comes back as theirs has it. */
  private static void restore(
      Map<String, Map<String, Object>> merged, Map<String, Map<String, Object>> base, Leaf leaf) {
    Map<String, Object> section = Objects.requireNonNull(merged.get(leaf.section()));
    Object entry =
        section.containsKey(leaf.id())
            ? section.get(leaf.id())
            : Objects.requireNonNull(base.get(leaf.section())).get(leaf.id());
    Object changed = Leaves.with(entry, leaf);
    if (changed != null) {
      section.put(leaf.id(), changed);
    }
  }

  private static String path(Leaf leaf) {
    return String.join(".", leaf.path().stream().map(Object::toString).toList());
  }
}
