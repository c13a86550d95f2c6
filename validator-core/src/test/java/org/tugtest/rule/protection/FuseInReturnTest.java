package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.rule.protection.Bench.LAMP;
import static org.tugtest.rule.protection.Bench.all;
import static org.tugtest.rule.protection.Bench.fuse;
import static org.tugtest.rule.protection.Bench.wire;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class FuseInReturnTest {
  private static final String SECOND =
      "\"PUMP\": {\"elements\": {\"p\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\"}}}";

  private static Judged judged(String devices, String wires) {
    return Bench.judged(new FuseInReturn(), devices, wires);
  }

  @Test
  void aFuseInTheFeedIsFine() {
    Judged judged =
        judged(
            all(fuse("FB", 10), LAMP),
            all(
                wire("W1", "BAT:+", "FB:in"),
                wire("W2", "FB:1", "LAMP:1"),
                wire("W3", "LAMP:2", "BAT:-")));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void aFuseInTheReturnIsFoundWithItsLoads() {
    Judged judged =
        judged(
            all(fuse("F1", 10), fuse("FB", 10), LAMP, SECOND),
            all(
                wire("W1", "BAT:+", "F1:in"),
                wire("W2", "F1:1", "LAMP:1"),
                wire("W3", "LAMP:2", "FB:in"),
                wire("W4", "FB:1", "BAT:-"),
                wire("W5", "F1:1", "PUMP:1"),
                wire("W6", "PUMP:2", "BAT:-")));
    assertThat(judged.messages())
        .containsExactly(
            "fuse FB.f sits in the return of LAMP.bulb; when it opens, LAMP.bulb stays at plus");
    assertThat(judged.subjects()).containsExactly("devices/FB.f");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void aFuseBehindALoadThatIsFedFromItsOtherSideTooIsInTheFeed() {
    Judged judged =
        judged(
            all(fuse("FB", 10), LAMP),
            all(
                wire("W1", "BAT:+", "LAMP:1"),
                wire("W2", "LAMP:2", "FB:in"),
                wire("W3", "FB:1", "BAT:+")));
    assertThat(judged.messages()).isEmpty();
  }

  @Test
  void whatNoSourceLeadsToIsNotJudged() {
    Judged judged = judged(all(fuse("FB", 10), LAMP), all(wire("W1", "LAMP:2", "FB:in")));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing()).containsKey("no source leads to it");
  }
}
