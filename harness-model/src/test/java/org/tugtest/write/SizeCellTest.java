package org.tugtest.write;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.write.SizeCell.Unit;

class SizeCellTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          thick      | MM2
          0          | MM2
          0,04       | MM2
          300.1      | MM2
          -1         | MM2
          2x0.75     | MM2
          0.5mm      | MM2
          #18        | MM2
          AWG 31     | MM2
          AWG 5/0    | MM2
          1.5        | AWG
          31         | AWG
          20         | UNSAID
          0,5        | UNSAID
          AWG        | UNSAID
          mm2        | UNSAID
          """)
  void findsUnclear(String cell, Unit unit) {
    SizeCell size = SizeCell.read(cell, unit);

    assertThat(size.areaMm2()).isNull();
    assertThat(size.awg()).isNull();
    assertThat(size.unclear()).startsWith("\"" + cell + "\" ").endsWith(".");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0.05       | MM2    | 0.05
          0,5        | MM2    | 0.5
          0.50       | MM2    | 0.50
          .75        | MM2    | 0.75
          00,75      | MM2    | 0.75
          300        | MM2    | 300
          0.5 mm²    | UNSAID | 0.5
          0,35mm2    | AWG    | 0.35
          1,5 qmm    | UNSAID | 1.5
          2.5 sq mm  | UNSAID | 2.5
          """)
  void readsAreas(String cell, Unit unit, String area) {
    assertThat(SizeCell.read(cell, unit)).isEqualTo(new SizeCell(area, null, null));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          AWG 20   | MM2    | 20
          20 AWG   | UNSAID | 20
          awg20    | MM2    | 20
          20awg    | MM2    | 20
          #18 AWG  | MM2    | 18
          AWG 4/0  | UNSAID | 4/0
          0000     | AWG    | 4/0
          00       | AWG    | 2/0
          0        | AWG    | 0
          08       | AWG    | 8
          30       | AWG    | 30
          """)
  void readsGauges(String cell, Unit unit, String awg) {
    assertThat(SizeCell.read(cell, unit)).isEqualTo(new SizeCell(null, awg, null));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1,200", "1.200", "abc", "-3", "0", "100001", "~500", "ca. 500", "12 ft"})
  void leavesOutDoubtfulLengths(String cell) {
    LengthCell length = LengthCell.read(cell, LengthCell.Unit.MM);

    assertThat(length.mm()).isNull();
    assertThat(length.unclear()).startsWith("\"" + cell + "\" ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1200    | MM     | 1200
          350.5   | MM     | 350.5
          1 200   | MM     | 1200
          1'200   | MM     | 1200
          1.200,5 | MM     | 1200.5
          1,2     | M      | 1200
          1.200   | M      | 1200
          35      | CM     | 350
          35,55   | CM     | 355.5
          1.2 m   | MM     | 1200
          120 cm  | UNSAID | 1200
          700mm   | UNSAID | 700
          2 Meter | CM     | 2000
          100000  | MM     | 100000
          """)
  void readsLengths(String cell, LengthCell.Unit unit, String mm) {
    assertThat(LengthCell.read(cell, unit)).isEqualTo(new LengthCell(mm, null));
  }

  @ParameterizedTest
  @ValueSource(strings = {"12", "0,5", "700"})
  void doesNotGuessTheUnitOfALength(String cell) {
    assertThat(LengthCell.read(cell, LengthCell.Unit.UNSAID).unclear())
        .contains("may be mm, cm or m");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "in place",
        "Laid in place",
        "lay-in-place",
        "cut on car",
        "on the vehicle",
        "laid"
      })
  void knowsAWireThatIsLaidInPlace(String cell) {
    assertThat(LengthCell.inPlace(cell)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "700", "in", "place", "relay in place", "laid 700"})
  void takesNothingElseForLaidInPlace(String cell) {
    assertThat(LengthCell.inPlace(cell)).isFalse();
  }
}
