package org.tugtest.built;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.Facts;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.rule.Judged;

class IntakeTest {
  private static final String CAR =
      """
      {"format": 1, "uses": ["front.json", "rear.json"],
       "parts": {"wires": {"w1.0": {"areaMm2": 1.0, "maxC": 125}}, "housings": {"h3": {"side": "socket", "rows": [["1", "2", "3"]]}}},
       "devices": {"LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 5}}},
                   "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "out"}}}},
       "fitted": {"FB.f1": "f5"},
       "layout": {"nodes": {"nose": {}, "tail": {}},
                  "segments": {"t1": {"from": "nose", "to": "tail", "lengthMm": 500, "coverings": ["tube"]}}}}
      """;
  private static final String FRONT =
      """
      {"format": 1, "loom": {"id": "front", "revision": "C"}, "connectors": {"X1": {"housing": "h3", "parked": "capped"}},
       "splices": {"S1": {"at": "nose"}},
       "wires": {"W1": {"from": "X1:1", "to": "LAMP:1", "part": "w1.0", "colour": "RD"}, "W2": {"from": "X1:2", "to": "LAMP:2"}}}
      """;
  private static final String REAR =
      "{\"format\": 1, \"loom\": {\"id\": \"rear\", \"revision\": \"A\"}, \"wires\": {\"R1\":"
          + " {\"from\": \"X1:3\", \"to\": \"LAMP:1\"}}}";

  private static Map<String, String> files(String record, String entries, String readings) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(Judged.ROOT, CAR);
    files.put("front.json", FRONT);
    files.put("rear.json", REAR);
    if (entries != null) {
      files.put(
          "built/41.record.json",
          "{\"format\": 1, \"record\": {\"plan\": \"car.harness.json\", "
              + record
              + ", \"by\": \"b\", \"date\": \"2026-11-20\"},\n \"entries\": {"
              + entries
              + "}}\n");
    }
    if (readings != null) {
      files.put("readings/front.csv", readings);
    }
    return files;
  }

  private static Intake intake(Map<String, String> files) {
    return Told.of(files).orElseThrow().intake(Judged.facts(files));
  }

  private static Intake record(String record, String entries) {
    return intake(files(record, entries, null));
  }

  private static Intake entry(String kind, String at, String more) {
    return record(
        "\"loom\": \"front\", \"revision\": \"C\"",
        "\"7\": {\"kind\": \"%s\", \"at\": \"%s\", %s, \"reason\": \"r\"}"
            .formatted(kind, at, more));
  }

  private static List<String> refused(Intake intake) {
    return intake.refused().stream()
        .map(r -> r.at().file() + ":" + r.at().line() + " " + r.message() + " | " + r.remedy())
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "part | connectors/X1 | h3 | h4 | connectors/X1 | h4",
        "part | connectors/X1:1 | | t9 | connectors/X1:1 | t9",
        "part | splices/S1 | | s9 | splices/S1 | s9",
        "part | devices/FB.f1 | f5 | f7.5 | devices/FB.f1 | f7.5",
        "part | segments/t1 | tube | tape | segments/t1 | [tape]",
        "moved | connectors/X1 | | tail | connectors/X1 at | tail",
        "moved | splices/S1 | | t1 | splices/S1 at | t1",
        "moved | devices/FB | | tail | devices/FB at | tail",
        "length | segments/t1 | 500 | 620 | segments/t1 length | 620.0",
      })
  void whatTheRecordSaysOfOtherThingsThanWiresIsInTheLoomAsBuilt(
      String kind, String at, String planned, String built, String thing, String becomes) {
    String value = kind.equals("length") ? built : "\"" + built + "\"";
    String was = kind.equals("length") ? planned : "\"" + planned + "\"";
    Intake intake =
        entry(
            kind,
            at,
            (planned == null ? "" : "\"planned\": " + was + ", ") + "\"built\": " + value);
    assertThat(refused(intake)).isEmpty();
    assertThat(said(intake.built().harness(), thing)).isEqualTo(becomes);
    Facts plan = Judged.facts(files(null, null, null));
    assertThat(intake.planWith(plan, List.of())).isSameAs(plan);
    Facts left = intake.planWith(plan, intake.asBuilt().deviations());
    assertThat(left.harness()).isEqualTo(intake.built().harness());
  }

  private static String said(Harness harness, String thing) {
    return switch (thing) {
      case "connectors/X1" -> harness.connectors().get("X1").housing();
      case "connectors/X1:1" -> harness.connectors().get("X1").cavities().get("1").terminal();
      case "connectors/X1 at" -> harness.connectors().get("X1").at();
      case "splices/S1" -> harness.splices().get("S1").part();
      case "splices/S1 at" -> harness.splices().get("S1").on();
      case "devices/FB.f1" -> harness.fitted().get("FB.f1");
      case "devices/FB at" -> harness.devices().get("FB").at();
      case "segments/t1" -> harness.layout().segments().get("t1").coverings().toString();
      default -> harness.layout().segments().get("t1").lengthMm().toString();
    };
  }

  @Test
  void recordOfAnotherRevisionIsRefused() {
    assertThat(refused(record("\"loom\": \"front\", \"revision\": \"B\"", "")))
        .containsExactly(
            "built/41.record.json:1 built/41.record.json is of revision B of loom front; the plan"
                + " is at C | hold it against the commit of revision B, or bring the record up to"
                + " C");
    assertThat(refused(record("\"loom\": \"frnt\", \"revision\": \"C\"", "")))
        .containsExactly(
            "built/41.record.json:1 built/41.record.json is of loom frnt, which car.harness.json"
                + " has not | did you mean front?");
    assertThat(record("\"loom\": \"front\", \"revision\": \"C\"", "").refused()).isEmpty();
  }

  @Test
  void entryThatSpeaksOfAnotherPlanIsRefused() {
    assertThat(refused(entry("re-coloured", "wires/W1", "\"planned\": \"BU\", \"built\": \"OG\"")))
        .containsExactly(
            "built/41.record.json:2 entry 7 of built/41.record.json says that \"BU\" was planned at"
                + " wires/W1; revision C of the plan says \"RD\" | the record was made against"
                + " another plan: correct the entry, or the record's revision");
    assertThat(
            refused(entry("re-pinned", "wires/W1", "\"planned\": \"X1:2\", \"built\": \"X1:3\""))
                .get(0))
        .contains(
            "was planned to end on \"X1:2\"; revision C of the plan has it from X1:1 to LAMP:1");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "re-pinned | wires/W1 | \"planned\": \"X1:1\", \"built\": \"X1:9\" | built into X1:9, which"
            + " there is not | did you mean X1:1, X1:2 or X1:3?",
        "re-pinned | wires/W1 | \"planned\": \"X1:1\", \"built\": \"X2:1\" | built into X2:1, which"
            + " there is not | did you mean X1:1?",
        "re-pinned | wires/W1 | \"built\": \"R9:1\" | does not say which end of wire W1 (X1:1 to"
            + " LAMP:1) was re-pinned | write the planned end under \"planned\"",
        "re-pinned | wires/W1 | \"planned\": \"X1:1\", \"built\": \"X1:1\" | says that wires/W1 was"
            + " built as \"X1:1\", which is the plan | take the entry out, or correct it",
        "re-pinned | connectors/X1:3 | \"built\": \"X1:1\" | W | W",
        "re-pinned | wires/W9 | \"built\": \"X1:1\" | the plan has no wires \"W9\" | did you mean"
            + " W1 or W2?",
        "left-out | wires/R1 | \"by\": \"x\" | which belongs to loom rear, not front | move the"
            + " entry to the record of loom rear",
        "left-out | parts/wires/w1.0 | \"by\": \"x\" | which is no place of a loom | write"
            + " wires/ID",
        "added | wires/W1 | \"built\": {\"from\": \"X1:1\", \"to\": \"X1:2\"} | adds W1, which the"
            + " plan has already | an id of its own",
        "added | wires/W9 | \"built\": {\"from\": \"X1:1\"} | adds wire W9 without \"to\" | write"
            + " on which contact it ends",
        "added | wires/W9 | \"built\": {\"from\": \"X1:1\", \"to\": \"X1:4\"} | adds wire W9 on"
            + " X1:4, which there is not | did you mean X1:1, X1:2 or X1:3?",
        "added | wires/W9 | \"built\": \"new\" | adds wires/W9 and does not say what | write its"
            + " fields",
        "length | wires/W1 | \"by\": \"x\" | does not say how long it was built | builtMm",
        "re-gauged | wires/W1 | \"by\": \"x\" | does not say as what it was built | write the value"
            + " under \"built\"",
        "re-gauged | connectors/X1 | \"built\": 1 | which only a wire can be | write wires/ID",
        "moved | connectors/X1 | \"built\": \"tial\" | which is no node of the layout | there are"
            + " the nodes nose and tail",
        "part | connectors/X1 | \"planned\": \"h4\", \"built\": \"h5\" | revision C of the plan"
            + " says \"h3\" | another plan"
      })
  void entryThatDoesNotFitIsRefused(
      String kind, String at, String more, String message, String remedy) {
    List<String> refused = refused(entry(kind, at, more));
    if (message.equals("W")) {
      // the cavity belongs to loom front, the wire in it to loom rear: the place counts
      assertThat(refused).isEmpty();
      return;
    }
    assertThat(refused).hasSize(1);
    assertThat(refused.get(0)).contains(message).contains(remedy);
  }

  @Test
  void readingsOfPointsThatThereAreNotAreRefusedWithTheNearest() {
    String table =
        """
        from,to,ohms,joined
        X1:1,LAMP:1,0.1,
        X1:4,LAMP:1,,yes
        X1:1,LMP:2,,yes
        X1,LAMP:1,,yes
        X1:1,X1:1,,yes
        X1:1,LAMP:2,3,no
        X1:1,Z9:1,,no
        """;
    Intake intake = intake(files("", null, table));
    assertThat(intake.asBuilt().readings()).hasSize(1);
    assertThat(refused(intake))
        .containsExactly(
            "readings/front.csv:3 line 3 of readings/front.csv reads X1:4, which there is not | did"
                + " you mean X1:1, X1:2 or X1:3?",
            "readings/front.csv:4 line 4 of readings/front.csv reads LMP:2, which there is not |"
                + " did you mean LAMP:2?",
            "readings/front.csv:5 line 5 of readings/front.csv reads X1, which there is not | did"
                + " you mean X1:1, X1:2 or X1:3?",
            "readings/front.csv:6 line 6 of readings/front.csv reads X1:1 against itself | write"
                + " the other end of what was measured",
            "readings/front.csv:7 line 7 of readings/front.csv reads 3 ohm and says not joined |"
                + " write the one that holds",
            "readings/front.csv:8 line 8 of readings/front.csv reads Z9:1, which there is not | no"
                + " connector, device or splice is called so or nearly so");
  }

  @Test
  void whatIsWrongWithTheFilesIsRefusedToo() {
    assertThat(refused(record("\"loom\": \"front\"", ""))).hasSize(1);
    assertThat(refused(intake(files("", null, "from;to\n")))).hasSize(1);
  }

  @Test
  void builtHarnessIsThePlanWithWhatTheRecordSays() {
    Intake intake =
        record(
            "\"loom\": \"front\", \"revision\": \"C\"",
            """
            "1": {"kind": "re-pinned", "at": "wires/W1", "planned": "X1:1", "built": "X1:3", "reason": "r"},
            "2": {"kind": "added", "at": "wires/W9", "built": {"from": "X1:1", "to": "LAMP:2"}, "reason": "r"},
            "3": {"kind": "left-out", "at": "wires/W2", "reason": "r"},
            "4": {"kind": "re-gauged", "at": "wires/W1", "planned": "w1.0", "built": 0.5, "reason": "r"},
            "5": {"kind": "length", "at": "wires/W1", "builtMm": 700, "reason": "r"}
            """);
    assertThat(intake.refused()).isEmpty();
    assertThat(intake.built().harness().wires().keySet()).containsExactly("R1", "W1", "W9");
    assertThat(intake.built().harness().wires().get("W1").from()).isEqualTo(Ref.parse("X1:3"));
    assertThat(intake.built().harness().wires().get("W1").areaMm2()).isEqualTo(0.5);
    assertThat(intake.built().harness().wires().get("W1").part()).isNull();
    assertThat(intake.built().harness().wires().get("W1").builtMm()).isEqualTo(700);
    assertThat(intake.entries()).hasSize(5);
  }

  @Test
  void harnessFileAsBuiltGivesTheDeviationsAndARecordAcceptsThem() {
    Map<String, String> plan =
        files(
            "\"loom\": \"front\", \"revision\": \"C\"",
            "\"1\": {\"kind\": \"re-coloured\", \"at\": \"wires/W1\", \"built\": \"OG\","
                + " \"accepted\": true, \"reason\": \"r\"}",
            null);
    Map<String, String> as = new LinkedHashMap<>(plan);
    as.put(
        "front.json",
        FRONT
            .replace("\"X1:1\"", "\"X1:3\"")
            .replace("\"RD\"", "\"OG\"")
            .replace("\"h3\"", "\"h3\", \"at\": \"nose\"")
            .replace(
                "\"W2\": {\"from\": \"X1:2\", \"to\": \"LAMP:2\"}",
                "\"W8\": {\"from\": \"X1:2\", \"to\": \"X1:1\", \"areaMm2\": 1}"));
    Facts facts = Judged.facts(plan);
    Told told = Told.of(plan).orElseThrow();
    Intake intake =
        Intake.of(facts, told.records(), told.readings(), Optional.of(Judged.facts(as)));
    assertThat(intake.asBuilt().deviations())
        .extracting(d -> (d.accepted() ? "accepted: " : "") + d.what())
        .containsExactlyInAnyOrder(
            "wire W2 was left out",
            "wire W8 was added from X1:2 to X1:1",
            "wire W1 was built into X1:3 instead of X1:1",
            "accepted: wire W1 was built OG instead of RD",
            "X1 was built at nose");
    assertThat(
            Intake.of(facts, told.records(), told.readings(), Optional.of(facts))
                .asBuilt()
                .deviations(Deviation.Kind.CONNECTION))
        .isEmpty();
  }
}
