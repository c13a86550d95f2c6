package org.tugtest.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SourcesTest {
  private static final double FREE = Double.POSITIVE_INFINITY;

  private static Branch.Source battery(int plus, double volts) {
    return new Branch.Source(plus, 0, volts, 0.01, 0.2, FREE, false);
  }

  @Test
  void aBatteryTakesBehindItsChargeResistance() {
    Solution solution =
        Solver.solve(
            new Circuit(
                2, List.of(battery(1, 12.6), new Branch.Source(1, 0, 14.4, 0.005, 1, FREE, true))));
    double amps = (14.4 - 12.6) / (0.2 + 0.005);
    assertThat(solution.amps(0)).isCloseTo(amps, within(1e-12));
    assertThat(solution.amps(1)).isCloseTo(-amps, within(1e-12));
  }

  @Test
  void twoBatteriesShareByTheirResistances() {
    Solution solution =
        Solver.solve(
            new Circuit(
                2,
                List.of(
                    battery(1, 12.6),
                    new Branch.Source(1, 0, 12.6, 0.03, 0.6, FREE, false),
                    new Branch.Resistor(1, 0, 1))));
    assertThat(solution.amps(0) / solution.amps(1)).isCloseTo(3, within(1e-9));
  }

  @Test
  void aGeneratorNeverTakes() {
    Solution solution =
        Solver.solve(
            new Circuit(
                2,
                List.of(
                    battery(1, 12.6),
                    new Branch.Source(1, 0, 11, 0.005, 1, FREE, true),
                    new Branch.Resistor(1, 0, 1))));
    assertThat(solution.amps(1)).isZero();
    assertThat(solution.amps(0)).isCloseTo(-12.6 / 1.01, within(1e-12));
  }

  @Test
  void aLimitedSourceGivesItsMostAndTheBatteryTheRest() {
    Branch limited = new Branch.Source(1, 0, 14.4, 0.005, 1, 50, true);
    Solution solution =
        Solver.solve(
            new Circuit(2, List.of(battery(1, 12.6), limited, new Branch.Resistor(1, 0, 0.15))));
    assertThat(solution.amps(1)).isEqualTo(-50);
    double volts = solution.volts(1).orElseThrow();
    assertThat(solution.amps(0)).isCloseTo((volts - 12.6) / 0.01, within(1e-9));
    assertThat(volts / 0.15).isCloseTo(50 - solution.amps(0), within(1e-9));
    Solution little =
        Solver.solve(
            new Circuit(2, List.of(battery(1, 12.6), limited, new Branch.Resistor(1, 0, 1))));
    assertThat(-little.amps(1)).isLessThan(50);
    assertThat(little.volts(1).orElseThrow())
        .isCloseTo(14.4 + 0.005 * little.amps(1), within(1e-9));
  }

  @Test
  void aLimitedSourceAloneHoldsItsCurrentIntoAShort() {
    Solution solution =
        Solver.solve(
            new Circuit(
                2,
                List.of(
                    new Branch.Source(1, 0, 14.4, 0.005, 1, 50, true),
                    new Branch.Resistor(1, 0, 0.001))));
    assertThat(solution.amps(0)).isEqualTo(-50);
    assertThat(solution.volts(1).orElseThrow()).isCloseTo(0.05, within(1e-12));
  }

  @Test
  void voltsAreHeldAgainstTheFirstBatteryRatherThanAGenerator() {
    Solution solution =
        Solver.solve(
            new Circuit(
                3,
                List.of(
                    new Branch.Source(1, 2, 14, 0.01, 1, FREE, true),
                    battery(1, 12.6),
                    new Branch.Resistor(2, 0, 0.1))));
    assertThat(solution.isReference(0)).isTrue();
    assertThat(solution.volts(2).orElseThrow()).isNegative();
  }

  @Test
  void islandsHaveTheirOwnReferencesAndTheDeadHaveNone() {
    Solution solution =
        Solver.solve(
            new Circuit(
                6,
                List.of(
                    battery(1, 12.6),
                    new Branch.Source(3, 2, 24, 0.01, 1, FREE, false),
                    new Branch.Resistor(4, 5, 1),
                    new Branch.Open(1, 3))));
    assertThat(solution.volts(1)).hasValue(12.6);
    assertThat(solution.volts(3)).hasValue(24);
    assertThat(solution.volts(4)).isEmpty();
    assertThat(solution.across(2)).isZero();
    assertThat(solution.oneIsland(1, 3)).isFalse();
  }

  @Test
  void aSourceInReverseAddsUp() {
    Solution solution =
        Solver.solve(
            new Circuit(
                3,
                List.of(
                    battery(1, 12),
                    new Branch.Source(2, 1, 12, 0.01, 0.2, FREE, false),
                    new Branch.Resistor(2, 0, 100))));
    assertThat(solution.volts(2).orElseThrow()).isCloseTo(24 * 100 / 100.02, within(1e-9));
  }

  @Test
  void metalAcrossASourceLetsThroughWhatItsResistanceDoes() {
    Solution solution =
        Solver.solve(new Circuit(2, List.of(battery(1, 12.6), new Branch.Resistor(1, 0, 0))));
    assertThat(solution.troubles()).containsExactly(new Trouble.ShortedSources(List.of(0)));
    assertThat(solution.amps(1)).isCloseTo(1260, within(1e-9));
  }

  @Test
  void severalSourcesThatOnePieceOfMetalShortsAreRefused() {
    Solution solution =
        Solver.solve(
            new Circuit(
                2, List.of(battery(1, 12.6), battery(1, 12.0), new Branch.Resistor(1, 0, 0))));
    assertThat(solution.troubles()).containsExactly(new Trouble.ShortedSources(List.of(0, 1)));
    assertThat(solution.volts(1)).isEmpty();
    assertThat(solution.amps(2)).isZero();
  }

  @Test
  void nothingToSolve() {
    assertThat(Solver.solve(new Circuit(0, List.of())).troubles()).isEmpty();
    assertThat(Solver.solve(new Circuit(3, List.of())).volts(2)).isEmpty();
    assertThat(Solver.solve(new Circuit(1, List.of(battery(0, 12)))).troubles())
        .containsExactly(new Trouble.ShortedSources(List.of(0)));
  }
}
