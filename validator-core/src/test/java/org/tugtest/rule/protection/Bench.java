package org.tugtest.rule.protection;

import org.tugtest.rule.Judged;
import org.tugtest.rule.Rule;

/** Small cars for the tests of the rules on protection. */
final class Bench {
  /** A battery. */
  static final String BATTERY =
      "\"BAT\": {\"elements\": {\"cell\": {\"kind\": \"source\", \"plus\": \"+\", \"minus\": \"-\","
          + " \"volts\": 12.6}}}";

  /** A lamp of two pins. */
  static final String LAMP =
      "\"LAMP\": {\"elements\": {\"bulb\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\","
          + " \"watts\": 35}}}";

  private Bench() {}

  /** A sketch with a battery, these devices, these wires, and more sections. */
  static String car(String devices, String wires, String... more) {
    return "{\"format\": 1, \"sketch\": true, \"devices\": {"
        + BATTERY
        + (devices.isEmpty() ? "" : ", ")
        + devices
        + "}, \"wires\": {"
        + wires
        + "}"
        + (more.length == 0 ? "" : ", " + String.join(", ", more))
        + "}";
  }

  /** What a rule says of such a sketch. */
  static Judged judged(Rule rule, String devices, String wires, String... more) {
    return Judged.of(rule, car(devices, wires, more));
  }

  /** A fuse of one rating between {@code in} and {@code 1} of a device of its own. */
  static String fuse(String device, double ratingA) {
    return "\"%s\": {\"elements\": {\"f\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"1\", \"ratingA\": %s}}}"
        .formatted(device, ratingA);
  }

  /** A wire of 1 mm2, class 100 °C. */
  static String wire(String id, String from, String to) {
    return wire(id, from, to, 1);
  }

  /** A wire of an area. */
  static String wire(String id, String from, String to, double areaMm2) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": %s}"
        .formatted(id, from, to, areaMm2);
  }

  /** Several things in a row. */
  static String all(String... things) {
    return String.join(", ", things);
  }
}
