package org.tugtest.rule.built;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class BuiltOtherColourTest {
  private static Judged judged(String at, String more) {
    return Front.entries(Front.entry("1", "re-coloured", at, more)).judged(new BuiltOtherColour());
  }

  @Test
  void acceptedIsFine() {
    Judged judged = judged("wires/W1", "\"built\": \"OG\", \"accepted\": true");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void anotherColourIsFound() {
    assertThat(judged("wires/W1", "\"planned\": \"RD\", \"built\": \"OG\"").messages())
        .containsExactly("wire W1 was built OG instead of RD; nobody has accepted that");
    assertThat(judged("wires/W3", "\"built\": \"OG\"").messages())
        .containsExactly("wire W3 was built OG; nobody has accepted that");
  }
}
