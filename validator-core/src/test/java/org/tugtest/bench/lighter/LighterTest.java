package org.tugtest.bench.lighter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.check.CheckResult;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;

class LighterTest {
  /** A fan behind a fuse on 4 mm2, and 2.5 mm2 and 1 mm2 in stock. */
  private static String car(double amps, double ratingA, int lengthMm, String more) {
    return """
    {"format": 1, "sketch": true,
     "parts": {"wires": {
       "t4": {"areaMm2": 4, "gramsPerM": 40, "outerMm": 3.4, "maxC": 105, "stocked": true},
       "t2": {"areaMm2": 2.5, "gramsPerM": 26, "outerMm": 2.7, "maxC": 105, "stocked": true},
       "t1": {"areaMm2": 1, "gramsPerM": 11, "outerMm": 1.9, "maxC": 105, "stocked": true}}%s},
     "devices": {
       "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6, "ohms": 0.01}}},
       "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": %s, "style": "blade-mini"}}},
       "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": %s}}}},
     "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 10, "cutMm": 100},
               "W2": {"from": "FB:1", "to": "FAN:1", "part": "t4", "cutMm": %d},
               "W3": {"from": "FAN:2", "to": "BAT:-", "areaMm2": 10, "cutMm": 100}}}
    """
        .formatted(more, ratingA, amps, lengthMm);
  }

  private static Lighter of(String json) {
    RuleCatalog catalog = RuleCatalog.standard();
    Facts facts = Facts.of(Judged.read(Map.of(Judged.ROOT, json)), Judged.TODAY, catalog.known());
    CheckResult result = new Checker(catalog, Selection.ALL).check(facts);
    assertThat(result.crashes()).isEmpty();
    return Lighter.of(facts, result, catalog);
  }

  @Test
  void namesTheNextSmallerPartAndTheGramsItSaves() {
    Lighter lighter = of(car(5, 10, 1500, ""));
    assertThat(lighter.unlooked()).isNull();
    assertThat(lighter.changes())
        .extracting(
            change -> change.wire().id() + " " + change.now().id() + ">" + change.then().id())
        .containsExactly("W2 t4>t2");
    // 1.5 m of 40 g/m against 26 g/m
    assertThat(lighter.grams()).isCloseTo(21, within(1e-9));
  }

  @Test
  void notWhereTheFuseLetsMoreThrough() {
    assertThat(of(car(5, 40, 1500, "")).changes()).isEmpty();
  }

  @Test
  void notWhereTheLoadWouldLoseTooMuch() {
    // 5 A over 7 m or 14 m of 7.5 mOhm/m: 0.26 V or 0.53 V, beside the fuse; 0.5 V is allowed.
    // allowed.
    assertThat(of(car(5, 10, 7000, "")).changes()).isNotEmpty();
    assertThat(of(car(5, 10, 14000, "")).changes()).isEmpty();
  }

  @Test
  void notWithoutAMassOrAKnownCurrent() {
    assertThat(of(car(5, 10, 1500, "").replace("\"gramsPerM\": 40, ", "")).changes()).isEmpty();
    assertThat(of(car(5, 10, 1500, "").replace(", \"amps\": 5.0", "")).changes()).isEmpty();
  }

  @Test
  void noThinnerThanHolds() {
    String thin =
        car(0.1, 1, 1500, "")
            .replace("\"t1\": {\"areaMm2\": 1,", "\"t1\": {\"areaMm2\": 0.22,")
            .replace("\"t2\": {\"areaMm2\": 2.5,", "\"t2\": {\"areaMm2\": 0.2,")
            .replace("\"t4\": {\"areaMm2\": 4,", "\"t4\": {\"areaMm2\": 0.35,");
    assertThat(of(thin).changes()).isEmpty();
  }

  @Test
  void aPartThatIsNotStockedIsNotOffered() {
    assertThat(
            of(car(5, 10, 1500, "")
                    .replace(
                        "\"outerMm\": 2.7, \"maxC\": 105, \"stocked\": true",
                        "\"outerMm\": 2.7, \"maxC\": 105, \"stocked\": false"))
                .changes())
        .extracting(change -> change.then().id())
        .containsExactly("t1");
  }
}
