package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tugtest.report.github.WorkflowCommands;
import org.tugtest.report.gitlab.GitlabReport;
import org.tugtest.report.html.SampleCar;
import org.tugtest.report.junit.JunitReport;
import org.tugtest.report.markdown.MarkdownReport;
import org.tugtest.report.sarif.SarifReport;
import org.xml.sax.SAXException;
import tools.jackson.databind.JsonNode;

/** Failing harnesses of odd content through the formats that machines read. */
class OddHarnessReportsTest {
  /** What a code host shows of a comment; see the Markdown report. */
  private static final int MOST_MARKDOWN = 60_000;

  static List<Map<String, String>> harnesses() {
    String hostile =
        "<b>&amp;%0A::error::x]]>,\\u202e\\u0000\\n\\ud83d \ud83d\ude00 @all #1 `|` {0} [a](1)";
    String long0 = "x".repeat(3_900);
    String doubled =
        IntStream.range(0, 400)
            .mapToObj(
                i ->
                    "\"W%d\": {\"from\": \"A:1\", \"to\": \"B:%d\", \"areaMm2\": 1, \"colour\": \"RD\"}"
                        .formatted(i, i))
            .collect(Collectors.joining(","));
    String open =
        IntStream.range(0, 400)
            .mapToObj(i -> "\"W%d\": {\"from\": \"A:%d\"}".formatted(i, i))
            .collect(Collectors.joining(","));
    return List.of(
        Map.of("a.harness.json", ""),
        Map.of("a.harness.json", "{\"format\": 1}"),
        Map.of("\u202e a%0A#1 \ud83d\ude00 <x>&'\".harness.json", "{\"format\": 1,"),
        Map.of(
            "a.harness.json",
            "{\"format\": 1, \"uses\": [\""
                + hostile
                + "\"], \"wires\": {\""
                + hostile
                + "\": {\"from\": \""
                + hostile
                + "\"}}}"),
        Map.of(
            "a.harness.json",
            "{\"format\": 1, \"title\": \"" + long0 + "\", \"wires\": {\"" + long0 + "\": {}}}"),
        Map.of(
            "a.harness.json",
            "{\"format\": 1, \"sketch\": true, \"wires\": {\"W1\": {\"from\": \"A:1\", \"to\":"
                + " \"B:1\", \"label\": \""
                + hostile
                + "\", \"circuit\": \""
                + hostile
                + "\"}}}"),
        Map.of("a.harness.json", "{\"format\": 1, \"sketch\": true, \"wires\": {" + doubled + "}}"),
        Map.of("a.harness.json", "{\"format\": 1, \"sketch\": true, \"wires\": {" + open + "}}"));
  }

  private static Report report(Map<String, String> files) {
    return SampleCar.checked(files, new TreeMap<>(files).firstKey());
  }

  @ParameterizedTest
  @MethodSource("harnesses")
  void logsFitTheSchemaOfSarif(Map<String, String> files) {
    assertThat(
            Schemas.errors(
                SpecificationVersion.DRAFT_4,
                "/formats/sarif-schema-2.1.0.json",
                Written.by(new SarifReport(), report(files))))
        .isEmpty();
  }

  @Test
  void reportsFitTheSchemaOfSurefire() throws SAXException, IOException {
    Schema schema =
        SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
            .newSchema(
                new StreamSource(
                    new StringReader(
                        Schemas.resource("/formats/junit-surefire-test-report-3.0.2.xsd"))));
    for (Map<String, String> files : harnesses()) {
      String xml = Written.by(new JunitReport(), report(files));
      schema.newValidator().validate(new StreamSource(new StringReader(xml)));
    }
  }

  @ParameterizedTest
  @MethodSource("harnesses")
  void codeQualityEntriesAreWholeAndNotTooLong(Map<String, String> files) {
    for (JsonNode entry : Schemas.tree(Written.by(new GitlabReport(), report(files)))) {
      assertThat(entry.get("description").stringValue())
          .isNotBlank()
          .hasSizeLessThan(6_000)
          .doesNotContainPattern("\\p{Cc}");
      assertThat(entry.get("fingerprint").stringValue()).isNotBlank();
      assertThat(entry.get("severity").stringValue()).isIn("critical", "major", "info");
      assertThat(entry.get("location").get("lines").get("begin").intValue()).isPositive();
    }
  }

  @ParameterizedTest
  @MethodSource("harnesses")
  void aCommandIsOneLineAndThereAreAtMostTenOfALevel(Map<String, String> files) {
    List<String> lines = WorkflowCommands.lines(report(files));
    assertThat(lines)
        .hasSizeLessThanOrEqualTo(30)
        .allSatisfy(
            line ->
                assertThat(line)
                    .matches("::(error|warning|notice)( [a-zA-Z]+=[^,:]*(,[a-zA-Z]+=[^,:]*)*)?::.*")
                    .doesNotContainPattern("\\p{Cc}"));
  }

  @ParameterizedTest
  @MethodSource("harnesses")
  void markdownFitsIntoACommentAndCallsNobody(Map<String, String> files) {
    assertThat(Written.by(new MarkdownReport(), report(files)))
        .hasSizeLessThan(MOST_MARKDOWN)
        .doesNotContain("<b>")
        .doesNotContain("@all")
        .doesNotContainPattern("[^\\\\]\\]\\(1\\)");
  }

  @ParameterizedTest
  @MethodSource("harnesses")
  void whatFailsIsInEveryFormat(Map<String, String> files) {
    Report report = report(files);
    boolean errors = !FindingGroup.standing(report).isEmpty();
    assertThat(Schemas.tree(Written.by(new GitlabReport(), report)).isEmpty()).isEqualTo(!errors);
    assertThat(
            Schemas.tree(Written.by(new SarifReport(), report))
                .get("runs")
                .get(0)
                .get("results")
                .isEmpty())
        .isEqualTo(!errors);
    assertThat(WorkflowCommands.lines(report).isEmpty()).isEqualTo(!errors);
  }
}
