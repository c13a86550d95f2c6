package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Finding;
import org.tugtest.report.html.SampleCar;

/** The patch beside the sample: one needless plug, one detour, one covering that is too small. */
class SampleRevisionTest {
  private static final Path SAMPLE =
      Path.of(System.getProperty("basedir", "."), "../sample-project");
  private static final String FOLDER = "sample-project/src/main/harness/";

  /** The sample with the patch applied; every hunk has to fit exactly once. */
  private static Map<String, String> patched() throws IOException {
    Map<String, String> files = SampleCar.files();
    String file = "";
    StringBuilder before = new StringBuilder();
    StringBuilder after = new StringBuilder();
    List<String> lines = new ArrayList<>(Files.readAllLines(SAMPLE.resolve("revision-b.patch")));
    lines.add("@@ end");
    for (String line : lines) {
      if (line.startsWith("diff ") || line.startsWith("@@")) {
        replace(files, file, before.toString(), after.toString());
        before.setLength(0);
        after.setLength(0);
      } else if (line.startsWith("+++ b/")) {
        file = line.substring("+++ b/".length()).replace(FOLDER, "");
      } else if (!line.startsWith("--- ") && !line.startsWith("index ")) {
        String text = line.substring(Math.min(1, line.length())) + "\n";
        before.append(line.startsWith("+") ? "" : text);
        after.append(line.startsWith("-") ? "" : text);
      }
    }
    return files;
  }

  private static void replace(Map<String, String> files, String file, String before, String after) {
    if (!before.isEmpty()) {
      String text = files.getOrDefault(file, "");
      assertThat(text.split(Pattern.quote(before), -1)).as("a hunk of %s", file).hasSize(2);
      files.put(file, text.replace(before, after));
    }
  }

  private static List<Finding> standing(Map<String, String> files) {
    return SampleCar.checked(files, SampleCar.ROOT).harnesses().get(0).result().findings().stream()
        .filter(checked -> checked.waiver() == null)
        .map(CheckedFinding::finding)
        .toList();
  }

  @Test
  void theRevisionIsFoundOutAndTheReadmeSaysHow() throws IOException {
    List<Finding> found = standing(patched());
    assertThat(found)
        .extracting(Finding::rule)
        .containsExactlyInAnyOrder(
            "covering-overfilled",
            "circuit-doubles-back",
            "circuit-doubles-back",
            "expectation-unmet");
    String readme = Files.readString(SAMPLE.resolve("README.md"));
    for (Finding finding : found) {
      assertThat(readme)
          .contains(
              "%s:%d:%d: %s %s %s%n    %s"
                  .formatted(
                      finding.at().get(0).file(),
                      finding.at().get(0).line(),
                      finding.at().get(0).column(),
                      finding.level().word(),
                      finding.rule(),
                      finding.message(),
                      finding.remedy())
                  .replace(System.lineSeparator(), "\n"));
    }
  }
}
