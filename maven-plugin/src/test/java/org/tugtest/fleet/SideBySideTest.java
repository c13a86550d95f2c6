package org.tugtest.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SideBySideTest {
  private static final Progress SILENT = new Progress(line -> {}, System::nanoTime);

  @Test
  void resultsComeInTheOrderOfTheWork() throws InterruptedException {
    CountDownLatch secondDone = new CountDownLatch(1);
    Callable<String> first =
        () -> {
          secondDone.await();
          return "first";
        };
    Callable<String> second =
        () -> {
          secondDone.countDown();
          return "second";
        };

    try (SideBySide threads = new SideBySide(2, SILENT)) {
      assertThat(threads.all("working", List.of(first, second))).containsExactly("first", "second");
    }
  }

  @Test
  void moreWorkThanThreads() throws InterruptedException {
    List<Callable<Integer>> work =
        IntStream.range(0, 50).<Callable<Integer>>mapToObj(i -> () -> i).toList();

    try (SideBySide threads = new SideBySide(1, SILENT)) {
      assertThat(threads.all("working", work)).hasSize(50).isSorted();
    }
  }

  @Test
  void workThatBreaksBreaksTheWholeWithItsOwnCause() {
    Callable<String> broken =
        () -> {
          throw new IllegalArgumentException("this one");
        };

    try (SideBySide threads = new SideBySide(2, SILENT)) {
      assertThatThrownBy(() -> threads.all("working", List.of(() -> "fine", broken)))
          .isInstanceOf(IllegalStateException.class)
          .hasRootCauseMessage("this one");
    }
  }

  @Test
  void threadsDoNotKeepTheJvmAlive() throws InterruptedException {
    try (SideBySide threads = new SideBySide(1, SILENT)) {
      Callable<Boolean> daemon = () -> Thread.currentThread().isDaemon();
      assertThat(threads.all("working", List.of(daemon))).containsExactly(true);
    }
  }
}
