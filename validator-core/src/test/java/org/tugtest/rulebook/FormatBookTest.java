package org.tugtest.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.text.Nearest;

class FormatBookTest {
  private final FormatBook book = FormatBook.published();

  @Test
  void aFigure() {
    assertThat(book.explain("wires.cutMm"))
        .contains(
            """
            wires.cutMm
              Planned length, mm; with it no layout is needed.
              Value: a number from 0 to 100000; a length in millimetres.
              May be left out.

            Stands in wires: The wires.
            """);
  }

  @Test
  void whatIsNotThereHasNoPageAndTheNearestIsFound() {
    assertThat(book.explain("wires.cutmm")).isEmpty();
    assertThat(book.explain("")).isEmpty();
    assertThat(Nearest.to("wires.cutmm", book.paths())).first().isEqualTo("wires.cutMm");
  }

  @Test
  void aSectionListsItsProperties() {
    assertThat(book.explain("waivers").orElseThrow())
        .startsWith("waivers\n")
        .contains("\nProperties of an entry\n  rule    The rule whose finding is accepted.\n");
  }

  @Test
  void aPropertyOfOneKindSaysWhere() {
    assertThat(book.explain("devices.elements.watts").orElseThrow())
        .contains("\n  where kind is load\n    Constant power, watts;")
        .contains("\nStands in devices.elements: What is inside between its pins.\n");
    assertThat(book.explain("devices.elements.a").orElseThrow())
        .contains("  where kind is load, kind is fuse, kind is contact");
    assertThat(book.explain("expectations.minV").orElseThrow())
        .contains("  where that is fed or dead\n");
  }

  @Test
  void everyPropertyAtAnyDepthOfEverySchemaIsExplained() {
    assertThat(book.paths())
        .contains(
            "format",
            "parts.wires.areaMm2",
            "parts.deviceTypes.elements.kind",
            "layout.segments.clearanceMm.hot",
            "limits.places.level",
            "states.on",
            "record.plan",
            "entries.planned",
            "changes.nets");
    assertThat(book.paths())
        .allSatisfy(
            path ->
                assertThat(book.explain(path).orElseThrow())
                    .as(path)
                    .doesNotContain("as described")
                    .doesNotContainPattern("\n +\n"));
  }

  @Test
  void aSchemaOfOnesOwn() {
    Map<String, List<FieldMeaning>> fields =
        new SchemaWalk(
                """
                {"properties": {"a": {"description": "An a.", "$ref": "#/$defs/n"},
                                "l": {"description": "Many.", "type": "array",
                                      "items": {"$ref": "#/$defs/n"}},
                                "m": {"description": "By id.", "type": "object",
                                      "additionalProperties": {"description": "One.",
                                         "properties": {"b": {"description": "B.", "const": 1}}}}},
                 "required": ["a"],
                 "$defs": {"n": {"description": "A count.", "type": "integer",
                                 "exclusiveMinimum": 0, "maximum": 9}}}
                """)
            .fields();
    assertThat(fields.keySet()).containsExactly("a", "l", "m", "m.b");
    assertThat(fields.get("a"))
        .containsExactly(
            new FieldMeaning(List.of(), "An a.", "a whole number over 0 to 9; a count", true));
    assertThat(fields.get("l").get(0).value())
        .isEqualTo("a list; each entry: a whole number over 0 to 9");
    assertThat(fields.get("m").get(0).value()).isEqualTo("a map by id; each entry: one");
    assertThat(fields.get("m.b").get(0).value()).isEqualTo("1");
  }
}
