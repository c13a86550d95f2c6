package org.tugtest.rule.built;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class ReadingJoinedTest {
  private static Judged judged(String... lines) {
    return Front.readings(lines).judged(new ReadingJoined());
  }

  @Test
  void apartIsFine() {
    Judged judged = judged("X1:1,X1:2,,no,,", "X1:1,X2:2,100,,,", "X2:1,X2:2,1000000,,insulation,");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void joinedIsFound() {
    Judged judged = judged("X1:1,X1:2,,yes,,");
    assertThat(judged.messages())
        .containsExactly("X1:1 to X1:2 reads joined; nothing should join them");
    assertThat(judged.subjects()).containsExactly("connectors/X1:1");
  }

  @Test
  void fewOhmsAreAJointBelowTheLimit() {
    assertThat(judged("X1:1,X1:2,99.9,,,").messages())
        .containsExactly("X1:1 to X1:2 reads 99.9 ohm; nothing should join them");
    assertThat(judged("X1:1,X1:2,100,,,").messages()).isEmpty();
    assertThat(judged("X1:1,X1:2,100.1,,,").messages()).isEmpty();
  }

  @Test
  void insulationHasALimitOfItsOwn() {
    assertThat(judged("X1:1,X1:2,999999,,insulation,").messages()).hasSize(1);
    assertThat(judged("X1:1,X1:2,1000000,,insulation,").messages()).isEmpty();
    assertThat(judged("X1:1,X1:2,1000001,,insulation,").messages()).isEmpty();
    assertThat(judged("X1:1,X1:2,500,yes,insulation,").messages()).hasSize(1);
  }

  @Test
  void whatLiesBetweenInADeviceIsNamed() {
    assertThat(judged("LAMP:1,LAMP:2,2,,,").findings().get(0).details())
        .containsExactly(
            "between them: BAT.cell and LAMP.bulb; measure with that unplugged, pulled or open");
  }

  @Test
  void pointsThatAreJoinedAreNotItsMatter() {
    assertThat(judged("X1:1,X2:1,,yes,,").coverage().subjects()).isZero();
  }
}
