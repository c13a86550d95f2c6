package org.tugtest.report.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
    JsonNode wire = harness.get("states").get("night run").get("wires").get("W1");
    assertThat(wire.get("amps").doubleValue()).isZero();
    assertThat(wire.get("milliohm").isNull()).isTrue();
    assertThat(harness.get("states").get("night run").get("nodes").get("A:1").isNull()).isTrue();
    assertThat(harness.get("segments").get("s1").get("fill").isNull()).isTrue();
    assertThat(harness.get("wires").get("W1").get("cutMm").intValue()).isEqualTo(250);
    assertThat(harness.get("wires").get("W1").get("laidInPlace").booleanValue()).isFalse();
    assertThat(harness.get("wires").get("W1").get("unbounded").isNull()).isTrue();
    assertThat(harness.get("verdict").stringValue()).isEqualTo("pass");
  }

  @Test
  void whatFlowsAndWhatIsLiveInEachState() {
    HarnessReport root = Reports.root("car.harness.json");
    Report report =
        Reports.of(
            new HarnessReport(
                Reports.facts(
                    "car.harness.json",
                    """
                    {"format": 1, "defaults": {"crimpMilliohm": 0},
                     "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 125, "milliohmPerM": 20}}},
                     "devices": {
                       "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12, "ohms": 0.01}}},
                       "K": {"elements": {"coil": {"kind": "coil", "a": "+", "b": "-", "ohms": 100},
                                          "make": {"kind": "contact", "a": "+", "b": "87", "coil": "coil"},
                                          "bulb": {"kind": "load", "a": "87", "b": "-", "ohms": 6}}}},
                     "wires": {"W1": {"from": "K:+", "to": "BAT:+", "part": "w", "cutMm": 1000},
                               "W2": {"from": "K:-", "to": "BAT:-", "part": "w", "cutMm": 1000}}}
                    """),
                root.result()));
    assertThat(errors(written(report))).isEmpty();
    JsonNode state =
        Schemas.tree(written(report)).get("harnesses").get(0).get("states").get("as drawn");
    double celsius = state.get("wires").get("W1").get("celsius").doubleValue();
    double milliohm = 20 * (1 + 0.00393 * (celsius - 20));
    double load = 1 / (1 / 6.0 + 1 / 100.0);
    double amps = 12 / (0.01 + 2 * milliohm / 1000 + load);
    assertThat(state.get("wires").get("W1").get("amps").doubleValue())
        .isCloseTo(-amps, within(1e-8));
    assertThat(celsius).isBetween(40.5, 50.0);
    assertThat(state.get("wires").get("W1").get("hottestCelsius").doubleValue())
        .isCloseTo(celsius, within(0.1));
    assertThat(state.get("wires").get("W1").get("milliohm").doubleValue())
        .isCloseTo(milliohm, within(1e-8));
    assertThat(state.get("loads").get("K.bulb").doubleValue()).isCloseTo(amps * load, within(1e-8));
    assertThat(state.get("nodes").get("K:-").doubleValue())
        .isCloseTo(amps * milliohm / 1000, within(1e-8));
    assertThat(state.get("relays").get("K.make").stringValue()).isEqualTo("closed");
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

  @Test
  void aWireLaidInPlaceHasARoutedLengthAndNoCutOne() {
    String json =
        """
        {"format": 1, "sketch": true,
         "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 801}}},
         "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
         "wires": {"W1": {"from": "A:1", "to": "B:1", "areaMm2": 1, "laidInPlace": true},
                   "W2": {"from": "A:2", "to": "B:2", "areaMm2": 1}}}
        """;
    HarnessReport root = Reports.root("car.harness.json");
    String text =
        written(
            Reports.of(new HarnessReport(Reports.facts("car.harness.json", json), root.result())));
    assertThat(errors(text)).isEmpty();
    JsonNode wires = Schemas.tree(text).get("harnesses").get(0).get("wires");
    assertThat(wires.get("W1").get("routedMm").doubleValue()).isEqualTo(993);
    assertThat(wires.get("W1").get("cutMm").isNull()).isTrue();
    assertThat(wires.get("W1").get("laidInPlace").booleanValue()).isTrue();
    assertThat(wires.get("W2").get("cutMm").doubleValue()).isEqualTo(995);
  }
}
