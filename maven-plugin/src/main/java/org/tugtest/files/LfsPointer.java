package org.tugtest.files;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The few lines that stand in git for a file whose content Git LFS keeps elsewhere. They begin with
 * the same line always (Git LFS, specification of the pointer, version 1).
 */
public final class LfsPointer {
  private static final byte[] BEGINNING =
      "version https://git-lfs.github.com/spec/v1\n".getBytes(StandardCharsets.US_ASCII);

  private LfsPointer() {}

  /** Whether these bytes are such a pointer. */
  public static boolean is(byte[] content) {
    return content.length >= BEGINNING.length
        && Arrays.equals(content, 0, BEGINNING.length, BEGINNING, 0, BEGINNING.length);
  }
}
