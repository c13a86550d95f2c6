package org.tugtest.git;

import java.util.Arrays;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;

/** The ids of contents. */
final class Blobs {
  private Blobs() {}

  /** Whether {@code id} is that of this content, or of the same with LF for each CRLF. */
  static boolean holds(ObjectId id, byte[] content) {
    return id.equals(of(content)) || id.equals(of(withoutReturns(content)));
  }

  private static ObjectId of(byte[] content) {
    try (ObjectInserter.Formatter formatter = new ObjectInserter.Formatter()) {
      return formatter.idFor(Constants.OBJ_BLOB, content);
    }
  }

  private static byte[] withoutReturns(byte[] content) {
    byte[] kept = new byte[content.length];
    int length = 0;
    for (int i = 0; i < content.length; i++) {
      boolean dropped = content[i] == '\r' && i + 1 < content.length && content[i + 1] == '\n';
      if (!dropped) {
        kept[length++] = content[i];
      }
    }
    return Arrays.copyOf(kept, length);
  }
}
