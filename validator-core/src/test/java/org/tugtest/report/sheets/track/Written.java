package org.tugtest.report.sheets.track;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.tugtest.report.MemorySink;
import org.tugtest.report.Report;
import org.tugtest.report.sheets.DocumentFolder;

/** The track page alone; for tests. */
final class Written {
  private Written() {}

  /** The page of a report on one root, in memory. */
  static String html(Report report) throws IOException {
    MemorySink sink = new MemorySink();
    new DocumentFolder(List.of(new TrackPage())).write(report, sink);
    return sink.text("track.html");
  }

  /** The same on disk. */
  static Path page(Report report, Path folder) throws IOException {
    Files.createDirectories(folder);
    return Files.writeString(folder.resolve("track.html"), html(report));
  }
}
