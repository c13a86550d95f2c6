package org.tugtest.write;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetCellTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "=1+1",
        "=HYPERLINK(\"x\")",
        "+A1",
        "-1",
        "-",
        "+",
        "@SUM(A1)",
        "'",
        "'x",
        " x",
        "x ",
        "\tx",
        "1-2",
        "3/4",
        "4/0",
        "1.2.3",
        "10:30",
        "1 2",
        "007",
        "00",
        "1E5",
        "2e-3",
        "1.0",
        ".5",
        "0,5",
        "5%",
        "12345678901234567",
        "MAR1",
        "SEP-2",
        "1-Dez",
        "May 2026",
        "2026-11-25",
        "TRUE",
        "false",
        "Wahr"
      })
  void guardsWhatASpreadsheetWouldChange(String text) {
    assertThat(SheetCell.of(text)).isEqualTo("'" + text);
    assertThat(SheetCell.text("'" + text)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1",
        "20",
        "W001",
        "R1:3",
        "ECU:A12",
        "RD/WH",
        "X1-2",
        "A-1",
        "lamp feed",
        "S1",
        "Decoder 2",
        "Marker1",
        "w1.0",
        "B+",
        "t2.8",
        "A1E5",
        "1a",
        "ü"
      })
  void leavesPlainTextsAlone(String text) {
    assertThat(SheetCell.of(text)).isEqualTo(text);
    assertThat(SheetCell.text(text)).isEqualTo(text);
  }

  @Property(tries = 2_000, seed = "5")
  void losesNoText(@ForAll String text) {
    assertThat(SheetCell.of(text)).isNotEmpty();
    assertThat(SheetCell.text(SheetCell.of(text))).isEqualTo(text);
    assertThat(SheetCell.of(text)).doesNotMatch("(?s)[=+@\\t\\r-].*");
  }

  @ParameterizedTest
  @CsvSource({"2.50, 2.50", "-1, -1", "1e3, 1e3", "true, true", "=x, '''=x'", "null, null"})
  void writesTokensAsTheyAre(String raw, String cell) {
    assertThat(SheetCell.ofToken(raw)).isEqualTo(cell);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          NUMBER | 2.50     | 2.5
          NUMBER | 2.50     | 2,5
          NUMBER | 1200     | 1 200
          FLAG   | true     | WAHR
          FLAG   | false    | FALSE
          LIST   | a, b     | a;b
          TEXT   | Zündung  | ZÃ¼ndung
          TEXT   | x        | x
          """)
  void seesThroughWhatASpreadsheetDid(SheetType type, String written, String edited) {
    assertThat(type.same(written, edited)).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          NUMBER | 2.50 | 2.51
          NUMBER | 2.50 | x
          NUMBER | 2.50 | ''
          FLAG   | true | false
          FLAG   | true | maybe
          LIST   | a, b | b, a
          TEXT   | x    | X
          TEXT   | ''   | x
          """)
  void seesAChange(SheetType type, String written, String edited) {
    assertThat(type.same(written, edited)).isFalse();
  }
}
