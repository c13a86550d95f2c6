package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class FileUnusedTest {
  private static final String ROOT = "{\"format\": 1, \"uses\": [\"a.json\"]}";

  @Test
  void usedFilesRecordsAndChangesAreFine() {
    Judged judged =
        Judged.of(
            new FileUnused(),
            Map.of(
                Judged.ROOT,
                ROOT,
                "a.json",
                "{\"format\": 1, \"uses\": [\"b.json\"]}",
                "b.json",
                "{\"format\": 1}",
                "41.record.json",
                "{}",
                "changes/rain.json",
                "{}"));
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void fileThatNoRootNamesIsReported() {
    Judged judged =
        Judged.of(
            new FileUnused(),
            Map.of(Judged.ROOT, ROOT, "a.json", "{\"format\": 1}", "old/b.json", "{}"));
    assertThat(judged.subjects()).containsExactly("files/old/b.json");
    assertThat(judged.findings()).extracting(Finding::level).containsExactly(Level.WARNING);
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }
}
