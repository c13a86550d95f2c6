package org.tugtest.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTokensTest {
  private static List<String> tokens(String text) {
    JsonTokens tokens = new JsonTokens(text, 0);
    List<String> all = new ArrayList<>();
    while (tokens.next() != JsonTokens.Kind.END) {
      all.add(tokens.kind() + " " + text.substring(tokens.start(), tokens.end()));
    }
    return all;
  }

  @Test
  void takesATextApart() {
    assertThat(tokens(" {\"a\" : [1,-2.5e3 , true]}\r\n"))
        .containsExactly(
            "OPEN_OBJECT {",
            "TEXT \"a\"",
            "COLON :",
            "OPEN_LIST [",
            "NUMBER 1",
            "COMMA ,",
            "NUMBER -2.5e3",
            "COMMA ,",
            "WORD true",
            "CLOSE_LIST ]",
            "CLOSE_OBJECT }");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-0", "10", "1.5", "1e9", "1E+9", "0.0e-0", "\"\\ud83d\"", "null"})
  void takesWhatIsOneToken(String token) {
    assertThat(tokens(token)).hasSize(1).noneMatch(shown -> shown.startsWith("WRONG"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "01", "1.", ".1", "+1", "1e", "--1", "0x1", "nul", "'a'", "\"\\x\"", "\"\n\"", "\"a"
      })
  void refusesWhatIsNone(String token) {
    assertThat(tokens(token).get(0)).startsWith("WRONG");
  }

  @Test
  void readsEscapes() {
    JsonTokens tokens = new JsonTokens("\"a\\u00e4\\n\\\"\\/\\\\\"", 0);
    tokens.next();
    assertThat(tokens.value()).isEqualTo("a\u00e4\n\"/\\");
    assertThat(tokens.says("a\u00e4\n\"/\\")).isTrue();
    assertThat(tokens.says("a")).isFalse();
  }

  @Test
  void skipsValuesOfAnyDepth() {
    String deep = "[".repeat(100_000) + "]".repeat(100_000);
    JsonTokens tokens = new JsonTokens(deep + ",1", 0);
    tokens.next();
    tokens.skipValue();
    assertThat(tokens.end()).isEqualTo(deep.length());
    assertThat(tokens.next()).isEqualTo(JsonTokens.Kind.COMMA);
  }
}
