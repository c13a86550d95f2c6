package org.tugtest.compare.match;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.compare.entry.Renames;
import org.tugtest.compare.entry.Sections;
import org.tugtest.facts.Facts;

/** Matches section by section, what others name before what names it. */
final class Matcher {
  private static final List<String> PARTS_IN_ORDER =
      List.of(
          "parts/wires",
          "parts/terminals",
          "parts/seals",
          "parts/splices",
          "parts/fuses",
          "parts/coverings",
          "parts/supports",
          "parts/housings",
          "zones",
          "parts/deviceTypes");
  private static final List<String> LAST =
      List.of("segments", "groups", "states", "waivers", "expectations");
  private static final List<String> BY_ID_ALONE =
      List.of(Sections.HEAD, Sections.DEFAULTS, "devices", "fitted", "limits");

  private final Facts before;
  private final Facts after;
  private final Map<String, Map<String, Object>> entriesBefore;
  private final Map<String, Map<String, Object>> entriesAfter;
  private final Map<String, SectionMatch> sections = new LinkedHashMap<>();

  Matcher(Facts before, Facts after) {
    this.before = before;
    this.after = after;
    this.entriesBefore = Sections.of(before.harness());
    this.entriesAfter = Sections.of(after.harness());
    for (String section : Sections.NAMES) {
      sections.put(section, new SectionMatch(section, ids(section, true), ids(section, false)));
    }
  }

  Map<String, SectionMatch> sections() {
    BY_ID_ALONE.forEach(section -> byId(of(section)));
    PARTS_IN_ORDER.forEach(this::byIdThenContent);
    byId(of("looms"));
    Votes.ofLooms(before.harness(), after.harness()).match(of("looms"));
    new OwnerMatcher(before, after, renames(), of("connectors"), of("splices")).match();
    byId(of("nodes"));
    Votes.ofNodes(before.harness(), after.harness(), renames()).match(of("nodes"));
    new WireMatcher(before.harness(), after.harness(), renames(), of("wires")).match();
    LAST.forEach(this::byIdThenContent);
    return sections;
  }

  private SectionMatch of(String section) {
    SectionMatch found = sections.get(section);
    if (found == null) {
      throw new IllegalArgumentException("there is no section " + section);
    }
    return found;
  }

  private Collection<String> ids(String section, boolean first) {
    Facts facts = first ? before : after;
    return switch (section) {
      case "connectors" -> connectors(facts, first ? after : before);
      case "splices" -> facts.wiring().splices();
      default -> (first ? entriesBefore : entriesAfter).getOrDefault(section, Map.of()).keySet();
    };
  }

  /** Connectors that wires alone name are left out where the other side has a device of that id. */
  private static Collection<String> connectors(Facts facts, Facts other) {
    Set<String> written = facts.harness().connectors().keySet();
    Set<String> all = facts.wiring().connectors();
    if (all.size() == written.size()) {
      return all;
    }
    return all.stream()
        .filter(id -> written.contains(id) || !other.harness().devices().containsKey(id))
        .toList();
  }

  private Renames renames() {
    Map<String, Map<String, String>> ids = new LinkedHashMap<>();
    sections.forEach((section, match) -> ids.put(section, match.forward()));
    return new Renames(ids);
  }

  static void byId(SectionMatch section) {
    section.freeOnBoth().forEach(id -> section.match(id, id, "same id"));
  }

  /** What has no like id is the same as what says the same; of several, in natural order. */
  private void byIdThenContent(String name) {
    SectionMatch section = of(name);
    byId(section);
    List<String> free = section.freeBefore();
    if (free.isEmpty() || section.freeAfter().isEmpty()) {
      return;
    }
    Renames renames = renames();
    Map<Object, List<String>> byContent = new LinkedHashMap<>();
    for (String id : free) {
      Object entry = entriesBefore.get(name).get(id);
      byContent.computeIfAbsent(Content.of(renames.in(entry)), none -> new ArrayList<>()).add(id);
    }
    for (String id : section.freeAfter()) {
      List<String> alike = byContent.get(Content.of(entriesAfter.get(name).get(id)));
      if (alike != null && !alike.isEmpty()) {
        section.match(alike.remove(0), id, "the same in all but its id");
      }
    }
  }
}
