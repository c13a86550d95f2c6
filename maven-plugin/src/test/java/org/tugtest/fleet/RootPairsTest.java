package org.tugtest.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RootPairsTest {
  @Test
  void theSamePathIsTheSameRoot() {
    assertThat(RootPairs.of(List.of("a", "b"), List.of("b", "a", "c")))
        .isEqualTo(Map.of("a", "a", "b", "b"));
  }

  @Test
  void theOneThatIsLeftOnEitherSideWasRenamed() {
    assertThat(RootPairs.of(List.of("a", "new"), List.of("a", "old")))
        .isEqualTo(Map.of("a", "a", "new", "old"));
  }

  @Test
  void whatIsNewBesideAnotherNewOneHasNoBase() {
    assertThat(RootPairs.of(List.of("a", "b"), List.of("old"))).isEmpty();
    assertThat(RootPairs.of(List.of("a"), List.of("old", "older"))).isEmpty();
    assertThat(RootPairs.of(List.of("a"), List.of())).isEmpty();
    assertThat(RootPairs.of(List.of("a", "b"), List.of("a"))).isEqualTo(Map.of("a", "a"));
  }
}
