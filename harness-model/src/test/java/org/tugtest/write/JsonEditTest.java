package org.tugtest.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.tugtest.text.SourceText;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class JsonEditTest {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private static final String FILE =
      """
      {
        "format": 1,
        "wires": {
          "W1": {"from": "A:1",  "to": "B:1", "areaMm2": 2.50 },
          "W3": {"to": "B:3", "from": "A:3"}
        }
      }
      """;

  @Test
  void changesOneTokenAndNothingElse() {
    JsonEdit edit = edit(FILE);
    edit.set(List.of("wires", "W1", "areaMm2"), "4");

    assertThat(edit.text()).isEqualTo(FILE.replace("2.50", "4"));
  }

  @Test
  void changesNothingWithoutAChange() {
    JsonEdit edit = edit(FILE);

    assertThat(edit.isEmpty()).isTrue();
    assertThat(edit.text()).isEqualTo(FILE);
  }

  @Test
  void putsAPropertyWhereTheFormatHasIt() {
    JsonEdit edit = edit(FILE);
    edit.set(List.of("wires", "W1", "colour"), "\"RD\"");
    edit.set(List.of("wires", "W1", "part"), "\"w1.0\"");
    edit.set(List.of("wires", "W3", "note"), "\"x\"");

    assertThat(edit.text())
        .isEqualTo(
            """
            {
              "format": 1,
              "wires": {
                "W1": {"from": "A:1",  "to": "B:1",  "part": "w1.0", "areaMm2": 2.50,  "colour": "RD" },
                "W3": {"to": "B:3", "from": "A:3", "note": "x"}
              }
            }
            """);
  }

  @Test
  void putsAnEntryInNaturalOrderOnItsOwnLine() {
    JsonEdit edit = edit(FILE);
    edit.set(List.of("wires", "W2", "to"), "\"B:2\"");
    edit.set(List.of("wires", "W2", "from"), "\"A:2\"");
    edit.set(List.of("wires", "W10"), "{}");

    assertThat(edit.text())
        .isEqualTo(
            """
            {
              "format": 1,
              "wires": {
                "W1": {"from": "A:1",  "to": "B:1", "areaMm2": 2.50 },
                "W2": {"from": "A:2", "to": "B:2"},
                "W3": {"to": "B:3", "from": "A:3"},
                "W10": {}
              }
            }
            """);
  }

  @Test
  void writesAMissingSectionInTidyForm() {
    JsonEdit edit = edit(FILE);
    edit.set(List.of("connectors", "R1", "cavities", "3"), "{}");
    edit.set(List.of("splices", "S1"), "{}");

    assertThat(edit.text())
        .isEqualTo(
            """
            {
              "format": 1,
              "connectors": {
                "R1": {
                  "cavities": {
                    "3": {}
                  }
                }
              },
              "splices": {
                "S1": {}
              },
              "wires": {
                "W1": {"from": "A:1",  "to": "B:1", "areaMm2": 2.50 },
                "W3": {"to": "B:3", "from": "A:3"}
              }
            }
            """);
  }

  @Test
  void keepsTheLineEndsOfTheFile() {
    JsonEdit edit = edit(FILE.replace("\n", "\r\n"));
    edit.set(List.of("splices", "S1"), "{}");

    assertThat(edit.text()).doesNotContainPattern("[^\r]\n").contains("\"S1\": {}\r\n  },\r\n");
  }

  @Test
  void keepsACompactFileOnItsLine() {
    JsonEdit edit = edit("{\"format\": 1}");
    edit.set(List.of("connectors", "R1", "cavities", "3"), "{}");

    assertThat(edit.text())
        .isEqualTo("{\"format\": 1, \"connectors\": {\"R1\": {\"cavities\": {\"3\": {}}}}}");
  }

  @Test
  void takesMembersOutWithTheirCommas() {
    JsonEdit first = edit(FILE);
    first.remove(List.of("wires", "W1"));
    JsonEdit last = edit(FILE);
    last.remove(List.of("wires", "W3"));
    JsonEdit both = edit(FILE);
    both.remove(List.of("wires", "W1"));
    both.remove(List.of("wires", "W3"));
    both.remove(List.of("wires", "W99"));

    assertThat(first.text()).isEqualTo(FILE.replaceAll("(?m)^ +\"W1\".*\n", ""));
    assertThat(last.text()).isEqualTo(FILE.replaceAll("(?m),\n +\"W3\".*$", ""));
    assertThat(both.text()).isEqualTo("{\n  \"format\": 1,\n  \"wires\": {}\n}\n");
  }

  @Property(tries = 1_000, seed = "7")
  void agreesWithTheSameChangesMadeToTheTree(@ForAll long seed) {
    Random random = new Random(seed);
    String text = TidyWriter.withoutMark(new RandomHarnessText(seed).next());
    ObjectNode expected = (ObjectNode) MAPPER.readTree(text);
    JsonEdit edit = edit(text);
    for (List<String> names : somePaths(expected, random)) {
      String last = names.get(names.size() - 1);
      ObjectNode parent = parent(expected, names);
      if (random.nextBoolean()) {
        parent.put(last, 77);
        edit.set(names, "77");
      } else {
        parent.remove(last);
        edit.remove(names);
      }
    }

    assertThat(MAPPER.readTree(edit.text())).isEqualTo(expected);
  }

  @Property(tries = 1_000, seed = "8")
  void whatIsAddedAndTakenAwayAgainLeavesNoTrace(@ForAll long seed) {
    Random random = new Random(seed);
    String text = TidyWriter.withoutMark(new RandomHarnessText(seed).next());
    ObjectNode tree = (ObjectNode) MAPPER.readTree(text);
    List<List<String>> added = new ArrayList<>();
    JsonEdit adding = edit(text);
    for (List<String> names : somePaths(tree, random)) {
      List<String> sibling = new ArrayList<>(names.subList(0, names.size() - 1));
      sibling.add("new" + random.nextInt(1_000));
      if (!parent(tree, sibling).isEmpty()) {
        added.add(sibling);
        adding.set(sibling, "\"here\"");
      }
    }
    JsonEdit removing = edit(adding.text());
    added.forEach(removing::remove);

    assertThat(removing.text()).isEqualTo(text);
  }

  /** A few paths to members, none inside another. */
  private static List<List<String>> somePaths(ObjectNode tree, Random random) {
    List<List<String>> all = new ArrayList<>();
    tree.propertyNames()
        .forEach(
            section -> {
              List<String> one = List.of(section);
              if (tree.get(section) instanceof ObjectNode entries && random.nextInt(4) > 0) {
                entries.propertyNames().forEach(id -> all.add(List.of(section, id)));
              } else {
                all.add(one);
              }
            });
    return all.stream().filter(names -> random.nextInt(3) == 0).toList();
  }

  private static ObjectNode parent(ObjectNode tree, List<String> names) {
    ObjectNode parent = tree;
    for (String name : names.subList(0, names.size() - 1)) {
      parent = (ObjectNode) parent.get(name);
    }
    return parent;
  }

  private static JsonEdit edit(String text) {
    return new JsonEdit(
        Objects.requireNonNull(JsonText.parse(SourceText.of("a.json", text)).text()));
  }
}
