package org.tugtest.read;

import static org.tugtest.read.Fields.flag;
import static org.tugtest.read.Fields.map;
import static org.tugtest.read.Fields.number;
import static org.tugtest.read.Fields.object;
import static org.tugtest.read.Fields.ref;
import static org.tugtest.read.Fields.refs;
import static org.tugtest.read.Fields.text;
import static org.tugtest.read.Fields.textMap;
import static org.tugtest.read.Fields.texts;
import static org.tugtest.read.Fields.word;
import static org.tugtest.read.Fields.words;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Expectation;
import org.tugtest.model.Ref;
import org.tugtest.model.RuleLimits;
import org.tugtest.model.State;
import org.tugtest.model.Waiver;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Takes what the team wants: states, limits, waivers and expectations. */
final class IntentBinder {
  private static final Map<String, Expectation.That> THAT = words(Expectation.That.values());
  private static final Set<String> NO_SETTINGS = Set.of("level", "places", "note");

  private IntentBinder() {}

  static State state(String id, ObjectNode fields) {
    Map<Ref, String> set = new LinkedHashMap<>();
    textMap(fields, "set").forEach((what, position) -> set.put(Ref.parse(what), position));
    Map<Ref, Double> volts = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> entry : object(fields, "volts").properties()) {
      if (entry.getValue().isNumber()) {
        volts.put(Ref.parse(entry.getKey()), Fields.plain(entry.getValue()));
      }
    }
    return new State(
        id,
        set,
        refs(fields, "on"),
        refs(fields, "running"),
        volts,
        text(fields, "from"),
        flag(fields, "brief", false));
  }

  static RuleLimits limits(String rule, ObjectNode fields) {
    return new RuleLimits(
        rule,
        text(fields, "level"),
        settings(fields),
        map(
            fields,
            "places",
            (place, own) -> new RuleLimits.AtPlace(text(own, "level"), settings(own))));
  }

  private static Map<String, Object> settings(ObjectNode fields) {
    Map<String, Object> settings = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> entry : fields.properties()) {
      Object value = scalar(entry.getValue());
      if (value != null && !NO_SETTINGS.contains(entry.getKey())) {
        settings.put(entry.getKey(), value);
      }
    }
    return settings;
  }

  /** A number, text or truth value; null for anything else. */
  static @Nullable Object scalar(JsonNode value) {
    if (value.isNumber()) {
      return Fields.plain(value);
    }
    if (value.isString()) {
      return value.stringValue();
    }
    return value.isBoolean() ? Boolean.valueOf(value.booleanValue()) : null;
  }

  static Waiver waiver(String id, ObjectNode fields) {
    return new Waiver(
        id,
        text(fields, "rule"),
        text(fields, "at"),
        text(fields, "reason"),
        date(fields, "until"),
        text(fields, "state"));
  }

  static @Nullable LocalDate date(ObjectNode fields, String name) {
    String text = text(fields, name);
    if (text == null) {
      return null;
    }
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException notADate) {
      return null;
    }
  }

  static Expectation expectation(String id, ObjectNode fields) {
    boolean byCircuit = fields.has("circuits");
    JsonNode lists = fields.get(byCircuit ? "circuits" : "wires");
    return new Expectation(
        id,
        word(fields, "that", THAT),
        ref(fields, "at"),
        text(fields, "in"),
        number(fields, "minV"),
        refs(fields, "points"),
        ref(fields, "fuse"),
        list(lists, 0),
        list(lists, 1),
        byCircuit,
        text(fields, "loom"),
        number(fields, "grams"),
        text(fields, "reason"));
  }

  private static List<String> list(@Nullable JsonNode lists, int index) {
    return lists == null || !lists.isArray() ? List.of() : texts(lists.get(index));
  }
}
