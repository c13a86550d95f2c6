package org.tugtest.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.text.Place;
import org.tugtest.text.Places;

class DraftTest {
  private static final Places HERE = (thing, names) -> new Place("a.json", 1, 1, 1, 1, "/wires/W1");

  @Test
  void aSubjectSaidTwiceCountsOnce() {
    Finding finding =
        Finding.on(Subject.wire("W1"))
            .and(Subject.wire("W2"))
            .and(Subject.wire("W1"))
            .message("m")
            .remedy("r")
            .finish("some-rule", Level.NOTE, HERE);
    assertThat(finding.subjects()).containsExactly(Subject.wire("W1"), Subject.wire("W2"));
  }
}
