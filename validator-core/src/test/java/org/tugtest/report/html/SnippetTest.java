package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tugtest.text.Place;
import org.tugtest.text.SourceText;

class SnippetTest {
  private static Place place(int line, int column, int endLine, int endColumn) {
    return new Place("car.harness.json", line, column, endLine, endColumn, "");
  }

  /** The lines with their numbers, marks in brackets. */
  private static List<String> shown(Snippet snippet) {
    return snippet.lines().stream()
        .map(
            line ->
                line.number()
                    + line.pieces().stream()
                        .map(piece -> piece.marked() ? "[" + piece.text() + "]" : piece.text())
                        .collect(Collectors.joining("", " ", "")))
        .toList();
  }

  private static List<String> shown(String text, Place... places) {
    CodeView view =
        CodeView.of(List.of(places), place -> SourceText.of(place.file(), text), Place::shown)
            .get(0);
    return shown(view.snippet());
  }

  @Test
  void marksThePlaceBetweenItsNeighbours() {
    assertThat(shown("{\n  \"a\": 1,\n  \"b\": 2\n}\n", place(2, 8, 2, 9)))
        .containsExactly("1 {", "2   \"a\": [1],", "3   \"b\": 2");
  }

  @Test
  void staysInsideTheFile() {
    assertThat(shown("{}", place(1, 1, 1, 3))).containsExactly("1 [{}]");
    assertThat(shown("", place(1, 1, 1, 2))).containsExactly("1 []");
    assertThat(shown("ab\n", place(1, 3, 1, 4))).containsExactly("1 ab[]", "2 ");
  }

  @Test
  void marksTheFirstLinesOfALongThing() {
    assertThat(shown("{\n  \"a\": {\n    1\n    2\n    3\n    4\n  }\n}", place(2, 8, 7, 4)))
        .containsExactly("1 {", "2   \"a\": [{]", "3     [1]", "4     [2]", "5     [3]");
  }

  @Test
  void marksSeveralPlacesInOneLineOnce() {
    assertThat(shown("abcdef", place(1, 5, 1, 6), place(1, 2, 1, 3), place(1, 2, 1, 4)))
        .containsExactly("1 a[b][c]d[e]f");
  }

  @Test
  void keepsOfALongLineWhatIsNearTheMark() {
    String line = "x".repeat(500) + "MARK" + "y".repeat(500);
    assertThat(shown(line, place(1, 501, 1, 505)))
        .containsExactly("1 …" + "x".repeat(63) + "[MARK]" + "y".repeat(111) + "…");
  }

  @Test
  void cutsNoCharacterInHalf() {
    String line = "🔋".repeat(40) + "M" + "🔋".repeat(80);
    String shown = shown(line, place(1, 81, 1, 82)).get(0);
    assertThat(shown).contains("[M]").doesNotContain("\\ud83d", "\\udd0b");
  }

  @Test
  void spellsOutControlsAndOpensTabs() {
    assertThat(shown("\t\"a\u202e\"", place(1, 2, 1, 6))).containsExactly("1   [\"a\\u202e\"]");
  }

  @Test
  void putsNearPlacesOfAFileTogetherAndFarOnesApart() {
    String text = Stream.generate(() -> "line\n").limit(40).collect(Collectors.joining());
    List<CodeView> views =
        CodeView.of(
            List.of(
                place(5, 1, 5, 3),
                place(30, 1, 30, 3),
                place(8, 1, 8, 3),
                new Place("other.json", 6, 1, 6, 2, "")),
            place -> SourceText.of(place.file(), text),
            Place::shown);
    assertThat(views.stream().map(CodeView::shown))
        .containsExactly(
            List.of("car.harness.json:5:1", "car.harness.json:8:1"),
            List.of("car.harness.json:30:1"),
            List.of("other.json:6:1"));
    assertThat(shown(views.get(0).snippet()))
        .containsExactly("4 line", "5 [li]ne", "6 line", "7 line", "8 [li]ne", "9 line");
  }

  @Test
  void tellsThePlaceAloneWhenThereIsNoText() {
    List<CodeView> views = CodeView.of(List.of(place(5, 1, 5, 3)), place -> null, Place::shown);
    assertThat(views).containsExactly(new CodeView(List.of("car.harness.json:5:1"), null));
  }
}
