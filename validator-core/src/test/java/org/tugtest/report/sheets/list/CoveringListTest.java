package org.tugtest.report.sheets.list;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class CoveringListTest {
  @Test
  void thePodIsAsWorkedByHandInTheReadmeOfTheSample() {
    Made made = Made.ofSample(new CoveringList());
    CSVRecord row = made.row(Made.POD + "coverings.csv", "l2");
    // loose diameters on l2: 5.86, 5.53 and 5.89; the thickest piece counts by its expected one
    assertThat(row.get("over_mm")).isEqualTo("5.9");
    assertThat(row.get("inside")).isEqualTo("3 to 12");
    assertThat(row.get("fits")).isEqualTo("fits");
    assertThat(row.get("length_mm")).isEqualTo("320");
    // 320 x 1.15
    assertThat(row.get("cut_mm")).isEqualTo("368");
    assertThat(row.get("supports")).isEqualTo("1 × p-clip-12");
    CSVRecord tee = made.row(Made.POD + "coverings-breakouts.csv", "pod-tee");
    assertThat(tee.get("segments")).isEqualTo("l1, l2, l3");
  }

  private static String covered(String part) {
    return """
    {"format": 1, "sketch": true,
     "parts": {"wires": {"w": {"areaMm2": 1, "outerMm": 4, "maxC": 105}},
               "coverings": {"c": %s}},
     "connectors": {"A": {"at": "n1"}, "B": {"at": "n2"}},
     "layout": {"nodes": {"n1": {}, "n2": {"coverings": ["c"]}},
                "segments": {"s": {"from": "n1", "to": "n2", "lengthMm": 500,
                                   "coverings": ["c", "nowhere"]}}},
     "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w"},
               "W2": {"from": "A:2", "to": "B:2", "part": "w"},
               "W3": {"from": "A:3", "to": "B:3", "part": "w"}}}
    """
        .formatted(part);
  }

  private static CSVRecord inner(String part) {
    return Made.of(new CoveringList(), covered(part)).rows("coverings.csv").get(0);
  }

  @Test
  void fitIsHeldAgainstTheLooseDiameterOnTheWideSide() {
    // three wires of 4 mm: loose 1.3 x root of 48 = 9.007 mm
    assertThat(inner("{\"kind\": \"split-conduit\", \"innerMm\": 9}").get("fits"))
        .isEqualTo("too narrow");
    assertThat(inner("{\"kind\": \"split-conduit\", \"innerMm\": 9.01}").get("fits"))
        .isEqualTo("fits");
  }

  @Test
  void shrinkHasToCloseOnTheThinnestPiece() {
    String part = "{\"kind\": \"heat-shrink\", \"innerMinMm\": %s, \"innerMaxMm\": 12}";
    // three circles of 4 mm in the least circle round them: 2.1547 x 4 = 8.62 mm
    assertThat(inner(part.formatted("8.6")).get("fits")).isEqualTo("fits");
    assertThat(inner(part.formatted("8.7")).get("fits")).isEqualTo("does not close on it");
    assertThat(inner("{\"kind\": \"tape\"}").get("fits")).isEqualTo("not known: no inside given");
  }

  @Test
  void onlyShrinkIsCutLonger() {
    assertThat(inner("{\"kind\": \"braided-sleeve\", \"innerMm\": 9}").get("cut_mm"))
        .isEqualTo("500");
    assertThat(inner("{\"kind\": \"heat-shrink\", \"innerMm\": 9}").get("cut_mm")).isEqualTo("575");
  }

  @Test
  void aPartThatIsNotThereAndAPieceWithoutLengthAreSaid() {
    Made made = Made.of(new CoveringList(), covered("{\"kind\": \"tape\"}"));
    assertThat(made.words("coverings.html")).contains("nowhere no such part");
    assertThat(made.row("coverings-pieces.csv", "breakout n2").get("note"))
        .startsWith("length not known");
  }
}
