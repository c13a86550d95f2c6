package org.tugtest.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.report.AsBuiltSample;
import org.tugtest.report.ComparedSample;
import org.tugtest.report.Golden;
import org.tugtest.report.Report;
import org.tugtest.report.Sample;
import org.tugtest.report.Schemas;
import org.tugtest.report.Written;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

class CompareReportTest {
  private static final String FOLDER = "/org/tugtest/schema/";
  private static final String OWN = "urn:tugtest:schema:compare-1";

  @Test
  void theSample() {
    JsonNode harness = Schemas.tree(written(ComparedSample.report())).get("harnesses").get(0);
    String circuits = harness.get("circuits").toPrettyString();
    String changes = harness.get("changes").toPrettyString();
    Golden.holds("sample.compare.json", "[" + circuits + ", " + changes + "]\n");
  }

  @Test
  void reportsFitThePublishedSchema() {
    for (Report report :
        List.of(
            ComparedSample.report(),
            ComparedSample.first(),
            ComparedSample.merge(),
            ComparedSample.of(ComparedSample.before(), ComparedSample.before()),
            AsBuiltSample.of(AsBuiltSample.ENTRIES, AsBuiltSample.READINGS),
            AsBuiltSample.of("", List.of("X1:1,X2:1,,no,", "X1:9,X2:6,,no,")),
            Sample.report())) {
      assertThat(errors(written(report))).isEmpty();
    }
  }

  @Test
  void theSchemaRefusesWhatItDoesNotKnowAndMissesWhatItNeeds() {
    JsonNode tree = Schemas.tree(written(ComparedSample.report()));
    ObjectNode harness = (ObjectNode) tree.get("harnesses").get(0);
    harness.remove("resolved");
    harness.put("extra", 1);
    ((ObjectNode) harness.get("changes").get(0)).put("kind", "improved");
    ((ObjectNode) harness.get("circuits").get("nets").get(0)).set("before", tree.get("gate"));
    assertThat(errors(tree.toString()))
        .anySatisfy(error -> assertThat(error).contains("resolved"))
        .anySatisfy(error -> assertThat(error).contains("extra"))
        .anySatisfy(error -> assertThat(error).contains("/kind"))
        .anySatisfy(error -> assertThat(error).contains("/before"));
  }

  @Test
  void everyPropertyIsDescribed() {
    List<String> bare = new ArrayList<>();
    JsonReportTest.undescribed(
        "", Schemas.tree(Schemas.resource(FOLDER + "compare-1.schema.json")), bare);
    assertThat(bare).isEmpty();
  }

  @Test
  void saysTheCircuitsTheChangesAndWhatIsNew() {
    JsonNode harness = Schemas.tree(written(ComparedSample.report())).get("harnesses").get(0);
    assertThat(harness.get("base").get("label").stringValue()).isEqualTo("1a2b3c4");
    JsonNode circuits = harness.get("circuits");
    assertThat(circuits.get("same").booleanValue()).isFalse();
    assertThat(texts((ArrayNode) circuits.get("nets"), "kind")).containsExactly("lost", "gained");
    assertThat(circuits.get("nets").get(0).get("announced").booleanValue()).isTrue();
    assertThat(circuits.get("notMade").get(0).get("net").stringValue()).isEqualTo("BAT:-");
    assertThat(texts((ArrayNode) harness.get("changes"), "kind"))
        .contains("limit", "re-pinned", "renamed", "re-gauged", "lengthened", "fuse-re-rated");
    assertThat(texts((ArrayNode) harness.get("findings"), "age")).contains("new", "known");
  }

  @Test
  void saysHowItIsReworkedAndWhatIsMeasuredAndTriedAgain() {
    JsonNode harness = Schemas.tree(written(ComparedSample.report())).get("harnesses").get(0);
    ArrayNode rework = (ArrayNode) harness.get("rework");
    List<JsonNode> moved = new ArrayList<>();
    rework.forEach(
        step -> {
          if (step.get("ends").toString().contains("W5")) {
            moved.add(step);
          }
        });
    assertThat(moved)
        .extracting(step -> step.get("kind").stringValue())
        .containsExactly("release", "insert");
    assertThat(moved.get(0).get("from").stringValue()).isEqualTo("X1:3");
    assertThat(moved.get(1).get("to").stringValue()).isEqualTo("X1:4");
    JsonNode ringOut = harness.get("ringOut");
    assertThat(ringOut.get("looms").get(0).get("apart").toString())
        .contains("\"from\":\"X1:2\",\"to\":\"X1:4\"")
        .doesNotContain("\"from\":\"X1:1\",\"to\":\"X1:2\"".replace("X1:2", "X1:6"));
    assertThat(texts((ArrayNode) ringOut.get("functions"), "element"))
        .contains("LAMPS.left", "LAMPS.right");
  }

  @Test
  void saysWhatCausesAFindingAndWhereChangesMeet() {
    JsonNode causes =
        Schemas.tree(written(ComparedSample.report())).get("harnesses").get(0).get("causes");
    assertThat(causes.toString())
        .contains(
            "load-unfed(devices/LAMPS.right)\",\"changes\":[\"W5 moves from X1:3 to X1:4.\"]");
    JsonNode meetings =
        Schemas.tree(written(ComparedSample.merge())).get("harnesses").get(0).get("meetings");
    assertThat(texts((ArrayNode) meetings, "where")).contains("cavity X1:6");
  }

  private static List<String> texts(ArrayNode array, String name) {
    List<String> texts = new ArrayList<>();
    array.forEach(entry -> texts.add(entry.get(name).stringValue()));
    return texts;
  }

  private static List<String> errors(String json) {
    Schema schema =
        SchemaRegistry.withDefaultDialect(
                SpecificationVersion.DRAFT_2020_12,
                builder ->
                    builder.schemas(
                        Map.of(
                            OWN,
                            Schemas.resource(FOLDER + "compare-1.schema.json"),
                            "urn:tugtest:schema:report-1",
                            Schemas.resource(FOLDER + "report-1.schema.json"))))
            .getSchema(SchemaLocation.of(OWN));
    return schema.validate(Schemas.tree(json)).stream().map(Object::toString).toList();
  }

  private static String written(Report report) {
    return Written.by(new CompareReport(), report);
  }
}
