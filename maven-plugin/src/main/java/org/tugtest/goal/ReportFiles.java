package org.tugtest.goal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;
import org.tugtest.files.DiskSink;
import org.tugtest.report.Report;
import org.tugtest.report.ReportWriter;
import org.tugtest.report.gitlab.GitlabReport;
import org.tugtest.report.html.CompareHtml;
import org.tugtest.report.html.HtmlReport;
import org.tugtest.report.json.CompareReport;
import org.tugtest.report.json.JsonReport;
import org.tugtest.report.junit.JunitReport;
import org.tugtest.report.markdown.CompareMarkdown;
import org.tugtest.report.markdown.MarkdownReport;
import org.tugtest.report.sarif.SarifReport;
import org.tugtest.report.sheets.rework.ReworkWriter;

/** The reports that are written, in the order in which a person would open them. */
record ReportFiles(List<ReportWriter> writers) {
  private static final String GITLAB = "gitlab";
  private static final String JSON = "json";

  /** The writers of these formats, of all when none is named; a CI system's own is added. */
  static ReportFiles of(@Nullable List<String> formats, CiSystem ci) throws MojoExecutionException {
    return of(all(), formats, ci);
  }

  /** The writers of a comparison in these formats, in all when none is named. */
  static ReportFiles ofComparison(@Nullable List<String> formats) throws MojoExecutionException {
    return of(
        List.of(new CompareHtml(), new CompareMarkdown(), new CompareReport(), new ReworkWriter()),
        formats,
        CiSystem.NONE);
  }

  private static ReportFiles of(
      List<ReportWriter> writers, @Nullable List<String> formats, CiSystem ci)
      throws MojoExecutionException {
    Map<String, ReportWriter> known = new LinkedHashMap<>();
    for (ReportWriter writer : writers) {
      known.put(writer.format(), writer);
    }
    List<String> asked = Words.allOf("tugtest.formats", formats, known.keySet());
    List<ReportWriter> chosen = new ArrayList<>();
    for (ReportWriter writer : known.values()) {
      boolean needed = ci == CiSystem.GITLAB && writer.format().equals(GITLAB);
      if (asked.isEmpty() || asked.contains(writer.format()) || needed) {
        chosen.add(writer);
      }
    }
    return new ReportFiles(List.copyOf(chosen));
  }

  private static List<ReportWriter> all() {
    return List.of(
        new HtmlReport(),
        new MarkdownReport(),
        new SarifReport(),
        new JunitReport(),
        new GitlabReport(),
        new JsonReport());
  }

  /** The writer of what a CI system shows of a step. */
  static Optional<ReportWriter> summary() {
    return all().stream().filter(writer -> writer.format().equals("markdown")).findFirst();
  }

  /**
   * Writes them all, or none.
   *
   * @return the one to open
   */
  Optional<Path> write(Report report, Path folder) throws MojoExecutionException {
    try (DiskSink sink = new DiskSink(folder)) {
      Report told =
          report.withJson(writers.stream().anyMatch(writer -> writer.format().equals(JSON)));
      for (ReportWriter writer : writers) {
        writer.write(told, sink);
      }
      return sink.keep().stream().findFirst();
    } catch (IOException failed) {
      throw new MojoExecutionException(
          "the reports cannot be written to " + folder + ": " + failed.getMessage(), failed);
    }
  }
}
