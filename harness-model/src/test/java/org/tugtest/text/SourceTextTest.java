package org.tugtest.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class SourceTextTest {
  @Property(tries = 2000)
  void knowsLineAndColumnOfEveryCharacter(
      @ForAll
          @Chars({'\r', '\n', 'a', '\t'})
          @CharRange(from = 'b', to = 'c')
          @StringLength(max = 40)
          String text) {
    SourceText source = SourceText.of("a.json", text);
    int line = 1;
    int column = 1;
    for (int i = 0; i < text.length(); i++) {
      assertThat(source.lineAt(i)).isEqualTo(line);
      assertThat(source.columnAt(i)).isEqualTo(column);
      assertThat(source.offset(line, column)).isEqualTo(i);
      char c = text.charAt(i);
      boolean pair = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      boolean ends = c == '\n' || (c == '\r' && !pair);
      line = ends ? line + 1 : line;
      column = ends ? 1 : column + 1;
    }
    assertThat(source.lineCount()).isEqualTo(line);
    assertThat(source.lineAt(text.length())).isEqualTo(line);
  }

  @Property(tries = 500)
  void givesTheLinesThatAReaderOfTextGives(
      @ForAll @Chars({'\r', '\n', 'a', ' '}) @StringLength(max = 40) String text) {
    SourceText source = SourceText.of("a.json", text);
    List<String> expected = new ArrayList<>(text.lines().toList());
    if (text.isEmpty() || text.endsWith("\n") || text.endsWith("\r")) {
      expected.add("");
    }
    assertThat(source.lines(1, Integer.MAX_VALUE)).isEqualTo(expected);
  }

  @Test
  void countsAnEmojiAsTwo() {
    SourceText source = SourceText.of("a.json", "\uD83D\uDE97x");
    assertThat(source.columnAt(2)).isEqualTo(3);
  }

  @Test
  void growsWithManyLines() {
    SourceText source = SourceText.of("a.json", "\n".repeat(100_000));
    assertThat(source.lineCount()).isEqualTo(100_001);
    assertThat(source.lineAt(99_999)).isEqualTo(100_000);
  }
}
