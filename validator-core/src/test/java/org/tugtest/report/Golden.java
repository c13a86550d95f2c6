package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files that hold what a report of the sample looks like, compared whole. */
public final class Golden {
  private static final Path FOLDER = Path.of("src/test/resources/org/tugtest/report");
  private static final String WRITE = "tugtest.golden.write";

  private Golden() {}

  /** Holds a text against the file of that name, or writes the file when told to. */
  public static void holds(String name, String text) {
    Path file = FOLDER.resolve(name);
    try {
      if (Boolean.getBoolean(WRITE)) {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
      }
      assertThat(text)
          .as("%s; when the change is meant, run this test with -D%s=true", name, WRITE)
          .isEqualTo(Files.exists(file) ? Files.readString(file) : "");
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
