package org.tugtest.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DiodesTest {
  private static final Branch BATTERY =
      new Branch.Source(1, 0, 12, 0.01, 0.2, Double.POSITIVE_INFINITY, false);

  private static Branch diode(int anode, int cathode) {
    return new Branch.Diode(anode, cathode, 0.7, 0.01);
  }

  private static Solution solve(int nodes, Branch... branches) {
    List<Branch> all = new ArrayList<>(List.of(BATTERY));
    all.addAll(List.of(branches));
    return Solver.solve(new Circuit(nodes, all));
  }

  @Test
  void forwardsAndBackwards() {
    Solution forwards = solve(3, diode(1, 2), new Branch.Resistor(2, 0, 10));
    assertThat(forwards.amps(1)).isCloseTo((12 - 0.7) / 10.02, within(1e-12));
    Solution backwards = solve(3, diode(2, 1), new Branch.Resistor(2, 0, 10));
    assertThat(backwards.amps(1)).isZero();
    assertThat(backwards.volts(2)).hasValue(0);
    assertThat(solve(3, diode(2, 1)).volts(2)).isEmpty();
  }

  @Test
  void bothInSeriesRoundALoadThatFloats() {
    Solution solution = solve(4, diode(1, 2), new Branch.Resistor(2, 3, 10), diode(3, 0));
    assertThat(solution.amps(2)).isCloseTo((12 - 1.4) / 10.03, within(1e-12));
    assertThat(solution.troubles()).isEmpty();
  }

  @Test
  void aBridgeFeedsItsLoadTheRightWayRound() {
    for (boolean turned : new boolean[] {false, true}) {
      int a = turned ? 0 : 1;
      int b = turned ? 1 : 0;
      Solution solution =
          solve(
              4, diode(a, 2), diode(b, 2), diode(3, a), diode(3, b), new Branch.Resistor(2, 3, 10));
      assertThat(solution.across(5)).isCloseTo(10.6 * 10 / 10.03, within(1e-12));
    }
  }

  @Test
  void aNodeBehindADiodeIsLiveThoughNothingFlows() {
    Solution solution = solve(3, diode(1, 2));
    assertThat(solution.volts(2).orElseThrow()).isCloseTo(11.3, within(1e-12));
    assertThat(solution.amps(1)).isZero();
  }

  @Test
  void theHighestOfTwoLiftsANodeWithoutLoad() {
    Solution solution =
        solve(
            4,
            new Branch.Resistor(1, 2, 1),
            new Branch.Resistor(2, 0, 1),
            diode(2, 3),
            diode(1, 3));
    assertThat(solution.volts(3).orElseThrow())
        .isCloseTo(solution.volts(1).orElseThrow() - 0.7, within(1e-9));
    assertThat(solution.amps(3)).isZero();
  }

  @Test
  void anIslandOfItsOwnIsJoinedByDiodesBothWays() {
    // A second battery that only diodes join to the first: 24 V pushes through both.
    Solution solution =
        solve(
            4,
            new Branch.Source(3, 2, 24, 0.01, 0.2, Double.POSITIVE_INFINITY, false),
            diode(3, 1),
            diode(0, 2));
    double amps = (24 - 12 - 1.4) / (0.2 + 0.01 + 0.02);
    assertThat(solution.amps(0)).isCloseTo(amps, within(1e-9));
    Solution apart =
        solve(
            4,
            new Branch.Source(3, 2, 9, 0.01, 0.2, Double.POSITIVE_INFINITY, false),
            diode(3, 1),
            diode(0, 2));
    assertThat(apart.amps(0)).isZero();
  }

  @Test
  void aDiodeAcrossACoilStaysOff() {
    Solution solution = solve(2, new Branch.Coil(1, 0, 80, 7, 2), diode(0, 1));
    assertThat(solution.amps(2)).isZero();
    assertThat(solution.pulled(1)).isTrue();
  }

  @Test
  void longChainsOfDiodes() {
    List<Branch> branches = new ArrayList<>(List.of(BATTERY));
    int count = 14;
    for (int i = 1; i <= count; i++) {
      branches.add(diode(i, i + 1));
    }
    branches.add(new Branch.Resistor(count + 1, 0, 10));
    Solution solution = Solver.solve(new Circuit(count + 2, branches));
    assertThat(solution.amps(1)).isCloseTo((12 - 14 * 0.7) / (10.01 + 0.14), within(1e-12));
    branches.add(5, diode(40, 41));
    Solution more = Solver.solve(new Circuit(50, branches));
    assertThat(more.troubles()).isEmpty();
  }
}
