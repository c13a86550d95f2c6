package org.tugtest.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class TidyWriterTest {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "   ",
        "{",
        "{\"format\": 1,}",
        "{\"format\": 1} {}",
        "{\"format\": 01}",
        "{'format': 1}",
        "{\"format\": 1 // one\n}",
        "{\"title\": \"a\nb\"}",
        "{\"title\": \"\\x\"}",
        "{\"format\": NaN}",
        "{\"format\" 1}",
        "{\"a\": [1 2]}",
        "[{\"format\": 1}]",
        "1",
        "\"x\"",
        "{\"a\": {\"b\": 1}}}",
        "null"
      })
  void leavesAloneWhatItCannotRead(String text) {
    TidyResult result = TidyWriter.tidy("car.harness.json", text);

    assertThat(result).isInstanceOf(TidyResult.Refused.class);
    Problem problem = ((TidyResult.Refused) result).problems().get(0);
    assertThat(problem.kind()).isEqualTo(Problem.Kind.FILE_UNREADABLE);
    assertThat(problem.subject()).isEqualTo("files/car.harness.json");
    assertThat(problem.message()).startsWith("car.harness.json ");
    assertThat(problem.at()).isNotEmpty();
  }

  @Test
  void namesEveryDoubledNameWithBothPlaces() {
    String text = "{\"wires\": {\"W1\": {},\n \"W2\": {\"to\": 1, \"to\": 2},\n \"W\\u0031\": {}}}";

    TidyResult result = TidyWriter.tidy("a.json", text);

    assertThat(((TidyResult.Refused) result).problems())
        .extracting(problem -> problem.at().stream().map(Place::shown).toList().toString())
        .containsExactly("[a.json:2:18, a.json:2:9]", "[a.json:3:2, a.json:1:12]");
  }

  @Test
  void saysWhereTheSyntaxBreaks() {
    TidyResult result = TidyWriter.tidy("a.json", "{\n  \"format\": 1,\n  \"wires\": {]\n}\n");

    assertThat(((TidyResult.Refused) result).problems().get(0).at().get(0).line()).isEqualTo(3);
  }

  @Test
  void refusesDepthBombs() {
    String text = "{\"a\":".repeat(100_000);

    assertThat(TidyWriter.tidy("a.json", text)).isInstanceOf(TidyResult.Refused.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"everything", "record", "changes"})
  void writesTheGoldenForm(String name) {
    TidyResult result = TidyWriter.tidy(name, resource(name + ".in.json"));

    assertThat(result).isEqualTo(new TidyResult.Tidied(resource(name + ".out.json"), true));
  }

  @ParameterizedTest
  @ValueSource(strings = {"everything", "record", "changes"})
  void leavesATidyTextAsItIs(String name) {
    String tidy = resource(name + ".out.json");

    assertThat(TidyWriter.tidy(name, tidy)).isEqualTo(new TidyResult.Tidied(tidy, false));
  }

  @Test
  void takesMarkAndCarriageReturnsAway() {
    String tidy = "{\n  \"format\": 1\n}\n";

    assertThat(TidyWriter.tidy("a", "\uFEFF" + tidy)).isEqualTo(new TidyResult.Tidied(tidy, true));
    assertThat(TidyWriter.tidy("a", tidy.replace("\n", "\r\n")))
        .isEqualTo(new TidyResult.Tidied(tidy, true));
    assertThat(TidyWriter.tidy("a", tidy.stripTrailing()))
        .isEqualTo(new TidyResult.Tidied(tidy, true));
  }

  @Test
  void addsOneLineForOneWire() {
    String one = tidied("{\"wires\": {\"W1\": {\"from\": \"A:1\"}, \"W3\": {}}}");
    String two = tidied("{\"wires\": {\"W1\": {\"from\": \"A:1\"}, \"W3\": {}, \"W2\": {}}}");

    assertThat(two.lines().filter(line -> one.lines().noneMatch(line::equals)))
        .containsExactly("    \"W2\": {},");
  }

  @Property(tries = 2_000, seed = "20261125")
  void tidyTwiceIsTidyOnceAndMeansTheSame(@ForAll long seed) {
    String text = new RandomHarnessText(seed).next();

    String once = tidied(text);

    assertThat(tidied(once)).isEqualTo(once);
    assertThat(once).doesNotContain("\r").doesNotContain("\uFEFF").endsWith("}\n");
    assertThat(once.lines().filter(line -> line.endsWith(" "))).isEmpty();
    assertThat(MAPPER.readTree(once)).isEqualTo(MAPPER.readTree(TidyWriter.withoutMark(text)));
    assertThat(tokens(once)).isEqualTo(tokens(TidyWriter.withoutMark(text)));
  }

  @Property(tries = 500, seed = "20261125")
  void theOrderOfMembersInTheFileDoesNotMatter(@ForAll long seed) {
    String text = TidyWriter.withoutMark(new RandomHarnessText(seed).next());
    JsonNode tree = MAPPER.readTree(text);

    assertThat(tidied(reversed(tree))).isEqualTo(tidied(tree.toString()));
  }

  private static String reversed(JsonNode node) {
    if (node.isObject()) {
      StringBuilder out = new StringBuilder();
      node.propertyStream()
          .forEach(
              e -> {
                out.insert(0, Quoting.quote(e.getKey()) + ":" + reversed(e.getValue()));
                out.insert(0, ",");
              });
      return "{" + (out.isEmpty() ? "" : out.substring(1)) + "}";
    }
    if (node.isArray()) {
      StringBuilder out = new StringBuilder();
      node.forEach(item -> out.append(',').append(reversed(item)));
      return "[" + (out.isEmpty() ? "" : out.substring(1)) + "]";
    }
    return node.toString();
  }

  /** How often each token is written, exactly as it stands. */
  private static Map<String, Integer> tokens(String text) {
    Map<String, Integer> counts = new HashMap<>();
    Matcher token = Pattern.compile("\"(?:\\\\.|[^\"\\\\])*\"|[-+.\\w]+").matcher(text);
    while (token.find()) {
      counts.merge(token.group(), 1, Integer::sum);
    }
    return counts;
  }

  private static String tidied(String text) {
    TidyResult result = TidyWriter.tidy("random.json", text);
    assertThat(result).as(text).isInstanceOf(TidyResult.Tidied.class);
    return ((TidyResult.Tidied) result).text();
  }

  private static String resource(String name) {
    String path = String.format(Locale.ROOT, "/tidy/%s", name);
    try (InputStream in = TidyWriterTest.class.getResourceAsStream(path)) {
      assertThat(in).as(path).isNotNull();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
