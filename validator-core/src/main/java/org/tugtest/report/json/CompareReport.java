package org.tugtest.report.json;

import java.io.IOException;
import org.tugtest.report.JsonStream;
import org.tugtest.report.Report;
import org.tugtest.report.ReportWriter;
import org.tugtest.report.Sink;

/**
 * Writes {@code compare.json}, as {@code org/tugtest/schema/compare-1.schema.json} describes it:
 * {@code report.json} with what each root changes against its baseline.
 */
public final class CompareReport implements ReportWriter {
  /** The file it writes. */
  public static final String FILE = "compare.json";

  @Override
  public String format() {
    return "json";
  }

  @Override
  public void write(Report report, Sink sink) throws IOException {
    JsonStream.write(
        sink.open(FILE),
        json ->
            JsonReport.write(
                report,
                json,
                (harness, more) -> {
                  new ComparedJson(harness, more).write();
                  new AsBuiltJson(report, harness, more).write();
                }));
  }
}
