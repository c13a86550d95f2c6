package org.tugtest.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.change.ChangeKind;
import org.tugtest.compare.circuit.Circuits;
import org.tugtest.compare.consequence.Moved;
import org.tugtest.compare.consequence.Totals;
import org.tugtest.finding.Subject;
import org.tugtest.text.Series;

/** The meaning of a change in one sentence, for the first lines of reports for people. */
public final class ChangeSummary {
  private static final int SPELLED = 2;
  private static final int MOST_SORTS = 8;

  private ChangeSummary() {}

  /**
   * {@code W014 moves from R1:3 to R1:7; no circuit changes; 312 g and 4 connectors less}; without
   * a full stop.
   */
  public static String of(Comparison comparison) {
    if (comparison.changes().isEmpty()) {
      return "nothing changes";
    }
    List<String> parts = new ArrayList<>();
    parts.add(done(comparison.changes()));
    parts.add(circuits(comparison.circuits()));
    List<Moved> totals = new Totals().of(comparison);
    String more = totals(totals, true);
    String less = totals(totals, false);
    if (!more.isEmpty()) {
      parts.add(more + " more");
    }
    if (!less.isEmpty()) {
      parts.add(less + " less");
    }
    return String.join("; ", parts);
  }

  private static String done(List<Change> changes) {
    if (changes.size() <= SPELLED) {
      return String.join(
          ", ", changes.stream().map(change -> withoutStop(change.sentence())).toList());
    }
    Map<String, Set<Subject>> sorts = new LinkedHashMap<>();
    for (Change change : changes) {
      sorts.computeIfAbsent(sort(change), none -> new LinkedHashSet<>()).add(change.subject());
    }
    List<String> counted = new ArrayList<>();
    sorts.forEach((sort, subjects) -> counted.add(counted(sort, subjects.size())));
    return Series.and(counted, MOST_SORTS);
  }

  /** Noun and what was done, apart by a bar. */
  private static String sort(Change change) {
    String section = change.subject().section();
    String noun =
        switch (section) {
          case "wires" -> "wire";
          case "connectors" -> "connector";
          case "splices" -> "splice";
          case "devices" -> "device";
          case "fitted" -> "fuse";
          case "groups" -> "group";
          case "looms" -> "loom";
          case "nodes" -> "node";
          case "segments" -> "segment";
          case "zones" -> "zone";
          case "states" -> "state";
          case "limits" -> "limit";
          case "waivers" -> "waiver";
          case "expectations" -> "expectation";
          default -> section.startsWith("parts/") ? "part" : "setting";
        };
    return noun + "|" + what(change.kind());
  }

  private static String what(ChangeKind kind) {
    if (kind.isPolicy() || kind == ChangeKind.OTHER) {
      return "changed";
    }
    return switch (kind) {
      case IDS_EXCHANGED -> "with another's id";
      case RE_MATED -> "plugged elsewhere";
      case FUSE_RE_RATED -> "re-rated";
      default -> kind.word();
    };
  }

  private static String counted(String sort, int count) {
    int bar = sort.indexOf('|');
    return Tally.counted(count, sort.substring(0, bar)) + " " + sort.substring(bar + 1);
  }

  private static String circuits(Circuits circuits) {
    if (circuits.same()) {
      return "no circuit changes";
    }
    List<String> changed = new ArrayList<>();
    if (!circuits.nets().isEmpty()) {
      changed.add(Tally.counted(circuits.nets().size(), "change") + " of nets");
    }
    if (!circuits.elements().isEmpty()) {
      changed.add(Tally.counted(circuits.elements().size(), "change") + " inside devices");
    }
    return Series.and(changed);
  }

  private static String totals(List<Moved> totals, boolean more) {
    List<String> named = new ArrayList<>();
    for (Moved moved : totals) {
      Double before = moved.before();
      Double after = moved.after();
      if (before != null && after != null && (after > before) == more) {
        String figure = moved.shown(Math.abs(after - before));
        String what = moved.unit().isEmpty() ? one(moved.what(), after - before) : "";
        named.add(figure + (what.isEmpty() ? of(moved) : " " + what));
      }
    }
    return Series.and(named);
  }

  private static String of(Moved moved) {
    return moved.unit().equals("m") ? " of wire" : "";
  }

  private static String one(String plural, double count) {
    return Math.abs(count) == 1 ? plural.substring(0, plural.length() - 1) : plural;
  }

  private static String withoutStop(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }
}
