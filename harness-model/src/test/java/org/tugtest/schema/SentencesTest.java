package org.tugtest.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

class SentencesTest {
  private static List<String> said(String file) {
    return said(PublishedSchema.HARNESS, file);
  }

  private static List<String> said(PublishedSchema schema, String file) {
    return schema.check(JsonMapper.shared().readTree(file)).stream()
        .map(mismatch -> mismatch.message() + " | " + mismatch.remedy())
        .toList();
  }

  /** One wire with one more field. */
  private static List<String> wire(String field) {
    return said(
        "{\"format\": 1, \"wires\": {\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\", "
            + field
            + "}}}");
  }

  private static List<String> part(String kind, String fields) {
    return said("{\"format\": 1, \"parts\": {\"" + kind + "\": {\"p\": {" + fields + "}}}}");
  }

  private static List<String> element(String fields) {
    return said("{\"format\": 1, \"devices\": {\"D\": {\"elements\": {\"e\": {" + fields + "}}}}}");
  }

  @Test
  void isSilentAboutWhatIsRight() {
    assertThat(said("{\"format\": 1}")).isEmpty();
    assertThat(wire("\"part\": \"w1.0\"")).isEmpty();
    assertThat(part("wires", "\"areaMm2\": 1, \"maxC\": 85")).isEmpty();
  }

  @Test
  void asksForTheFormat() {
    assertThat(said("{}"))
        .containsExactly("this file gives no format. | Begin it with \"format\": 1.");
    assertThat(said("{\"format\": 2}"))
        .containsExactly(
            "this file is of format 2; this Tugtest reads 1. | Update Tugtest, or write the file as"
                + " format 1.");
    assertThat(said("{\"format\": \"1\"}"))
        .containsExactly("format of this file is \"1\"; it must be 1. | Write 1.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "colr": "RD"     | "colr" is no field of wires/W1. | Did you mean "colour"?
          "color": "RD"    | "color" is no field of wires/W1. | Did you mean "colour"?
          "Colour": "RD"   | "Colour" is no field of wires/W1. | Did you mean "colour" or "colourDrawn"?
          "area": 1        | "area" is no field of wires/W1. | Did you mean "areaMm2"?
          "cut": 100       | "cut" is no field of wires/W1. | Did you mean "cutMm"?
          "cutMM": 100     | "cutMM" is no field of wires/W1. | Did you mean "cutMm"?
          "areaMm2": "1.5" | areaMm2 of wires/W1 is "1.5"; it must be a number. | Write it without quotes: 1.5.
          "areaMm2": "1,5" | areaMm2 of wires/W1 is "1,5"; it must be a number. | Write it without quotes: 1.5.
          "areaMm2": true  | areaMm2 of wires/W1 is true; it must be a number. | Write a number instead.
          "areaMm2": null  | areaMm2 of wires/W1 is null; it must be a number. | Write a number instead.
          "areaMm2": [1]   | areaMm2 of wires/W1 is a list; it must be a number. | Write a number instead.
          "areaMm2": {}    | areaMm2 of wires/W1 is an object; it must be a number. | Write a number instead.
          "areaMm2": 0.049 | areaMm2 of wires/W1 is 0.049 mm2; it must be at least 0.05 mm2. | Correct the figure. A conductor area in square millimetres.
          "areaMm2": 300.1 | areaMm2 of wires/W1 is 300.1 mm2; it must be at most 300 mm2. | Correct the figure. A conductor area in square millimetres.
          "cutMm": -1      | cutMm of wires/W1 is -1 mm; it must be at least 0 mm. | Correct the figure. A length in millimetres.
          "cutMm": 100001  | cutMm of wires/W1 is 100001 mm; it must be at most 100000 mm. | Correct the figure. A length in millimetres.
          "awg": 20        | awg of wires/W1 is 20; it must be a text. | Write it in quotes: "20".
          "via": "n1"      | via of wires/W1 is "n1"; it must be a list in [ ]. | Put it in square brackets, also when it is only one.
          "via": [3]       | item 1 of via of wires/W1 is 3; it must be a text. | Write it in quotes: "3".
          "evidence": "drawin" | evidence of wires/W1 is "drawin"; it must be rung-out, drawing or guess. | Did you mean "drawing"?
          "evidence": 7    | evidence of wires/W1 is 7; it must be rung-out, drawing or guess. | Write one of those words, in quotes.
          "colour": "red"  | colour of wires/W1 is "red", which does not have the form expected there. | Did you mean "RD"?
          "colour": "Red-white" | colour of wires/W1 is "Red-white", which does not have the form expected there. | Did you mean "RD/WH"?
          "colour": "rd"   | colour of wires/W1 is "rd", which does not have the form expected there. | Did you mean "RD"?
          "colour": "puce" | colour of wires/W1 is "puce", which does not have the form expected there. | A colour: an IEC 60757 code, or base/stripe of two codes: RD, RD/WH.
          """)
  void saysWhatIsWrongWithAField(String field, String message, String remedy) {
    assertThat(wire(field)).containsExactly(message + " | " + remedy);
  }

  @ParameterizedTest
  @CsvSource({
    "areaMm2, 0.05",
    "areaMm2, 300",
    "cutMm, 0",
    "cutMm, 100000",
    "cutMm, 1e2",
    "awg, '\"4/0\"'",
    "awg, '\"30\"'",
    "awg, '\"0\"'",
    "colour, '\"GNYE\"'",
    "colour, '\"RD/GNYE\"'",
    "label, '\"\"'"
  })
  void allowsWhatLiesOnTheLimit(String field, String value) {
    assertThat(wire("\"" + field + "\": " + value)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "awg, '\"5/0\"'",
    "awg, '\"31\"'",
    "awg, '\"\"'",
    "colour, '\"RD/\"'",
    "colour, '\"RD/WH/BK\"'",
    "from, '\"A:1:2\"'",
    "from, '\"A.b.c\"'",
    "from, '\" A:1\"'",
    "from, '\"A:1\\n\"'",
    "from, '\"A:1\\r\"'",
    "from, '\"A:1\\u0085\"'",
    "from, '\"A:1\\u2028\"'",
    "circuit, '\" x\"'",
    "circuit, '\"\"'",
    "label, '\"a\\u0000b\"'",
    "label, '\"\\ud800\"'"
  })
  void refusesWhatLiesBeyondIt(String field, String value) {
    assertThat(wire("\"x\": 1").size()).isEqualTo(1);
    assertThat(said("{\"format\": 1, \"wires\": {\"W1\": {\"" + field + "\": " + value + "}}}"))
        .singleElement()
        .asString()
        .contains("does not have the form");
  }

  @Test
  void namesAllThatIsMissingInOneSentence() {
    assertThat(said("{\"format\": 1, \"layout\": {\"segments\": {\"s\": {}}}}"))
        .containsExactly(
            "segments/s gives no from, to or lengthMm. | Add \"from\": Node where it starts. Add"
                + " \"to\": Node where it ends. Add \"lengthMm\": Length, mm.");
  }

  @Test
  void doesNotMissAFieldThatIsOnlyMisspelt() {
    assertThat(
            said(
                "{\"format\": 1, \"layout\": {\"segments\": {\"s\": {\"from\": \"a\", \"to\":"
                    + " \"b\", \"length\": 3}}}}"))
        .containsExactly("\"length\" is no field of segments/s. | Did you mean \"lengthMm\"?");
    assertThat(part("wires", "\"area\": 1, \"maxC\": 85"))
        .containsExactly("\"area\" is no field of parts/wires/p. | Did you mean \"areaMm2\"?");
  }

  @Test
  void knowsTheFormsOfAWirePart() {
    assertThat(part("wires", "\"maxC\": 85"))
        .containsExactly(
            "parts/wires/p is not complete. A kind of wire gives areaMm2 or awg, one of the two. |"
                + " Add what is missing.");
    assertThat(part("wires", "\"maxC\": 85, \"areaMm2\": 1, \"awg\": \"20\""))
        .containsExactly(
            "awg of parts/wires/p cannot stand here. A kind of wire gives areaMm2 or awg, one of"
                + " the two. | Leave \"awg\" or what it contradicts out.");
  }

  @Test
  void knowsTheFormsOfACovering() {
    assertThat(part("coverings", "\"kind\": \"tape\"")).isEmpty();
    assertThat(part("coverings", "\"kind\": \"tape\", \"innerMinMm\": 3"))
        .containsExactly(
            "parts/coverings/p is not complete. A covering gives innerMm, or innerMinMm together"
                + " with innerMaxMm. | Add what is missing.");
    assertThat(part("coverings", "\"kind\": \"tape\", \"innerMm\": 3, \"innerMaxMm\": 4"))
        .hasSize(2);
  }

  @Test
  void judgesAnElementByItsKindAlone() {
    assertThat(element("\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\"")).isEmpty();
    assertThat(element("\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", \"amps\": 1, \"watts\": 2"))
        .containsExactly(
            "watts of devices/D.e cannot stand here. A load gives one of amps, ohms, watts, or"
                + " watts with atVolts; inrushS goes with inrushA. | Leave \"watts\" or what it"
                + " contradicts out.");
    assertThat(element("\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", \"atVolts\": 12"))
        .hasSize(1);
    assertThat(element("\"kind\": \"lood\", \"x\": 1"))
        .containsExactly(
            "kind of devices/D.e is \"lood\"; it must be source, load, fuse, contact, coil, diode,"
                + " link or signal. | Did you mean \"load\"?");
    assertThat(element("\"a\": \"1\""))
        .containsExactly("devices/D.e gives no kind. | Add \"kind\": The sort of element.");
    assertThat(element("\"kind\": \"link\", \"a\": \"1\", \"b\": \"2\", \"ohms\": 1"))
        .containsExactly(
            "\"ohms\" is no field of devices/D.e. | Leave it out; what may stand there: kind, a, b,"
                + " milliohm.");
    assertThat(element("\"kind\": \"contact\", \"a\": \"1\", \"b\": \"2\", \"rest\": \"open\""))
        .hasSize(1);
  }

  @Test
  void letsATypeExcludeTheFieldsOfAType() {
    assertThat(said("{\"format\": 1, \"devices\": {\"D\": {\"type\": \"t\", \"grams\": 3}}}"))
        .containsExactly(
            "grams of devices/D cannot stand here. A device with a type takes these fields from its"
                + " type. | Leave \"grams\" or what it contradicts out.");
  }

  @Test
  void asksForIdsOfTheRightForm() {
    assertThat(said("{\"format\": 1, \"wires\": {\"W 1\": {}}}"))
        .containsExactly(
            "\"W 1\" cannot be a name in wires of this file. | Rename it. An id: 1 to 40 letters A"
                + " to Z, digits, - and _.");
    assertThat(said("{\"format\": 1, \"wires\": {\"W1\\n\": {}}}")).hasSize(1);
    assertThat(said("{\"format\": 1, \"wires\": {\"" + "W".repeat(40) + "\": {}}}")).isEmpty();
    assertThat(said("{\"format\": 1, \"wires\": {\"" + "W".repeat(41) + "\": {}}}")).hasSize(1);
    assertThat(said("{\"format\": 1, \"states\": {\"night  run\": {}}}")).hasSize(1);
    assertThat(said("{\"format\": 1, \"states\": {\"night run\": {}}}")).isEmpty();
  }

  @Test
  void judgesWaiversAndLimits() {
    assertThat(
            said(
                "{\"format\": 1, \"waivers\": {\"w\": {\"rule\": \"label-missing\", \"at\":"
                    + " \"wires/W1\", \"reason\": \"too short\", \"until\": \"2026-02-29\"}}}"))
        .containsExactly(
            "reason of waivers/w is 9 characters long; at least 10 are expected. | Why it is"
                + " accepted; 10 characters or more.",
            "until of waivers/w is \"2026-02-29\", which does not have the form expected there. | A"
                + " day as YYYY-MM-DD.");
    assertThat(said("{\"format\": 1, \"limits\": {\"r\": {\"percent\": {}}}}"))
        .containsExactly(
            "percent of limits/r is an object; it must be a number, a text or true or false. |"
                + " Write a number, a text or true or false instead.");
  }

  @Test
  void judgesExpectationsByWhatIsExpected() {
    assertThat(
            said("{\"format\": 1, \"expectations\": {\"e\": {\"that\": \"fed\", \"points\": []}}}"))
        .containsExactly(
            "expectations/e gives no at. | Add \"at\": Load, pin or cavity.",
            "\"points\" is no field of expectations/e. | Leave it out; what may stand there: that,"
                + " at, in, minV, reason.");
    assertThat(said("{\"format\": 1, \"expectations\": {\"e\": {\"that\": \"routes-apart\"}}}"))
        .hasSize(1);
  }

  @Test
  void judgesRecordsAndChanges() {
    assertThat(said(PublishedSchema.RECORD, "{\"format\": 1, \"record\": {\"plan\": \"a\"}}"))
        .singleElement()
        .asString()
        .startsWith("record of this file gives no loom, revision, by or date.");
    assertThat(
            said(PublishedSchema.CHANGES, "{\"format\": 1, \"changes\": {\"c\": {\"nets\": []}}}"))
        .hasSize(2);
  }

  @Test
  void shortensWhatItQuotes() {
    assertThat(wire("\"colour\": \"" + "x".repeat(100) + "\""))
        .singleElement()
        .asString()
        .startsWith("colour of wires/W1 is \"" + "x".repeat(60) + "…\", which");
  }

  @Test
  void callsANumberBeyondAllBoundsByName() {
    assertThat(wire("\"cutMm\": 1e400"))
        .singleElement()
        .asString()
        .startsWith("cutMm of wires/W1 is a number beyond all bounds;")
        .endsWith("Correct the figure. A length in millimetres.");
    assertThat(wire("\"cutMm\": 1" + "0".repeat(300)))
        .singleElement()
        .asString()
        .contains("it must be at most 100000 mm.");
  }

  @Test
  void aWireLaidInPlaceHasNoCutLength() {
    assertThat(wire("\"laidInPlace\": true")).isEmpty();
    assertThat(wire("\"laidInPlace\": true, \"builtMm\": 900")).isEmpty();
    assertThat(wire("\"laidInPlace\": false, \"cutMm\": 900")).isEmpty();
    assertThat(wire("\"laidInPlace\": true, \"cutMm\": 900"))
        .containsExactly(
            "cutMm of wires/W1 cannot stand here. A wire that is laid in place is cut on the"
                + " vehicle: it has no cutMm. | Leave \"cutMm\" or what it contradicts out.");
  }
}
