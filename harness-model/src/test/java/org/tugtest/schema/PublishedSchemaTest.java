package org.tugtest.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PublishedSchemaTest {
  private static final JsonMapper JSON = JsonMapper.shared();

  /** Fields that hold a plain number without a unit. */
  private static final Set<String> WITHOUT_UNIT =
      Set.of("format", "maxWires", "maxTerminals", "supports", "multiple");

  @ParameterizedTest
  @EnumSource
  void isAValidSchemaItself(PublishedSchema schema) {
    Schema meta =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertThat(meta.validate(JSON.readTree(schema.text()))).isEmpty();
    assertThat(meta.validate(JSON.readTree("{\"type\": \"objekt\"}"))).isNotEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void describesEveryFieldAndEveryDefinition(PublishedSchema schema) {
    List<String> mute = new ArrayList<>();
    eachField(JSON.readTree(schema.text()), "", (name, field, path) -> describe(field, path, mute));
    JsonNode root = JSON.readTree(schema.text());
    root.get("$defs")
        .properties()
        .forEach(entry -> describe(entry.getValue(), entry.getKey(), mute));
    assertThat(mute).isEmpty();
  }

  private static void describe(JsonNode field, String path, List<String> mute) {
    boolean onlyForbids = field.isBoolean();
    boolean onlyChooses = path.contains("/if/");
    if (!onlyForbids && !onlyChooses && field.path("description").asString("").length() < 8) {
      mute.add(path);
    }
  }

  @ParameterizedTest
  @EnumSource
  void refusesUnknownFieldsEverywhere(PublishedSchema schema) {
    List<String> open = new ArrayList<>();
    eachObject(
        JSON.readTree(schema.text()),
        "",
        (node, path) -> {
          boolean decidesByKind = node.has("allOf");
          boolean inCondition = path.matches(".*/(if|then|else)");
          if (node.has("properties") && !decidesByKind && !inCondition) {
            JsonNode other = node.path("additionalProperties");
            boolean settings = other.path("$ref").asString("").endsWith("/setting");
            if (!settings && !other.equals(JSON.readTree("false"))) {
              open.add(path);
            }
          }
        });
    assertThat(open).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void boundsEveryNumberAndNamesItsUnit(PublishedSchema schema) {
    JsonNode root = JSON.readTree(schema.text());
    List<String> bare = new ArrayList<>();
    Set<String> checked = new TreeSet<>();
    eachField(
        root,
        "",
        (name, field, path) -> {
          JsonNode value =
              field.has("$ref") ? root.at(field.get("$ref").asString().substring(1)) : field;
          String type = value.path("type").asString("");
          if (type.equals("number") || type.equals("integer")) {
            checked.add(name);
            boolean low = value.has("minimum") || value.has("exclusiveMinimum");
            boolean unit = !Units.of(name).isEmpty() || WITHOUT_UNIT.contains(name);
            boolean inMillimetres = path.contains("clearanceMm") || path.contains("/volts/");
            if (!low || !value.has("maximum") || !(unit || inMillimetres)) {
              bare.add(path);
            }
          }
        });
    assertThat(bare).isEmpty();
    assertThat(schema != PublishedSchema.HARNESS || checked.size() > 50).isTrue();
  }

  @Test
  void allowsANoteInEveryObjectButMapsOfIds() {
    List<String> without = new ArrayList<>();
    eachObject(
        JSON.readTree(PublishedSchema.HARNESS.text()),
        "",
        (node, path) -> {
          boolean inCondition = path.matches(".*/(if|then|else)");
          if (node.has("properties") && !node.has("allOf") && !inCondition) {
            if (!node.get("properties").has("note")) {
              without.add(path);
            }
          }
        });
    assertThat(without).isEmpty();
  }

  @Test
  void knowsEveryKeywordItUses() {
    assertThatThrownBy(() -> new Glance(JSON.readTree("{\"oneOf\": []}")))
        .hasMessageContaining("oneOf");
  }

  private interface FieldVisit {
    void at(String name, JsonNode field, String path);
  }

  private interface ObjectVisit {
    void at(JsonNode node, String path);
  }

  private static void eachField(JsonNode node, String path, FieldVisit visit) {
    eachObject(
        node,
        path,
        (object, at) ->
            object
                .path("properties")
                .properties()
                .forEach(
                    field ->
                        visit.at(
                            field.getKey(),
                            field.getValue(),
                            at + "/properties/" + field.getKey())));
  }

  private static void eachObject(JsonNode node, String path, ObjectVisit visit) {
    if (node.isObject() && !path.endsWith("/properties")) {
      visit.at(node, path);
    }
    if (node.isObject()) {
      for (Map.Entry<String, JsonNode> entry : node.properties()) {
        eachObject(entry.getValue(), path + "/" + entry.getKey(), visit);
      }
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        eachObject(node.get(i), path + "/" + i, visit);
      }
    }
  }
}
