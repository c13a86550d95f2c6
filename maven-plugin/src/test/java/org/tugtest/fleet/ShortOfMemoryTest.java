package org.tugtest.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;

class ShortOfMemoryTest {
  private static final long HEAP = 2048L << 20;

  @Test
  void aFullHeapIsToldWithWhatToDo() {
    String told =
        "the heap of 2,048 MiB that Java may use here is too small for this; give it more, as with"
            + " MAVEN_OPTS=-Xmx4096m";
    for (String full : new String[] {"Java heap space", "GC overhead limit exceeded"}) {
      assertThat(ShortOfMemory.told(new OutOfMemoryError(full), "MAVEN_OPTS", HEAP)).hasValue(told);
    }
  }

  @Test
  void aLargerHeapIsNotOfferedForWhatItDoesNotMend() {
    for (String other : new String[] {"unable to create native thread", "Metaspace", null}) {
      assertThat(ShortOfMemory.told(new OutOfMemoryError(other), "MAVEN_OPTS", HEAP)).isEmpty();
    }
  }

  @Test
  void itIsSeenFromWorkThatOtherThreadsDo() {
    OutOfMemoryError full = new OutOfMemoryError("Java heap space");
    try (SideBySide work = new SideBySide(2, new Progress(line -> {}, System::nanoTime))) {
      assertThatExceptionOfType(OutOfMemoryError.class)
          .isThrownBy(
              () ->
                  work.all(
                      "checked",
                      List.<Callable<String>>of(
                          () -> "fine",
                          () -> {
                            throw full;
                          })))
          .isSameAs(full);
    }
  }
}
