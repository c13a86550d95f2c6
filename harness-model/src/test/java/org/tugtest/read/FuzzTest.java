package org.tugtest.read;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tugtest.schema.PublishedSchema;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;
import org.tugtest.text.SourceText;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Reads 24,000 damaged documents. None may end in an exception, every place must lie inside its
 * file, and parser and schema library, used plainly and by themselves, must agree on what is
 * refused.
 */
class FuzzTest {
  private static final String EVERYTHING = Resources.text("/read/everything.harness.json");
  private static final String ROOT = "car.harness.json";

  private static final List<String> SEEDS =
      List.of(
          EVERYTHING,
          """
          {
            "format": 1, "title": "Work lamp \uD83D\uDE97",
            "parts": {
              "wires": {"w1.0": {"areaMm2": 1.0, "maxC": 125}},
              "housings": {"lamp": {"side": "socket", "family": "t2.8", "rows": [["1", "2"]]}}
            },
            "devices": {
              "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
              "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35, "atVolts": 12}}}
            },
            "connectors": {"X1": {"housing": "lamp", "mates": "LAMP"}},
            "wires": {
              "W1": {"from": "BAT:+", "to": "X1:1", "areaMm2": 2.5, "cutMm": 150},
              "W2": {"from": "X1:2", "to": "BAT:-", "part": "w1.0", "colour": "RD/WH", "via": ["n1"]}
            },
            "states": {"on": {"set": {"LAMP": "on"}, "on": ["LAMP"]}}
          }
          """,
          """
          {"format": 1, "sketch": true, "loom": {"id": "nose", "stage": "found"},
           "wires": {"W1": {"from": "A:1", "to": "B:1", "evidence": "guess"}, "W2": {"to": "S1"}},
           "layout": {"nodes": {"n": {"xyzMm": [1, 2, 3]}}, "segments": {"s": {"from": "n", "to": "m", "lengthMm": 3}}},
           "limits": {"label-missing": {"level": "off", "count": 3}},
           "waivers": {"w": {"rule": "label-missing", "at": "wires/W1", "reason": "labels come later"}},
           "expectations": {"e": {"that": "routes-apart", "wires": [["W1"], ["W2"]]}}}
          """);

  private static final JsonMapper PLAIN =
      JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();
  private static final JsonMapper STRICT =
      JsonMapper.builder(
              tools.jackson.core.json.JsonFactory.builder()
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();
  private static final Schema LIBRARY =
      SchemaRegistry.withDefaultDialect(
              SpecificationVersion.DRAFT_2020_12,
              builder ->
                  builder
                      .schemas(
                          Map.of("urn:tugtest:schema:harness-1", PublishedSchema.HARNESS.text()))
                      .schemaRegistryConfig(
                          SchemaRegistryConfig.builder().formatAssertionsEnabled(true).build()))
          .getSchema(SchemaLocation.of("urn:tugtest:schema:harness-1"));

  private int refusedByParser;
  private int refusedBySchema;
  private int accepted;

  @Test
  void standsTextsThatWereDamaged() {
    for (int i = 0; i < 12_000; i++) {
      judge(new Mutations(i).ofText(seed(i)), i);
    }
    assertThat(refusedByParser).isGreaterThan(5_000);
    assertThat(accepted).isGreaterThan(300);
  }

  @Test
  void standsTreesThatWereDamaged() {
    for (int i = 0; i < 12_000; i++) {
      judge(new Mutations(i).ofTree(seed(i)), i);
    }
    assertThat(refusedBySchema).isGreaterThan(5_000);
    assertThat(accepted).isGreaterThan(500);
  }

  @Test
  void standsBytesThatWereDamaged() {
    Random random = new Random(7);
    for (int i = 0; i < 2_000; i++) {
      byte[] bytes = SEEDS.get(1).getBytes(StandardCharsets.UTF_8);
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      ReadHarness read = read(bytes);
      read.problems().forEach(problem -> inside(read, problem));
      assertThat(read.texts().isEmpty()).isEqualTo(!isUtf8(bytes));
    }
  }

  private static boolean isUtf8(byte[] bytes) {
    return Arrays.equals(
        new String(bytes, StandardCharsets.UTF_8).getBytes(StandardCharsets.UTF_8), bytes);
  }

  /** One in six from the document of every field, which takes longest. */
  private static String seed(int i) {
    return SEEDS.get(i % 6 == 0 ? 0 : 1 + i % 2);
  }

  private static ReadHarness read(byte[] bytes) {
    return new HarnessReader(MemoryFiles.ofBytes(Map.of(ROOT, bytes)), ReadLimits.STANDARD)
        .read(ROOT);
  }

  private void judge(String damaged, int number) {
    byte[] bytes = damaged.getBytes(StandardCharsets.UTF_8);
    String text = new String(bytes, StandardCharsets.UTF_8);
    try {
      ReadHarness read = read(bytes);
      read.problems().forEach(problem -> inside(read, problem));
      assertThat(read.harness().hashCode()).isEqualTo(read.harness().hashCode());
      agree(text.startsWith("\uFEFF") ? text.substring(1) : text, bytes);
    } catch (RuntimeException | AssertionError failed) {
      throw new AssertionError("document " + number + ":\n" + damaged, failed);
    }
  }

  /** Whether the reader refuses what parser and schema library refuse, and nothing else. */
  private void agree(String text, byte[] bytes) {
    ParsedFile parsed =
        new FileParser(ReadLimits.STANDARD, PublishedSchema.HARNESS)
            .parse(ROOT, new SourceFiles.Content.Bytes(bytes));
    JsonNode plain = tree(PLAIN, text);
    boolean isObject = plain != null && plain.isObject();
    assertThat(parsed.root() != null).as("is JSON").isEqualTo(isObject);
    if (!isObject) {
      refusedByParser++;
      return;
    }
    if (tree(STRICT, text) == null) {
      assertThat(parsed.problems())
          .as("a name is given twice")
          .anyMatch(problem -> problem.message().contains(" is given twice in "));
      return;
    }
    boolean sound = LIBRARY.validate(plain).isEmpty();
    assertThat(parsed.problems().isEmpty()).as("schema: %s", parsed.problems()).isEqualTo(sound);
    if (sound) {
      accepted++;
    } else {
      refusedBySchema++;
    }
  }

  private static @org.jspecify.annotations.Nullable JsonNode tree(JsonMapper mapper, String text) {
    try {
      JsonNode tree = mapper.readTree(text);
      return tree.isMissingNode() ? null : tree;
    } catch (JacksonException refused) {
      return null;
    }
  }

  private static void inside(ReadHarness read, Problem problem) {
    assertThat(problem.at()).isNotEmpty();
    assertThat(problem.message()).isNotBlank();
    assertThat(problem.remedy()).isNotBlank();
    for (Place place : problem.at()) {
      inside(read, place);
    }
    boolean isFileNotRead =
        problem.subject().startsWith("files/") && !problem.subject().equals("files/" + ROOT);
    if (!isFileNotRead) {
      inside(read, read.places().of(problem.subject()));
    }
  }

  private static void inside(ReadHarness read, Place place) {
    assertThat(place.file()).isEqualTo(ROOT);
    SourceText source = read.texts().get(ROOT);
    if (source == null) {
      assertThat(place.line()).isPositive();
      return;
    }
    assertThat(place.line()).isBetween(1, source.lineCount());
    assertThat(place.endLine()).isBetween(place.line(), source.lineCount());
    int start = source.offset(place.line(), place.column());
    int end = source.offset(place.endLine(), place.endColumn());
    assertThat(start).isBetween(0, source.text().length());
    assertThat(end).isBetween(start, source.text().length() + 1);
    assertThat(source.lineAt(start)).isEqualTo(place.line());
  }
}
