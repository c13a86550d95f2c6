package org.tugtest.report.markdown;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;

/** A page that never grows over a number of bytes in UTF-8, and says what it left out. */
final class BoundedPage {
  private final StringBuilder text = new StringBuilder();
  private int bytes;

  /** How many bytes it has. */
  int bytes() {
    return bytes;
  }

  /** Adds a text that is known to be short. */
  void add(String block) {
    text.append(block);
    bytes += size(block);
  }

  /**
   * Adds a section: as many entries as fit below {@code most} bytes of the whole page, and how many
   * more there are.
   *
   * @param block what an entry looks like, ending in a line end
   * @param rest what to say of the entries from a number on that do not fit, ending in a line end
   */
  <T> void section(
      String title,
      List<T> entries,
      int most,
      Function<T, String> block,
      Function<List<T>, String> rest) {
    section(title, entries, entries.size(), most, block, rest);
  }

  /** As the other, with at most so many entries in any case. */
  <T> void section(
      String title,
      List<T> entries,
      int mostEntries,
      int most,
      Function<T, String> block,
      Function<List<T>, String> rest) {
    if (entries.isEmpty()) {
      return;
    }
    add(title);
    for (int i = 0; i < entries.size(); i++) {
      String next = block.apply(entries.get(i));
      String left = rest.apply(entries.subList(i, entries.size()));
      if (i >= mostEntries || bytes + size(next) + size(left) > most) {
        add(left);
        return;
      }
      add(next);
    }
  }

  private static int size(String block) {
    return block.getBytes(StandardCharsets.UTF_8).length;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
