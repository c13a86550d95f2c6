package org.tugtest.report.sarif;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tugtest.check.CheckedFinding;
import org.tugtest.check.Crash;
import org.tugtest.check.NotRun;
import org.tugtest.compare.Age;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Waiver;
import org.tugtest.report.Baseline;
import org.tugtest.report.Fingerprint;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.JsonStream;
import org.tugtest.report.Report;
import org.tugtest.rule.Coverage;
import org.tugtest.text.Place;

/** The run of one root: its invocation, results and coverage. */
final class SarifRun {
  /** Code hosts refuse a run with more results. */
  private static final int MOST_RESULTS = 25_000;

  /** And keep no more places of one result. */
  private static final int MOST_PLACES = 100;

  private final Report report;
  private final HarnessReport harness;
  private final JsonStream json;
  private final List<String> rules;
  private final Fingerprint fingerprints = new Fingerprint();

  SarifRun(Report report, HarnessReport harness, JsonStream json) {
    this.report = report;
    this.harness = harness;
    this.json = json;
    this.rules = report.rules().stream().map(rule -> rule.id()).toList();
  }

  void write() {
    List<CheckedFinding> results = gravest(harness.result().findings());
    int cut = harness.result().findings().size() - results.size();
    json.object("automationDetails").text("id", "tugtest/" + harness.root() + "/").end();
    json.text("columnKind", "utf16CodeUnits").text("language", "en");
    invocation(cut);
    json.array("results");
    results.forEach(this::result);
    json.end();
    coverage();
  }

  /** At most as many findings as may be, the graver ones, in their order. */
  private static List<CheckedFinding> gravest(List<CheckedFinding> findings) {
    if (findings.size() <= MOST_RESULTS) {
      return findings;
    }
    Set<Finding> kept = new HashSet<>();
    findings.stream()
        .map(CheckedFinding::finding)
        .sorted(Comparator.comparing(Finding::level))
        .limit(MOST_RESULTS)
        .forEach(kept::add);
    return findings.stream()
        .filter(checked -> kept.contains(checked.finding()))
        .limit(MOST_RESULTS)
        .toList();
  }

  private void invocation(int cut) {
    json.array("invocations").object();
    json.flag("executionSuccessful", harness.result().crashes().isEmpty());
    json.array("toolConfigurationNotifications");
    for (NotRun rule : harness.result().notRun()) {
      if (!rule.expected()) {
        notification(rule.rule(), "note", rule.rule() + " did not run: " + rule.why());
      }
    }
    json.end();
    json.array("toolExecutionNotifications");
    for (Crash crash : harness.result().crashes()) {
      notification(crash.rule(), "error", "rule " + crash.rule() + " broke: " + crash.what());
    }
    if (cut > 0) {
      notification("", "warning", cut + " more findings do not fit here; report.json has them all");
    }
    json.end().end().end();
  }

  private void notification(String rule, String level, String message) {
    json.object().text("level", level);
    json.object("message").text("text", SarifText.message(message)).end();
    int index = rules.indexOf(rule);
    if (index >= 0) {
      json.object("associatedRule").text("id", rule).count("index", index).end();
    }
    json.end();
  }

  private void result(CheckedFinding checked) {
    Finding finding = checked.finding();
    json.object().text("ruleId", finding.rule());
    int index = rules.indexOf(finding.rule());
    if (index >= 0) {
      json.count("ruleIndex", index);
    }
    json.text("kind", "fail").text("level", finding.level().word());
    String remedy =
        finding.remedy().isBlank() ? "" : "\nRemedy: " + SarifText.message(finding.remedy());
    json.object("message").text("text", SarifText.message(finding.message()) + remedy).end();
    json.array("locations").object();
    physical(finding.at().get(0));
    logical(finding.subjects());
    json.end().end();
    json.array("relatedLocations");
    for (int i = 1; i < Math.min(finding.at().size(), MOST_PLACES); i++) {
      json.object().count("id", i);
      physical(finding.at().get(i));
      json.end();
    }
    json.end();
    String fingerprint = fingerprints.of(finding);
    json.object("partialFingerprints")
        .text("primaryLocationLineHash", fingerprint)
        .text("tugtestFinding/v1", fingerprint)
        .end();
    suppressions(checked.waiver());
    Baseline baseline = harness.baseline();
    if (baseline != null) {
      json.text("baselineState", baseline.age(checked) == Age.NEW ? "new" : "unchanged");
    }
    properties(finding);
    json.end();
  }

  private void physical(Place place) {
    json.object("physicalLocation");
    json.object("artifactLocation").text("uri", SarifText.uri(report.path(place.file()))).end();
    json.object("region")
        .count("startLine", place.line())
        .count("startColumn", place.column())
        .count("endLine", place.endLine())
        .count("endColumn", place.endColumn())
        .end();
    json.end();
  }

  private void logical(List<Subject> subjects) {
    json.array("logicalLocations");
    for (Subject subject : subjects.subList(0, Math.min(subjects.size(), MOST_PLACES))) {
      json.object()
          .text("name", subject.id())
          .text("fullyQualifiedName", subject.place())
          .text("kind", subject.section())
          .end();
    }
    json.end();
  }

  private void suppressions(@org.jspecify.annotations.Nullable Waiver waiver) {
    json.array("suppressions");
    if (waiver != null) {
      json.object().text("kind", "external").text("status", "accepted");
      if (waiver.reason() != null) {
        json.text("justification", waiver.reason());
      }
      json.object("properties").text("waiver", waiver.id());
      if (waiver.until() != null) {
        json.text("until", waiver.until().toString());
      }
      json.end().end();
    }
    json.end();
  }

  private void properties(Finding finding) {
    json.object("properties").text("basis", finding.basis().word());
    Measured measured = finding.measured();
    if (measured != null) {
      json.number("actual", measured.actual())
          .number("limit", measured.limit())
          .text("unit", measured.unit());
    }
    if (finding.state() != null) {
      json.text("state", finding.state());
    }
    if (finding.cause() != null) {
      json.text("cause", finding.cause());
    }
    if (!finding.details().isEmpty()) {
      json.texts("details", finding.details());
    }
    json.end();
  }

  private void coverage() {
    json.object("properties").array("coverage");
    for (Coverage coverage : harness.result().coverage()) {
      json.object()
          .text("rule", coverage.rule())
          .count("subjects", coverage.subjects())
          .count("judged", coverage.judged())
          .end();
    }
    json.end().end();
  }
}
