package org.tugtest.read;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Files that exist in memory only. */
public final class MemoryFiles implements SourceFiles {
  private final Map<String, byte[]> contents;

  private MemoryFiles(Map<String, byte[]> contents) {
    this.contents = contents;
  }

  /** One file. */
  public static MemoryFiles of(String path, String text) {
    return of(Map.of(path, text));
  }

  /** Texts by path, kept as UTF-8. */
  public static MemoryFiles of(Map<String, String> texts) {
    TreeMap<String, byte[]> contents = new TreeMap<>();
    texts.forEach((path, text) -> contents.put(path, text.getBytes(StandardCharsets.UTF_8)));
    return new MemoryFiles(contents);
  }

  /** Bytes by path, for files that need not be UTF-8. */
  public static MemoryFiles ofBytes(Map<String, byte[]> bytes) {
    TreeMap<String, byte[]> contents = new TreeMap<>();
    bytes.forEach((path, content) -> contents.put(path, content.clone()));
    return new MemoryFiles(contents);
  }

  @Override
  public List<String> paths() {
    return List.copyOf(contents.keySet());
  }

  @Override
  public Content open(String path) {
    byte[] bytes = contents.get(path);
    return bytes == null
        ? new Content.Refused(MISSING, "Correct the path, or add the file.")
        : new Content.Bytes(bytes);
  }
}
