package org.tugtest.rule.built;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class BuiltThinnerTest {
  private static Judged judged(String at, String more) {
    return Front.entries(Front.entry("1", "re-gauged", at, more)).judged(new BuiltThinner());
  }

  @Test
  void thinnerIsFoundEqualAndThickerAreNot() {
    assertThat(judged("wires/W1", "\"planned\": \"w1.0\", \"built\": 1.01").messages()).isEmpty();
    assertThat(judged("wires/W1", "\"planned\": \"w1.0\", \"built\": 1.0").messages()).isEmpty();
    Judged thinner = judged("wires/W1", "\"planned\": \"w1.0\", \"built\": 0.99");
    assertThat(thinner.messages())
        .containsExactly("wire W1 was built of 0.99 instead of w1.0; nobody has accepted that");
    assertThat(thinner.findings().get(0).measured())
        .hasToString("Measured[actual=0.99, limit=1.0, unit=mm2, bound=AT_LEAST]");
  }

  @Test
  void partsAndGaugesHaveAreasToo() {
    assertThat(judged("wires/W1", "\"built\": \"w0.5\"").messages()).hasSize(1);
    assertThat(judged("wires/W1", "\"built\": \"18\"").messages())
        .as("AWG 18 is 0.823 mm2 (ASTM B258)")
        .hasSize(1);
    assertThat(judged("wires/W1", "\"built\": \"16\"").messages()).as("1.31 mm2").isEmpty();
  }

  @Test
  void acceptedIsFine() {
    Judged judged = judged("wires/W1", "\"built\": \"w0.5\", \"accepted\": true");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void unknownSizeIsNotJudged() {
    assertThat(judged("wires/W1", "\"built\": \"left over\"").coverage().notJudged()).isEqualTo(1);
    assertThat(judged("wires/W4", "\"built\": 0.5").coverage().missing().keySet())
        .containsExactly("its area, as planned or as built, is not known");
  }
}
