package org.tugtest.rule.body;

import org.tugtest.rule.Judged;
import org.tugtest.rule.Rule;

/**
 * A small loom for tests: devices A to E at nodes a to e, wire parts of 2, 3 and 10 mm, segments as
 * given.
 */
record Loom(String segments, String wires, String more) {
  /** Segment s1 of 1000 mm from a to b with these fields, one wire of 3 mm on it. */
  static Loom of(String fields) {
    return new Loom(segment("s1", "a", "b", 1000, fields), wire("W1", "A:1", "B:1", "w3"), "");
  }

  static String segment(String id, String from, String to, double length, String fields) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"lengthMm\": %s%s}"
        .formatted(id, from, to, length, fields.isEmpty() ? "" : ", " + fields);
  }

  static String wire(String id, String from, String to, String part) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"part\": \"%s\"}"
        .formatted(id, from, to, part);
  }

  Loom and(String segment) {
    return new Loom(segments + ", " + segment, wires, more);
  }

  Loom wired(String... others) {
    return new Loom(segments, wires + ", " + String.join(", ", others), more);
  }

  /** Further sections, or further nodes as {@code "nodes": ..} in one of them. */
  Loom with(String sections) {
    return new Loom(segments, wires, more + ", " + sections);
  }

  String json() {
    return json("");
  }

  private String json(String nodes) {
    return """
    {"format": 1, "sketch": true,
     "devices": {"A": {"at": "a"}, "B": {"at": "b"}, "C": {"at": "c"}, "D": {"at": "d"}, "E": {"at": "e"}},
     "parts": {
       "wires": {"w2": {"areaMm2": 1, "maxC": 125, "outerMm": 2},
         "w3": {"areaMm2": 2.5, "maxC": 125, "outerMm": 3},
         "w10": {"areaMm2": 25, "maxC": 125, "outerMm": 10, "minBendMm": 60}},
       "coverings": {
         "c5": {"kind": "braided-sleeve", "innerMinMm": 2, "innerMaxMm": 5, "wallMm": 0.5,
           "maxC": 150, "protects": ["abrasion"]},
         "c8": {"kind": "braided-sleeve", "innerMinMm": 4, "innerMaxMm": 8, "maxC": 150,
           "protects": ["abrasion", "heat"]},
         "p12": {"kind": "split-conduit", "innerMm": 12, "wallMm": 1, "maxC": 105,
           "protects": ["abrasion"]},
         "tape": {"kind": "tape"}},
       "supports": {"clip": {"kind": "clip"}, "tie": {"kind": "tie"}}},
     "layout": {"nodes": {%s}, "segments": {%s}},
     "wires": {%s}%s}
    """
        .formatted(nodes, segments, wires, more);
  }

  Judged judged(Rule rule) {
    return Judged.of(rule, json());
  }

  Judged judged(Rule rule, String nodes) {
    return Judged.of(rule, json(nodes));
  }
}
