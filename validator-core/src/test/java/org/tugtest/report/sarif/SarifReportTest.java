package org.tugtest.report.sarif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.report.Reports.finding;
import static org.tugtest.report.Reports.root;
import static org.tugtest.report.Reports.standing;

import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Level;
import org.tugtest.report.Golden;
import org.tugtest.report.Report;
import org.tugtest.report.Reports;
import org.tugtest.report.Sample;
import org.tugtest.report.Schemas;
import org.tugtest.report.Written;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

class SarifReportTest {
  private static final String SCHEMA = "/formats/sarif-schema-2.1.0.json";

  @Test
  void theSample() {
    Golden.holds("sample.report.sarif", written(Sample.report()));
  }

  @Test
  void logsFitTheSchemaOfTheStandard() {
    for (Report report : List.of(Sample.report(), Sample.broken(), Reports.of())) {
      assertThat(errors(written(report))).isEmpty();
    }
  }

  @Test
  void theSchemaIsTheUnchangedCopyAndRefusesWhatIsWrong() throws Exception {
    byte[] schema = Schemas.resource(SCHEMA).getBytes(StandardCharsets.UTF_8);
    assertThat(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(schema)))
        .isEqualTo("c3b4bb2d6093897483348925aaa73af03b3e3f4bd4ca38cef26dcb4212a2682e");
    JsonNode log = Schemas.tree(written(Sample.report()));
    ObjectNode result = (ObjectNode) log.get("runs").get(0).get("results").get(0);
    result.put("level", "fatal");
    result.remove("message");
    assertThat(errors(log.toString())).hasSize(2);
  }

  @Test
  void pathsAreRelativeAndEncodedByteByByte() {
    assertThat(SarifText.uri("looms/nose loom #1 100%-ü.json"))
        .isEqualTo("looms/nose%20loom%20%231%20100%25-%C3%BC.json");
    assertThat(SarifText.uri("../a:b\\c?d&e+f~._-Z9/🔋"))
        .isEqualTo("../a%3Ab%5Cc%3Fd%26e%2Bf~._-Z9/%F0%9F%94%8B");
    assertThat(SarifText.uri("half\ud83d")).isEqualTo("half%EF%BF%BD");
  }

  @Test
  void bracesAndLinksInMessagesAreEscapedAsTheStandardHasIt() {
    assertThat(SarifText.message("give it {\"a\": 1}")).isEqualTo("give it {{\"a\": 1}}");
    assertThat(SarifText.message("see [1](2)")).isEqualTo("see \\[1\\](2)");
    assertThat(SarifText.message("[as it is]\n")).isEqualTo("[as it is]\\u000a");
  }

  @Test
  void fingerprintsDoNotMoveWithLinesOrLevelsAndTellRepeatsApart() {
    JsonNode before =
        results(
            standing(finding(Level.ERROR, "W1", 1, null)),
            standing(finding(Level.ERROR, "W2", 2, null)));
    JsonNode after =
        results(
            standing(finding(Level.NOTE, "W1", 31, null, "another sentence")),
            standing(finding(Level.ERROR, "W1", 32, null)),
            standing(finding(Level.ERROR, "W2", 33, null)));
    assertThat(print(after, 0)).isEqualTo(print(before, 0)).matches("[0-9a-f]{16}:1");
    assertThat(print(after, 1)).isEqualTo(print(before, 0).replace(":1", ":2"));
    assertThat(print(after, 2)).isEqualTo(print(before, 1)).isNotEqualTo(print(before, 0));
  }

  @Test
  void aWaivedResultCarriesTheReasonAndOthersSayThatThereIsNone() {
    JsonNode results = Schemas.tree(written(Sample.report())).get("runs").get(0).get("results");
    List<JsonNode> suppressed =
        results.valueStream().filter(result -> result.get("suppressions").size() > 0).toList();
    assertThat(suppressed).hasSize(1);
    JsonNode waiver = suppressed.get(0).get("suppressions").get(0);
    assertThat(waiver.get("justification").stringValue())
        .isEqualTo("The tail waits for the night lamp.");
    assertThat(waiver.get("properties").get("until").stringValue()).isEqualTo("2027-03-31");
  }

  @Test
  void aRuleThatBrokeIsAFailedRun() {
    JsonNode invocation =
        Schemas.tree(written(Sample.broken())).get("runs").get(0).get("invocations").get(0);
    assertThat(invocation.get("executionSuccessful").booleanValue()).isFalse();
    JsonNode notification = invocation.get("toolExecutionNotifications").get(0);
    assertThat(notification.get("message").get("text").stringValue())
        .isEqualTo(
            "rule sample-broken broke: IllegalStateException: lost <its> way\\u000ain"
                + " car.harness.json");
    assertThat(notification.get("associatedRule").get("index").intValue()).isEqualTo(1);
  }

  @Test
  void theGraverFindingsStayWhenThereAreMoreThanCodeHostsTake() {
    CheckedFinding[] many =
        Stream.concat(
                IntStream.rangeClosed(1, 25_000)
                    .mapToObj(i -> standing(finding(Level.NOTE, "N" + i, i, null))),
                Stream.of(standing(finding(Level.ERROR, "E1", 25_001, null))))
            .toArray(CheckedFinding[]::new);
    JsonNode run =
        Schemas.tree(written(Reports.of(root("car.harness.json", many)))).get("runs").get(0);
    assertThat(run.get("results").size()).isEqualTo(25_000);
    assertThat(run.get("results").get(24_999).get("level").stringValue()).isEqualTo("error");
    assertThat(run.get("results").get(24_998).get("message").get("text").stringValue())
        .startsWith("wire N24999 is bad");
    assertThat(run.at("/invocations/0/toolExecutionNotifications/0/message/text").stringValue())
        .isEqualTo("1 more findings do not fit here; report.json has them all");
  }

  private static JsonNode results(CheckedFinding... findings) {
    return Schemas.tree(written(Reports.of(root("car.harness.json", findings))))
        .get("runs")
        .get(0)
        .get("results");
  }

  private static String print(JsonNode results, int index) {
    JsonNode prints = results.get(index).get("partialFingerprints");
    assertThat(prints.get("tugtestFinding/v1")).isEqualTo(prints.get("primaryLocationLineHash"));
    return prints.get("tugtestFinding/v1").stringValue();
  }

  private static List<String> errors(String json) {
    return Schemas.errors(SpecificationVersion.DRAFT_4, SCHEMA, json);
  }

  private static String written(Report report) {
    return Written.by(new SarifReport(), report);
  }
}
