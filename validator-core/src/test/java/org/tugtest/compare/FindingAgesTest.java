package org.tugtest.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;

class FindingAgesTest {
  private static final String RULE = "terminal-unfit-for-wire";

  /** Wires of these cavities are too thick for their terminal: one finding. */
  private static String thick(String more, int... cavities) {
    StringBuilder wires = new StringBuilder();
    for (int cavity = 1; cavity <= 4; cavity++) {
      int at = cavity;
      boolean thick = Arrays.stream(cavities).anyMatch(one -> one == at);
      wires.append(
          "%s\"W%d\": {\"from\": \"R1:%d\", \"to\": \"A:%d\", \"part\": \"%s\"}"
              .formatted(
                  cavity == 1 ? "" : ", ", cavity, cavity, cavity, thick ? "thick" : "thin"));
    }
    return """
    {"format": 1, "sketch": true,
     "parts": {
       "wires": {"thick": {"areaMm2": 1.5, "maxC": 125}, "thin": {"areaMm2": 0.5, "maxC": 125}},
       "housings": {"h": {"side": "socket", "rows": [["1", "2", "3", "4"]], "terminals": ["t"]}},
       "terminals": {"t": {"family": "t1.5", "side": "socket", "areaMinMm2": 0.35,
                           "areaMaxMm2": 1.0}}},
     "connectors": {"R1": {"housing": "h"}}, %s
     "wires": {%s}}
    """
        .formatted(more, wires);
  }

  private static FindingAges ages(String before, String after) {
    return Compared.json(before, after).comparison().findings();
  }

  private static List<Finding> ofRule(List<Finding> findings) {
    return findings.stream().filter(finding -> finding.rule().equals(RULE)).toList();
  }

  @Test
  void whatIsLeftOfAFindingIsKnown() {
    FindingAges ages = ages(thick("", 1, 2, 3), thick("", 2, 3));
    assertThat(ofRule(ages.fresh())).isEmpty();
    assertThat(ofRule(ages.known())).hasSize(1);
    assertThat(ofRule(ages.resolved())).isEmpty();
  }

  @Test
  void oneThatTakesInMoreThanBeforeIsNew() {
    FindingAges ages = ages(thick("", 2, 3), thick("", 1, 2, 3));
    assertThat(ofRule(ages.fresh())).hasSize(1);
    assertThat(ofRule(ages.resolved())).hasSize(1);
  }

  @Test
  void oneThatTakesInOthersThanBeforeIsNew() {
    FindingAges ages = ages(thick("", 1, 2), thick("", 2, 3));
    assertThat(ofRule(ages.fresh())).hasSize(1);
    assertThat(ofRule(ages.resolved())).hasSize(1);
  }

  @Test
  void whatIsLeftOfOneThatAWaiverCoveredIsNew() {
    String waiver =
        "\"waivers\": {\"w\": {\"rule\": \"terminal-unfit-for-wire\", \"at\": \"connectors/R1:1\","
            + " \"reason\": \"crimped by hand, pulled\"}},";
    FindingAges ages = ages(thick(waiver, 1, 2, 3), thick(waiver, 2, 3));
    assertThat(ofRule(ages.fresh())).hasSize(1);
  }
}
