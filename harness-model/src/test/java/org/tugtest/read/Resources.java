package org.tugtest.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Texts that lie beside the tests. */
final class Resources {
  private Resources() {}

  static String text(String name) {
    try (InputStream stream = Resources.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalArgumentException("no resource " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
