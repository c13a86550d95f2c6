package org.tugtest.report.sheets.ringout;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.tugtest.report.Sink;
import org.tugtest.report.sheets.Document;
import org.tugtest.report.sheets.Scope;
import org.tugtest.report.sheets.Sheet;
import org.tugtest.report.sheets.Stamp;

/**
 * A ring-out sheet with the empty file of readings beside it.
 *
 * @param form its text
 */
record RingOutSheet(Sheet sheet, String form) implements Document {
  @Override
  public Scope scope() {
    return sheet.scope();
  }

  @Override
  public String heading() {
    return sheet.heading();
  }

  @Override
  public String title() {
    return sheet.title();
  }

  @Override
  public String purpose() {
    return sheet.purpose();
  }

  private String file() {
    return scope().folder() + sheet.name() + ".csv";
  }

  @Override
  public List<String> files() {
    List<String> files = new ArrayList<>(sheet.files());
    files.add(file());
    return files;
  }

  @Override
  public void write(Stamp stamp, Sink sink) throws IOException {
    sheet.write(stamp, sink);
    try (OutputStream out = sink.open(file())) {
      out.write(form.getBytes(StandardCharsets.UTF_8));
    }
  }
}
