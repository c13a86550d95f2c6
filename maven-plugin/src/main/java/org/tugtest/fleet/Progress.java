package org.tugtest.fleet;

import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/** Tells how far long work is: nothing in the first two seconds, then a line every two seconds. */
public final class Progress {
  private static final long QUIET_NANOS = TimeUnit.SECONDS.toNanos(2);
  private final Consumer<String> lines;
  private final LongSupplier nanos;
  private final long start;
  private long last;

  /**
   * Begins now.
   *
   * @param lines where lines go
   * @param nanos a clock that only goes forward
   */
  public Progress(Consumer<String> lines, LongSupplier nanos) {
    this.lines = lines;
    this.nanos = nanos;
    this.start = nanos.getAsLong();
    this.last = start;
  }

  /** So much is done of so much; prints it when it is time to. */
  void at(String doing, int done, int of) {
    long now = nanos.getAsLong();
    if (now - last >= QUIET_NANOS) {
      last = now;
      long seconds = TimeUnit.NANOSECONDS.toSeconds(now - start);
      lines.accept(doing + ": " + done + " of " + of + " roots after " + seconds + " s");
    }
  }
}
