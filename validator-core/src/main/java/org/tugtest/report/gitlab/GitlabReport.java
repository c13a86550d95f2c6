package org.tugtest.report.gitlab;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.report.Fingerprint;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.JsonStream;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.report.ReportWriter;
import org.tugtest.report.Sink;
import org.tugtest.text.Place;

/**
 * Writes {@code report.gitlab.json}: every finding that no waiver covers, a shared one once. The
 * format knows one place for each, so the others stand in the description.
 */
public final class GitlabReport implements ReportWriter {
  private static final int MOST_PLACES = 8;

  /** The file it writes. */
  public static final String FILE = "report.gitlab.json";

  @Override
  public String format() {
    return "gitlab";
  }

  @Override
  public void write(Report report, Sink sink) throws IOException {
    JsonStream.write(sink.open(FILE), json -> write(report, json));
  }

  private static void write(Report report, JsonStream json) {
    Fingerprint fingerprints = new Fingerprint();
    Set<Finding> written = new HashSet<>();
    json.array();
    for (HarnessReport harness : report.harnesses()) {
      for (CheckedFinding checked : harness.result().standing()) {
        Finding finding = checked.finding();
        if (written.add(finding)) {
          write(report, finding, fingerprints.of(harness.root(), finding), json);
        }
      }
    }
    json.end();
  }

  private static void write(Report report, Finding finding, String fingerprint, JsonStream json) {
    Place place = finding.at().get(0);
    json.object()
        .text("description", PrintableText.of(description(report, finding)))
        .text("check_name", finding.rule())
        .text("fingerprint", fingerprint)
        .text("severity", severity(finding.level()));
    json.object("location").text("path", report.path(place.file()));
    json.object("lines").count("begin", place.line()).end();
    json.end().end();
  }

  private static String description(Report report, Finding finding) {
    StringBuilder text = new StringBuilder(finding.message());
    List<Place> others = finding.at().subList(1, finding.at().size());
    int shown = others.size() > MOST_PLACES ? MOST_PLACES - 1 : others.size();
    for (Place other : others.subList(0, shown)) {
      text.append("; see ").append(report.shown(other));
    }
    if (shown < others.size()) {
      text.append(" and ").append(others.size() - shown).append(" more places");
    }
    return text.toString();
  }

  private static String severity(Level level) {
    return switch (level) {
      case ERROR -> "critical";
      case WARNING -> "major";
      case NOTE -> "info";
    };
  }
}
