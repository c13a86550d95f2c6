package org.tugtest.goal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/**
 * The standard output of the process itself. Maven 4 puts {@code [INFO]} before lines that a plugin
 * prints the usual way, and a CI system would not know its commands again.
 */
final class RawOutput implements Consumer<String> {
  @SuppressWarnings("resource") // closing it would close the standard output
  @Override
  public void accept(String line) {
    System.out.flush();
    try {
      new FileOutputStream(FileDescriptor.out)
          .write((line + "\n").getBytes(StandardCharsets.UTF_8));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
