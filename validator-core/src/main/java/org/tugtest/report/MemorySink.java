package org.tugtest.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Keeps the files of a report in memory. Not for several threads. */
public final class MemorySink implements Sink {
  private final SortedMap<String, byte[]> files = new TreeMap<>();
  private final Set<String> open = new TreeSet<>();

  @Override
  public OutputStream open(String path) throws IOException {
    if (files.containsKey(path) || !open.add(path)) {
      throw new IOException(path + " is written twice");
    }
    return new ByteArrayOutputStream() {
      @Override
      public void close() {
        if (open.remove(path)) {
          files.put(path, toByteArray());
        }
      }
    };
  }

  /** The paths of all files that were written and closed. */
  public Set<String> paths() {
    return Set.copyOf(files.keySet());
  }

  /** The paths of files that a writer did not close. */
  public Set<String> leftOpen() {
    return Set.copyOf(open);
  }

  /**
   * The bytes of a file; an {@link IllegalArgumentException} when it was not written and closed.
   */
  public byte[] bytes(String path) {
    byte[] found = files.get(path);
    if (found == null) {
      throw new IllegalArgumentException(path + " was not written; there are " + files.keySet());
    }
    return found.clone();
  }

  /** The text of a file in UTF-8. */
  public String text(String path) {
    return new String(bytes(path), StandardCharsets.UTF_8);
  }
}
