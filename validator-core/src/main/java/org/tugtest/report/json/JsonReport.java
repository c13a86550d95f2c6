package org.tugtest.report.json;

import java.io.IOException;
import java.util.function.BiConsumer;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.JsonStream;
import org.tugtest.report.Report;
import org.tugtest.report.ReportWriter;
import org.tugtest.report.Revision;
import org.tugtest.report.Sink;
import org.tugtest.rule.RuleInfo;

/** Writes {@code report.json}, as {@code org/tugtest/schema/report-1.schema.json} describes it. */
public final class JsonReport implements ReportWriter {
  /** The file it writes. */
  public static final String FILE = "report.json";

  @Override
  public String format() {
    return "json";
  }

  @Override
  public void write(Report report, Sink sink) throws IOException {
    JsonStream.write(sink.open(FILE), json -> write(report, json, (harness, more) -> {}));
  }

  /** Writes the report; {@code more} adds properties to each entry of {@code harnesses}. */
  static void write(Report report, JsonStream json, BiConsumer<HarnessReport, JsonStream> more) {
    json.object().count("format", 1);
    json.object("tool").text("name", "Tugtest").text("version", report.version()).end();
    json.text("folder", report.folder());
    revision(json, report.revision());
    json.object("gate")
        .text("failOn", report.gate().word())
        .count("coverageMin", report.gate().coverageMin())
        .end();
    json.text("outcome", report.outcome().word());
    json.text("shard", null);
    json.array("rules");
    for (RuleInfo rule : report.rules()) {
      json.object()
          .text("id", rule.id())
          .text("heading", rule.heading().word())
          .text("level", rule.level().word())
          .text("summary", rule.summary())
          .end();
    }
    json.end();
    json.array("harnesses");
    for (HarnessReport harness : report.harnesses()) {
      new HarnessJson(report, harness, json).write(more);
    }
    json.end().end();
  }

  private static void revision(JsonStream json, Revision revision) {
    json.object("revision")
        .text("commit", revision.commit())
        .flag("dirty", revision.dirty())
        .text("today", revision.today().toString())
        .text("todayFrom", revision.todayFrom())
        .end();
  }
}
