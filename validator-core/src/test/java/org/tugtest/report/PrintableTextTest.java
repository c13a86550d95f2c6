package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintableTextTest {
  @ParameterizedTest
  @ValueSource(
      strings = {"", "plain", "Türöffner ß", "日本", "🔋 R1:3", "👩\u200D🔧", "a\u200Cb", "~!@#"})
  void textThatIsToBeSeenStays(String text) {
    assertThat(PrintableText.of(text)).isSameAs(text);
    assertThat(PrintableText.wellFormed(text)).isSameAs(text);
  }

  @Test
  void controlsAndLineEndsAreSpelledOut() {
    assertThat(PrintableText.of("a\u001b[31mred\r\nb\tc\u0000\u007f\u0085"))
        .isEqualTo("a\\u001b[31mred\\u000d\\u000ab\\u0009c\\u0000\\u007f\\u0085");
  }

  @Test
  void marksThatTurnTheReadingDirectionAreSpelledOut() {
    assertThat(PrintableText.of("W1\u202e2W \u2066x\u2028y\u2029"))
        .isEqualTo("W1\\u202e2W \\u2066x\\u2028y\\u2029");
  }

  @Test
  void halvesOfCharactersAreSpelledOutOrReplaced() {
    assertThat(PrintableText.of("x\ud83dy\udd0b")).isEqualTo("x\\ud83dy\\udd0b");
    assertThat(PrintableText.wellFormed("x\ud83dy\udd0b")).isEqualTo("x\ufffdy\ufffd");
  }

  @Test
  void valuesThatAreNoCharactersAreSpelledOut() {
    assertThat(PrintableText.of("\ufffd\ufffe\uffff")).isEqualTo("\ufffd\\ufffe\\uffff");
  }

  @Test
  void cuttingNeverParts() {
    assertThat(PrintableText.cut("12345", 5)).isEqualTo("12345");
    assertThat(PrintableText.cut("123456", 5)).isEqualTo("1234…");
    assertThat(PrintableText.cut("123🔋67", 5)).isEqualTo("123…");
  }
}
