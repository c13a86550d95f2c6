package org.tugtest.files;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GlobTest {
  @ParameterizedTest
  @CsvSource({
    "a.json, b.json",
    "a.json, looms/a.json",
    "*.json, looms/a.json",
    "*.json, a.jsonx",
    "looms/*, looms/nose/a.json",
    "looms/?.json, looms/ab.json",
    "looms/**, nose/a.json",
    "**/x/*.json, a/b/y.json",
    "A.json, a.json",
    "looms/, looms.json",
  })
  void leavesOut(String pattern, String path) {
    assertThat(Glob.of(pattern).matches(path)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "a.json, a.json",
    "*.json, a.json",
    "./a.json, a.json",
    "**, a.json",
    "**, looms/nose/a.json",
    "**/a.json, a.json",
    "**/a.json, looms/nose/a.json",
    "looms/**, looms/a.json",
    "looms/**/a.json, looms/a.json",
    "looms/**/a.json, looms/x/y/a.json",
    "looms/, looms/x/a.json",
    "looms\\*.json, looms/a.json",
    "n*g*t*.json, night-light.json",
    "?.json, a.json",
    "**/b/**/c.json, a/b/b/x/c.json",
    "../shared/*.json, ../shared/a.json",
  })
  void takes(String pattern, String path) {
    assertThat(Glob.of(pattern).matches(path)).isTrue();
  }

  @Test
  void manyStarsEndSoon() {
    String pattern = "*a".repeat(2_000) + "/" + "**/a/".repeat(500) + "b";
    String path = "a".repeat(4_000) + "/" + "a/".repeat(2_000) + "c";

    assertThat(Glob.of(pattern).matches(path)).isFalse();
  }
}
