package org.tugtest.report.html;

import gg.jte.output.WriterOutput;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.ReportWriter;
import org.tugtest.report.Sink;

/**
 * Writes {@code compare.html}: one file that opens from disk, needs no network and prints on A4,
 * with all roots below each other. It stays a page of a few megabytes whatever there is to say: it
 * tells how much it left out, and {@link org.tugtest.report.json.CompareReport} has all.
 */
public final class CompareHtml implements ReportWriter {
  /** The file it writes. */
  public static final String FILE = "compare.html";

  private static final int MOST_NAMED = 60;

  @Override
  public String format() {
    return "html";
  }

  @Override
  public void write(Report report, Sink sink) throws IOException {
    Assets assets = Assets.load();
    boolean one = report.harnesses().size() == 1;
    Frame frame =
        one
            ? Frame.of(report, report.harnesses().get(0), "", assets)
            : Frame.ofIndex(report, assets);
    PageShare share = PageShare.among(report.harnesses().size());
    List<ComparePage> pages = new ArrayList<>();
    for (HarnessReport harness : report.harnesses()) {
      pages.add(ComparePage.of(report, harness, pages.size() + 1, share));
    }
    try (Writer writer =
        new BufferedWriter(new OutputStreamWriter(sink.open(FILE), StandardCharsets.UTF_8))) {
      JtecompareGenerated.render(
          new PageOutput(new WriterOutput(writer)),
          null,
          frame,
          pages,
          FirstOf.of(pages, MOST_NAMED),
          report.json("compare.json"));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
