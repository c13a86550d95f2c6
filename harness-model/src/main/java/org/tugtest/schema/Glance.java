package org.tugtest.schema;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * A quick yes to files that keep to a schema. It understands just the keywords that the published
 * schemas use, says only whether a value is allowed, and so spares sound files the schema library,
 * whose loading takes longer than all else. What is not allowed is left to the library to explain.
 * A test holds the two against each other.
 */
final class Glance {
  private static final Set<String> WITHOUT_EFFECT =
      Set.of("$schema", "$id", "$defs", "$comment", "title", "description");

  private final JsonNode root;
  private final Map<String, Check> named = new HashMap<>();
  private final Check whole;

  /** Compiles a schema; a keyword it does not know is a fault of the schema. */
  Glance(JsonNode schema) {
    this.root = schema;
    this.whole = compile(schema);
  }

  boolean allows(JsonNode file) {
    return whole.allows(file);
  }

  /** One demand on a value. */
  private interface Check {
    boolean allows(JsonNode value);
  }

  private static boolean all(List<Check> checks, JsonNode value) {
    for (Check check : checks) {
      if (!check.allows(value)) {
        return false;
      }
    }
    return true;
  }

  private Check named(String ref) {
    Check known = named.get(ref);
    if (known == null) {
      known = compile(root.at(ref.substring(1)));
      named.put(ref, known);
    }
    return known;
  }

  private Check compile(JsonNode schema) {
    if (schema.isBoolean()) {
      boolean allowed = schema.booleanValue();
      return value -> allowed;
    }
    List<Check> checks = new ArrayList<>();
    for (Map.Entry<String, JsonNode> keyword : schema.properties()) {
      Check check = keyword(keyword.getKey(), keyword.getValue(), schema);
      if (check != null) {
        checks.add(check);
      }
    }
    return checks.size() == 1 ? checks.get(0) : value -> all(checks, value);
  }

  private @Nullable Check keyword(String keyword, JsonNode of, JsonNode schema) {
    return switch (keyword) {
      case "$ref" -> named(of.stringValue());
      case "type" -> type(of);
      case "enum" -> oneOf(of);
      case "const" -> constant(of);
      case "pattern" -> pattern(of.stringValue());
      case "format" -> value -> !value.isString() || isDate(value.stringValue());
      case "minimum" -> atLeast(of.doubleValue());
      case "maximum" -> atMost(of.doubleValue());
      case "exclusiveMinimum" -> over(of.doubleValue());
      case "minLength" -> value -> !value.isString() || length(value) >= of.intValue();
      case "maxLength" -> value -> !value.isString() || length(value) <= of.intValue();
      case "minItems" -> value -> !value.isArray() || value.size() >= of.intValue();
      case "maxItems" -> value -> !value.isArray() || value.size() <= of.intValue();
      case "uniqueItems" -> Glance::isUnique;
      case "items" -> items(compile(of));
      case "required" -> required(names(of));
      case "dependentRequired" -> dependent(of);
      case "properties" -> properties(of, schema);
      case "additionalProperties" -> schema.has("properties") ? null : entries(compile(of));
      case "propertyNames" -> propertyNames(of);
      case "allOf" -> allOf(of);
      case "if" -> choice(compile(of), branch(schema, "then"), branch(schema, "else"));
      case "then", "else" -> null;
      default -> {
        if (!WITHOUT_EFFECT.contains(keyword)) {
          throw new IllegalStateException("unknown schema keyword " + keyword);
        }
        yield null;
      }
    };
  }

  private Check branch(JsonNode schema, String name) {
    return schema.has(name) ? compile(schema.get(name)) : value -> true;
  }

  private static List<String> names(JsonNode list) {
    List<String> names = new ArrayList<>();
    list.forEach(name -> names.add(name.stringValue()));
    return names;
  }

  private static Check type(JsonNode of) {
    List<Check> types = new ArrayList<>();
    (of.isArray() ? names(of) : List.of(of.stringValue())).forEach(name -> types.add(isOf(name)));
    if (types.size() == 1) {
      return types.get(0);
    }
    return value -> types.stream().anyMatch(type -> type.allows(value));
  }

  private static Check isOf(String type) {
    return switch (type) {
      case "string" -> JsonNode::isString;
      case "boolean" -> JsonNode::isBoolean;
      case "object" -> JsonNode::isObject;
      case "array" -> JsonNode::isArray;
      case "number" -> value -> value.isNumber() && Double.isFinite(value.doubleValue());
      case "integer" -> Glance::isWhole;
      default -> throw new IllegalStateException("unknown type " + type);
    };
  }

  private static boolean isWhole(JsonNode value) {
    return value.isIntegralNumber()
        || (value.isNumber()
            && value.doubleValue() == Math.rint(value.doubleValue())
            && Double.isFinite(value.doubleValue()));
  }

  private static Check oneOf(JsonNode of) {
    Set<String> words = Set.copyOf(names(of));
    return value -> value.isString() && words.contains(value.stringValue());
  }

  private static Check constant(JsonNode of) {
    return of.isNumber()
        ? value -> value.isNumber() && value.doubleValue() == of.doubleValue()
        : value -> value.equals(of);
  }

  /** In a schema {@code $} is the very end, in Java also what stands before a last line break. */
  private static Check pattern(String regex) {
    boolean toTheEnd = regex.endsWith("$") && !regex.endsWith("\\$");
    String java = toTheEnd ? regex.substring(0, regex.length() - 1) + "\\z" : regex;
    Pattern pattern = Pattern.compile(java);
    return value -> !value.isString() || pattern.matcher(value.stringValue()).find();
  }

  private static boolean isDate(String text) {
    try {
      return LocalDate.parse(text) != null;
    } catch (DateTimeParseException notADay) {
      return false;
    }
  }

  private static Check atLeast(double limit) {
    return value -> !value.isNumber() || value.doubleValue() >= limit;
  }

  private static Check atMost(double limit) {
    return value -> !value.isNumber() || value.doubleValue() <= limit;
  }

  private static Check over(double limit) {
    return value -> !value.isNumber() || value.doubleValue() > limit;
  }

  private static int length(JsonNode value) {
    String text = value.stringValue();
    return text.codePointCount(0, text.length());
  }

  private static boolean isUnique(JsonNode value) {
    Set<JsonNode> seen = new HashSet<>();
    if (value.isArray()) {
      for (JsonNode item : value) {
        if (!seen.add(item)) {
          return false;
        }
      }
    }
    return true;
  }

  private static Check items(Check each) {
    return value -> !value.isArray() || everyValue(each, value);
  }

  private static Check entries(Check each) {
    return value -> !value.isObject() || everyValue(each, value);
  }

  private static boolean everyValue(Check each, JsonNode of) {
    for (JsonNode value : of) {
      if (!each.allows(value)) {
        return false;
      }
    }
    return true;
  }

  private static Check required(List<String> names) {
    return value -> {
      if (value.isObject()) {
        for (String name : names) {
          if (!value.has(name)) {
            return false;
          }
        }
      }
      return true;
    };
  }

  private static Check dependent(JsonNode of) {
    List<Check> checks = new ArrayList<>();
    for (Map.Entry<String, JsonNode> entry : of.properties()) {
      Check needed = required(names(entry.getValue()));
      checks.add(value -> !value.has(entry.getKey()) || needed.allows(value));
    }
    return value -> all(checks, value);
  }

  private Check properties(JsonNode of, JsonNode schema) {
    Map<String, Check> known = new LinkedHashMap<>();
    of.properties().forEach(entry -> known.put(entry.getKey(), compile(entry.getValue())));
    JsonNode other = schema.path("additionalProperties");
    Check rest = other.isMissingNode() ? value -> true : compile(other);
    return value -> {
      if (value.isObject()) {
        for (Map.Entry<String, JsonNode> entry : value.properties()) {
          if (!known.getOrDefault(entry.getKey(), rest).allows(entry.getValue())) {
            return false;
          }
        }
      }
      return true;
    };
  }

  private Check propertyNames(JsonNode of) {
    Check name = compile(of);
    return value -> {
      if (value.isObject()) {
        for (String property : value.propertyNames()) {
          if (!name.allows(tools.jackson.databind.node.StringNode.valueOf(property))) {
            return false;
          }
        }
      }
      return true;
    };
  }

  private Check allOf(JsonNode of) {
    List<Check> checks = new ArrayList<>();
    of.forEach(schema -> checks.add(compile(schema)));
    return value -> all(checks, value);
  }

  private static Check choice(Check when, Check then, Check otherwise) {
    return value -> when.allows(value) ? then.allows(value) : otherwise.allows(value);
  }
}
