package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.rule.Judged;

class FileUnreadableTest {
  private static final String USES =
      """
      {"format": 1, "sketch": true, "uses": ["rear.json"],
       "wires": {"W1": {"from": "A:1", "to": "B:1"}}}
      """;

  private static Judged judged(String root, String rear) {
    return Judged.of(new FileUnreadable(), Map.of(Judged.ROOT, root, "rear.json", rear));
  }

  @Test
  void filesThatCanBeReadAreFine() {
    Judged judged = judged(USES, "{\"format\": 1}");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void whatIsWrongInsideAFileIsAnotherRulesMatter() {
    assertThat(judged(USES, "{\"format\": 1, \"wirs\": {}}").findings()).isEmpty();
  }

  @Test
  void fileWithASlipIsReportedAtTheSlip() {
    Judged judged = judged(USES, "{\"format\": 1,\n \"wires\": {\"W2\" {}}}");
    assertThat(judged.subjects()).containsExactly("files/rear.json");
    assertThat(judged.findings().get(0).at().get(0).shown()).startsWith("rear.json:2:");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void fileThatIsNotThereIsReportedWhereItIsNamed() {
    Judged judged = Judged.of(new FileUnreadable(), Map.of(Judged.ROOT, USES));
    assertThat(judged.subjects()).containsExactly("files/rear.json");
    assertThat(judged.findings().get(0).at().get(0).file()).isEqualTo(Judged.ROOT);
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void sentencesAreWrittenLikeThoseOfTheOtherRules() {
    Finding finding = judged(USES, "{").findings().get(0);
    assertThat(finding.message()).doesNotEndWith(".");
    assertThat(finding.remedy()).doesNotEndWith(".").matches("^\\P{Lu}.*");
  }
}
