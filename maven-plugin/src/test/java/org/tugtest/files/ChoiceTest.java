package org.tugtest.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ChoiceTest {
  @Test
  void withoutPatternsTakesEverything() {
    assertThat(Choice.ALL.takes("any/file.json")).isTrue();
    assertThat(Choice.of(List.of(" "), List.of(""))).isEqualTo(Choice.ALL);
  }

  @Test
  void anExclusionOutweighsAnInclusion() {
    Choice choice = Choice.of(List.of("looms/**"), List.of("**/old*.json"));

    assertThat(choice.takes("looms/nose.json")).isTrue();
    assertThat(choice.takes("looms/old-nose.json")).isFalse();
    assertThat(choice.takes("parts.json")).isFalse();
  }

  @Test
  void namesPatternsThatFitNothing() {
    Choice choice = Choice.of(List.of("looms/**", "lomos/**"), List.of("x.json"));

    assertThat(choice.idle(List.of("looms/nose.json"))).containsExactly("lomos/**", "x.json");
  }
}
