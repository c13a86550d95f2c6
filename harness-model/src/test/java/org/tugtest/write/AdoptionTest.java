package org.tugtest.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;
import org.tugtest.write.AdoptionResult.Adopted;
import org.tugtest.write.AdoptionResult.Refused;

class AdoptionTest {
  private static final String ROOT = "car.harness.json";

  @Test
  void leavesAFinishedHarnessAlone() {
    Adopted adopted =
        adopt(
            Map.of(
                ROOT,
                "{\"format\": 1, \"wires\": {\"W1\": {\"from\": \"R1:1\", \"to\": \"R2:1\"}}}"),
            ROOT);

    assertThat(adopted).isEqualTo(new Adopted(Map.of(), List.of(), List.of()));
  }

  @Test
  void refusesWhereAFileThatMaySayMoreCannotBeRead() {
    Map<String, String> files =
        Map.of(
            ROOT,
            "{\"format\": 1, \"sketch\": true, \"uses\": [\"more.json\"], \"wires\": {\"W1\": {\"from\": \"R1:1\", \"to\": \"S\"}}}",
            "more.json",
            "{\"connectors\": {");

    assertThat(adopted(files, ROOT)).isInstanceOf(Refused.class);
  }

  @Test
  void refusesANameGivenTwice() {
    Map<String, String> files =
        Map.of(
            ROOT,
            "{\"format\": 1, \"sketch\": true, \"wires\": {\"W1\": {\"from\": \"R1:1\", \"to\": \"S\"}}, \"wires\": {}}");

    assertThat(adopted(files, ROOT)).isInstanceOf(Refused.class);
  }

  @Test
  void writesOutConnectorsAndSplices() {
    Adopted adopted =
        adopt(
            Map.of(
                ROOT,
                """
                {"format": 1, "sketch": true, "wires": {
                  "W1": {"from": "R1:10", "to": "S1"},
                  "W2": {"from": "R1:2", "to": "S1"},
                  "W3": {"from": "", "to": "ECU.A"},
                  "W4": {"from": "R1", "to": "R1:2"}}}
                """),
            ROOT);

    assertThat(adopted.added())
        .containsExactly("connectors/R1:2", "connectors/R1:10", "splices/S1");
    assertThat(adopted.left()).isEmpty();
    assertThat(adopted.files())
        .containsOnlyKeys(ROOT)
        .containsEntry(
            ROOT,
            """
            {
              "format": 1,
              "sketch": true,
              "connectors": {
                "R1": {
                  "cavities": {
                    "2": {},
                    "10": {}
                  }
                }
              },
              "splices": {
                "S1": {}
              },
              "wires": {
                "W1": {"from": "R1:10", "to": "S1"},
                "W2": {"from": "R1:2", "to": "S1"},
                "W3": {"from": "", "to": "ECU.A"},
                "W4": {"from": "R1", "to": "R1:2"}
              }
            }
            """);
  }

  @Test
  void addsToWhatIsThereOnlyWhereItListsNothing() {
    Map<String, String> files =
        Map.of(
            ROOT,
            """
            {"format": 1, "sketch": true,
             "parts": {"housings": {"h": {"side": "pin", "rows": [["1"]]}},
                       "deviceTypes": {"pump": {"elements": {"m": {"kind": "load", "a": "1", "b": "2", "amps": 8}}}}},
             "devices": {
               "BOX": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "out"}}},
               "LIST": {"pins": {"1": {}}},
               "PUMP": {"type": "pump"},
               "STRAP": {"boltedTo": {"case": "BOX:in"}}},
             "connectors": {"A": {"housing": "h"}, "B": {}, "C": {"cavities": {"1": {"blank": true}}}},
             "wires": {
               "W1": {"from": "BOX:out", "to": "A:2"},
               "W2": {"from": "BOX:spare", "to": "B:1"},
               "W3": {"from": "LIST:2", "to": "C:1"},
               "W4": {"from": "PUMP:3", "to": "C:2"},
               "W5": {"from": "STRAP:case", "to": "A:1"}}}
            """);

    Adopted adopted = adopt(files, ROOT);

    assertThat(adopted.added())
        .containsExactly(
            "connectors/B:1",
            "connectors/C:2",
            "devices/BOX:in",
            "devices/BOX:out",
            "devices/BOX:spare",
            "parts/deviceTypes/pump:1",
            "parts/deviceTypes/pump:2",
            "parts/deviceTypes/pump:3");
    assertThat(adopted.files().get(ROOT)).contains("\"1\": {\"blank\": true}");
  }

  @Test
  void writesIntoTheFileWhoseWiresNameIt() {
    Map<String, String> files =
        Map.of(
            ROOT,
            "{\"format\": 1, \"sketch\": true, \"uses\": [\"a1.json\", \"a2.json\", \"b.json\"]}",
            "a1.json",
            wires("a", "W1", "ONE:1", "LOOM:1"),
            "a2.json",
            wires("a", "W2", "BOTH:1", "LOOM:2"),
            "b.json",
            wires("b", "W3", "BOTH:2", "TWO"));

    Adopted adopted = adopt(files, ROOT);

    assertThat(adopted.files().get("a1.json")).contains("\"ONE\"").contains("\"LOOM\"");
    assertThat(adopted.files()).doesNotContainKey("a2.json");
    assertThat(adopted.files().get("b.json")).contains("\"splices\"");
    assertThat(adopted.files().get(ROOT)).contains("\"BOTH\"").doesNotContain("\"ONE\"");
    assertThat(problemsAfter(files, adopted, ROOT)).isZero();
  }

  @Test
  void takesRootsThatShareFilesTogether() {
    Map<String, String> files =
        Map.of(
            "a.harness.json", "{\"format\": 1, \"sketch\": true, \"uses\": [\"shared.json\"]}",
            "B.harness.json",
                "{\"format\": 1, \"sketch\": true, \"uses\": [\"shared.json\"], \"wires\": {\"W9\": {\"from\": \"R1:9\", \"to\": \"BOX:9\"}}}",
            "shared.json",
                "{\"format\": 1, \"devices\": {\"BOX\": {}}, \"wires\": {\"W1\": {\"from\": \"R1:1\", \"to\": \"BOX:1\"}}}");

    Adopted adopted = adopt(files, "a.harness.json", "B.harness.json");

    assertThat(adopted.files()).containsOnlyKeys("shared.json");
    assertThat(adopted.added())
        .containsExactly("connectors/R1:1", "connectors/R1:9", "devices/BOX:1", "devices/BOX:9");
    assertThat(problemsAfter(files, adopted, "a.harness.json")).isZero();
    assertThat(problemsAfter(files, adopted, "B.harness.json")).isZero();
  }

  @Test
  void doesNotWriteToSharedLibraries() {
    Map<String, String> files =
        Map.of(
            ROOT,
            "{\"format\": 1, \"sketch\": true, \"uses\": [\"../lib/parts.json\"], \"wires\": {\"W1\": {\"from\": \"X:1\", \"to\": \"N:1\"}}}",
            "../lib/parts.json",
            "{\"format\": 1, \"connectors\": {\"X\": {}}}");

    Adopted adopted = adopt(files, ROOT);

    assertThat(adopted.files()).containsOnlyKeys(ROOT);
    assertThat(adopted.left())
        .containsExactly("connectors/X:1 was not written: ../lib/parts.json is a shared library.");
  }

  @Test
  void adoptingTwiceAddsNothing() {
    Map<String, String> files =
        Map.of(
            ROOT,
            "{\"format\": 1, \"sketch\": true, \"devices\": {\"D\": {}}, \"wires\": {\"W1\": {\"from\": \"R1:1\", \"to\": \"D:1\"}, \"W2\": {\"from\": \"S\", \"to\": \"D:2\"}}}");
    Map<String, String> after = new HashMap<>(files);
    after.putAll(adopt(files, ROOT).files());

    assertThat(adopt(after, ROOT)).isEqualTo(new Adopted(Map.of(), List.of(), List.of()));
  }

  private static String wires(String loom, String id, String from, String to) {
    return """
        {"format": 1, "loom": {"id": "%s"}, "wires": {"%s": {"from": "%s", "to": "%s"}}}
        """
        .formatted(loom, id, from, to);
  }

  private static int problemsAfter(Map<String, String> files, Adopted adopted, String root) {
    Map<String, String> after = new HashMap<>(files);
    after.putAll(adopted.files());
    return read(after, root).problems().size();
  }

  private static Adopted adopt(Map<String, String> files, String... roots) {
    AdoptionResult result = adopted(files, roots);
    assertThat(result).isInstanceOf(Adopted.class);
    return (Adopted) result;
  }

  private static AdoptionResult adopted(Map<String, String> files, String... roots) {
    return Adoption.adopt(Arrays.stream(roots).map(root -> read(files, root)).toList());
  }

  private static ReadHarness read(Map<String, String> files, String root) {
    return new HarnessReader(MemoryFiles.of(files), ReadLimits.STANDARD).read(root);
  }
}
