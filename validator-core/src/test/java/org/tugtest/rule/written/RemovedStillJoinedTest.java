package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class RemovedStillJoinedTest {
  private static Judged judged(String loom, String wire) {
    return Judged.of(
        new RemovedStillJoined(),
        "{\"format\": 1, \"sketch\": true"
            + loom
            + ", \"wires\": {\"W1\": {\"from\": \"A:1\""
            + wire
            + "}}}");
  }

  private static final String PLANNED = ", \"loom\": {\"id\": \"rear\"}";
  private static final String FOUND = ", \"loom\": {\"id\": \"rear\", \"stage\": \"found\"}";
  private static final String REMOVE = ", \"to\": \"B:1\", \"decision\": \"remove\"";

  @Test
  void inAFoundLoomADecisionIsAPlan() {
    Judged judged = judged(FOUND, REMOVE);
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void wireThatIsKeptIsFineAndOneWithoutADecisionNotMeant() {
    assertThat(judged(PLANNED, ", \"to\": \"B:1\", \"decision\": \"keep\"").messages()).isEmpty();
    assertThat(judged(PLANNED, ", \"to\": \"B:1\"").coverage().subjects()).isZero();
  }

  @Test
  void inAPlannedLoomItIsStillBuilt() {
    Judged judged = judged(PLANNED, REMOVE);
    assertThat(judged.messages())
        .containsExactly(
            "wire W1 shall be removed and still joins A:1 to B:1 in the planned loom rear");
    assertThat(judged.subjects()).containsExactly("wires/W1");
  }

  @Test
  void looseWireCountsAsPlanned() {
    assertThat(judged("", REMOVE).messages())
        .containsExactly("wire W1 shall be removed and still joins A:1 to B:1");
  }

  @Test
  void wireThatJoinsNothingMoreIsNotJudged() {
    Judged judged = judged(PLANNED, ", \"decision\": \"remove\"");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }
}
