package org.tugtest.report.markdown;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.tugtest.report.Report;
import org.tugtest.report.ReportWriter;
import org.tugtest.report.Sink;

/**
 * Writes {@code compare.md}, the comment under a merge request: under 60,000 bytes whatever there
 * is to say; it says what it cut.
 */
public final class CompareMarkdown implements ReportWriter {
  /** The file it writes. */
  public static final String FILE = "compare.md";

  @Override
  public String format() {
    return "markdown";
  }

  @Override
  public void write(Report report, Sink sink) throws IOException {
    byte[] page = ComparePage.of(report).getBytes(StandardCharsets.UTF_8);
    try (OutputStream out = sink.open(FILE)) {
      out.write(page);
    }
  }
}
