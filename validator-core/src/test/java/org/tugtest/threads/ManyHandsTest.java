package org.tugtest.threads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ManyHandsTest {
  @Test
  void everyPieceIsDoneOnce() {
    for (int count : new int[] {0, 1, 2, 1000}) {
      List<Integer> done = Collections.synchronizedList(new ArrayList<>());
      ManyHands.all(IntStream.range(0, count).mapToObj(i -> (Runnable) () -> done.add(i)).toList());
      assertThat(done)
          .containsExactlyInAnyOrderElementsOf(IntStream.range(0, count).boxed().toList());
    }
  }

  @Test
  void whatAPieceThrowsComesToTheCallerAndEndsTheWork() {
    AtomicInteger after = new AtomicInteger();
    List<Runnable> work = new ArrayList<>();
    work.add(
        () -> {
          throw new IllegalStateException("first");
        });
    for (int i = 0; i < 100_000; i++) {
      work.add(after::incrementAndGet);
    }
    assertThatThrownBy(() -> ManyHands.all(work)).hasMessage("first");
    assertThat(after).hasValueLessThan(100_000);
    assertThatThrownBy(
            () ->
                ManyHands.all(
                    List.of(
                        () -> {
                          throw new OutOfMemoryError("none left");
                        })))
        .isInstanceOf(OutOfMemoryError.class);
  }

  @Test
  void anInterruptIsKeptForTheCaller() {
    AtomicInteger done = new AtomicInteger();
    Thread.currentThread().interrupt();
    ManyHands.all(List.of(done::incrementAndGet, done::incrementAndGet, done::incrementAndGet));
    assertThat(Thread.interrupted()).isTrue();
    assertThat(done).hasValue(3);
  }

  @Test
  void classesAreSoughtAsTheCallerDoes() {
    Thread current = Thread.currentThread();
    ClassLoader before = current.getContextClassLoader();
    ClassLoader own = new ClassLoader(before) {};
    List<ClassLoader> seen = Collections.synchronizedList(new ArrayList<>());
    current.setContextClassLoader(own);
    try {
      Runnable look = () -> seen.add(Thread.currentThread().getContextClassLoader());
      ManyHands.all(Collections.nCopies(50, look));
    } finally {
      current.setContextClassLoader(before);
    }
    assertThat(seen).hasSize(50).containsOnly(own);
  }
}
