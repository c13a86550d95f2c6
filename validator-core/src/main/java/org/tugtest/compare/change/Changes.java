package org.tugtest.compare.change;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.entry.Renames;
import org.tugtest.compare.entry.Sections;
import org.tugtest.compare.match.Match;
import org.tugtest.compare.match.Matches;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Splice;

/**
 * All changes between two revisions. What the files say otherwise is in exactly one of them, and
 * what they say alike is in none: fields are found by comparing whole records, so that a field
 * without words of its own is told as {@link ChangeKind#OTHER}.
 */
public final class Changes {
  private final ChangeList list;
  private final Matches matches;
  private final Map<String, Map<String, Object>> before;
  private final Map<String, Map<String, Object>> after;
  private final FieldWords words;

  private Changes(Facts before, Facts after, Matches matches) {
    this.list = new ChangeList(before, after, matches);
    this.matches = matches;
    this.before = Sections.of(before.harness());
    this.after = Sections.of(after.harness());
    this.words = new FieldWords(list);
  }

  /** The changes, policy first, then by connector, device, splice and section. */
  public static List<Change> of(Facts before, Facts after, Matches matches) {
    Changes changes = new Changes(before, after, matches);
    Sections.NAMES.forEach(changes::section);
    return changes.list.sorted();
  }

  private void section(String section) {
    for (String id : matches.removed(section)) {
      list.add(
          kind(section, ChangeKind.REMOVED),
          new ChangeList.Entry(section, id, null),
          List.of(),
          EntryText.of(before(section, id)),
          null,
          EntryText.sentence(section, id, before(section, id), list.before(), "is gone"));
    }
    for (String id : matches.added(section)) {
      list.add(
          kind(section, ChangeKind.ADDED),
          new ChangeList.Entry(section, null, id),
          List.of(),
          null,
          EntryText.of(after(section, id)),
          EntryText.sentence(section, id, after(section, id), list.after(), "is new"));
    }
    Set<String> exchanged = new HashSet<>();
    for (Match match : matches.in(section)) {
      if (match.renamed()) {
        renamed(match, exchanged);
      }
      fields(match);
    }
  }

  private void renamed(Match match, Set<String> exchanged) {
    String section = match.section();
    boolean swapped =
        matches
            .ofBefore(section, match.after())
            .filter(other -> other.after().equals(match.before()))
            .isPresent();
    if (!swapped) {
      list.add(
          kind(section, ChangeKind.RENAMED),
          new ChangeList.Entry(section, match.before(), match.after()),
          List.of("id"),
          match.before(),
          match.after(),
          new ChangeList.Entry(section, match.before(), null).name()
              + " is called "
              + match.after()
              + " now ("
              + match.why()
              + ").");
    } else if (exchanged.add(match.before()) && exchanged.add(match.after())) {
      list.add(
          kind(section, ChangeKind.IDS_EXCHANGED),
          new ChangeList.Entry(section, match.before(), match.after()),
          List.of("id"),
          match.before(),
          match.after(),
          new ChangeList.Entry(section, match.before(), null).name()
              + " and "
              + match.after()
              + " have each other's id ("
              + match.why()
              + ").");
    }
  }

  private void fields(Match match) {
    Object raw = before(match.section(), match.before());
    Object now = after(match.section(), match.after());
    if (raw == null || now == null) {
      return;
    }
    Renames renames = matches.renames();
    Object translated =
        match.section().equals("fitted") ? fuse(renames, (String) raw) : renames.in(raw);
    if (!translated.equals(now)) {
      words.say(match, raw, translated, now);
    }
  }

  private static String fuse(Renames renames, String part) {
    return renames.id("parts/fuses", part);
  }

  private @Nullable Object before(String section, String id) {
    return written(before, section, id, matches.ofBefore(section, id).isPresent());
  }

  private @Nullable Object after(String section, String id) {
    return written(after, section, id, matches.ofAfter(section, id).isPresent());
  }

  /** What a sketch only implies says nothing of itself. */
  private static @Nullable Object written(
      Map<String, Map<String, Object>> entries, String section, String id, boolean matched) {
    Object entry = Objects.requireNonNull(entries.get(section)).get(id);
    if (entry != null || !matched) {
      return entry;
    }
    return switch (section) {
      case "connectors" ->
          new Connector(
              id, null, null, null, null, null, List.of(), List.of(), false, Map.of(), null, null,
              null, null, Map.of());
      case "splices" -> new Splice(id, null, null, null, null, null, false, List.of(), null);
      default -> null;
    };
  }

  private static ChangeKind kind(String section, ChangeKind otherwise) {
    return switch (section) {
      case "states" -> ChangeKind.STATE;
      case "limits" -> ChangeKind.LIMIT;
      case "waivers" -> ChangeKind.WAIVER;
      case "expectations" -> ChangeKind.EXPECTATION;
      default -> otherwise;
    };
  }
}
