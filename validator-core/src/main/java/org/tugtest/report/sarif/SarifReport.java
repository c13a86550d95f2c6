package org.tugtest.report.sarif;

import java.io.IOException;
import java.util.Locale;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.JsonStream;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.report.ReportWriter;
import org.tugtest.report.Sink;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rulebook.RulePage;

/**
 * Writes {@code report.sarif}: SARIF 2.1.0, one run for each root. As the standard's Appendix F
 * asks of deterministic logs, it holds no time, machine, command line or revision.
 */
public final class SarifReport implements ReportWriter {
  /** The file it writes. */
  public static final String FILE = "report.sarif";

  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
  private static final int MOST_TEXT = 1024;

  @Override
  public String format() {
    return "sarif";
  }

  @Override
  public void write(Report report, Sink sink) throws IOException {
    JsonStream.write(sink.open(FILE), json -> write(report, json));
  }

  private static void write(Report report, JsonStream json) {
    json.object().text("$schema", SCHEMA).text("version", "2.1.0").array("runs");
    for (HarnessReport harness : report.harnesses()) {
      json.object();
      tool(report, json);
      new SarifRun(report, harness, json).write();
      json.end();
    }
    json.end().end();
  }

  private static void tool(Report report, JsonStream json) {
    json.object("tool").object("driver").text("name", "Tugtest").text("version", report.version());
    json.text("semanticVersion", report.version()).array("rules");
    report.rules().forEach(rule -> rule(rule, json));
    json.end().end().end();
  }

  private static void rule(RuleInfo rule, JsonStream json) {
    String summary = SarifText.message(RulePage.summary(rule));
    String looksFor = rule.looksFor().isBlank() ? summary : SarifText.lines(rule.looksFor());
    json.object().text("id", rule.id()).text("name", className(rule.id()));
    json.object("shortDescription").text("text", PrintableText.cut(summary, MOST_TEXT)).end();
    json.object("fullDescription").text("text", PrintableText.cut(looksFor, MOST_TEXT)).end();
    json.object("defaultConfiguration").text("level", rule.level().word()).end();
    String help = SarifText.lines(RulePage.textReasons(rule));
    json.object("help")
        .text("text", help.isEmpty() ? summary : help)
        .text("markdown", summary + "\n\n" + SarifText.lines(RulePage.markdownReasons(rule)))
        .end();
    json.object("properties");
    json.array("tags").text("wiring").text(rule.heading().word()).end();
    json.text("problem.severity", severity(rule)).end().end();
  }

  private static String severity(RuleInfo rule) {
    return switch (rule.level()) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case NOTE -> "recommendation";
    };
  }

  private static String className(String id) {
    StringBuilder name = new StringBuilder();
    for (String word : id.split("-", -1)) {
      if (!word.isEmpty()) {
        name.append(word.substring(0, 1).toUpperCase(Locale.ROOT));
        name.append(word.substring(1));
      }
    }
    return name.toString();
  }
}
