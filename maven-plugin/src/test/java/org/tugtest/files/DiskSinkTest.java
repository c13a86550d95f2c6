package org.tugtest.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DiskSinkTest {
  @TempDir Path top;

  @Test
  void leavesNothingWhenNotKept() throws IOException {
    Path folder = top.resolve("reports");
    try (DiskSink sink = new DiskSink(folder)) {
      write(sink, "report.md", "half");
    }

    try (Stream<Path> entries = Files.list(folder)) {
      assertThat(entries).isEmpty();
    }
  }

  @Test
  void keepsOverAnEarlierReport() throws IOException {
    Path folder = top.resolve("reports");
    for (String text : new String[] {"first, and longer", "second"}) {
      try (DiskSink sink = new DiskSink(folder)) {
        write(sink, "report.md", text);
        write(sink, "pages/car.html", text);
        sink.keep();
      }
    }

    assertThat(folder.resolve("report.md")).hasContent("second");
    assertThat(folder.resolve("pages/car.html")).hasContent("second");
    try (Stream<Path> entries = Files.walk(folder)) {
      assertThat(entries.filter(Files::isRegularFile)).hasSize(2);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"../out.md", "", "pages/../../out.md"})
  void refusesToLeaveItsFolder(String path) throws IOException {
    try (DiskSink sink = new DiskSink(top.resolve("reports"))) {
      assertThatThrownBy(() -> sink.open(path))
          .isInstanceOf(IOException.class)
          .hasMessage(path + " lies outside the folder of the reports");
    }
  }

  private static void write(DiskSink sink, String path, String text) throws IOException {
    try (OutputStream out = sink.open(path)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }
}
