package org.tugtest.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private final List<String> lines = new ArrayList<>();
  private long nanos;
  private final Progress progress = new Progress(lines::add, () -> nanos);

  @Test
  void saysNothingInTheFirstTwoSeconds() {
    after(1_999);
    progress.at("reading", 1, 9);

    assertThat(lines).isEmpty();
  }

  @Test
  void thenALineEveryTwoSeconds() {
    after(2_000);
    progress.at("reading", 2, 9);
    after(3_999);
    progress.at("reading", 4, 9);
    after(4_500);
    progress.at("checking", 5, 9);

    assertThat(lines)
        .containsExactly("reading: 2 of 9 roots after 2 s", "checking: 5 of 9 roots after 4 s");
  }

  private void after(long millis) {
    nanos = TimeUnit.MILLISECONDS.toNanos(millis);
  }
}
