package org.tugtest.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

/** A trunk that breaks out into two branches; every wire is 2 mm outside. */
class TransitionsTest {
  private static final String JSON =
      """
      {"format": 1,
       "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 125, "outerMm": 2}, "v": {"maxC": 125}},
         "coverings": {
           "thick": {"kind": "heat-shrink", "innerMinMm": 2, "innerMaxMm": 20, "wallMm": 1},
           "thin": {"kind": "heat-shrink", "innerMinMm": 1, "innerMaxMm": 10, "wallMm": 0.5},
           "boot": {"kind": "heat-shrink", "innerMinMm": 3, "innerMaxMm": OVER}}},
       "layout": {"nodes": {"a": {}, "tee": {"coverings": ["boot"]}, "b": {}, "c": {}, "d": {}},
         "segments": {
           "t": {"from": "a", "to": "tee", "lengthMm": 500, "coverings": ["thick"]},
           "one": {"from": "tee", "to": "b", "lengthMm": 300, "coverings": ["thin"]},
           "two": {"from": "c", "to": "tee", "lengthMm": 300, "coverings": ["thin"]},
           "on": {"from": "b", "to": "d", "lengthMm": 300}}},
       "devices": {"A": {"at": "a", "pins": {"1": {}, "2": {}, "3": {}}},
         "B": {"at": "b", "pins": {"1": {}, "2": {}}}, "C": {"at": "c", "pins": {"1": {}}},
         "D": {"at": "d", "pins": {"1": {}}}},
       "wires": {
         "W1": {"from": "A:1", "to": "B:1", "part": "w"},
         "W2": {"from": "A:2", "to": "C:1", "part": "PART"},
         "W3": {"from": "A:3", "to": "D:1", "part": "w"}}}
      """;

  private static Transitions of(String over, String part) {
    return Judged.facts(Map.of(Judged.ROOT, JSON.replace("OVER", over).replace("PART", part)))
        .transitions();
  }

  private static Transitions.AtNode tee(String over, String part) {
    return of(over, part).nodes().stream()
        .filter(at -> at.node().equals("tee"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void standAtTheNodesWhereCoveredSegmentsJoin() {
    Transitions all = of("10", "w");
    // at b the covered segment one goes on as the bare one; a, c and d have one branch each
    assertThat(all.nodes()).extracting(Transitions.AtNode::node).containsExactly("b", "tee");
    assertThat(all.nodes().get(1).breakout()).isTrue();
    assertThat(all.nodes().get(0).breakout()).isFalse();
    assertThat(all.nodes().get(0).branches())
        .extracting(Transitions.Branch::segment)
        .containsExactly("one", "on");
  }

  @Test
  void measureEachBranchOverItsCovering() {
    Transitions.AtNode tee = tee("10", "w");
    assertThat(tee.branches())
        .extracting(Transitions.Branch::segment)
        .containsExactly("t", "one", "two");
    // three equal circles: 1 + 2/sqrt(3) = 2.1547 diameters by geometry, the rule of thumb 1.2
    // sqrt(12) = 4.157;
    // the greater counts, with two walls of 1 mm; then two circles side by side, and one alone
    assertThat(tee.branches().get(0).outerMm()).isCloseTo(2 * 2.1547 + 2, within(0.01));
    assertThat(tee.branches().get(1).outerMm()).isCloseTo(4 + 1, within(1e-6));
    assertThat(tee.branches().get(2).outerMm()).isCloseTo(2 + 1, within(1e-6));
  }

  @Test
  void stepFromTheThickestToEachOther() {
    List<Transitions.Step> steps = tee("10", "w").steps();
    assertThat(steps).extracting(step -> step.to().segment()).containsExactly("one", "two");
    assertThat(steps.get(0).mm()).isCloseTo(6.309 - 5, within(0.01));
    assertThat(steps.get(0).covering()).isTrue();
    assertThat(steps.get(1).mm()).isCloseTo(6.309 - 3, within(0.01));
  }

  @Test
  void tellWhetherACoveringGoesOverTheJoint() {
    assertThat(fit("6.2", "w")).isEqualTo(Transitions.Fit.TOO_SMALL);
    assertThat(fit("6.4", "w")).isEqualTo(Transitions.Fit.FITS);
    assertThat(fit("6.4, \"innerMinMm\": 3", "w")).isEqualTo(Transitions.Fit.FITS);
    assertThat(fit("6.4", "v")).isEqualTo(Transitions.Fit.NOT_KNOWN);
  }

  private static Transitions.Fit fit(String over, String part) {
    return tee(over, part).over().get(0).fit();
  }

  @Test
  void aJointThatItCannotCloseOnIsTooLarge() {
    String json =
        JSON.replace(
                "\"innerMinMm\": 3, \"innerMaxMm\": OVER", "\"innerMinMm\": 3.1, \"innerMaxMm\": 9")
            .replace("PART", "w");
    Transitions.AtNode tee = Judged.facts(Map.of(Judged.ROOT, json)).transitions().nodes().get(1);
    assertThat(tee.over().get(0).fit()).isEqualTo(Transitions.Fit.TOO_LARGE);
  }

  @Test
  void sayWhichWiresHaveNoDiameter() {
    Transitions.AtNode tee = tee("10", "v");
    assertThat(tee.sized()).isFalse();
    assertThat(tee.branches())
        .filteredOn(branch -> branch.segment().equals("two"))
        .allSatisfy(branch -> assertThat(branch.unsized()).containsExactly("W2"));
  }

  @Test
  void aLayoutWithoutCoveringsHasNone() {
    String bare =
        JSON.replaceAll(", \"coverings\": \\[[^]]*\\]", "")
            .replace("{\"coverings\": [\"boot\"]}", "{}");
    assertThat(
            Judged.facts(Map.of(Judged.ROOT, bare.replace("OVER", "9").replace("PART", "w")))
                .transitions()
                .nodes())
        .isEmpty();
    assertThat(Judged.facts(Map.of(Judged.ROOT, "{\"format\": 1}")).transitions().nodes())
        .isEmpty();
  }
}
