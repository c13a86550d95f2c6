package org.tugtest.report;

import java.io.IOException;
import java.io.OutputStream;

/** Where the files of a report go. Writers never open a file themselves. */
public interface Sink {
  /**
   * A stream for the file at {@code path} (relative, with {@code /}); the writer closes it.
   *
   * @throws IOException when it cannot be made
   */
  OutputStream open(String path) throws IOException;
}
