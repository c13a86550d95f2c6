package org.tugtest.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.model.Wire;
import org.tugtest.rule.Judged;
import org.tugtest.table.Cited;

class AmpacitiesTest {
  private static Facts facts(String sections) {
    return Judged.facts(Map.of(Judged.ROOT, "{\"format\": 1, \"sketch\": true, " + sections + "}"));
  }

  private static Wire wire(Facts facts, String id) {
    return Objects.requireNonNull(facts.harness().wires().get(id));
  }

  private static Facts one(String fields) {
    return facts("\"wires\": {\"W\": {\"from\": \"A:1\", \"to\": \"B:1\"" + fields + "}}");
  }

  private static double amps(String fields) {
    Facts facts = one(fields);
    return facts.ampacity().of(wire(facts, "W")).orElseThrow().amps();
  }

  private static Ampacity with(Facts facts, int neighbours, double ambientC) {
    Around around = new Around(Cited.given(ambientC), neighbours, false);
    return new Ampacities(new WireForms(facts.harness()), wire -> List.of(around))
        .of(wire(facts, "W"))
        .orElseThrow();
  }

  @Test
  void everySizeOfTheTablesHasAnAmpacityThatGrowsWithIt() {
    double before = 0;
    for (String area :
        "0.05 0.13 0.22 0.35 0.5 0.75 1 1.5 2 2.5 4 6 10 16 25 35 50 95 120 240".split(" ", -1)) {
      double amps = amps(", \"areaMm2\": " + area);
      assertThat(amps).as(area).isGreaterThan(before);
      before = amps;
    }
    before = 0;
    for (String awg : "30 26 24 22 20 18 16 14 12 10 8 6 4 2 1/0 4/0".split(" ", -1)) {
      double amps = amps(", \"awg\": \"" + awg + "\"");
      assertThat(amps).as(awg).isGreaterThan(before);
      before = amps;
    }
  }

  /** The trade's nominal current of 1 mm2 thin-wall wire, 16.5 A, is a rise of 40 K in free air. */
  @Test
  void tableDiametersGiveTheTradesRatingOfOneSquareMillimetre() {
    Facts facts = one(", \"areaMm2\": 1");
    WireForm form = new WireForms(facts.harness()).of(wire(facts, "W")).orElseThrow();
    double celsius = FreeAir.celsius(form.insulated(), 16.5, 23).orElseThrow();
    assertThat(celsius - 23).isBetween(40.0, 46.0);
  }

  /**
   * Engine-space factors of 33 CFR 183.425 table 5 note 1 (from 30 to 50 °C) against the balance:
   * the note follows a root law; real convection makes hot air cost a little more, the more so the
   * nearer the class is to the air. The 200 °C column has no factor at all and is left out.
   */
  @Test
  void hotterAirCostsWhatTheBoatRulesSay() {
    double[][] note = {{60, 0.58}, {75, 0.75}, {80, 0.78}, {90, 0.82}, {105, 0.85}, {125, 0.89}};
    for (double[] row : note) {
      Facts facts =
          facts(
              """
              "parts": {"wires": {"w": {"areaMm2": 1, "maxC": %s}}},
              "wires": {"W": {"from": "A:1", "to": "B:1", "part": "w"}}
              """
                  .formatted(row[0]));
      double factor = with(facts, 0, 50).amps() / with(facts, 0, 30).amps();
      assertThat(factor / row[1]).as("%s", row[0]).isBetween(row[0] < 75 ? 0.89 : 0.95, 1.01);
    }
  }

  @Test
  void withoutASizeNothingIsSaid() {
    Facts facts = one("");
    assertThat(facts.ampacity().of(wire(facts, "W"))).isEmpty();
    assertThat(facts.ampacity().steadyCelsius(wire(facts, "W"), 5)).isEmpty();
    assertThat(facts.ampacity().cooling(wire(facts, "W"))).isEmpty();
  }

  @Test
  void neighboursCostWhatTheChartSays() {
    Facts facts = one(", \"areaMm2\": 1");
    double alone = with(facts, Around.UNKNOWN, 40).amps();
    assertThat(with(facts, 0, 40).amps()).isEqualTo(alone);
    assertThat(with(facts, 1, 40).amps() / alone).isCloseTo(0.9675, within(1e-9));
    assertThat(with(facts, 9, 40).amps() / alone).isCloseTo(0.755, within(1e-9));
    assertThat(with(facts, 19, 40).amps() / alone).isCloseTo(0.615, within(1e-9));
    double before = alone;
    for (int neighbours = 1; neighbours < 60; neighbours++) {
      double amps = with(facts, neighbours, 40).amps();
      assertThat(amps).isLessThanOrEqualTo(before);
      before = amps;
    }
  }

  @Test
  void pastTwentyWiresTheChartIsFromMemoryAndTheSureFigureIsThatOfTwenty() {
    Facts facts = one(", \"areaMm2\": 1");
    Ampacity few = with(facts, 19, 40);
    Ampacity many = with(facts, 60, 40);
    assertThat(few.basis()).isNotEqualTo(Basis.MEMORY);
    assertThat(few.sureAmps()).isEqualTo(few.amps());
    assertThat(many.basis()).isEqualTo(Basis.MEMORY);
    assertThat(many.factor()).isCloseTo(0.52, within(1e-9));
    assertThat(many.sureAmps()).isEqualTo(few.amps());
    assertThat(many.how())
        .isEqualTo(
            "with 60 other wires, used to 20 % as not all their currents are known, in still air of"
                + " 40 °C, factor 0.52");
  }

  @Test
  void makersLimitBoundsIt() {
    Facts facts =
        facts(
            """
            "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 150, "maxA": 11}}},
            "wires": {"W": {"from": "A:1", "to": "B:1", "part": "w"}}
            """);
    Ampacity ampacity = facts.ampacity().of(wire(facts, "W")).orElseThrow();
    assertThat(ampacity.amps()).isEqualTo(11);
    assertThat(ampacity.byMaker()).isTrue();
    assertThat(ampacity.basis()).isEqualTo(Basis.GIVEN);
    assertThat(ampacity.freeAirA()).isGreaterThan(20);
  }

  @Test
  void partGivesItsOwnFiguresAndAThickerWireCarriesMore() {
    String part =
        """
        "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 100, "milliohmPerM": 18.5%s}}},
        "wires": {"W": {"from": "A:1", "to": "B:1", "part": "w"}}
        """;
    Facts plain = facts(part.formatted(""));
    Facts thick = facts(part.formatted(", \"outerMm\": 3.0"));
    assertThat(thick.ampacity().of(wire(thick, "W")).orElseThrow().amps())
        .isGreaterThan(plain.ampacity().of(wire(plain, "W")).orElseThrow().amps());
  }

  @Test
  void wireWithoutARouteHasTheAirOfItsWarmerEnd() {
    String car =
        """
        "defaults": {"ambientC": 30},
        "zones": {"engine": {"ambientC": 90}, "dash": {"ambientC": 45}},
        "layout": {"nodes": {"e": {"zone": "engine"}, "d": {"zone": "dash"}}},
        "devices": {"A": {"at": "%s", "pins": {"1": {}}}, "B": {"at": "%s", "pins": {"1": {}}}},
        "wires": {"W": {"from": "A:1", "to": "B:1", "areaMm2": 1}}
        """;
    for (String[] ends : new String[][] {{"d", "e", "90"}, {"e", "d", "90"}, {"d", "d", "45"}}) {
      Facts facts = facts(car.formatted(ends[0], ends[1]));
      Around around = facts.ampacity().of(wire(facts, "W")).orElseThrow().around();
      assertThat(around.ambientC().value()).isEqualTo(Double.parseDouble(ends[2]));
    }
    Facts nowhere = one(", \"areaMm2\": 1");
    Ampacity ampacity = nowhere.ampacity().of(wire(nowhere, "W")).orElseThrow();
    assertThat(ampacity.around().ambientC().value()).isEqualTo(40);
    assertThat(ampacity.how())
        .isEqualTo("alone in still air of 40 °C, its neighbours not being known");
  }

  @Test
  void worstPieceOfTheRouteCounts() {
    Facts facts =
        facts(
            """
            "zones": {"hot": {"ambientC": 85}, "cool": {"ambientC": 40}},
            "layout": {"nodes": {"a": {"zone": "cool"}, "b": {"zone": "cool"},
                                 "c": {"zone": "hot"}},
              "segments": {"ab": {"from": "a", "to": "b", "lengthMm": 500},
                           "bc": {"from": "b", "to": "c", "lengthMm": 500}}},
            "devices": {"A": {"at": "a", "pins": {"1": {}, "2": {}}},
                        "B": {"at": "b", "pins": {"1": {}}}, "C": {"at": "c", "pins": {"1": {}}}},
            "wires": {"W": {"from": "A:1", "to": "C:1", "areaMm2": 1},
                      "V": {"from": "A:2", "to": "B:1", "areaMm2": 1}}
            """);
    Ampacity both = facts.ampacity().of(wire(facts, "W")).orElseThrow();
    assertThat(both.around().ambientC().value()).isEqualTo(85);
    assertThat(both.around().neighbours()).isZero();
    Ampacity cool = facts.ampacity().of(wire(facts, "V")).orElseThrow();
    assertThat(cool.around().neighbours()).isEqualTo(1);
    assertThat(cool.factor()).isCloseTo(0.9675, within(1e-9));
    double hottest = facts.ampacity().steadyCelsius(wire(facts, "W"), 5).orElseThrow();
    assertThat(hottest).isGreaterThan(85);
  }

  @Test
  void steadyTemperatureAtTheAmpacityIsTheClass() {
    Facts facts = one(", \"areaMm2\": 2.5");
    double amps = facts.ampacity().of(wire(facts, "W")).orElseThrow().amps();
    assertThat(facts.ampacity().steadyCelsius(wire(facts, "W"), amps).orElseThrow())
        .isCloseTo(WireForms.CLASS_C, within(1e-6));
    assertThat(facts.ampacity().steadyCelsius(wire(facts, "W"), 1000)).isEmpty();
  }
}
