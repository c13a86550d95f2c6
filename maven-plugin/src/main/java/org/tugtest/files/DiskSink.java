package org.tugtest.files;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.report.Sink;

/**
 * Puts report files into a folder. Each is written beside its place; {@link #keep} moves all of
 * them there at once, so that a writer that breaks leaves no half report. Not for several threads.
 */
public final class DiskSink implements Sink, AutoCloseable {
  private final Path folder;
  private final Map<Path, Path> written = new LinkedHashMap<>();

  /** A sink for {@code folder}, which is made when the first file is. */
  public DiskSink(Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
  }

  @Override
  public OutputStream open(String path) throws IOException {
    Path target = folder.resolve(path).normalize();
    if (!target.startsWith(folder) || target.equals(folder)) {
      throw new IOException(path + " lies outside the folder of the reports");
    }
    Path parent = SafeWrite.parentOf(target);
    SafeWrite.makeFolder(parent);
    Path beside = SafeWrite.freeNameBeside(target);
    written.put(target, beside);
    return Files.newOutputStream(beside, StandardOpenOption.TRUNCATE_EXISTING);
  }

  /**
   * Moves everything written to its place, over what an earlier run left there.
   *
   * @return them, in the order they were opened
   * @throws IOException when a file cannot be moved
   */
  public List<Path> keep() throws IOException {
    List<Path> kept = List.copyOf(written.keySet());
    for (Map.Entry<Path, Path> entry : written.entrySet()) {
      SafeWrite.moveOver(entry.getValue(), entry.getKey());
    }
    written.clear();
    return kept;
  }

  /** Drops whatever was not kept. */
  @Override
  public void close() throws IOException {
    for (Path beside : written.values()) {
      Files.deleteIfExists(beside);
    }
    written.clear();
  }
}
