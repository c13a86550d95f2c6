package org.tugtest.report.sheets.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class PinoutsTest {
  private static List<CSVRecord> plug() {
    return Made.ofSample(new Pinouts()).rows(Made.POD + "pinouts.csv").stream()
        .filter(row -> row.get("connector").equals("XL1"))
        .toList();
  }

  @Test
  void eachCavityOfThePodPlugStandsThereWithWhatItHoldsAndMeets() {
    assertThat(plug().stream().map(row -> row.get("wire")))
        .containsExactlyInAnyOrder("L001", "L002", "L003", "L004", "L005", "L008", "L012", "blank");
    CSVRecord sixth =
        plug().stream().filter(row -> row.get("cavity").equals("6")).findFirst().orElseThrow();
    assertThat(sixth.get("goes_to")).isEqualTo("S-31L");
    assertThat(sixth.get("meets")).isEqualTo("XE3:6");
    assertThat(sixth.get("colour")).isEqualTo("BK");
  }

  @Test
  void bothSidesAreDrawnAndNamed() {
    String page = Made.ofSample(new Pinouts()).page(Made.POD + "pinouts.html");
    assertThat(page).contains("<caption>Wire side</caption>");
    assertThat(page).contains("<caption>Mating side, mirrored</caption>");
    // in8-pin from the wire side: 4 3 2 1 above 8 7 6 5
    String plug = page.substring(page.indexOf("aria-label=\"XL1, Wire side\""));
    assertThat(plug.indexOf("<b class=\"no\">4</b>"))
        .isLessThan(plug.indexOf("<b class=\"no\">1</b>"));
    String front = page.substring(page.indexOf("aria-label=\"XL1, Mating side"));
    assertThat(front.indexOf("<b class=\"no\">1</b>"))
        .isLessThan(front.indexOf("<b class=\"no\">4</b>"));
  }

  @Test
  void aDoubledCavityShowsBothWiresAndAFreeOneSaysSo() {
    Made made =
        Made.of(
            new Pinouts(),
            """
            {"format": 1, "parts": {"housings": {"h": {"side": "pin", "rows": [["1", "2"]]}}},
             "connectors": {"X": {"housing": "h", "parked": "capped"}},
             "wires": {"W1": {"from": "X:1", "to": "X:1", "awg": "20"}}}
            """);
    assertThat(made.column("pinouts.csv", "cavity")).containsExactly("1", "1", "2");
    assertThat(made.column("pinouts.csv", "wire")).containsExactly("W1", "W1", "free");
    assertThat(made.column("pinouts.csv", "terminal").get(0))
        .isEqualTo("not known: more wires than a terminal takes");
  }

  @Test
  void aFaceTooWideForAnUprightPageIsPrintedAcross() {
    for (int columns : List.of(11, 19, 20, 31)) {
      String row =
          IntStream.rangeClosed(1, columns)
              .mapToObj(cavity -> "\"" + cavity + "\"")
              .collect(Collectors.joining(","));
      String page =
          Made.of(
                  new Pinouts(),
                  """
                  {"format": 1,
                   "parts": {"housings": {"h": {"side": "pin", "rows": [[%s]]}}},
                   "connectors": {"X": {"housing": "h"}}}
                  """
                      .formatted(row))
              .page("pinouts.html");
      assertThat(page.contains("A4 landscape")).as("%s columns", columns).isEqualTo(columns > 19);
    }
  }

  private static Made wide(String housing, String connector, int wired) {
    String row =
        IntStream.rangeClosed(1, 60)
            .mapToObj(cavity -> "\"" + cavity + "\"")
            .collect(Collectors.joining(","));
    return Made.of(
        new Pinouts(),
        """
        {"format": 1, "parts": {"housings": {"h": {"side": "pin", %s "rows": [[%s]]}}},
         "connectors": {"X": {"housing": "h", "parked": "capped" %s}},
         "wires": {"W1": {"from": "X:1", "to": "X:%d", "awg": "20"}}}
        """
            .formatted(housing, row, connector, wired));
  }

  @Test
  void aRunOfFreeCavitiesIsOneRowOnPaperAndAllRowsInTheFile() {
    Made made = wide("", "", 60);
    assertThat(made.column("pinouts.csv", "cavity")).hasSize(60).startsWith("1", "2", "3");
    assertThat(made.column("pinouts.csv", "wire")).contains("free").doesNotContain("58 free");
    assertThat(made.page("pinouts.html").split("<td class=\"tick\">")).hasSize(1 + 3);
    assertThat(made.words("pinouts.html")).contains("2 to 59 58 free");
  }

  @Test
  void aShortRunStaysAsItIs() {
    // free are 57 to 59 and 2 to 55: three are printed one by one
    Made made = wide("", ", \"cavities\": {\"56\": {\"blank\": true}}", 60);
    assertThat(made.words("pinouts.html"))
        .contains("2 to 55 54 free")
        .contains("56 blank")
        .contains("57 free", "58 free", "59 free");
  }

  @Test
  void whichArePluggedIsNotLostAndWhichNeedAPlugIsSaid() {
    Made made =
        wide(
            "\"sealed\": true,",
            ", \"blanked\": true, \"cavities\": {\"30\": {\"blank\": false}}",
            60);
    assertThat(made.words("pinouts.html"))
        .contains("2 to 29 28 blanks", "30 free, plug needed", "31 to 59 29 blanks");
    Made open = wide("\"sealed\": true,", "", 60);
    assertThat(open.words("pinouts.html")).contains("2 to 59 58 free, plugs needed");
    assertThat(open.column("pinouts.csv", "wire").subList(1, 3)).containsExactly("free", "free");
  }

  @Test
  void aFreeCavityThatMeetsAWireKeepsItsOwnRow() {
    Made made =
        Made.of(
            new Pinouts(),
            """
            {"format": 1, "parts": {"housings": {
              "p": {"side": "pin", "rows": [["1", "2", "3", "4", "5", "6", "7", "8", "9"]], "matesWith": ["s"]},
              "s": {"side": "socket", "rows": [["1", "2", "3", "4", "5", "6", "7", "8", "9"]]}}},
             "connectors": {"X": {"housing": "p", "mates": "Y"}, "Y": {"housing": "s"}},
             "wires": {"W1": {"from": "X:1", "to": "X:2", "awg": "20"}, "W2": {"from": "Y:5", "to": "Y:1", "awg": "20"}}}
            """);
    assertThat(made.words("pinouts.html"))
        .contains("X Wire Colour")
        .contains("5 free Y:5 W2")
        .contains("6 to 9 4 free free cavities of Y");
  }
}
