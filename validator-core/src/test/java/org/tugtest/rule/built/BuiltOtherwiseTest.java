package org.tugtest.rule.built;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class BuiltOtherwiseTest {
  private static final String MOVED = "\"planned\": \"X1:1\", \"built\": \"X1:3\"";

  private static Judged judged(String kind, String at, String more) {
    return Front.entries(Front.entry("1", kind, at, more)).judged(new BuiltOtherwise());
  }

  @Test
  void acceptedDeviationIsFine() {
    Judged judged = judged("re-pinned", "wires/W1", MOVED + ", \"accepted\": true");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void wireInAnotherCavityIsAnErrorUntilItIsAccepted() {
    Judged judged = judged("re-pinned", "wires/W1", MOVED);
    assertThat(judged.messages())
        .containsExactly("wire W1 was built into X1:3 instead of X1:1; nobody has accepted that");
    assertThat(judged.subjects()).containsExactly("wires/W1");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.ERROR);
    assertThat(judged.findings().get(0).details()).containsExactly("reason: found at the bench");
    assertThat(judged.findings().get(0).at().get(0).file()).isEqualTo("built/41.record.json");
    assertThat(judged.findings().get(0).at().get(0).line()).isEqualTo(2);
  }

  /** Today is 2026-11-25. */
  @Test
  void acceptanceHoldsThroughItsLastDay() {
    String until = MOVED + ", \"accepted\": true, \"until\": \"2026-11-%s\"";
    assertThat(judged("re-pinned", "wires/W1", until.formatted("26")).messages()).isEmpty();
    assertThat(judged("re-pinned", "wires/W1", until.formatted("25")).messages()).isEmpty();
    assertThat(judged("re-pinned", "wires/W1", until.formatted("24")).messages())
        .containsExactly(
            "wire W1 was built into X1:3 instead of X1:1; it was accepted until 2026-11-24");
  }

  @Test
  void acceptedButNotSafeIsFound() {
    assertThat(
            judged("re-pinned", "wires/W1", MOVED + ", \"accepted\": true, \"safe\": \"no\"")
                .messages())
        .containsExactly(
            "wire W1 was built into X1:3 instead of X1:1; it is accepted, and yet noted as not safe"
                + " to run");
    assertThat(
            judged(
                    "re-pinned",
                    "wires/W1",
                    MOVED + ", \"accepted\": true, \"safe\": \"until-checked\"")
                .messages())
        .isEmpty();
  }

  @Test
  void whatWasAddedOrLeftOutIsFound() {
    assertThat(
            judged("added", "wires/W9", "\"built\": {\"from\": \"X1:3\", \"to\": \"X2:3\"}")
                .messages())
        .containsExactly("wire W9 was added from X1:3 to X2:3; nobody has accepted that");
    assertThat(judged("left-out", "wires/W2", "\"by\": \"bench\"").messages())
        .containsExactly("wire W2 was left out; nobody has accepted that");
    assertThat(judged("re-pinned", "connectors/X1:2", "\"built\": \"X1:3\"").messages())
        .containsExactly("wire W2 was built into X1:3 instead of X1:2; nobody has accepted that");
  }

  @Test
  void whatOnlySitsElsewhereIsAWarning() {
    Judged judged = judged("moved", "splices/S1", "\"planned\": \"nose\", \"built\": \"dash\"");
    assertThat(judged.messages())
        .containsExactly("S1 was built at dash instead of nose; nobody has accepted that");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
  }

  @Test
  void otherKindsAreNotItsMatter() {
    Judged judged = judged("re-coloured", "wires/W1", "\"built\": \"OG\"");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().subjects()).isZero();
  }

  @Test
  void twoEndsOfOneWireAreTwoFindings() {
    Judged judged =
        Front.entries(
                Front.entry("1", "re-pinned", "wires/W1", MOVED)
                    + ", "
                    + Front.entry(
                        "2", "re-pinned", "wires/W1", "\"planned\": \"X2:1\", \"built\": \"X2:3\""))
            .judged(new BuiltOtherwise());
    assertThat(judged.findings()).hasSize(2);
    assertThat(judged.findings().stream().map(f -> f.identity()).distinct()).hasSize(2);
  }
}
