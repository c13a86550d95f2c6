package org.tugtest.rule.written.reference;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.tugtest.finding.Subject;

/**
 * A thing that names others.
 *
 * @param subject the thing
 * @param words what it is called in a sentence
 * @param prefix names that lead from the thing to the object whose fields name others
 */
record Holder(Subject subject, String words, List<String> prefix) {
  private static final Map<String, String> NOUNS =
      Map.ofEntries(
          Map.entry("wires", "wire"),
          Map.entry("connectors", "connector"),
          Map.entry("devices", "device"),
          Map.entry("splices", "splice"),
          Map.entry("groups", "group"),
          Map.entry("nodes", "node"),
          Map.entry("segments", "segment"),
          Map.entry("states", "state"),
          Map.entry("fitted", "the fuse fitted in"),
          Map.entry("limits", "the limits of"),
          Map.entry("waivers", "waiver"),
          Map.entry("expectations", "expectation"));

  private static final Map<String, String> PART_NOUNS =
      Map.of("housings", "housing", "deviceTypes", "device type");

  /** An entry of a section. */
  static Holder of(Subject subject) {
    String section = subject.section();
    String kind = section.substring(section.lastIndexOf('/') + 1);
    String noun =
        section.equals(kind)
            ? NOUNS.getOrDefault(section, section)
            : PART_NOUNS.getOrDefault(kind, kind);
    return new Holder(subject, noun + " " + subject.id(), List.of());
  }

  /** Something inside a thing, such as an element of a device type. */
  Holder inside(String noun, String... names) {
    return new Holder(
        subject, noun + " " + names[names.length - 1] + " of " + words, Arrays.asList(names));
  }
}
