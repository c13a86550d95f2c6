package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.rule.protection.Bench.wire;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.rule.Judged;

class FuseVoltageLowTest {
  private static Judged judged(String volts, String fuse, String... more) {
    String json =
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"%s}}},
           "FB": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "1"%s}}}},
         "wires": {%s}%s}
        """
            .formatted(
                volts, fuse, wire("W1", "BAT:+", "FB:in"), more.length == 0 ? "" : ", " + more[0]);
    return Judged.of(new FuseVoltageLow(), json);
  }

  private static final String PART =
      "\"parts\": {\"fuses\": {\"p\": {\"ratingA\": 10, \"maxV\": %s}}}, \"fitted\": {\"FB.f\":"
          + " \"p\"}";

  @Test
  void ratedVoltsAreHeldAgainstThoseOfTheSource() {
    assertThat(judged(", \"volts\": 32", "", PART.formatted("32.1")).messages()).isEmpty();
    assertThat(judged(", \"volts\": 32", "", PART.formatted("32")).messages()).isEmpty();
    Judged low = judged(", \"volts\": 32", "", PART.formatted("31.9"));
    assertThat(low.messages())
        .containsExactly("fuse FB.f (p) is rated for 31.9 V, but BAT.cell gives 32 V");
    assertThat(low.findings().get(0).basis()).isEqualTo(Basis.GIVEN);
    assertThat(low.findings().get(0).subjects()).hasToString("[devices/FB.f, devices/BAT.cell]");
  }

  @Test
  void voltsOfAStateCount() {
    Judged judged =
        judged(
            ", \"volts\": 24",
            "",
            PART.formatted("32") + ", \"states\": {\"jump start\": {\"volts\": {\"BAT\": 33}}}");
    assertThat(judged.messages())
        .containsExactly(
            "fuse FB.f (p) is rated for 32 V, but BAT.cell gives 33 V in state jump start");
    assertThat(judged.findings().get(0).state()).isEqualTo("jump start");
  }

  @Test
  void styleGivesVoltsWhereThePartDoesNot() {
    String blade = ", \"ratingA\": 10, \"style\": \"blade-mini\"";
    assertThat(judged(", \"volts\": 28", blade).messages()).isEmpty();
    assertThat(judged(", \"volts\": 48", blade).findings().get(0).basis()).isEqualTo(Basis.SOURCE);
    assertThat(
            judged(", \"volts\": 48", ", \"ratingA\": 100, \"style\": \"bolt-m8\"")
                .findings()
                .get(0)
                .basis())
        .isEqualTo(Basis.MEMORY);
  }

  @Test
  void batteriesInARowAddUpAndSideBySideDoNot() {
    String json =
        """
        {"format": 1, "sketch": true,
         "devices": {
           "B1": {"elements": {"s": {"kind": "source", "plus": "+", "minus": "-", "volts": 24}}},
           "B2": {"elements": {"s": {"kind": "source", "plus": "+", "minus": "-", "volts": 24}}},
           "FB": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 5,
                                     "style": "blade-mini"}}}},
         "wires": {%s}}
        """;
    assertThat(
            Judged.of(
                    new FuseVoltageLow(),
                    json.formatted(wire("W1", "B1:+", "B2:-") + ", " + wire("W2", "B2:+", "FB:in")))
                .messages())
        .containsExactly("fuse FB.f is rated for 32 V, but B2.s and B1.s in a row give 48 V");
    assertThat(
            Judged.of(
                    new FuseVoltageLow(),
                    json.formatted(
                        wire("W1", "B1:+", "B2:+")
                            + ", "
                            + wire("W2", "B2:+", "FB:in")
                            + ", "
                            + wire("W3", "B1:-", "B2:-")))
                .messages())
        .isEmpty();
  }

  @Test
  void whatIsNotKnownIsSaid() {
    assertThat(judged("", ", \"ratingA\": 5, \"style\": \"blade-mini\"").coverage().missing())
        .containsOnlyKeys("no source before it gives volts");
    assertThat(judged(", \"volts\": 12", ", \"ratingA\": 5").coverage().missing())
        .containsOnlyKeys("neither it nor its style gives rated volts");
    assertThat(judged(", \"volts\": 12", "").coverage().subjects()).as("an empty way").isZero();
    assertThat(
            judged(", \"volts\": 48", ", \"ratingA\": 5, \"electronic\": true")
                .coverage()
                .subjects())
        .isZero();
  }
}
