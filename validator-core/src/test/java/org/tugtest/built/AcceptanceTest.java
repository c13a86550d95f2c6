package org.tugtest.built;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;

class AcceptanceTest {
  private static final String CAR =
      """
      {
        "format": 1,
        "uses": ["front.json"],
        "parts": {
          "wires": {"w0.5": {"areaMm2": 0.5, "maxC": 125}, "w1.0": {"areaMm2": 1.0, "maxC": 125}},
          "fuses": {"mini-5": {"ratingA": 5}, "mini-10": {"ratingA": 10}},
          "housings": {"h3": {"side": "socket", "rows": [["1", "2", "3"]]}, "h3b": {"side": "socket", "rows": [["1", "2", "3"]]}}
        },
        "devices": {
          "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}}}
        },
        "fitted": {
          "FB.f1": "mini-5"
        }
      }
      """;
  private static final String FRONT =
      """
      {
        "format": 1,
        "loom": {"id": "front", "revision": "C"},
        "connectors": {
          "X1": {"housing": "h3", "parked": "capped"},
          "X2": {"housing": "h3", "parked": "capped"}
        },
        "wires": {
          "W1": {"from": "X1:1", "to": "X2:1", "part": "w1.0", "colour": "RD", "cutMm": 1000},
          "W2": {"from": "X1:2", "to": "X2:2", "areaMm2": 1.0},
          "W10": {"from": "FB:1", "to": "X2:3", "part": "w1.0"}
        }
      }
      """;

  private static Map<String, String> files(String entries) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(Judged.ROOT, CAR);
    files.put("front.json", FRONT);
    files.put("built/41.record.json", record("C", entries));
    return files;
  }

  private static String record(String revision, String entries) {
    return """
    {
      "format": 1,
      "record": {"plan": "car.harness.json", "loom": "front", "revision": "%s", "by": "b", "date": "2026-11-20"},
      "entries": {%s}
    }
    """
        .formatted(revision, entries);
  }

  private static String entry(String id, String kind, String at, String more) {
    return "\n    \"%s\": {\"kind\": \"%s\", \"at\": \"%s\", %s, \"reason\": \"r\"}"
        .formatted(id, kind, at, more);
  }

  private static Acceptance of(Map<String, String> files) {
    Facts plan = Judged.facts(files);
    Told told = Told.of(files).orElseThrow();
    return Acceptance.of(plan, told.intake(plan), told.records());
  }

  private static final String YES = ", \"accepted\": true";

  @Test
  void nothingAcceptedChangesNothing() {
    Acceptance acceptance = of(files(entry("1", "re-coloured", "wires/W1", "\"built\": \"OG\"")));
    assertThat(acceptance.files()).isEmpty();
    assertThat(acceptance.left())
        .containsExactly(
            "entry 1 of built/41.record.json, wire W1 was built OG instead of RD: nobody has"
                + " accepted it");
  }

  @Test
  void acceptedDeviationsComeIntoThePlanAndOutOfTheRecord() {
    String open = entry("9", "re-coloured", "wires/W2", "\"built\": \"BU\"");
    Acceptance acceptance =
        of(
            files(
                String.join(
                    ",",
                    entry(
                        "1",
                        "re-pinned",
                        "wires/W1",
                        "\"planned\": \"X1:1\", \"built\": \"X1:3\"" + YES),
                    entry("2", "re-coloured", "wires/W1", "\"built\": \"OG\"" + YES),
                    entry("3", "re-gauged", "wires/W2", "\"built\": \"w0.5\"" + YES),
                    entry("4", "length", "wires/W1", "\"builtMm\": 1040" + YES),
                    entry(
                        "5",
                        "added",
                        "wires/W3",
                        "\"built\": {\"to\": \"X2:1\", \"from\": \"X1:1\", \"areaMm2\": 0.5}"
                            + YES),
                    entry("6", "left-out", "wires/W10", "\"by\": \"x\"" + YES),
                    entry(
                        "7",
                        "part",
                        "devices/FB.f1",
                        "\"planned\": \"mini-5\", \"built\": \"mini-10\"" + YES),
                    entry("8", "part", "connectors/X1", "\"built\": \"h3b\"" + YES),
                    open)));
    assertThat(acceptance.left())
        .containsExactly(
            "entry 9 of built/41.record.json, wire W2 was built BU: nobody has accepted it");
    assertThat(acceptance.done()).hasSize(9).endsWith("loom front is now of revision D");
    assertThat(acceptance.files().keySet())
        .containsExactly("built/41.record.json", "car.harness.json", "front.json");
    assertThat(acceptance.files().get("front.json"))
        .isEqualTo(
            FRONT
                .replace("\"C\"", "\"D\"")
                .replace("\"X1\": {\"housing\": \"h3\"", "\"X1\": {\"housing\": \"h3b\"")
                .replace(
                    "\"from\": \"X1:1\", \"to\": \"X2:1\", \"part\": \"w1.0\", \"colour\": \"RD\","
                        + " \"cutMm\": 1000",
                    "\"from\": \"X1:3\", \"to\": \"X2:1\", \"part\": \"w1.0\", \"colour\": \"OG\","
                        + " \"cutMm\": 1040")
                .replace(
                    "\"to\": \"X2:2\", \"areaMm2\": 1.0}", "\"to\": \"X2:2\", \"part\": \"w0.5\"}")
                .replace(
                    "    \"W10\": {\"from\": \"FB:1\", \"to\": \"X2:3\", \"part\": \"w1.0\"}",
                    "    \"W3\": {\"from\": \"X1:1\", \"to\": \"X2:1\", \"areaMm2\": 0.5}"));
    assertThat(acceptance.files().get(Judged.ROOT))
        .isEqualTo(CAR.replace("\"FB.f1\": \"mini-5\"", "\"FB.f1\": \"mini-10\""));
    assertThat(acceptance.files().get("built/41.record.json")).isEqualTo(record("D", open));
  }

  /** Once taken, plan and record agree: nothing is accepted or refused any more. */
  @Test
  void takenAgainNothingIsLeftToTake() {
    Map<String, String> files =
        files(
            entry(
                "1", "re-pinned", "wires/W1", "\"planned\": \"X1:1\", \"built\": \"X1:3\"" + YES));
    files.putAll(of(files).files());
    Facts plan = Judged.facts(files);
    Intake intake = Told.of(files).orElseThrow().intake(plan);
    assertThat(intake.refused()).isEmpty();
    assertThat(intake.entries()).isEmpty();
    assertThat(of(files).files()).isEmpty();
  }

  @Test
  void whatWouldBreakThePlanIsNotTakenAtAll() {
    Acceptance part =
        of(
            files(
                entry("1", "re-coloured", "wires/W1", "\"built\": \"OG\"" + YES)
                    + ","
                    + entry("2", "part", "connectors/X1", "\"built\": \"h9\"" + YES)));
    assertThat(part.files()).isEmpty();
    assertThat(part.left())
        .containsExactly(
            "entry 2 of built/41.record.json, X1 was built with housing h9 instead of h3: h9 is not"
                + " among the parts; define it first",
            "built/41.record.json: nothing of it was taken");
    assertThat(
            of(files(entry("1", "re-coloured", "wires/W1", "\"built\": \"reddish\"" + YES)))
                .left()
                .get(0))
        .contains("front.json would break");
    assertThat(
            of(files(entry("1", "left-out", "connectors/X1", "\"by\": \"x\"" + YES))).left().get(0))
        .endsWith("wire W1 still ends on it; write an entry for that too");
  }

  @Test
  void unsafeAndExpiredAreLeft() {
    assertThat(
            of(files(
                    entry(
                        "1",
                        "re-coloured",
                        "wires/W1",
                        "\"built\": \"OG\", \"safe\": \"no\"" + YES)))
                .left()
                .get(0))
        .endsWith("it is noted as not safe");
    assertThat(
            of(files(
                    entry(
                        "1",
                        "re-coloured",
                        "wires/W1",
                        "\"built\": \"OG\", \"until\": \"2026-11-24\"" + YES)))
                .left()
                .get(0))
        .endsWith("it was accepted until 2026-11-24");
    assertThat(
            of(files(
                    entry(
                        "1",
                        "re-coloured",
                        "wires/W1",
                        "\"built\": \"OG\", \"until\": \"2026-11-25\"" + YES)))
                .done())
        .hasSize(2);
  }

  @Test
  void otherRecordsOfTheLoomAreNamed() {
    Map<String, String> files =
        files(entry("1", "re-coloured", "wires/W1", "\"built\": \"OG\"" + YES));
    files.put("built/42.record.json", record("C", ""));
    assertThat(of(files).left())
        .containsExactly("built/42.record.json is still of the revision before D: bring it up");
  }

  @ParameterizedTest
  @CsvSource({
    "A, B",
    "Z, AA",
    "AZ, BA",
    "c, d",
    "9, 10",
    "09, 10",
    "C2, C3",
    "2026-01, 2026-02",
    "1.9, 1.10",
    "AZZ, BAA"
  })
  void revisionsAreCountedOn(String is, String next) {
    assertThat(NextRevision.after(is)).contains(next);
  }

  @ParameterizedTest
  @CsvSource({"draft", "''", "A!"})
  void otherRevisionsAreNot(String is) {
    assertThat(NextRevision.after(is)).isEmpty();
  }

  @Test
  void aWireLaidInPlaceIsMeasuredAndGetsNoCutLength() {
    Map<String, String> files = files(entry("4", "length", "wires/W1", "\"builtMm\": 1040" + YES));
    String laid = FRONT.replace("\"cutMm\": 1000", "\"laidInPlace\": true");
    files.put("front.json", laid);
    assertThat(of(files).files().get("front.json"))
        .isEqualTo(
            laid.replace("\"C\"", "\"D\"")
                .replace("\"laidInPlace\": true", "\"laidInPlace\": true, \"builtMm\": 1040"));
  }
}
