package org.tugtest.read;

import java.util.Arrays;
import java.util.List;

/**
 * The files a harness may be read from: a folder on disk, the content of git at a revision, or
 * memory. Paths are relative to the harness folder, with {@code /}; shared libraries outside it
 * have paths that begin with {@code ../}. Implementations must be safe for several threads.
 */
public interface SourceFiles {
  /** How the message of a file that does not exist begins. */
  String MISSING = "is not there";

  /** Every file that may be a root, a part, a record or a reading, sorted by path. */
  List<String> paths();

  /**
   * The content of the file at {@code path}; never throws for what may happen to a file. A path
   * that leads out of the allowed folders, a symbolic link, a file that is not there or is larger
   * than {@link ReadLimits#bytes()} is {@link Content.Refused}.
   */
  Content open(String path);

  /** What came of opening a file. */
  sealed interface Content {
    /** Its bytes; the receiver must not change them. */
    @SuppressWarnings("ArrayRecordComponent") // copying every file once more buys nothing
    record Bytes(byte[] bytes) implements Content {
      @Override
      public boolean equals(Object other) {
        return other instanceof Bytes that && Arrays.equals(bytes, that.bytes);
      }

      @Override
      public int hashCode() {
        return Arrays.hashCode(bytes);
      }
    }

    /**
     * Why it cannot be read.
     *
     * @param message what is wrong, in a sentence that goes on after the path
     * @param remedy what to do
     */
    record Refused(String message, String remedy) implements Content {}
  }
}
