package org.tugtest.report.html;

import gg.jte.html.HtmlTemplateOutput;
import gg.jte.output.WriterOutput;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.function.Consumer;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.ReportWriter;
import org.tugtest.report.Sink;

/**
 * Writes {@code report.html}: one file that opens from disk, needs no network and prints on A4. For
 * several roots it is an index, with a page {@code report-ROOT.html} for each beside it.
 */
public final class HtmlReport implements ReportWriter {
  private static final String FILE = "report.html";

  @Override
  public String format() {
    return "html";
  }

  @Override
  public void write(Report report, Sink sink) throws IOException {
    Assets assets = Assets.load();
    if (report.harnesses().size() == 1) {
      HarnessReport only = report.harnesses().get(0);
      Frame frame = Frame.of(report, only, "", assets);
      writePage(sink, FILE, HarnessPage.of(report, only, frame));
      return;
    }
    Map<String, String> pages = PageNames.of(report.harnesses());
    IndexPage index = IndexPage.of(report, pages, Frame.ofIndex(report, assets));
    write(sink, FILE, out -> JteindexGenerated.render(out, null, index));
    for (HarnessReport harness : report.harnesses()) {
      Frame frame = Frame.of(report, harness, FILE, assets);
      writePage(sink, pages.get(harness.root()), HarnessPage.of(report, harness, frame));
    }
  }

  private static void writePage(Sink sink, String file, HarnessPage page) throws IOException {
    write(sink, file, out -> JteharnessGenerated.render(out, null, page));
  }

  private static void write(Sink sink, String file, Consumer<HtmlTemplateOutput> template)
      throws IOException {
    try (Writer writer =
        new BufferedWriter(new OutputStreamWriter(sink.open(file), StandardCharsets.UTF_8))) {
      template.accept(new PageOutput(new WriterOutput(writer)));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
