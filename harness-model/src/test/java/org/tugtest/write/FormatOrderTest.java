package org.tugtest.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tugtest.schema.PublishedSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The order of the tidy form and the sheets must know every property of the published schemas. */
class FormatOrderTest {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  @ParameterizedTest
  @EnumSource(PublishedSchema.class)
  void knowsEveryPropertyOfTheSchema(PublishedSchema published) {
    JsonNode schema = MAPPER.readTree(published.text());
    List<String> unknown = new ArrayList<>();
    walk(schema, schema, FormatOrder.FILE, "", unknown, new HashSet<>());

    assertThat(unknown).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(SheetKind.class)
  void givesEveryFieldOfASheetTheTypeOfTheSchema(SheetKind kind) {
    JsonNode schema = MAPPER.readTree(PublishedSchema.HARNESS.text());
    for (SheetLevel level : kind.levels()) {
      Map<String, JsonNode> properties =
          properties(schema, List.of(definition(schema, level)), new TreeMap<>());
      List<String> fields = new ArrayList<>(level.fields());
      fields.remove(level.aside());
      Set<String> left = new HashSet<>(properties.keySet());
      fields.forEach(left::remove);
      left.removeAll(Set.of("cavities", "pinMap", "pins", "ports", "elements", "boltedTo"));

      assertThat(left).as("fields of %s that no column has", level).isEmpty();
      for (String field : fields) {
        JsonNode property = properties.get(field);
        assertThat(property).as("%s of %s", field, level).isNotNull();
        assertThat(SheetType.of(field)).as(field).isEqualTo(type(schema, property));
      }
    }
  }

  private static JsonNode definition(JsonNode schema, SheetLevel level) {
    JsonNode entry =
        resolved(schema, schema.get("properties").get(level.section()).get("additionalProperties"));
    String inner = level.inner();
    return inner == null
        ? entry
        : resolved(schema, entry.get("properties").get(inner).get("additionalProperties"));
  }

  private static SheetType type(JsonNode schema, JsonNode property) {
    JsonNode node = resolved(schema, property);
    String type = node.path("type").asString("");
    return switch (type) {
      case "number", "integer" -> SheetType.NUMBER;
      case "boolean" -> SheetType.FLAG;
      case "array" -> SheetType.LIST;
      default -> SheetType.TEXT;
    };
  }

  private static void walk(
      JsonNode schema,
      JsonNode node,
      Shape shape,
      String at,
      List<String> unknown,
      Set<String> seen) {
    if (!seen.add(at)) {
      return;
    }
    Map<String, JsonNode> properties = properties(schema, List.of(node), new TreeMap<>());
    properties.forEach(
        (name, property) -> {
          if (!shape.order().contains(name)) {
            unknown.add(at + "/" + name);
          }
          walk(schema, property, shape.of(name), at + "/" + name, unknown, seen);
        });
    JsonNode target = resolved(schema, node);
    JsonNode entries = target.path("additionalProperties");
    if (entries.isObject() && properties.isEmpty()) {
      walk(schema, entries, shape.of("x"), at + "/*", unknown, seen);
    }
    if (target.path("items").isObject()) {
      walk(schema, target.get("items"), shape.item(), at + "/[]", unknown, seen);
    }
  }

  /** The properties of an object under all the keywords that may give some. */
  private static Map<String, JsonNode> properties(
      JsonNode schema, List<JsonNode> nodes, Map<String, JsonNode> found) {
    for (JsonNode any : nodes) {
      JsonNode node = resolved(schema, any);
      node.path("properties")
          .propertyStream()
          .filter(property -> property.getValue().isObject())
          .forEach(property -> found.putIfAbsent(property.getKey(), property.getValue()));
      for (String keyword : List.of("allOf", "anyOf", "oneOf")) {
        List<JsonNode> inner = new ArrayList<>();
        node.path(keyword).forEach(inner::add);
        properties(schema, inner, found);
      }
      for (String keyword : List.of("if", "then", "else")) {
        if (node.has(keyword)) {
          properties(schema, List.of(node.get(keyword)), found);
        }
      }
    }
    return found;
  }

  private static JsonNode resolved(JsonNode schema, JsonNode node) {
    JsonNode ref = node.path("$ref");
    return ref.isString() ? schema.at(ref.asString().substring(1)) : node;
  }
}
