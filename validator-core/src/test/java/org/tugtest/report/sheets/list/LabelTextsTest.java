package org.tugtest.report.sheets.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LabelTextsTest {
  private static Made wires(String wires) {
    return Made.of(
        new LabelTexts(), "{\"format\": 1, \"sketch\": true, \"wires\": {" + wires + "}}");
  }

  private static List<String> ends(double cutMm) {
    Made made =
        wires(
            "\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\", \"awg\": \"20\", \"cutMm\": "
                + cutMm
                + "}");
    return made.rows("labels.csv").stream()
        .filter(row -> row.get("on").equals("wire W1"))
        .map(row -> row.get("end"))
        .toList();
  }

  @Test
  void shortWiresCarryNoneOrOneAsAc4313Says() {
    assertThat(ends(75)).isEmpty();
    assertThat(ends(76)).containsExactly("both");
    assertThat(ends(178)).containsExactly("both");
    assertThat(ends(179)).containsExactly("from", "to");
  }

  @Test
  void aWireOfUnknownLengthIsMarkedAtBothEnds() {
    Made made = wires("\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\"}");
    assertThat(made.column("labels.csv", "where")).contains("near A:1", "near B:1");
  }

  @Test
  void noTextIsNoLabelAndIsSaid() {
    Made made =
        wires(
            """
            "W1": {"from": "A:1", "to": "B:1", "label": ""},
            "W2": {"from": "A:2", "to": "B:2", "label": "=HORN"}
            """);
    assertThat(made.column("labels.csv", "text")).containsExactly("A", "B", "'=HORN", "'=HORN");
    assertThat(made.words("labels.html"))
        .contains("2 things have no label text.")
        .contains("2 texts begin with an apostrophe");
  }

  @Test
  void everyConnectorSpliceAndWireEndOfThePodHasOne() {
    Made made = Made.ofSample(new LabelTexts());
    // a tag, 7 connectors, 3 splices, 15 wires of 240 mm and more with two ends
    assertThat(made.rows(Made.POD + "labels.csv")).hasSize(1 + 7 + 3 + 30);
    assertThat(made.row(Made.POD + "labels.csv", "night-lamps rev A").get("on"))
        .isEqualTo("loom night-lamps");
  }
}
