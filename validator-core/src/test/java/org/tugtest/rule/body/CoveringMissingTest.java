package org.tugtest.rule.body;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class CoveringMissingTest {
  private static final String ZONES =
      """
      "zones": {"rubs": {"needs": ["abrasion"]}, "hot": {"needs": ["heat", "abrasion"]},
        "calm": {"ambientC": 30}}
      """;

  private static Judged judged(String fields, String nodes) {
    return Loom.of(fields).with(ZONES).judged(new CoveringMissing(), nodes);
  }

  @Test
  void aCoveringThatProtectsFromAllIsFine() {
    assertThat(judged("\"zone\": \"rubs\", \"coverings\": [\"c5\"]", "").messages()).isEmpty();
    assertThat(judged("\"zone\": \"hot\", \"coverings\": [\"c8\"]", "").messages()).isEmpty();
    assertThat(judged("\"zone\": \"calm\"", "").coverage().judged()).isEqualTo(1);
  }

  @Test
  void whatNoCoveringGivesIsSaid() {
    Judged none = judged("\"zone\": \"rubs\"", "");
    assertThat(none.messages())
        .containsExactly("segment s1 has no covering against abrasion, which zone rubs asks for");
    assertThat(none.findings().get(0).remedy()).isEqualTo("put c5 on it, which protects and fits");
    Judged half = judged("\"zone\": \"hot\", \"coverings\": [\"c5\", \"tape\"]", "");
    assertThat(half.messages())
        .containsExactly(
            "segment s1 has no covering against heat, which zone hot asks for; c5 and tape do not"
                + " give it");
  }

  @Test
  void withoutAZoneOfItsOwnEitherNodeAsks() {
    assertThat(judged("", "\"a\": {\"zone\": \"calm\"}, \"b\": {\"zone\": \"rubs\"}").messages())
        .containsExactly(
            "segment s1 has no covering against abrasion, which the zone of its nodes asks for");
    assertThat(judged("\"zone\": \"calm\"", "\"b\": {\"zone\": \"rubs\"}").messages()).isEmpty();
  }

  @Test
  void whatCannotBeJudgedSaysWhy() {
    assertThat(judged("", "").coverage().missing().keySet()).containsExactly("it has no zone");
    assertThat(
            judged("\"zone\": \"rubs\", \"coverings\": [\"gone\"]", "")
                .coverage()
                .missing()
                .keySet())
        .containsExactly("a part that it names is not defined");
  }

  /** A wire of 3 mm; a shield is closed round it, a sleeve of the same range would slide. */
  @Test
  void aHeatShieldIsProposedThoughTheBundleIsThin() {
    String json =
        Loom.of("\"zone\": \"hot\"")
            .with(ZONES)
            .json()
            .replace("\"c8\": {\"kind\": \"braided-sleeve\"", "\"c8\": {\"kind\": \"%s\"");
    CoveringMissing rule = new CoveringMissing();
    assertThat(Judged.of(rule, json.formatted("heat-shield")).findings().get(0).remedy())
        .isEqualTo("put c8 on it, which protects and fits");
    assertThat(Judged.of(rule, json.formatted("braided-sleeve")).findings().get(0).remedy())
        .isEqualTo("put a covering on it that protects; none in the parts does and fits");
  }
}
