package org.tugtest.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.text.Problem;

class UsesTest {
  private static String root(String... uses) {
    return "{\"format\": 1, \"uses\": [" + quoted(uses) + "]}";
  }

  private static String quoted(String... uses) {
    return String.join(", ", List.of(uses).stream().map(use -> "\"" + use + "\"").toList());
  }

  private static ReadHarness read(String... pathsAndTexts) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (int i = 0; i < pathsAndTexts.length; i += 2) {
      texts.put(pathsAndTexts[i], pathsAndTexts[i + 1]);
    }
    return Said.read(texts);
  }

  @Test
  void followsPathsRelativeToTheFileThatSaysThem() {
    ReadHarness read =
        read(
            "car.harness.json", root("looms/nose.json", "./parts/a.json"),
            "looms/nose.json", root("../parts/b.json", "sub/../tail.json"),
            "looms/tail.json", root("../../shared/c.json"),
            "../shared/c.json", root("d.json"),
            "../shared/d.json", "{\"format\": 1}",
            "parts/a.json", "{\"format\": 1}",
            "parts/b.json", "{\"format\": 1}");
    assertThat(read.problems()).isEmpty();
    assertThat(read.harness().files())
        .containsExactly(
            "car.harness.json",
            "../shared/c.json",
            "../shared/d.json",
            "looms/nose.json",
            "looms/tail.json",
            "parts/a.json",
            "parts/b.json");
  }

  @Test
  void readsEachFileOnceAndIsNotHeldByCycles() {
    ReadHarness read =
        read(
            "car.harness.json", root("a.json", "a.json", "b.json"),
            "a.json", root("b.json", "a.json"),
            "b.json", "{\"format\": 1, \"uses\": [\"a.json\"], \"zones\": {\"z\": {}}}");
    assertThat(read.problems()).isEmpty();
    assertThat(read.harness().files()).containsExactly("car.harness.json", "a.json", "b.json");
    assertThat(read.harness().zones()).containsOnlyKeys("z");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /etc/passwd      | is an absolute path; paths are relative to the file that names them.
          C:/x.json        | is an absolute path; paths are relative to the file that names them.
          c:x.json         | is an absolute path; paths are relative to the file that names them.
          a\\\\b.json      | has a backslash; paths are written with /.
          a//b.json        | has an empty step.
          https://x/y.json | is an address; only files beside this one can be used.
          """)
  void refusesPathsThatAreNone(String use, String fault) {
    assertThat(Said.problems(read("car.harness.json", root(use))))
        .containsExactly(
            "1:24 \""
                + use.replace("\\\\", "\\")
                + "\" under uses "
                + fault
                + " Write it as looms/front.json.");
  }

  @Test
  void saysWhatIsNotThereAndWhatIsNear() {
    assertThat(
            Said.problems(
                read(
                    "car.harness.json", root("looms/nose.json"),
                    "looms/nose.json", root("../parts/bodi.json", "../bits/body.json"),
                    "parts/body.json", "{\"format\": 1}")))
        .containsExactly(
            "1:24 parts/bodi.json is not there. Did you mean \"../parts/body.json\"?",
            "1:46 bits/body.json is not there. Did you mean \"../parts/body.json\"?");
    assertThat(Said.problems(read("car.harness.json", root("../../../x.json"))))
        .containsExactly("1:24 ../../../x.json is not there. Correct the path, or add the file.");
  }

  @Test
  void letsNoFileUseARoot() {
    assertThat(
            Said.problems(
                read(
                    "car.harness.json",
                    root("truck.harness.json"),
                    "truck.harness.json",
                    "{\"format\": 1, \"zones\": {\"z\": {}}}")))
        .containsExactly(
            "1:24 \"truck.harness.json\" is a root; a root is used by no other file. Move what both"
                + " share into a file whose name does not end in .harness.json.");
  }

  @Test
  void keepsTheRestWhenAPartIsBroken() {
    ReadHarness read =
        read(
            "car.harness.json", root("a.json", "b.json"),
            "a.json", "{\"format\": 1, \"zones\": {\"z\": {}",
            "b.json", "{\"format\": 1, \"zones\": {\"y\": {}}}");
    assertThat(read.unread()).containsExactly("a.json");
    assertThat(read.harness().zones()).containsOnlyKeys("y");
    assertThat(read.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.subject()).isEqualTo("files/a.json");
              assertThat(problem.at().get(0).file()).isEqualTo("a.json");
            });
  }

  @Test
  void keepsRootFieldsToTheRoot() {
    ReadHarness read =
        read(
            "car.harness.json",
            root("a.json"),
            "a.json",
            "{\"format\": 1, \"title\": \"x\", \"revision\": \"A\", \"sketch\": true, \"defaults\":"
                + " {}, \"description\": \"ok\"}");
    assertThat(read.problems())
        .extracting(Problem::message)
        .containsExactly(
            "\"title\" stands in a file that is no root.",
            "\"revision\" stands in a file that is no root.",
            "\"sketch\" stands in a file that is no root.",
            "\"defaults\" stands in a file that is no root.");
    assertThat(read.harness().title()).isNull();
    assertThat(read.harness().sketch()).isFalse();
  }

  @Test
  void stopsAtTheGreatestNumberOfFiles() {
    Map<String, String> texts = new HashMap<>();
    texts.put("car.harness.json", root("p1.json"));
    for (int i = 1; i < 50; i++) {
      texts.put("p" + i + ".json", root("p" + (i + 1) + ".json"));
    }
    texts.put("p50.json", "{\"format\": 1}");
    ReadLimits ten = new ReadLimits(1 << 20, 32, 4000, 10);
    ReadHarness read = new HarnessReader(MemoryFiles.of(texts), ten).read("car.harness.json");
    assertThat(read.harness().files()).hasSize(10);
    assertThat(read.problems())
        .extracting(Problem::message)
        .containsExactly("car.harness.json uses more than 10 files; the others are not read.");
    ReadLimits all = new ReadLimits(1 << 20, 32, 4000, 51);
    assertThat(new HarnessReader(MemoryFiles.of(texts), all).read("car.harness.json").problems())
        .isEmpty();
  }

  @Test
  void reportsTheRootThatIsNotThere() {
    ReadHarness read =
        new HarnessReader(MemoryFiles.of(Map.of()), ReadLimits.STANDARD).read("x.harness.json");
    assertThat(read.unread()).containsExactly("x.harness.json");
    assertThat(Said.problems(read))
        .containsExactly("1:1 x.harness.json is not there. Correct the path, or add the file.");
  }

  @Test
  void sharesWhatSeveralRootsUse() {
    Map<String, Integer> opened = new HashMap<>();
    MemoryFiles files =
        MemoryFiles.of(
            Map.of(
                "a.harness.json", root("parts.json"),
                "b.harness.json", root("parts.json"),
                "parts.json", "{\"format\": 1, \"zones\": {\"z\": {}}}"));
    SourceFiles counting =
        new SourceFiles() {
          @Override
          public List<String> paths() {
            return files.paths();
          }

          @Override
          public Content open(String path) {
            opened.merge(path, 1, Integer::sum);
            return files.open(path);
          }
        };
    HarnessReader reader = new HarnessReader(counting, ReadLimits.STANDARD);
    assertThat(reader.roots()).containsExactly("a.harness.json", "b.harness.json");
    for (String root : reader.roots()) {
      assertThat(reader.read(root).harness().zones()).containsOnlyKeys("z");
      assertThat(reader.read(root).harness().root()).isEqualTo(root);
    }
    assertThat(opened).containsEntry("parts.json", 1).containsEntry("a.harness.json", 1);
  }
}
