package org.tugtest.check.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.check.CheckedFinding;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.rule.Judged;

/** Wires behind one fuse that is too great for all of them. */
class BehindOneFuseTest {
  private static final String CAR =
      """
      {"format": 1,
       "devices": {
         "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
         "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 60},
                             "f2": {"kind": "fuse", "a": "in", "b": "2", "ratingA": 5}}},
         "L1": {"elements": {"b": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
         "L2": {"elements": {"b": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
         "L3": {"elements": {"b": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
       "splices": {"S1": {}},
       "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 16, "cutMm": 200},
                 "W2": {"from": "FB:1", "to": "S1", "areaMm2": 2.5, "cutMm": 500},
                 "W3": {"from": "S1", "to": "L1:1", "areaMm2": 1.5, "cutMm": 500},
                 "W4": {"from": "S1", "to": "L2:1", "areaMm2": 1, "cutMm": 500},
                 "W5": {"from": "FB:2", "to": "L3:1", "areaMm2": 1, "cutMm": 500},
                 "R1": {"from": "L1:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 500},
                 "R2": {"from": "L2:2", "to": "BAT:-", "areaMm2": 10, "cutMm": 500},
                 "R3": {"from": "L3:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 500}}}
      """;

  private static List<String> told(String json) {
    RuleCatalog catalog = RuleCatalog.standard();
    Facts facts = Facts.of(Judged.read(Map.of(Judged.ROOT, json)), Judged.TODAY, catalog.known());
    return new Checker(catalog, Selection.ALL)
        .check(facts).findings().stream()
            .map(CheckedFinding::finding)
            .filter(
                each ->
                    each.rule().endsWith("-under-fuse")
                        || each.rule().equals("wire-burns-before-fuse"))
            .filter(each -> each.firstSubject().section().equals("wires"))
            .map(BehindOneFuseTest::told)
            .toList();
  }

  private static String told(Finding finding) {
    String cause = finding.cause();
    return finding.rule()
        + " "
        + finding.firstSubject().id()
        + (cause == null ? "" : " < " + cause);
  }

  @Test
  void oneFuseIsOneFindingOfItsThinnestWireWithTheOthers() {
    String head = " < gauge-under-fuse(devices/FB.f1,wires/W4)";
    assertThat(told(CAR))
        .contains(
            "gauge-under-fuse W4",
            "gauge-under-fuse W2" + head,
            "gauge-under-fuse W3" + head,
            "return-under-fuse R1" + head)
        .filteredOn(each -> !each.contains("<"))
        .containsExactly("gauge-under-fuse W4");
  }

  @Test
  void anotherFuseIsAnotherFinding() {
    assertThat(told(CAR.replace("\"ratingA\": 5}", "\"ratingA\": 40}")))
        .filteredOn(each -> !each.contains("<"))
        .containsExactlyInAnyOrder("gauge-under-fuse W4", "gauge-under-fuse W5");
  }

  @Test
  void whatIsWaivedIsNoCause() {
    String waived =
        CAR.replace(
            "\"splices\"",
            "\"waivers\": {\"w\": {\"rule\": \"gauge-under-fuse\", \"at\": \"wires/W4\","
                + " \"reason\": \"a short tail\"}}, \"splices\"");
    assertThat(told(waived))
        .contains(
            "gauge-under-fuse W3",
            "gauge-under-fuse W2 < gauge-under-fuse(devices/FB.f1,wires/W3)");
  }

  @Test
  void aFuseThatSuitsTheWiresIsFine() {
    assertThat(told(CAR.replace("\"ratingA\": 60}", "\"ratingA\": 5}"))).isEmpty();
  }
}
