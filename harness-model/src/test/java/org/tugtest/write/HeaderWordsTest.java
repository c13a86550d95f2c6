package org.tugtest.write;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeaderWordsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "?",
        "A",
        "B",
        "1",
        "from/to",
        "From terminal",
        "Terminal A",
        "Sleeve colour",
        "Supplier",
        "Price",
        "Pos.",
        "Bezeichnung",
        "From colour",
        "Seal B",
        "Length supplier",
        "Code",
        "Wire code",
        "2026-11-20",
        "R1:3",
        "Checked by",
        "Label colour"
      })
  void doesNotKnow(String header) {
    assertThat(HeaderWords.of(header)).isEqualTo(new HeaderWords.Meaning(null, false));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          from               | FROM
          From connector     | FROM
          End A              | FROM
          A-Seite            | FROM
          von                | FROM
          Von Gerät          | FROM
          Source             | FROM
          START              | FROM
          Quellstecker       | FROM
          fromPin            | FROM_PIN
          from_pin           | FROM_PIN
          Pin A              | FROM_PIN
          Von Kammer         | FROM_PIN
          to                 | TO
          End b              | TO
          nach               | TO
          Ziel               | TO
          Zielpin            | TO_PIN
          To cavity          | TO_PIN
          Pin                | PIN
          Kammer             | PIN
          wire               | ID
          Wire No.           | ID
          wire #             | ID
          #                  | ID
          Kabel-Nr.          | ID
          Ltg Nr             | ID
          Leitungsnummer     | ID
          id                 | ID
          mm2                | AREA
          mm²                | AREA
          Area               | AREA
          CSA [mm²]          | AREA
          Querschnitt        | AREA
          Aderquerschnitt    | AREA
          Cross-section      | AREA
          Size (mm2)         | AREA
          size               | SIZE
          Wire gauge         | SIZE
          mm2 / AWG          | SIZE
          AWG                | AWG
          Gauge AWG          | AWG
          Querschnitt [AWG]  | AWG
          colour             | COLOUR
          Color              | COLOUR
          Farbe              | COLOUR
          Kabelfarbe         | COLOUR
          Colour code        | COLOUR
          Base colour        | COLOUR
          Stripe             | STRIPE
          Tracer colour      | STRIPE
          Colour 2           | STRIPE
          Zweitfarbe         | STRIPE
          circuit            | CIRCUIT
          Signal name        | CIRCUIT
          Function           | CIRCUIT
          Funktion           | CIRCUIT
          Length             | LENGTH
          Länge              | LENGTH
          Length (mm)        | LENGTH_MM
          Länge in mm        | LENGTH_MM
          Leitungslänge [cm] | LENGTH_CM
          Cut length m       | LENGTH_M
          label              | LABEL
          Beschriftung       | LABEL
          Loom               | LOOM
          Kabelbaum          | LOOM
          Part no            | PART
          Leitungstyp        | PART
          Notes              | NOTE
          Bemerkung          | NOTE
          """)
  void knows(String header, WireColumn column) {
    assertThat(HeaderWords.of(header)).isEqualTo(new HeaderWords.Meaning(column, false));
  }

  @ParameterizedTest
  @CsvSource({"Colur, COLOUR", "Querschnit, AREA", "Bemerkumg, NOTE", "lenght (mm), LENGTH_MM"})
  void readsSmallMisspellings(String header, WireColumn column) {
    assertThat(HeaderWords.of(header)).isEqualTo(new HeaderWords.Meaning(column, true));
  }
}
