package org.tugtest.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Collects the properties of one schema and what it says of them. */
final class SchemaWalk {
  private static final String REF = "$ref";
  private static final int MOST_DEPTH = 12;

  private final JsonNode schema;
  private final Map<String, List<FieldMeaning>> fields = new LinkedHashMap<>();

  SchemaWalk(String text) {
    schema = JsonMapper.builder().build().readTree(text);
  }

  /** The meanings by path, in the order of the schema. */
  Map<String, List<FieldMeaning>> fields() {
    inside(schema, "", List.of(), 0);
    return fields;
  }

  /** The properties of what a node describes: an object, the entries of a map or of a list. */
  private void inside(JsonNode written, String path, List<String> when, int depth) {
    if (depth > MOST_DEPTH) {
      throw new IllegalStateException("the schema is endless at " + path);
    }
    JsonNode node = whole(written);
    List<String> required = node.path("required").valueStream().map(JsonNode::stringValue).toList();
    for (Map.Entry<String, JsonNode> property : node.path("properties").properties()) {
      String name = property.getKey();
      String here = path.isEmpty() ? name : path + "." + name;
      if (!when.isEmpty() && isAlwaysThere(here)) {
        continue;
      }
      JsonNode value = whole(property.getValue());
      add(here, new FieldMeaning(when, description(value), value(value), required.contains(name)));
      inside(value, here, List.of(), depth + 1);
    }
    for (String entries : List.of("additionalProperties", "items")) {
      if (node.path(entries).isObject()) {
        inside(node.get(entries), path, when, depth + 1);
      }
    }
    for (JsonNode branch : node.path("allOf")) {
      if (branch.has("then")) {
        inside(branch.get("then"), path, List.of(condition(branch.path("if"))), depth + 1);
      }
    }
  }

  private boolean isAlwaysThere(String path) {
    return fields.getOrDefault(path, List.of()).stream()
        .anyMatch(meaning -> meaning.when().isEmpty());
  }

  private void add(String path, FieldMeaning meaning) {
    List<FieldMeaning> known = fields.computeIfAbsent(path, none -> new ArrayList<>(1));
    for (int i = 0; i < known.size(); i++) {
      if (known.get(i).saysTheSameAs(meaning)) {
        List<String> both = new ArrayList<>(known.get(i).when());
        both.addAll(meaning.when());
        known.set(
            i, new FieldMeaning(both, meaning.description(), meaning.value(), meaning.required()));
        return;
      }
    }
    known.add(meaning);
  }

  private static String condition(JsonNode test) {
    return test.path("properties").properties().stream()
        .map(property -> property.getKey() + " is " + choice(property.getValue()))
        .collect(Collectors.joining(" and "));
  }

  private static String choice(JsonNode value) {
    return value.has("const")
        ? value.get("const").asString()
        : value
            .path("enum")
            .valueStream()
            .map(JsonNode::asString)
            .collect(Collectors.joining(" or "));
  }

  /** A node with what it refers to; what it says itself goes before. */
  private JsonNode whole(JsonNode node) {
    if (!node.has(REF)) {
      return node;
    }
    JsonNode target = whole(schema.at(node.get(REF).stringValue().substring(1)));
    ObjectNode both = ((ObjectNode) target).deepCopy();
    if (node.has("description")) {
      both.put("general", description(target));
    }
    ((ObjectNode) node).properties().forEach(entry -> both.set(entry.getKey(), entry.getValue()));
    both.remove(REF);
    return both;
  }

  private static String description(JsonNode node) {
    return node.path("description").asString("");
  }

  /** What may be written, in words. */
  private String value(JsonNode node) {
    String general = node.path("general").asString("");
    String kind = kind(node);
    return general.isEmpty() || !isPlain(node) ? kind : kind + "; " + unstopped(general);
  }

  private static boolean isPlain(JsonNode node) {
    return !node.has("properties") && !node.has("enum") && !node.has("const");
  }

  private static String unstopped(String sentence) {
    String start = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    return start.isEmpty()
        ? start
        : start.substring(0, 1).toLowerCase(Locale.ROOT) + start.substring(1);
  }

  private String kind(JsonNode node) {
    if (node.has("const")) {
      return node.get("const").toString();
    }
    if (node.has("enum")) {
      return "one of "
          + node.get("enum")
              .valueStream()
              .map(JsonNode::toString)
              .collect(Collectors.joining(", "));
    }
    JsonNode type = node.path("type");
    if (type.isArray()) {
      return type.valueStream()
          .map(one -> word(one.asString()))
          .collect(Collectors.joining(" or "));
    }
    return switch (type.asString("")) {
      case "number", "integer" -> word(type.asString()) + range(node);
      case "array" -> "a list; each entry: " + each(node.path("items"));
      case "object" ->
          node.path("additionalProperties").isObject() && !node.has("properties")
              ? "a map by id; each entry: " + each(node.get("additionalProperties"))
              : word("object");
      case "" -> "as described";
      default -> word(type.asString());
    };
  }

  private String each(JsonNode written) {
    JsonNode entry = whole(written);
    return entry.has("properties") ? unstopped(description(entry)) : value(entry);
  }

  private static String word(String type) {
    return switch (type) {
      case "number" -> "a number";
      case "integer" -> "a whole number";
      case "string" -> "a text";
      case "boolean" -> "true or false";
      case "object" -> "an object";
      default -> type;
    };
  }

  private static String range(JsonNode node) {
    StringBuilder range = new StringBuilder();
    if (node.has("minimum")) {
      range.append(" from ").append(node.get("minimum"));
    }
    if (node.has("exclusiveMinimum")) {
      range.append(" over ").append(node.get("exclusiveMinimum"));
    }
    if (node.has("maximum")) {
      range.append(" to ").append(node.get("maximum"));
    }
    return range.toString();
  }
}
