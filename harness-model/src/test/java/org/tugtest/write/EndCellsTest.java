package org.tugtest.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EndCellsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "?",
        "-",
        "n/a",
        "tbd",
        "offen",
        "12",
        "3/4",
        "R1:",
        ":3",
        "R1:3:4",
        "R1/3/4",
        "Lamp L/H",
        "BAT-",
        "R1:3 a",
        "pin 3",
        "Kl. 15",
        "§§§",
        "R1.2.3"
      })
  void leavesOutWhatIsNotPlain(String text) {
    EndCells.Read read = readers(text).read(cell(text));

    assertThat(read.reference()).isNull();
    assertThat(read.message()).contains("\"" + text + "\"").endsWith(".");
    assertThat(read.done()).contains("left out");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          R1:3         | R1:3
          R1-3         | R1:3
          R1/3         | R1:3
          R1 3         | R1:3
          R1.3         | R1:3
          R1 pin 3     | R1:3
          R1 Pin3      | R1:3
          'R1, pin 3'  | R1:3
          R1-Kammer 12 | R1:12
          R1 (3)       | R1:3
          R1[A4]       | R1:A4
          R1 : 3       | R1:3
          X12-A1       | X12:A1
          BAT:+        | BAT:+
          BAT +        | BAT:+
          BAT+         | BAT:+
          BAT -        | BAT:-
          ALT B+       | ALT:B+
          K1/87a       | K1:87a
          ECU.A12      | ECU:A12
          """)
  void readsOwnerAndPin(String text, String reference) {
    EndCells.Read read = readers(text).read(cell(text));

    assertThat(read.reference()).isEqualTo(reference);
    assertThat(read.message()).isNull();
  }

  @Test
  void saysWhichNamesBecameSplices() {
    EndCells.Read read = readers("GND").read(cell("GND"));

    assertThat(read.reference()).isEqualTo("GND");
    assertThat(read.message()).isEqualTo("\"GND\" has no pin.");
    assertThat(read.done()).isEqualTo("It was taken as the splice GND.");
  }

  @Test
  void makesLegalIdsAndSaysSo() {
    EndCells ends =
        readers("Fuel pump:1", "fuel-pump:2", "Zündung", "A/C relay", "Front position lamp");

    assertThat(ends.read(cell("Fuel pump:1")).reference()).isEqualTo("Fuel-pump:1");
    assertThat(ends.read(cell("Fuel pump:1")).done()).isEqualTo("It was written as Fuel-pump.");
    assertThat(ends.read(cell("fuel-pump:2")).reference()).isEqualTo("Fuel-pump:2");
    assertThat(ends.read(cell("Zündung")).reference()).isEqualTo("Zuendung");
    assertThat(ends.read(cell("A/C relay")).reference()).isEqualTo("A-C-relay");
    assertThat(ends.read(cell("Front position lamp")).reference()).isEqualTo("Front-position-lamp");
  }

  @Test
  void readsAHyphenAsAPinWhereTheOwnerIsKnown() {
    EndCells ends = readers("ECU:1", "ECU-2", "BAT+", "BAT-");

    assertThat(ends.read(cell("ECU-2")).reference()).isEqualTo("ECU:2");
    assertThat(ends.read(cell("BAT-")).reference()).isEqualTo("BAT:-");
  }

  @Test
  void readsAHyphenAsPartOfANameThatHasPinsItself() {
    EndCells ends = readers("FUSE-1:in", "FUSE-1");

    assertThat(ends.read(cell("FUSE-1")).reference()).isEqualTo("FUSE-1");
    assertThat(ends.read(cell("FUSE-1")).message()).contains("has pins elsewhere");
  }

  @Test
  void readsManyOnceEachAsPinsAndSaysSo() {
    EndCells ends = readers("ECU-1", "ECU-2", "ECU-3", "ECU-3", "ECU 4");
    EndCells.Read read = ends.read(cell("ECU-2"));

    assertThat(read.reference()).isEqualTo("ECU:2");
    assertThat(read.done())
        .isEqualTo("They were read as pins of ECU, for most of them stand in the list once.");
    assertThat(ends.read(cell("ECU 4")).reference()).isEqualTo("ECU:4");
  }

  @Test
  void readsNamesThatRepeatAsSplicesAndSaysSo() {
    EndCells ends = readers("SPL-1", "SPL-1", "SPL-2", "SPL-2", "SPL-2");
    EndCells.Read read = ends.read(cell("SPL-1"));

    assertThat(read.reference()).isEqualTo("SPL-1");
    assertThat(read.message()).isEqualTo("\"SPL-1\" can be a name or a pin of SPL.");
    assertThat(read.done()).isEqualTo("It was read as the splice SPL-1; write SPL:1 for the pin.");
  }

  @Test
  void takesThePinFromItsOwnColumn() {
    EndCells ends = readers("R1");

    assertThat(ends.read(new EndCells.Cell("R1", "3")).reference()).isEqualTo("R1:3");
    assertThat(ends.read(new EndCells.Cell("R1", "Pin 3")).reference()).isEqualTo("R1:3");
    assertThat(ends.read(new EndCells.Cell("R1:3", "3")).reference()).isEqualTo("R1:3");
    assertThat(ends.read(new EndCells.Cell("R1:3", "4")).reference()).isNull();
    assertThat(ends.read(new EndCells.Cell("FUSE-1", "2")).reference()).isEqualTo("FUSE-1:2");
    assertThat(ends.read(new EndCells.Cell("R1", "3 or 4")).reference()).isNull();
    assertThat(ends.read(new EndCells.Cell("?", "3")).reference()).isNull();
    assertThat(ends.read(new EndCells.Cell("12", "3")).reference()).isEqualTo("12:3");
  }

  private static EndCells readers(String... texts) {
    List<EndCells.Cell> cells = Arrays.stream(texts).map(EndCellsTest::cell).toList();
    return new EndCells(cells, new LegalNames());
  }

  private static EndCells.Cell cell(String text) {
    return new EndCells.Cell(text, "");
  }
}
