package org.tugtest.report;

import java.io.IOException;

/** Writes a report in one format. It reads the report and alters nothing. */
public interface ReportWriter {
  /** The word for the format in the parameter {@code tugtest.formats}. */
  String format();

  /**
   * Writes it. Equal reports give equal bytes.
   *
   * @throws IOException when the sink cannot take it
   */
  void write(Report report, Sink sink) throws IOException;
}
