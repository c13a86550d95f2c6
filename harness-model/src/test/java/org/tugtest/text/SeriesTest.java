package org.tugtest.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SeriesTest {
  @Test
  void joinsNamesAsPeopleDo() {
    assertThat(Series.and(List.of())).isEmpty();
    assertThat(Series.and(List.of("A"))).isEqualTo("A");
    assertThat(Series.and(List.of("A", "B"))).isEqualTo("A and B");
    assertThat(Series.and(List.of("A", "B", "C"))).isEqualTo("A, B and C");
  }

  @Test
  void countsWhatIsTooMany() {
    List<String> names = List.of("A", "B", "C", "D");
    assertThat(Series.and(names, 4)).isEqualTo("A, B, C and D");
    assertThat(Series.and(names, 3)).isEqualTo("A, B, C and 1 more");
    assertThat(Series.and(names, 1)).isEqualTo("A and 3 more");
  }
}
