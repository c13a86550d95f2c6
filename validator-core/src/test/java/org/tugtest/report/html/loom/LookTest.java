package org.tugtest.report.html.loom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.compare.Compared;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;
import org.tugtest.facts.Facts;
import org.tugtest.heat.LoomWarmth;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.report.html.SampleCar;
import org.tugtest.rule.Judged;

/** How the lines of the loom drawing look. */
class LookTest {
  private static Inside filled(double percent) {
    return new Inside(10, percent / 100, "c", Double.NaN, "");
  }

  private static Inside warm(double celsius) {
    return new Inside(10, Double.NaN, "", celsius, "run");
  }

  @Test
  void aStepBeginsAtItsBound() {
    assertThat(List.of(0.0, 24.9, 25.0, 49.9, 50.0, 69.9, 70.0, 79.9, 80.0, 100.0, 100.1))
        .extracting(percent -> Shade.FILL.step(filled(percent)))
        .containsExactly(0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5);
    assertThat(List.of(-20.0, 39.9, 40.0, 60.0, 80.0, 100.0, 124.9, 125.0, 1e9))
        .extracting(celsius -> Shade.WARMTH.step(warm(celsius)))
        .containsExactly(0, 0, 1, 2, 3, 4, 4, 5, 5);
    assertThat(Shade.WARMTH.step(warm(Double.POSITIVE_INFINITY))).isEqualTo(5);
    assertThat(Shade.FILL.step(warm(20))).isEqualTo(-1);
    assertThat(Shade.WARMTH.step(filled(20))).isEqualTo(-1);
  }

  @Test
  void theLegendNamesEveryStepWithItsUnit() {
    assertThat(Shade.FILL.steps())
        .extracting(Shade.Step::says)
        .containsExactly(
            "under 25 %",
            "25 to 50 %", "50 to 70 %", "70 to 80 %", "80 to 100 %", "over 100 %: does not fit");
    assertThat(Shade.WARMTH.steps())
        .extracting(Shade.Step::says)
        .startsWith("under 40 °C")
        .endsWith("125 °C and more");
  }

  /** One wire of 2 mm in a sleeve of 4 mm, four of them in the next segment, none in the last. */
  private static final String JSON =
      """
      {"format": 1, "sketch": true,
       "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 125, "outerMm": 2}},
         "coverings": {"c": {"kind": "braided-sleeve", "innerMinMm": 1, "innerMaxMm": 4}}},
       "layout": {"nodes": {"a": {}, "b": {}, "d": {}, "e": {}}, "segments": {
         "one": {"from": "a", "to": "b", "lengthMm": 400, "coverings": ["c"]},
         "four": {"from": "b", "to": "d", "lengthMm": 400},
         "none": {"from": "d", "to": "e", "lengthMm": 400}}},
       "devices": {"A": {"at": "a"}, "B": {"at": "b"}, "D": {"at": "d"}},
       "wires": {"W1": {"from": "A:1", "to": "D:1", "part": "w"},
         "W2": {"from": "B:2", "to": "D:2", "part": "w"},
         "W3": {"from": "B:3", "to": "D:3", "part": "w"},
         "W4": {"from": "B:4", "to": "D:4", "part": "w"}}}
      """;

  @Test
  void thicknessAndFillAreThoseOfTheBundle() {
    LoomRoom room = LoomRoom.of(Judged.facts(Map.of(Judged.ROOT, JSON)));
    Drawing drawing = room.figures().get(0).drawing();
    Map<String, Drawing.Line> lines = new HashMap<>();
    drawing.lines().forEach(line -> lines.put(line.title().split(":", -1)[0], line));
    // one circle of 2 mm; four of 2 mm: 1.2 sqrt(4 x 4) = 4.8, packed (1 + sqrt 2) x 2 = 4.83
    assertThat(room.thickness()).endsWith("the thickest has 4.8 mm.");
    assertThat(lines.get("four").width()).isEqualTo(15);
    assertThat(lines.get("one").width()).isEqualTo(Math.round(2 + 13 * 2 / 4.83));
    assertThat(lines.get("none").width()).isEqualTo(2);
    // 2 mm in 4 mm: a quarter
    assertThat(lines.get("one").steps()).contains(" fill1");
    assertThat(lines.get("one").title()).contains("2.0 mm thick, 25 % of c filled");
    assertThat(lines.get("four").steps()).doesNotContain("fill");
    assertThat(lines.get("none").title()).isEqualTo("none: d – e, 400 mm, 0 wires");
  }

  @Test
  void wiresWithoutADiameterAreDrawnByTheirNumber() {
    LoomRoom room =
        LoomRoom.of(
            Judged.facts(
                Map.of(
                    Judged.ROOT,
                    JSON.replace("\"areaMm2\": 1, ", "").replace(", \"outerMm\": 2", ""))));
    assertThat(room.thickness()).isEqualTo("The more wires, the thicker the line.");
    assertThat(room.shades()).doesNotContain(Shade.FILL);
  }

  @Test
  void segmentsAreAsWarmAsTheirWarmestPieceInAnyState() {
    Facts facts = SampleCar.facts();
    Map<String, Inside> insides = Inside.of(facts);
    assertThat(insides.keySet()).isEqualTo(facts.bundles().all().keySet());
    insides.forEach(
        (segment, inside) -> {
          double most = Double.NEGATIVE_INFINITY;
          for (OperatingPoint point : facts.operating().all()) {
            LoomWarmth warmth = point.warmth().orElse(null);
            for (int i = 0; warmth != null && i < warmth.sections().all().size(); i++) {
              String where = warmth.sections().all().get(i).where();
              if (where.equals("segment " + segment)
                  || where.startsWith("segment " + segment + " ")) {
                most = Math.max(most, warmth.of(i).hottestC());
              }
            }
          }
          assertThat(inside.celsius()).as(segment).isEqualTo(most);
        });
    assertThat(insides.values()).extracting(Inside::state).doesNotContain("");
  }

  private static LoomRoom changed(String before, String after) {
    Snapshot is = Compared.snapshot("now", after);
    return LoomRoom.of(is.facts(), "main", Comparison.of(Compared.snapshot("main", before), is));
  }

  private static List<String> arms(LoomRoom room) {
    return room.touched().arms().keySet().stream()
        .map(arm -> room.skeleton().arms().get(arm).id())
        .toList();
  }

  private static List<String> knots(LoomRoom room) {
    return room.touched().knots().keySet().stream()
        .map(knot -> room.skeleton().knots().get(knot).id())
        .toList();
  }

  @Test
  void aWireThatMovesTouchesItsOldRunItsNewRunAndItsEnds() {
    LoomRoom room = changed(JSON, JSON.replace("\"from\": \"B:2\"", "\"from\": \"A:2\""));
    assertThat(arms(room)).containsExactlyInAnyOrder("one", "four");
    assertThat(knots(room)).containsExactlyInAnyOrder("a", "d");
    assertThat(room.figures().get(0).drawing().changes()).hasSize(4);
    assertThat(room.figures().get(0).drawing().changes().get(0).title())
        .isEqualTo("W2 moves from B:2 to A:2.");
  }

  @Test
  void aWireThatGoesTouchesWhereItWas() {
    LoomRoom room =
        changed(
            JSON,
            JSON.replace(
                ",\n   \"W4\": {\"from\": \"B:4\", \"to\": \"D:4\", \"part\": \"w\"}", ""));
    assertThat(arms(room)).containsExactly("four");
    assertThat(knots(room)).containsExactlyInAnyOrder("b", "d");
  }

  @Test
  void aSegmentThatChangesIsTouchedItself() {
    LoomRoom room =
        changed(JSON, JSON.replace("\"lengthMm\": 400, \"cov", "\"lengthMm\": 450, \"cov"));
    assertThat(arms(room)).containsExactly("one");
    assertThat(room.list().shown())
        .filteredOn(row -> row.facts().stream().anyMatch(fact -> fact.startsWith("changes: ")))
        .extracting(LoomRoom.Row::id)
        .containsExactly("one");
  }

  @Test
  void nothingIsTouchedWhereNothingChanges() {
    assertThat(changed(JSON, JSON).touched()).isEqualTo(new Touched("main", Map.of(), Map.of()));
    String bare = JSON.replaceAll("(?s)\"layout\".*?}},\n", "");
    LoomRoom room = changed(bare, bare.replace("\"from\": \"B:2\"", "\"from\": \"A:2\""));
    assertThat(arms(room)).containsExactly("A – D");
    assertThat(knots(room)).containsExactlyInAnyOrder("A", "D");
  }
}
