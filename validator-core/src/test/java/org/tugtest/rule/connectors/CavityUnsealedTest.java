package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class CavityUnsealedTest {
  private static Judged sealed(boolean sealed, String connector, String moisture) {
    return Judged.of(
        new CavityUnsealed(),
        """
        {"format": 1, "sketch": true,
         "parts": {"housings": {"h": {"side": "socket", "rows": [["1", "2", "3"]], "sealed": %s}}},
         "connectors": {"R1": {"housing": "h", "at": "n"%s}},
         "wires": {"W1": {"from": "R1:1", "to": "A:1"}},
         "layout": {"nodes": {"n": {"zone": "z"}}},
         "zones": {"z": {"moisture": "%s"}}}
        """
            .formatted(sealed, connector, moisture));
  }

  @Test
  void anUnsealedHousingIsNoMatter() {
    assertThat(sealed(false, "", "wet").coverage().subjects()).isZero();
  }

  @Test
  void openCavitiesAreOneWarning() {
    Judged judged = sealed(true, "", "splash");
    assertThat(judged.messages())
        .containsExactly("sealed connector R1 has no wire and no blank in cavities 2 and 3");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.WARNING);
  }

  @Test
  void inAWetZoneTheyAreAnError() {
    Judged judged = sealed(true, "", "wet");
    assertThat(judged.messages())
        .containsExactly(
            "sealed connector R1 has no wire and no blank in cavities 2 and 3; zone z is wet");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.ERROR);
  }

  @Test
  void blanksCloseThem() {
    assertThat(sealed(true, ", \"blanked\": true", "wet").messages()).isEmpty();
    assertThat(
            sealed(
                    true,
                    ", \"cavities\": {\"2\": {\"blank\": true}, \"3\": {\"blank\": true}}",
                    "wet")
                .messages())
        .isEmpty();
    assertThat(sealed(true, ", \"cavities\": {\"2\": {\"blank\": true}}", "dry").messages())
        .containsExactly("sealed connector R1 has no wire and no blank in cavity 3");
    assertThat(
            sealed(true, ", \"blanked\": true, \"cavities\": {\"3\": {\"blank\": false}}", "dry")
                .messages())
        .containsExactly("sealed connector R1 has no wire and no blank in cavity 3");
  }
}
