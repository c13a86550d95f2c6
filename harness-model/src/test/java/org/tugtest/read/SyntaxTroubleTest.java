package org.tugtest.read;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.text.Problem;
import org.tugtest.text.SourceText;

class SyntaxTroubleTest {
  @ParameterizedTest
  @ValueSource(
      strings = {"{}", "[]", "3", "\"a\"", " {\"a\": [1, -0.5e+3, true, null, \"\\u00e4\"]} \r\n"})
  void findsNothingInJson(String text) {
    assertThat(SyntaxTrouble.find(SourceText.of("a.json", text), ReadLimits.STANDARD)).isNull();
  }

  /** {@code ~} stands for a line break. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"a": "x" "b": 1}      | 1:9  lacks a comma after "x". Put a comma there, or close the bracket that ends there.
          {"a": {},~ "b": {}~ "c": 1} | 2:8 lacks a comma after line 2. Put a comma there, or close the bracket that ends there.
          {"a": [1 2]}           | 1:8  lacks a comma after 1. Put a comma there, or close the bracket that ends there.
          {"a": 1,}              | 1:8  has a comma before the closing }. Delete the comma in line 1.
          {"a": 1,~}             | 1:8  has a comma before the closing }. Delete the comma in line 1.
          {"a": [1,]}            | 1:9  has a comma before the closing ]. Delete the comma in line 1.
          {"a": 1,, "b": 2}      | 1:8  has two commas with nothing between. Delete the comma in line 1.
          {,}                    | 1:2  has , where a name in quotes is expected. Write a name in double quotes and a colon before the value.
          {"a" 1}                | 1:2  lacks a colon after "a" in line 1. Write "a": and the value.
          {"a": }                | 1:7  lacks a value before }. Write the value, or delete what leads to it.
          {"a": 1: 2}            | 1:8  has a colon after a value. Put a comma between two fields, and the name of each in double quotes.
          {"a": ["b": 2]}        | 1:11 has a colon after a value. A list holds values only; use { } for names with values.
          {"a": 2,5}             | 1:9  has 5 where a name in quotes is expected. Numbers have a decimal point, not a comma; names stand in double quotes.
          {a: 1}                 | 1:2  has the name a without quotes. Write "a".
          {'a': 1}               | 1:2  has ' where a double quote belongs. Use " around texts and names.
          {“a”: 1}               | 1:2  has “ where a double quote belongs. Use " around texts and names.
          {"a": 1 // one~}       | 1:9  has a comment. JSON has no comments; write a "note" instead.
          {"a": 1 /* one */}     | 1:9  has a comment. JSON has no comments; write a "note" instead.
          {"a": 1} # end         | 1:10 has a comment. JSON has no comments; write a "note" instead.
          {"a": NaN}             | 1:7  has NaN, which is no number of JSON. Leave the field out.
          {"a": -Infinity}       | 1:7  has -Infinity, which is no number of JSON. Leave the field out.
          {"a": 01}              | 1:7  has 01, which is no number of JSON. Write a plain decimal such as 0.5 or 12, without unit; the unit stands in the name.
          {"a": .5}              | 1:7  has .5, which is no number of JSON. Write a plain decimal such as 0.5 or 12, without unit; the unit stands in the name.
          {"a": 5.}              | 1:7  has 5., which is no number of JSON. Write a plain decimal such as 0.5 or 12, without unit; the unit stands in the name.
          {"a": +5}              | 1:7  has +5, which is no number of JSON. Write a plain decimal such as 0.5 or 12, without unit; the unit stands in the name.
          {"a": 2.5mm}           | 1:7  has 2.5mm, which is no number of JSON. Write a plain decimal such as 0.5 or 12, without unit; the unit stands in the name.
          {"a": True}            | 1:7  has True, which is no word of JSON. Write true.
          {"a": tru}             | 1:7  has tru outside any text. Put texts in double quotes; did you mean true?
          {"a": RD}              | 1:7  has RD outside any text. Put texts in double quotes.
          {"a": "x~", "b": 1}    | 1:7  has a text that is not closed on its line. Close it with a double quote; a line break in a text is written \\n.
          {"a": "C:\\dash"}      | 1:10 has \\d in a text, which is no escape. Write \\\\ for a backslash; paths take /.
          {"a": "\\u00g0"}       | 1:8  has \\u in a text, which is no escape. Write \\\\ for a backslash; paths take /.
          {"a": "x               | 1:7  has a text that is never closed. Close it with a double quote.
          {"a": [1}              | 1:9  has } where the [ of line 1 is still to be closed by ]. Close it with ] first, or correct the bracket.
          {"a": 1}}              | 1:9  goes on after the end of its outermost brackets, with }. Delete what follows, or the closing bracket that stands too early.
          {"a": 1} {}            | 1:10 goes on after the end of its outermost brackets, with {. Delete what follows, or the closing bracket that stands too early.
          {"a": {~ "b": 1        | 1:7  ends before all brackets are closed; the { of line 1 lacks its }. Close it with } where it should end.
          """)
  void saysWhereAndWhatIsExpected(String text, String expected) {
    String place = expected.split(" ", -1)[0];
    String sentence = expected.substring(place.length()).strip();
    assertThat(Said.problems(text.replace('~', '\n')))
        .containsExactly(place + " car.harness.json " + sentence);
  }

  @Test
  void pointsToTheBracketThatWasForgotten() {
    ReadHarness read =
        Said.read(
            """
            {
              "format": 1,
              "wires": {
                "W1": {"from": "A:1", "to": "B:1",
                "W2": {"from": "A:2", "to": "B:2"},
                "W3": {"from": "A:3", "to": "B:3"}
              },
              "zones": {}
            }
            """);
    assertThat(Said.problems(read))
        .containsExactly(
            "4:11 car.harness.json ends before all brackets are closed; the { of line 4 lacks its }."
                + " Close it with } where it should end.");
    assertThat(read.problems().get(0).at().get(1).shown()).isEqualTo("car.harness.json:9:1");
  }

  @Test
  void knowsAnEmptyFile() {
    String expected = "1:1 car.harness.json is empty. A file begins with { and says \"format\": 1.";
    assertThat(Said.problems("")).containsExactly(expected);
    assertThat(Said.problems(" \n\t")).hasSize(1);
  }

  @Test
  void knowsAFileThatIsNoObject() {
    assertThat(Said.problems("[1, 2]"))
        .containsExactly(
            "1:1 car.harness.json does not begin with {. A file is one object: { \"format\": 1, ..."
                + " }.");
  }

  @Test
  void knowsAnUnfinishedMerge() {
    assertThat(
            Said.problems(
                "{\"format\": 1,\n<<<<<<< HEAD\n \"a\": 1\n=======\n \"b\": 1\n>>>>>>> x\n}"))
        .containsExactly(
            "2:1 car.harness.json holds an unfinished merge: line 2 is a conflict marker. Decide"
                + " which side stays, and delete the lines that begin with <<<<<<<, ======= and"
                + " >>>>>>>.");
    assertThat(Said.problems("<<<<<<< a\n{}")).singleElement().asString().startsWith("1:1 ");
  }

  @Test
  void knowsAPointerToLargeFileStorage() {
    assertThat(Said.problems("version https://git-lfs.example/spec/v1\noid sha256:00\nsize 3\n"))
        .singleElement()
        .asString()
        .contains("holds only a pointer to a file kept in large-file storage");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\r\n", "\r", "\n"})
  void countsEveryLineEnd(String lineEnd) {
    String text = "{" + lineEnd + "\"a\": 1," + lineEnd + "\t\"\uD83D\uDE97\": x}";
    assertThat(Said.problems(text)).singleElement().asString().startsWith("3:8 ");
  }

  @Test
  void showsInvisibleCharacters() {
    assertThat(Said.problems("{\u00a0\"a\": 1}"))
        .containsExactly(
            "1:2 car.harness.json has the character U+00A0 outside any text. Delete it; it may be"
                + " invisible in your editor.");
    assertThat(Said.problems("{\"a\": \"x\ty\"}"))
        .containsExactly(
            "1:9 car.harness.json has the control character \\u0009 in a text. Write \\t for a tab.");
  }

  @Test
  void usesNothingOfABrokenFile() {
    ReadHarness read = Said.read("{\"format\": 1, \"zones\": {\"a\": {}}, }");
    assertThat(read.harness().zones()).isEmpty();
    assertThat(read.unread()).containsExactly("car.harness.json");
    assertThat(read.texts()).containsKey("car.harness.json");
    assertThat(read.problems())
        .extracting(Problem::kind)
        .containsExactly(Problem.Kind.FILE_UNREADABLE);
  }
}
