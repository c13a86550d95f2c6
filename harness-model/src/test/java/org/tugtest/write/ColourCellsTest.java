package org.tugtest.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColourCellsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "B",
        "L",
        "P",
        "S",
        "G",
        "R",
        "R/W",
        "RD/W",
        "BR/Y/G",
        "GR",
        "BL",
        "bl/gr",
        "LG",
        "SB",
        "TAN",
        "light blue",
        "hellblau",
        "beige",
        "XX",
        "RD/WH/BK",
        "white on red",
        "RD/RD",
        "?",
        "1",
        "RDXX",
        "clear",
        "/",
        "42"
      })
  void neverGuesses(String cell) {
    ColourCells.Read read = new ColourCells(List.of(cell), Map.of()).read(cell);

    assertThat(read.colour()).isNull();
    assertThat(read.unclear()).startsWith("\"" + cell + "\" ").endsWith(".");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          RD               | RD
          rd               | RD
          gnye             | GNYE
          RD/WH            | RD/WH
          rd/wh            | RD/WH
          RD-WH            | RD/WH
          RD WH            | RD/WH
          'RD, WH'         | RD/WH
          red              | RD
          Red/White        | RD/WH
          red with white   | RD/WH
          rot-weiß         | RD/WH
          schwarz          | BK
          grün/gelb        | GN/YE
          rt-ws            | RD/WH
          sw               | BK
          br               | BN
          violet           | VT
          purple           | VT
          BLK              | BK
          BLK/YEL          | BK/YE
          PPL              | VT
          grey             | GY
          """)
  void readsCodesAndWords(String cell, String colour) {
    assertThat(new ColourCells(List.of(cell), Map.of()).read(cell))
        .isEqualTo(new ColourCells.Read(colour, null, null));
  }

  @ParameterizedTest
  @CsvSource({"RDWH, RD/WH", "rtws, RD/WH", "BLKWHT, BK/WH", "rotweiss, RD/WH", "redwhite, RD/WH"})
  void saysThatItTookJoinedColoursApart(String cell, String colour) {
    ColourCells.Read read = new ColourCells(List.of(cell), Map.of()).read(cell);

    assertThat(read.colour()).isEqualTo(colour);
    assertThat(read.assumed()).contains("runs two colours together");
  }

  @Test
  void readsGermanGreyOnlyBesideGermanLetters() {
    ColourCells german = new ColourCells(List.of("gr", "bl/ws", "rt"), Map.of());
    ColourCells other = new ColourCells(List.of("gr", "bl/wh", "RD"), Map.of());

    assertThat(german.read("gr").colour()).isEqualTo("GY");
    assertThat(german.read("gr").assumed()).isNotNull();
    assertThat(german.read("bl/ws").colour()).isEqualTo("BU/WH");
    assertThat(other.read("gr").colour()).isNull();
    assertThat(other.read("bl/wh").colour()).isNull();
  }

  @Test
  void takesPairsOfLettersForTwoColoursWhereTheListIsOfSingleLetters() {
    ColourCells letters = new ColourCells(List.of("R", "BR", "GY", "W"), Map.of());
    ColourCells codes = new ColourCells(List.of("RD", "BN", "GY", "W"), Map.of());

    assertThat(letters.read("BR").colour()).isNull();
    assertThat(letters.read("GY").colour()).isNull();
    assertThat(codes.read("GY").colour()).isEqualTo("GY");
    assertThat(codes.read("W").colour()).isNull();
  }

  @Test
  void followsWhatAPersonSays() {
    ColourCells cells =
        new ColourCells(List.of("B", "B/W", "GR"), Map.of("b", "BK", "w", "WH", "gr", "GN"));

    assertThat(cells.read("B").colour()).isEqualTo("BK");
    assertThat(cells.read("B/W").colour()).isEqualTo("BK/WH");
    assertThat(cells.read("GR")).isEqualTo(new ColourCells.Read("GN", null, null));
  }
}
