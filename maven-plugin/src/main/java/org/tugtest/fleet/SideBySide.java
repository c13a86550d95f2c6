package org.tugtest.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/** Does the same work for many roots on a few threads; results come in the order of the work. */
final class SideBySide implements AutoCloseable {
  private static final long LOOK_MILLIS = 200;
  private final ExecutorService threads;
  private final Progress progress;

  SideBySide(int threads, Progress progress) {
    ClassLoader loader = SideBySide.class.getClassLoader();
    this.threads =
        Executors.newFixedThreadPool(
            threads,
            work -> {
              Thread thread = new Thread(work, "tugtest");
              thread.setDaemon(true);
              thread.setContextClassLoader(loader);
              return thread;
            });
    this.progress = progress;
  }

  /** All results; the first work that broke breaks this too, with what it threw. */
  <T> List<T> all(String doing, List<Callable<T>> work) throws InterruptedException {
    ExecutorCompletionService<T> done = new ExecutorCompletionService<>(threads);
    List<Future<T>> futures = new ArrayList<>();
    work.forEach(piece -> futures.add(done.submit(piece)));
    int ready = 0;
    while (ready < futures.size()) {
      if (done.poll(LOOK_MILLIS, TimeUnit.MILLISECONDS) != null) {
        ready++;
      }
      progress.at(doing, ready, futures.size());
    }
    List<T> results = new ArrayList<>();
    for (Future<T> future : futures) {
      try {
        results.add(future.get());
      } catch (ExecutionException broken) {
        if (broken.getCause() instanceof OutOfMemoryError full) {
          throw full;
        }
        throw new IllegalStateException(broken.getCause());
      }
    }
    return results;
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
