package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;

/** What a writer writes. */
public final class Written {
  private Written() {}

  /** The text of the one file that a writer writes, after looking that it was closed. */
  public static String by(ReportWriter writer, Report report) {
    MemorySink sink = new MemorySink();
    try {
      writer.write(report, sink);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    assertThat(sink.leftOpen()).isEmpty();
    assertThat(sink.paths()).hasSize(1);
    return sink.text(sink.paths().iterator().next());
  }
}
