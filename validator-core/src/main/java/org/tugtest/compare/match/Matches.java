package org.tugtest.compare.match;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.compare.entry.Renames;
import org.tugtest.facts.Facts;

/**
 * Which thing before is which thing after, section by section. Devices are identities: one is the
 * same only by its id. In a sketch, connectors and splices that wires alone name are among them.
 */
public final class Matches {
  private final Map<String, SectionMatch> sections;
  private final Renames renames;

  Matches(Map<String, SectionMatch> sections) {
    this.sections = sections;
    Map<String, Map<String, String>> ids = new LinkedHashMap<>();
    sections.forEach((section, match) -> ids.put(section, match.forward()));
    this.renames = new Renames(ids);
  }

  /** Matches two revisions; near linear in their size. The order in the files never matters. */
  public static Matches of(Facts before, Facts after) {
    return new Matches(new Matcher(before, after).sections());
  }

  /** The things of a section in both, in natural order of their ids before. */
  public List<Match> in(String section) {
    SectionMatch found = sections.get(section);
    return found == null ? List.of() : found.matches();
  }

  /** The ids of a section that are no more, in natural order. */
  public List<String> removed(String section) {
    SectionMatch found = sections.get(section);
    return found == null ? List.of() : found.freeBefore();
  }

  /** The ids of a section that are new, in natural order. */
  public List<String> added(String section) {
    SectionMatch found = sections.get(section);
    return found == null ? List.of() : found.freeAfter();
  }

  /** The thing that had this id before. */
  public Optional<Match> ofBefore(String section, String id) {
    return Optional.ofNullable(sections.get(section)).flatMap(found -> found.ofBefore(id));
  }

  /** The thing that has this id after. */
  public Optional<Match> ofAfter(String section, String id) {
    return Optional.ofNullable(sections.get(section)).flatMap(found -> found.ofAfter(id));
  }

  /** The sections, in the order of the format. */
  public List<String> sections() {
    return Collections.unmodifiableList(List.copyOf(sections.keySet()));
  }

  /** What the things after were called before. */
  public Renames backwards() {
    Map<String, Map<String, String>> ids = new LinkedHashMap<>();
    sections.forEach(
        (section, match) -> {
          Map<String, String> back = new LinkedHashMap<>();
          match.matches().forEach(one -> back.put(one.after(), one.before()));
          ids.put(section, back);
        });
    return new Renames(ids);
  }

  /** What the things before are called after. */
  public Renames renames() {
    return renames;
  }
}
