package org.tugtest.report;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Holds written JSON against a schema; nothing is fetched. */
public final class Schemas {
  private Schemas() {}

  /** What a JSON text breaks of a schema that is a resource. */
  public static List<String> errors(SpecificationVersion dialect, String resource, String json) {
    Schema schema =
        SchemaRegistry.withDefaultDialect(
                dialect, builder -> builder.schemaLoader(loader -> loader.allow(iri -> false)))
            .getSchema(tree(resource(resource)));
    return schema.validate(tree(json)).stream().map(Object::toString).toList();
  }

  /** The tree of a JSON text. */
  public static JsonNode tree(String json) {
    return JsonMapper.builder().build().readTree(json);
  }

  /** The text of a resource. */
  public static String resource(String name) {
    try (InputStream stream = Schemas.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalArgumentException("there is no resource " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
