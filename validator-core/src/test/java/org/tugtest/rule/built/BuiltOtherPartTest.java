package org.tugtest.rule.built;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class BuiltOtherPartTest {
  private static Judged judged(String kind, String at, String more) {
    return Front.entries(Front.entry("1", kind, at, more)).judged(new BuiltOtherPart());
  }

  @Test
  void acceptedIsFine() {
    Judged judged = judged("part", "connectors/X1", "\"built\": \"h3b\", \"accepted\": true");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void anotherPartIsFound() {
    assertThat(
            judged("part", "connectors/X1", "\"planned\": \"h3\", \"built\": \"h3b\"").messages())
        .containsExactly("X1 was built with housing h3b instead of h3; nobody has accepted that");
    assertThat(judged("part", "splices/S1", "\"planned\": \"sp\", \"built\": \"big\"").messages())
        .containsExactly("S1 was built with part big instead of sp; nobody has accepted that");
    assertThat(judged("part", "connectors/X1:1", "\"built\": \"t-gold\"").messages())
        .containsExactly("X1:1 was built with terminal t-gold; nobody has accepted that");
    assertThat(judged("part", "wires/W5.toTerminal", "\"built\": \"ring\"").messages())
        .containsExactly("wire W5 was built with terminal ring; nobody has accepted that");
  }

  @Test
  void thickerOrUnknownWireIsAnotherPartAndAThinnerOneIsNot() {
    assertThat(judged("re-gauged", "wires/W1", "\"built\": 1.5").messages())
        .containsExactly("wire W1 was built of 1.5 instead of w1.0; nobody has accepted that");
    assertThat(judged("re-gauged", "wires/W1", "\"built\": \"left over\"").messages()).hasSize(1);
    assertThat(judged("re-gauged", "wires/W1", "\"built\": 0.5").messages()).isEmpty();
  }
}
