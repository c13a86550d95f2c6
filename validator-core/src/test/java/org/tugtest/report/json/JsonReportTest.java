package org.tugtest.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.report.Golden;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Reports;
import org.tugtest.report.Sample;
import org.tugtest.report.Schemas;
import org.tugtest.report.Written;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

class JsonReportTest {
  private static final String SCHEMA = "/org/tugtest/schema/report-1.schema.json";

  @Test
  void theSample() {
    Golden.holds("sample.report.json", written(Sample.report()));
  }

  @Test
  void reportsFitThePublishedSchema() {
    for (Report report : List.of(Sample.report(), Sample.broken(), Reports.of(), full())) {
      assertThat(errors(written(report))).isEmpty();
    }
  }

  @Test
  void theSchemaRefusesWhatItDoesNotKnowAndMissesWhatItNeeds() {
    JsonNode tree = Schemas.tree(written(Sample.report()));
    ObjectNode harness = (ObjectNode) tree.get("harnesses").get(0);
    harness.remove("coverage");
    harness.put("extra", 1);
    ((ObjectNode) harness.get("findings").get(0)).put("level", "fatal");
    assertThat(errors(tree.toString()))
        .hasSize(3)
        .anySatisfy(error -> assertThat(error).contains("coverage"))
        .anySatisfy(error -> assertThat(error).contains("extra"))
        .anySatisfy(error -> assertThat(error).contains("/level"));
  }

  @Test
  void everyPropertyIsDescribed() {
    List<String> bare = new ArrayList<>();
    undescribed("", Schemas.tree(Schemas.resource(SCHEMA)), bare);
    assertThat(bare).isEmpty();
  }

  @Test
  void statesWiresAndSegmentsAreListedThoughNothingIsComputed() {
    JsonNode harness = Schemas.tree(written(full())).get("harnesses").get(0);
    assertThat(harness.get("states").get("night run").get("wires").size()).isZero();
    assertThat(harness.get("segments").get("s1").get("fill").isNull()).isTrue();
    assertThat(harness.get("wires").get("W1").get("cutMm").intValue()).isEqualTo(250);
    assertThat(harness.get("wires").get("W1").get("unbounded").isNull()).isTrue();
    assertThat(harness.get("verdict").stringValue()).isEqualTo("pass");
  }

  private static Report full() {
    HarnessReport root = Reports.root("car.harness.json");
    return Reports.of(
        new HarnessReport(
            Reports.facts(
                "car.harness.json",
                """
                {"format": 1, "title": "Car", "revision": "C", "sketch": true,
                 "wires": {"W1": {"from": "A:1", "to": "B:1", "cutMm": 250}},
                 "layout": {"nodes": {"a": {}, "b": {}},
                            "segments": {"s1": {"from": "a", "to": "b", "lengthMm": 100}}},
                 "states": {"night run": {}}}
                """),
            root.result()));
  }

  static void undescribed(String path, JsonNode node, List<String> bare) {
    node.properties()
        .forEach(
            property -> {
              String here = path + "/" + property.getKey();
              JsonNode value = property.getValue();
              if (property.getKey().equals("properties")) {
                value
                    .properties()
                    .forEach(
                        one -> {
                          if (!one.getValue().has("description")) {
                            bare.add(here + "/" + one.getKey());
                          }
                        });
              }
              undescribed(here, value, bare);
            });
  }

  private static List<String> errors(String json) {
    return Schemas.errors(SpecificationVersion.DRAFT_2020_12, SCHEMA, json);
  }

  private static String written(Report report) {
    return Written.by(new JsonReport(), report);
  }
}
