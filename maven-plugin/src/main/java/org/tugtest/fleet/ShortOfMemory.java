package org.tugtest.fleet;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.Optional;

/** What to do when the heap of Java is too small for what is checked. */
public final class ShortOfMemory {
  private static final long MEBI = 1L << 20;

  private ShortOfMemory() {}

  /** What to do, in one sentence, in the Java that this runs in. */
  public static Optional<String> told(OutOfMemoryError full, String variable) {
    long heap = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getMax();
    return told(full, variable, heap);
  }

  /**
   * What to do, in one sentence; empty when it is not the heap that ran out.
   *
   * @param variable by which this Java is given options
   * @param heap how large it may grow, in bytes
   */
  static Optional<String> told(OutOfMemoryError full, String variable, long heap) {
    String what = String.valueOf(full.getMessage());
    if (!what.contains("heap space") && !what.contains("GC overhead")) {
      return Optional.empty();
    }
    long now = Math.max(1, heap / MEBI);
    return Optional.of(
        String.format(
            Locale.ROOT,
            "the heap of %,d MiB that Java may use here is too small for this; give it more, as"
                + " with %s=-Xmx%dm",
            now,
            variable,
            2 * now));
  }
}
