package org.tugtest.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.schema.PublishedSchema;
import org.tugtest.text.SourceText;

class PlanEditTest {
  private static final String FILE =
      """
      {
        "format": 1,
        "loom": {"id": "front", "revision": "C"},
        "wires": {
          "W1":  {"from": "A:1", "to": "B:1", "areaMm2": 0.50},
          "W3": {"from": "A:3", "to": "B:3"}
        }
      }
      """;

  private static PlanEdit edit(String text) {
    return new PlanEdit(SourceText.of("front.json", text), PublishedSchema.HARNESS);
  }

  @Test
  void nothingChangedIsTheSameText() {
    assertThat(edit(FILE).text()).isEqualTo(FILE);
    assertThat(edit(FILE).problems()).isEmpty();
  }

  @Test
  void onlyWhatIsChangedChanges() {
    PlanEdit edit = edit(FILE);
    assertThat(edit.set(List.of("wires", "W1", "to"), "B:2")).isTrue();
    edit.set(List.of("wires", "W1", "cutMm"), 1050.0);
    edit.set(List.of("wires", "W3", "via"), List.of("n1", "n2"));
    edit.set(List.of("loom", "revision"), "D");
    edit.remove(List.of("wires", "W1", "areaMm2"));
    assertThat(edit.text())
        .isEqualTo(
            FILE.replace("\"to\": \"B:1\", \"areaMm2\": 0.50", "\"to\": \"B:2\", \"cutMm\": 1050")
                .replace("\"B:3\"}", "\"B:3\", \"via\": [\"n1\", \"n2\"]}")
                .replace("\"C\"", "\"D\""));
    assertThat(edit.problems()).isEmpty();
  }

  @Test
  void newThingStandsInOrderOnOneLine() {
    PlanEdit edit = edit(FILE);
    Map<String, Object> wire = new LinkedHashMap<>();
    wire.put("colour", "RD");
    wire.put("to", "B:2");
    wire.put("from", "A:2");
    edit.set(List.of("wires", "W2"), wire);
    assertThat(edit.text())
        .contains(
            """
            0.50},
                "W2": {"from": "A:2", "to": "B:2", "colour": "RD"},
                "W3"\
            """);
    assertThat(edit.members("wires")).containsExactlyInAnyOrder("W1", "W3");
    assertThat(edit.members("devices")).isEmpty();
  }

  @Test
  void whatTheSchemaForbidsIsSaid() {
    PlanEdit edit = edit(FILE);
    edit.set(List.of("wires", "W1", "areaMm2"), -1);
    assertThat(edit.problems()).hasSize(1);
    assertThat(edit.set(List.of("format", "x"), 1)).isFalse();
  }

  @Test
  void brokenFileIsLeftAlone() {
    PlanEdit edit = edit("{");
    assertThat(edit.set(List.of("format"), 1)).isFalse();
    edit.remove(List.of("format"));
    assertThat(edit.text()).isEqualTo("{");
  }

  @Test
  void recordKeepsToItsOwnSchema() {
    String record =
        "{\"format\": 1, \"record\": {\"plan\": \"c.harness.json\", \"loom\": \"f\", \"revision\":"
            + " \"C\", \"by\": \"b\", \"date\": \"2026-01-01\"}, \"entries\": {\"1\": {\"kind\":"
            + " \"left-out\", \"at\": \"wires/W1\", \"reason\": \"r\"}}}";
    PlanEdit edit = new PlanEdit(SourceText.of("a.record.json", record), PublishedSchema.RECORD);
    edit.remove(List.of("entries", "1"));
    edit.set(List.of("record", "revision"), "D");
    assertThat(edit.text()).contains("\"revision\": \"D\"").endsWith("\"entries\": {}}");
    assertThat(edit.problems()).isEmpty();
  }
}
