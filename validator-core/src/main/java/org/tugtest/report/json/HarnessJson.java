package org.tugtest.report.json;

import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckResult;
import org.tugtest.check.CheckedFinding;
import org.tugtest.check.Crash;
import org.tugtest.check.NotRun;
import org.tugtest.expect.Verdict;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Harness;
import org.tugtest.model.Waiver;
import org.tugtest.model.Wire;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.JsonStream;
import org.tugtest.report.Report;
import org.tugtest.route.Route;
import org.tugtest.rule.Coverage;
import org.tugtest.text.Place;

/** One entry of {@code harnesses}. */
final class HarnessJson {
  private final Report report;
  private final HarnessReport harness;
  private final JsonStream json;

  HarnessJson(Report report, HarnessReport harness, JsonStream json) {
    this.report = report;
    this.harness = harness;
    this.json = json;
  }

  /** Writes it; {@code more} adds properties at its end. */
  void write(BiConsumer<HarnessReport, JsonStream> more) {
    Harness content = harness.facts().harness();
    CheckResult result = harness.result();
    json.object()
        .text("root", harness.root())
        .text("title", content.title())
        .text("revision", content.revision())
        .text("verdict", report.passes(harness) ? "pass" : "blocked")
        .texts("files", content.files());
    counts(result);
    json.array("findings");
    result.findings().forEach(this::finding);
    json.end();
    json.array("expectations");
    result.expectations().forEach(this::expectation);
    json.end();
    json.array("coverage");
    result.coverage().forEach(this::coverage);
    json.end();
    json.array("notRun");
    for (NotRun rule : result.notRun()) {
      json.object().text("rule", rule.rule()).text("why", rule.why()).end();
    }
    json.end();
    json.array("crashes");
    for (Crash crash : result.crashes()) {
      json.object()
          .text("rule", crash.rule())
          .text("what", crash.what())
          .texts("where", crash.where())
          .end();
    }
    json.end();
    new StatesJson(harness.facts(), json).write();
    wires(content);
    new BodyJson(harness.facts(), json).write();
    more.accept(harness, json);
    json.end();
  }

  private void counts(CheckResult result) {
    json.object("counts");
    for (Map.Entry<Level, Integer> entry : result.counts().entrySet()) {
      json.count(entry.getKey().word(), entry.getValue());
    }
    json.count("waived", result.findings().size() - result.standing().size()).end();
  }

  private void finding(CheckedFinding checked) {
    Finding finding = checked.finding();
    Measured measured = finding.measured();
    Waiver waiver = checked.waiver();
    json.object()
        .text("rule", finding.rule())
        .text("level", finding.level().word())
        .text("kind", finding.kind().isEmpty() ? null : finding.kind())
        .texts("subjects", finding.subjects().stream().map(Subject::place).toList())
        .text("message", finding.message())
        .text("remedy", finding.remedy())
        .number("actual", measured == null ? null : Double.valueOf(measured.actual()))
        .number("limit", measured == null ? null : Double.valueOf(measured.limit()))
        .text("bound", bound(measured))
        .text("unit", measured == null ? null : measured.unit())
        .text("basis", finding.basis().word())
        .text("identity", finding.identity())
        .text("cause", finding.cause())
        .text("state", finding.state())
        .texts("details", finding.details());
    places(finding.at());
    json.text("age", harness.age(checked).word())
        .text("waived", waiver == null ? null : waiver.reason())
        .flag("blocks", report.gate().blocks(harness, checked))
        .end();
  }

  private static @Nullable String bound(@Nullable Measured measured) {
    if (measured == null) {
      return null;
    }
    return measured.bound() == Measured.Bound.AT_MOST ? "at most" : "at least";
  }

  private void places(List<Place> places) {
    json.array("at");
    for (Place place : places) {
      place(json.object(), place).end();
    }
    json.end();
  }

  /** The properties of a place. */
  static JsonStream place(JsonStream json, Place place) {
    return json.text("file", place.file())
        .count("line", place.line())
        .count("column", place.column())
        .text("pointer", place.pointer());
  }

  private void expectation(Verdict verdict) {
    json.object()
        .text("id", verdict.id())
        .flag(
            "holds",
            verdict.answer() == Verdict.Answer.NOT_JUDGED
                ? null
                : Boolean.valueOf(verdict.answer() == Verdict.Answer.HOLDS))
        .text("message", verdict.message());
    places(verdict.at());
    json.end();
  }

  private void coverage(Coverage coverage) {
    json.object()
        .text("rule", coverage.rule())
        .text("noun", coverage.noun())
        .count("subjects", coverage.subjects())
        .count("judged", coverage.judged());
    json.object("missing");
    coverage
        .missing()
        .forEach(
            (reason, subjects) ->
                json.texts(reason, subjects.stream().map(Subject::place).toList()));
    json.end().flag("blocks", report.gate().blocks(coverage)).end();
  }

  private void wires(Harness content) {
    json.object("wires");
    for (Wire wire : content.wires().values()) {
      Route route = harness.facts().routes().of(wire.id()).orElse(null);
      Double cut = route == null ? null : BodyJson.tenths(route.cutMm());
      boolean inPlace = wire.laidInPlace();
      json.object(wire.id())
          .number("routedMm", route == null ? null : BodyJson.tenths(route.routedMm()))
          .number("cutMm", inPlace ? null : wire.cutMm() == null ? cut : wire.cutMm())
          .flag("laidInPlace", inPlace)
          .number("milliohm20", StatesJson.milliohm(harness.facts(), wire, 20))
          .number("ampacityA", WireProtection.ampacityA(harness.facts(), wire))
          .number("limitA", WireProtection.limitA(harness.facts(), wire))
          .flag("unbounded", WireProtection.unbounded(harness.facts(), wire))
          .end();
    }
    json.end();
  }
}
