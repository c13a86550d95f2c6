package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Judged;

class WireOverheatsTest {
  private static String part(String id, double area, double maxC) {
    double core = 1.25 * Math.sqrt(area);
    return String.format(
        Locale.ROOT,
        "\"%s\": {\"areaMm2\": %s, \"maxC\": %s, \"milliohmPerM\": %s, \"outerMm\": %s,"
            + " \"conductorMm\": %s}",
        id,
        area,
        maxC,
        18.5 / area,
        core + 0.85,
        core);
  }

  /** A pair of wires for each load, all along one segment; 20 °C. */
  private static String car(String parts, String segment, String more, Object... loads) {
    StringBuilder devices = new StringBuilder();
    StringBuilder wires = new StringBuilder();
    for (int i = 0; i < loads.length; i += 2) {
      int n = i / 2 + 1;
      devices.append(
          ", \"L%d\": {\"at\": \"b\", \"elements\": {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\"%s}}}"
              .formatted(n, loads[i].equals("") ? "" : ", \"amps\": " + loads[i]));
      wires.append(
          "%s\"F%d\": {\"from\": \"BAT:+\", \"to\": \"L%d:1\", \"part\": \"%s\"}, \"R%d\": {\"from\": \"L%d:2\", \"to\": \"BAT:-\", \"part\": \"%s\"}"
              .formatted(i == 0 ? "" : ", ", n, n, loads[i + 1], n, n, loads[i + 1]));
    }
    return """
    {"format": 1, "sketch": true, "defaults": {"ambientC": 20},
     "parts": {"wires": {%s}, "coverings": {
       "tube": {"kind": "split-conduit", "innerMm": 20, "wallMm": 1}, "tape": {"kind": "tape"}}},
     "devices": {"BAT": {"at": "a", "elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}}%s},
     "wires": {%s},
     "layout": {"nodes": {"a": {}, "b": {}},
                "segments": {"s": {"from": "a", "to": "b", "lengthMm": 1000%s}}}%s}
    """
        .formatted(parts, devices, wires, segment, more);
  }

  private static Judged judged(String json) {
    return Judged.of(new WireOverheats(), json);
  }

  private static double celsius(String json, String wire) {
    return Judged.facts(Map.of(Judged.ROOT, json))
        .operating()
        .all()
        .get(0)
        .warmth()
        .orElseThrow()
        .hottest(wire)
        .orElseThrow()
        .celsius();
  }

  @Test
  void coolWiresAreFine() {
    Judged cool = judged(car(part("w", 1, 105), "", "", "5", "w", "2", "w"));
    assertThat(cool.findings()).isEmpty();
    assertThat(cool.coverage().judged()).isEqualTo(4);
  }

  /** Just under, at and over the class. */
  @Test
  void theClassIsTheLimit() {
    double celsius = celsius(car(part("w", 1, 105), "", "", "18", "w"), "F1");
    assertThat(celsius).isBetween(85.0, 105.0);
    for (double off : new double[] {0.02, 0.0, -0.02}) {
      Judged judged = judged(car(part("w", 1, celsius + off), "", "", "18", "w"));
      boolean over =
          celsius(car(part("w", 1, celsius + off), "", "", "18", "w"), "F1") > celsius + off;
      assertThat(judged.findings()).hasSize(over ? 1 : 0);
      assertThat(over).isEqualTo(off < 0);
    }
  }

  @Test
  void whatMakesTheHeatIsNamed() {
    String json =
        car(part("w", 1, 105) + ", " + part("cool", 0.5, 85), "", "", "17", "w", "0", "cool");
    Judged judged = judged(json);
    assertThat(judged.findings()).hasSize(1);
    Finding finding = judged.findings().get(0);
    assertThat(finding.level()).isEqualTo(Level.ERROR);
    assertThat(finding.message())
        .startsWith("wire F2 comes to ")
        .contains(
            "its class is 85 °C; R2 is over theirs too; most of the heat is of F1 (50 %) and R1 (50"
                + " %)")
        .contains("in segment s with 3 other wires");
    assertThat(finding.remedy()).startsWith("take a larger gauge for F1");
    assertThat(judged.subjects()).containsExactly("wires/F2");
    assertThat(finding.subjects()).contains(Subject.wire("R2"));
  }

  @Test
  void withoutARestTheFindingSaysSo() {
    Judged judged = judged(car(part("w", 1, 105), "", "", "80", "w"));
    assertThat(judged.messages().get(0)).contains("does not come to rest under 250 °C");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.ERROR);
  }

  @Test
  void whatOnlyACoveringMakesTooHotIsAWarning() {
    String bare = car(part("w", 1, 105), "", "", "18.5", "w");
    String tape = car(part("w", 1, 105), ", \"coverings\": [\"tape\"]", "", "18.5", "w");
    String tube = car(part("w", 1, 105), ", \"coverings\": [\"tube\"]", "", "18.5", "w");
    assertThat(celsius(tape, "F1")).isEqualTo(celsius(bare, "F1"));
    assertThat(celsius(tube, "F1")).isGreaterThan(celsius(bare, "F1") + 5);
    assertThat(judged(bare).findings()).isEmpty();
    Judged covered = judged(tube);
    assertThat(covered.findings()).hasSize(1);
    assertThat(covered.findings().get(0).level()).isEqualTo(Level.WARNING);
    assertThat(covered.messages().get(0)).contains("inside its covering");
    Judged grave = judged(car(part("w", 1, 105), ", \"coverings\": [\"tube\"]", "", "26", "w"));
    assertThat(grave.findings().get(0).level()).isEqualTo(Level.ERROR);
  }

  @Test
  void theWorstStateIsSaidAndOthersAreListed() {
    String states =
        ", \"states\": {\"half\": {\"on\": [\"L1\"]}, \"full\": {\"on\": [\"L1\", \"L2\"]},"
            + " \"crank\": {\"on\": [\"L1\", \"L2\"], \"brief\": true}}";
    String json =
        car(part("w", 1, 105), "", states, "21.5", "w", "15", "w")
            .replace("\"amps\"", "\"use\": \"internal\", \"amps\"");
    Judged judged = judged(json);
    assertThat(judged.findings()).hasSize(1);
    assertThat(judged.findings().get(0).state()).isEqualTo("full");
    assertThat(judged.findings().get(0).details())
        .anyMatch(line -> line.startsWith("also in state half"));
  }

  @Test
  void whatIsNotKnownIsNotJudged() {
    Judged dark = judged(car(part("w", 1, 105), "", "", "", "w", "5", "w"));
    assertThat(dark.findings()).isEmpty();
    assertThat(dark.coverage().judged()).isZero();
    assertThat(dark.coverage().toString())
        .contains("what flows through it is not known")
        .contains("what flows beside it, or its size, is not known");
    Judged brief =
        judged(car(part("w", 1, 105), "", ", \"states\": {\"s\": {\"brief\": true}}", "50", "w"));
    assertThat(brief.coverage().toString()).contains("no state lasts");
    Judged dead =
        judged(
            "{\"format\": 1, \"sketch\": true, \"wires\": {\"W\": {\"from\": \"A:1\", \"to\":"
                + " \"B:1\", \"areaMm2\": 1}}}");
    assertThat(dead.coverage().toString()).contains("nothing flows in any lasting state");
    Judged sizeless =
        judged(
            "{\"format\": 1, \"sketch\": true, \"wires\": {\"W\": {\"from\": \"A:1\", \"to\":"
                + " \"B:1\"}}}");
    assertThat(sizeless.coverage().toString()).contains("its size is not known");
    Judged hotAir =
        judged(
            car(part("w", 1, 105), "", "", "5", "w")
                .replace("\"ambientC\": 20", "\"ambientC\": 110"));
    assertThat(hotAir.findings()).isEmpty();
    assertThat(hotAir.coverage().toString()).contains("the air by itself is over its class");
  }

  /** Thick loaded wires among thin idle ones: the network has them hotter than the closed form. */
  @Test
  void theSecondModelWarnsWhereItIsFarHotter() {
    Object[] loads = new Object[2 + 2 * 9];
    loads[0] = "42";
    loads[1] = "thick";
    for (int i = 2; i < loads.length; i += 2) {
      loads[i] = "0";
      loads[i + 1] = "thin";
    }
    String parts = part("thick", 4, 150) + ", " + part("thin", 0.35, 150);
    List<Finding> plain = judged(car(parts, "", "", loads)).findings();
    assertThat(plain).hasSize(1);
    assertThat(plain.get(0).level()).isEqualTo(Level.NOTE);
    assertThat(plain.get(0).message()).contains("a network of heat through the packed section");
    double closed = celsius(car(parts, "", "", loads), "F1");
    String lower = part("thick", 4, Math.ceil(closed) + 2) + ", " + part("thin", 0.35, 150);
    List<Finding> warned = judged(car(lower, "", "", loads)).findings();
    assertThat(warned).hasSize(1);
    assertThat(warned.get(0).level()).isEqualTo(Level.WARNING);
    assertThat(warned.get(0).kind()).isEqualTo("second-opinion");
    String wide = ", \"limits\": {\"wire-overheats\": {\"kelvin\": 100}}";
    assertThat(judged(car(lower, "", wide, loads)).findings()).isEmpty();
  }

  /**
   * The same wires are too hot by the closed form in two segments: told once, where it is worse.
   */
  @Test
  void theSecondModelSaysNothingOfWhatIsFoundAlready() {
    Object[] loads = new Object[2 + 2 * 9];
    loads[0] = "42";
    loads[1] = "thick";
    for (int i = 2; i < loads.length; i += 2) {
      loads[i] = "0";
      loads[i + 1] = "thin";
    }
    String high = part("thick", 4, 150) + ", " + part("thin", 0.35, 150);
    double closed = celsius(car(high, "", "", loads), "F1");
    String low = part("thick", 4, Math.floor(closed) - 2) + ", " + part("thin", 0.35, 150);
    String two =
        car(low, "", "", loads)
            .replace("\"b\": {}},", "\"m\": {}, \"b\": {}},")
            .replace(
                "\"s\": {\"from\": \"a\", \"to\": \"b\", \"lengthMm\": 1000}",
                "\"s\": {\"from\": \"a\", \"to\": \"m\", \"lengthMm\": 500}, \"t\": {\"from\":"
                    + " \"m\", \"to\": \"b\", \"lengthMm\": 500, \"zone\": \"warm\"}")
            .replace("\"layout\"", "\"zones\": {\"warm\": {\"ambientC\": 22}}, \"layout\"");
    List<Finding> found = judged(two).findings();
    assertThat(found)
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.message()).contains("in segment t");
              assertThat(one.kind()).isNotEqualTo("second-opinion");
            });
  }
}
