package org.tugtest.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.tugtest.read.ReadLimits;

/** One file that a person names, wherever it is. */
public final class OneFile {
  private OneFile() {}

  /**
   * Its content, up to the greatest size of a harness file.
   *
   * @throws IOException when it is not there, no plain file or too long; the message says why in a
   *     few words without the path
   */
  public static byte[] read(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new IOException(Files.exists(file) ? "it is no plain file" : "it is not there");
    }
    long most = ReadLimits.STANDARD.bytes();
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(Math.toIntExact(most + 1));
      if (bytes.length > most) {
        throw new IOException("it is over " + most + " bytes long");
      }
      return bytes;
    } catch (FileSystemException failed) {
      throw new IOException(DiskFiles.reason(failed), failed);
    }
  }
}
