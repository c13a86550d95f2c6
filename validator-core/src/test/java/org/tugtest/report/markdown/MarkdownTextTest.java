package org.tugtest.report.markdown;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkdownTextTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "R1:3 holds R014 and R022; 0.6 V, 87 % of it",
        "(Türöffner) - 1.5 mm2 + 🔋",
        "a@ b# c!"
      })
  void usualSentencesStay(String sentence) {
    assertThat(MarkdownText.plain(sentence, 100)).isEqualTo(sentence);
  }

  @Test
  void markupIsShown() {
    assertThat(MarkdownText.plain("*a* _b_ `c` [d](e) | ~f~ \\g $h$ <b> & >", 100))
        .isEqualTo(
            "\\*a\\* \\_b\\_ \\`c\\` \\[d\\](e) \\| \\~f\\~ \\\\g \\$h\\$ &lt;b&gt; &amp; &gt;");
  }

  @Test
  void nobodyIsCalledAndNoThreadIsWrittenTo() {
    assertThat(MarkdownText.plain("@all #12 !34 %56", 100))
        .isEqualTo("@\u200Ball #\u200B12 !\u200B34 %\u200B56");
    assertThat(MarkdownText.plain("x.json:100:5", 100)).isEqualTo("x.json:\u200B100:5");
    assertThat(MarkdownText.plain("https://a.b www.c.d", 100))
        .isEqualTo("https\u200B://a.b www\u200B.c.d");
  }

  @Test
  void codeIsFencedByMoreThanItHolds() {
    assertThat(MarkdownText.code("a.json:1:2", 100)).isEqualTo("`a.json:1:2`");
    assertThat(MarkdownText.code("a`b``c", 100)).isEqualTo("```a`b``c```");
    assertThat(MarkdownText.code("`a", 100)).isEqualTo("`` `a ``");
    assertThat(MarkdownText.code("a\nb", 100)).isEqualTo("`a\\u000ab`");
  }

  @Test
  void longTextIsCut() {
    assertThat(MarkdownText.plain("<".repeat(600), 500)).isEqualTo("&lt;".repeat(499) + "…");
    assertThat(MarkdownText.code("x".repeat(600), 5)).isEqualTo("`xxxx…`");
  }
}
