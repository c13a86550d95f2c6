package org.tugtest.threads;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Does pieces of work that do not depend on each other on a few threads, the calling one among
 * them. Each piece is begun in the order it is given.
 */
public final class ManyHands {
  private static final int MOST = 8;

  private ManyHands() {}

  /**
   * Does all of the work.
   *
   * @throws Error or RuntimeException the first that a piece threw; pieces not begun then are left
   */
  public static void all(List<Runnable> work) {
    AtomicInteger next = new AtomicInteger();
    AtomicReference<Throwable> broken = new AtomicReference<>();
    Runnable hand =
        () -> {
          for (int i = next.getAndIncrement(); i < work.size(); i = next.getAndIncrement()) {
            try {
              work.get(i).run();
            } catch (RuntimeException | Error thrown) {
              broken.compareAndSet(null, thrown);
              next.set(work.size());
            }
          }
        };
    int hands = Math.min(Math.min(MOST, ForkJoinPool.getCommonPoolParallelism() + 1), work.size());
    List<Thread> others = new ArrayList<>();
    for (int i = 1; i < hands; i++) {
      Thread other = new Thread(hand, "tugtest-hand-" + i);
      other.setDaemon(true);
      other.setContextClassLoader(Thread.currentThread().getContextClassLoader());
      others.add(other);
      other.start();
    }
    hand.run();
    others.forEach(ManyHands::join);
    Throwable thrown = broken.get();
    if (thrown instanceof Error error) {
      throw error;
    } else if (thrown instanceof RuntimeException runtime) {
      throw runtime;
    }
  }

  /** Waits to the end; an interrupt meanwhile is kept for who called. */
  private static void join(Thread thread) {
    boolean interrupted = false;
    while (true) {
      try {
        thread.join();
        break;
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
