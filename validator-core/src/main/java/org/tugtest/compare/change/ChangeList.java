package org.tugtest.compare.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.entry.Sections;
import org.tugtest.compare.match.Matches;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Place;
import org.tugtest.text.Places;

/** The changes while they are found; fills in groups and places. */
final class ChangeList {
  private static final Comparator<Change> ORDER =
      Comparator.comparing(Change::group)
          .thenComparing(change -> change.subject())
          .thenComparing(Change::kind)
          .thenComparing(Change::field, NaturalOrder.NATURAL)
          .thenComparing(Change::sentence);

  private final Facts before;
  private final Facts after;
  private final Matches matches;
  private final Grouping grouping;
  private final List<Change> changes = new ArrayList<>();

  ChangeList(Facts before, Facts after, Matches matches) {
    this.before = before;
    this.after = after;
    this.matches = matches;
    this.grouping = new Grouping(before, after, matches);
  }

  Facts before() {
    return before;
  }

  Facts after() {
    return after;
  }

  Matches matches() {
    return matches;
  }

  /** An entry on one or both sides. */
  record Entry(String section, @Nullable String was, @Nullable String is) {
    /** What sentences call it. */
    String name() {
      String id = is != null ? is : was;
      if (id == null || id.isEmpty()) {
        return section.equals(Sections.HEAD) ? "The harness" : "The defaults";
      }
      return switch (section) {
        case "wires", "connectors", "splices", "devices", "groups", "fitted" -> id;
        case "looms" -> "Loom " + id;
        case "nodes" -> "Node " + id;
        case "segments" -> "Segment " + id;
        case "zones" -> "Zone " + id;
        case "states" -> "State " + id;
        case "limits" -> "The limit of " + id;
        case "waivers" -> "Waiver " + id;
        case "expectations" -> "Expectation " + id;
        case "parts/deviceTypes" -> "Device type " + id;
        case "parts/wires" -> "Wire part " + id;
        case "parts/fuses" -> "Fuse part " + id;
        default -> "Part " + section.substring(section.indexOf('/') + 1) + "/" + id;
      };
    }
  }

  void add(
      ChangeKind kind,
      Entry entry,
      List<String> path,
      @Nullable String was,
      @Nullable String is,
      String sentence) {
    add(kind, entry, path, was, is, sentence, grouping.of(entry));
  }

  void add(
      ChangeKind kind,
      Entry entry,
      List<String> path,
      @Nullable String was,
      @Nullable String is,
      String sentence,
      Group group) {
    List<String> names = FieldNames.written(path);
    Subject subjectWas = subject(entry.section(), entry.was());
    Subject subjectIs = subject(entry.section(), entry.is());
    changes.add(
        new Change(
            kind,
            subjectWas,
            subjectIs,
            String.join(".", names),
            was,
            is,
            sentence,
            kind.isPolicy() ? Group.POLICY : group,
            place(before.places(), subjectWas, names),
            place(after.places(), subjectIs, names)));
  }

  Grouping grouping() {
    return grouping;
  }

  List<Change> sorted() {
    changes.sort(ORDER);
    return List.copyOf(changes);
  }

  private static @Nullable Subject subject(String section, @Nullable String id) {
    return id == null ? null : Sections.subject(section, id);
  }

  private static @Nullable Place place(
      Places places, @Nullable Subject subject, List<String> names) {
    return subject == null ? null : places.of(subject.place(), names.toArray(String[]::new));
  }
}
