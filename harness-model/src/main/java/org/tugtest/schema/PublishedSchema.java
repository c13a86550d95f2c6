package org.tugtest.schema;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The schemas that Tugtest publishes (JSON Schema 2020-12). Nothing is ever fetched. */
@SuppressWarnings("ImmutableEnumChecker") // the suppliers read constants
public enum PublishedSchema {
  /** Roots and the files they use. */
  HARNESS("harness-1", () -> OfHarness.GLANCE, () -> OfHarness.Explained.SCHEMA),
  /** As-built records. */
  RECORD("record-1", () -> OfRecord.GLANCE, () -> OfRecord.Explained.SCHEMA),
  /** Announced circuit changes. */
  CHANGES("changes-1", () -> OfChanges.GLANCE, () -> OfChanges.Explained.SCHEMA);

  /** Most errors taken from the schema library; a file with more is not worth judging. */
  static final int MOST_ERRORS = 50_000;

  private static final String OWN = "urn:tugtest:schema:";
  private static final String META = "https://json-schema.org/";

  private final String id;
  private final Supplier<Glance> glance;
  private final Supplier<Schema> schema;

  PublishedSchema(String id, Supplier<Glance> glance, Supplier<Schema> schema) {
    this.id = id;
    this.glance = glance;
    this.schema = schema;
  }

  /** The name of the schema's file. */
  public String fileName() {
    return id + ".schema.json";
  }

  /** The schema as published. */
  public String text() {
    return resource(fileName());
  }

  /** Everything in a file's tree that the schema does not allow, each once, up to a bound. */
  public Judgement judge(JsonNode file) {
    if (glance.get().allows(file)) {
      return new Judgement(List.of(), true);
    }
    Bounded<Error> errors = new Bounded<>(MOST_ERRORS);
    boolean complete = true;
    try {
      schema.get().validate(file, context -> context.setErrors(errors));
    } catch (Bounded.Full full) {
      complete = false;
    }
    List<Mismatch> mismatches = new Sentences(schema.get().getSchemaNode()).of(List.copyOf(errors));
    return new Judgement(mismatches, complete);
  }

  /** The mismatches of {@link #judge}. */
  public List<Mismatch> check(JsonNode file) {
    return judge(file).mismatches();
  }

  private static String resource(String name) {
    try (InputStream stream = PublishedSchema.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("the schema " + name + " is missing from the jar");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Schema load(String id) {
    String uri = OWN + id;
    SchemaRegistryConfig config =
        SchemaRegistryConfig.builder().formatAssertionsEnabled(true).locale(Locale.ROOT).build();
    return SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12,
            builder ->
                builder
                    .schemas(Map.of(uri, resource(id + ".schema.json")))
                    .schemaRegistryConfig(config)
                    .schemaLoader(
                        loader ->
                            loader.allow(
                                iri ->
                                    iri.toString().startsWith(OWN)
                                        || iri.toString().startsWith(META))))
        .getSchema(SchemaLocation.of(uri));
  }

  private static Glance glance(String id) {
    return new Glance(JsonMapper.shared().readTree(resource(id + ".schema.json")));
  }

  /** Each loaded when first needed; the schema library only for files that need an explanation. */
  private static final class OfHarness {
    static final Glance GLANCE = glance("harness-1");

    private static final class Explained {
      static final Schema SCHEMA = load("harness-1");
    }
  }

  private static final class OfRecord {
    static final Glance GLANCE = glance("record-1");

    private static final class Explained {
      static final Schema SCHEMA = load("record-1");
    }
  }

  private static final class OfChanges {
    static final Glance GLANCE = glance("changes-1");

    private static final class Explained {
      static final Schema SCHEMA = load("changes-1");
    }
  }
}
