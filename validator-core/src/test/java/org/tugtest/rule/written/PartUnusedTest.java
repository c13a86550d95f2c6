package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class PartUnusedTest {
  /** Every kind of part, each used in the one way or other. */
  private static final String USED =
      """
      {"format": 1, "sketch": true,
       "parts": {
         "wires": {"w": {"areaMm2": 1, "maxC": 125}},
         "housings": {"a": {"side": "socket", "rows": [["1"]], "terminals": ["ta"],
                            "seals": ["sa"]},
                      "b": {"side": "pin", "rows": [["1"]], "matesWith": ["a"]},
                      "c": {"side": "pin", "rows": [["1"]], "terminals": ["tc"]}},
         "terminals": {"ta": {"family": "f", "side": "socket", "areaMinMm2": 1, "areaMaxMm2": 2},
                       "tb": {"family": "f", "side": "ring", "areaMinMm2": 1, "areaMaxMm2": 2},
                       "tc": {"family": "f", "side": "pin", "areaMinMm2": 1, "areaMaxMm2": 2},
                       "td": {"family": "f", "side": "pin", "areaMinMm2": 1, "areaMaxMm2": 2}},
         "seals": {"sa": {"family": "f", "insulationMinMm": 1, "insulationMaxMm": 2},
                   "sb": {"family": "f", "insulationMinMm": 1, "insulationMaxMm": 2}},
         "splices": {"sp": {"areaMinMm2": 1, "areaMaxMm2": 4, "maxWires": 3}},
         "fuses": {"f5": {"ratingA": 5}},
         "coverings": {"c1": {"kind": "tape"}, "c2": {"kind": "tape"}, "c3": {"kind": "tape"},
                       "c4": {"kind": "tape"}},
         "supports": {"clip": {"kind": "clip"}},
         "deviceTypes": {"lamp": {"ports": {"A": {"housing": "c"}}}}},
       "devices": {"L": {"type": "lamp"},
                   "FB": {"elements": {"f1": {"kind": "fuse", "a": "1", "b": "2"}}}},
       "fitted": {"FB.f1": "f5"},
       "connectors": {"X1": {"housing": "a", "boot": "c1",
                             "cavities": {"1": {"terminal": "td", "seal": "sb"}}}},
       "splices": {"S1": {"part": "sp", "coverings": ["c2"]}},
       "layout": {"nodes": {"n": {"coverings": ["c3"]}, "m": {}},
                  "segments": {"s": {"from": "n", "to": "m", "lengthMm": 9, "coverings": ["c4"],
                                     "supports": 1, "supportPart": "clip"}}},
       "wires": {"W1": {"from": "X1:1", "to": "S1", "part": "w", "toTerminal": "tb"}}}
      """;

  private static Judged judged(String json) {
    return Judged.of(new PartUnused(), json);
  }

  private static String wires(String wireMore, String sections) {
    return """
    {"format": 1, "sketch": true,
     "parts": {"wires": {"w1": {"areaMm2": 1, "maxC": 125}, "w2": {"areaMm2": 2, "maxC": 125},
                         "w3": {"areaMm2": 3, "maxC": 125}}},
     "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w2"%s}}%s}
    """
        .formatted(wireMore, sections);
  }

  @Test
  void partsUsedInAnyWayAreFine() {
    Judged judged = judged(USED);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(18);
  }

  @Test
  void unusedPartsOfOneKindAreOneNote() {
    Judged judged = judged(wires("", ""));
    assertThat(judged.messages()).containsExactly("wire parts w1 and w3 are defined and not used");
    assertThat(judged.subjects()).containsExactly("parts/wires");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.NOTE);
    assertThat(judged.findings().get(0).at()).hasSize(2);
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void partThatOnlyAnUnusedPartNamesIsUnusedToo() {
    Judged judged = judged(USED.replace("\"type\": \"lamp\"", "\"at\": \"n\""));
    assertThat(judged.messages())
        .containsExactly(
            "housing c is defined and not used",
            "terminal tc is defined and not used",
            "device type lamp is defined and not used");
  }

  @Test
  void onePartMayBeLeftOutOfTheList() {
    Judged judged =
        judged(
            wires(
                "",
                ", \"limits\": {\"part-unused\": {\"places\": {\"parts/wires/w1\":"
                    + " {\"level\": \"off\"}}}}"));
    assertThat(judged.messages()).containsExactly("wire part w3 is defined and not used");
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }

  @Test
  void absenceProvesNothingWhileAFileIsUnreadOrWrong() {
    assertThat(judged(wires("", ", \"uses\": [\"gone.json\"]")).messages()).isEmpty();
    assertThat(judged(wires(", \"prt\": \"w1\"", "")).messages()).isEmpty();
  }

  @Test
  void partsOfASharedLibraryAreNotJudged() {
    Judged judged =
        Judged.of(
            new PartUnused(),
            Map.of(
                Judged.ROOT,
                "{\"format\": 1, \"uses\": [\"../lib/wires.json\"]}",
                "../lib/wires.json",
                "{\"format\": 1, \"parts\": {\"wires\": {\"w\": {\"areaMm2\": 1, \"maxC\": 9}}}}"));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing()).containsOnlyKeys("it stands in a shared library");
  }
}
