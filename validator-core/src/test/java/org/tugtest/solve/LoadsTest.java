package org.tugtest.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Loads of constant power and current; E = 12 V behind R = 1 ohm gives at most E²/4R = 36 W. */
class LoadsTest {
  private static Solution one(double amount, boolean watts, double floor) {
    return Solver.solve(
        new Circuit(
            2,
            List.of(
                new Branch.Source(1, 0, 12, 1, 20, Double.POSITIVE_INFINITY, false),
                new Branch.Load(1, 0, amount, watts, floor))));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 1, 10, 30, 35, 35.9, 35.999, 36})
  void constantPowerUpToTheMostThatThereIs(double watts) {
    Solution solution = one(watts, true, 1);
    double volts = 6 + Math.sqrt(Math.max(0, 36 - watts));
    assertThat(solution.across(1)).isCloseTo(volts, within(1e-5));
    assertThat(solution.troubles()).noneMatch(Trouble.Collapse.class::isInstance);
  }

  @ParameterizedTest
  @ValueSource(doubles = {36.000001, 36.0001, 36.001, 36.1, 37, 40, 100, 10_000})
  void collapseAboveIt(double watts) {
    Solution solution = one(watts, true, 5);
    assertThat(solution.troubles())
        .singleElement()
        .satisfies(
            trouble -> {
              Trouble.Collapse collapse = (Trouble.Collapse) trouble;
              assertThat(collapse.branches()).containsExactly(1);
              assertThat(collapse.mostWatts()).isCloseTo(36, within(1e-9));
            });
    double ohms = 25 / watts;
    assertThat(solution.across(1)).isCloseTo(12 * ohms / (1 + ohms), within(1e-6));
  }

  @Test
  void aLoadUnderItsFloorThatCouldBeFedIsNoCollapse() {
    Solution solution = one(35, true, 9);
    assertThat(solution.across(1)).isLessThan(9);
    assertThat(solution.troubles()).isEmpty();
  }

  @Test
  void constantCurrentAboveAndBelowItsFloor() {
    assertThat(one(4, false, 6).across(1)).isCloseTo(8, within(1e-12));
    assertThat(one(6, false, 6).across(1)).isCloseTo(6, within(1e-9));
    double ohms = 6.0 / 20;
    assertThat(one(20, false, 6).across(1)).isCloseTo(12 * ohms / (1 + ohms), within(1e-9));
    assertThat(one(20, false, 6).troubles()).isEmpty();
    assertThat(one(0, false, 6).amps(1)).isZero();
  }

  @Test
  void twoThatCanBeFedAloneAndNotTogether() {
    Branch load = new Branch.Load(1, 0, 20, true, 5);
    List<Branch> branches = new ArrayList<>();
    branches.add(new Branch.Source(1, 0, 12, 1, 20, Double.POSITIVE_INFINITY, false));
    branches.add(load);
    assertThat(Solver.solve(new Circuit(2, branches)).troubles()).isEmpty();
    branches.add(load);
    assertThat(Solver.solve(new Circuit(2, branches)).troubles())
        .anySatisfy(trouble -> assertThat(trouble.branches()).isEqualTo(List.of(1, 2)))
        .allMatch(Trouble.Collapse.class::isInstance);
  }

  @Test
  void oneThatCannotBeFedAloneIsToldFromThoseThatItPullsDown() {
    Solution solution =
        Solver.solve(
            new Circuit(
                2,
                List.of(
                    new Branch.Source(1, 0, 12, 1, 20, Double.POSITIVE_INFINITY, false),
                    new Branch.Load(1, 0, 5, true, 6),
                    new Branch.Load(1, 0, 200, true, 6))));
    assertThat(solution.across(1)).isLessThan(6);
    assertThat(solution.troubles())
        .singleElement()
        .satisfies(
            trouble -> {
              assertThat(trouble.branches()).containsExactly(2);
              assertThat(((Trouble.Collapse) trouble).mostWatts()).isCloseTo(36, within(1e-4));
            });
  }

  @Test
  void theHighestAnswerIsTaken() {
    // 12.6 V, 0.5 ohm: 20 W at 11.76 V or at 0.85 V.
    Solution solution =
        Solver.solve(
            new Circuit(
                2,
                List.of(
                    new Branch.Source(1, 0, 12.6, 0.5, 20, Double.POSITIVE_INFINITY, false),
                    new Branch.Load(1, 0, 20, true, 0.1))));
    assertThat(solution.across(1)).isCloseTo(6.3 + Math.sqrt(6.3 * 6.3 - 10), within(1e-9));
  }

  @Test
  void aLoadTheWrongWayRoundDrawsTheSame() {
    Solution solution =
        Solver.solve(
            new Circuit(
                2,
                List.of(
                    new Branch.Source(1, 0, 12, 0.1, 20, Double.POSITIVE_INFINITY, false),
                    new Branch.Load(0, 1, 10, true, 6))));
    assertThat(solution.watts(1)).isCloseTo(10, within(1e-9));
    assertThat(solution.across(1)).isNegative();
  }

  @Test
  void aLoadThatHangsOnOneSideDrawsNothing() {
    Solution solution =
        Solver.solve(
            new Circuit(
                4,
                List.of(
                    new Branch.Source(1, 0, 12, 0.1, 20, Double.POSITIVE_INFINITY, false),
                    new Branch.Load(1, 2, 10, true, 6),
                    new Branch.Load(3, 2, 2, false, 6))));
    assertThat(solution.amps(1)).isZero();
    assertThat(solution.volts(3).orElseThrow()).isCloseTo(12, within(1e-9));
    assertThat(solution.troubles()).isEmpty();
  }

  @Test
  void manyLoadsOnOneLongFeed() {
    List<Branch> branches = new ArrayList<>();
    branches.add(new Branch.Source(1, 0, 12.6, 0.01, 0.2, Double.POSITIVE_INFINITY, false));
    int count = 300;
    for (int i = 1; i <= count; i++) {
      branches.add(new Branch.Resistor(i, i + 1, 1e-4));
      branches.add(new Branch.Load(i + 1, 0, 2, true, 6));
    }
    Solution solution = Solver.solve(new Circuit(count + 2, branches));
    assertThat(solution.troubles()).isEmpty();
    assertThat(solution.powerResidual()).isLessThan(1e-12);
    for (int i = 2; i < branches.size(); i += 2) {
      assertThat(solution.watts(i)).isCloseTo(2, within(1e-9));
    }
  }

  /**
   * A source of constant current into a constant power has no bound; the real rest is the low one.
   */
  @Test
  void aLimitedSourceFeedsNoMoreThanItsVoltsTimesItsLimit() {
    for (double watts : new double[] {50, 117.9, 118.1, 170, 1000}) {
      Branch limited = new Branch.Source(1, 0, 12, 0.02, 1, 10, true);
      Solution solution =
          Solver.solve(new Circuit(2, List.of(limited, new Branch.Load(1, 0, watts, true, 6))));
      double volts = solution.volts(1).orElseThrow();
      boolean fed = watts < 10 * (12 - 10 * 0.02);
      if (fed) {
        assertThat(volts).isCloseTo(6 + Math.sqrt(36 - 0.02 * watts), within(1e-9));
        assertThat(solution.troubles()).isEmpty();
      } else {
        assertThat(volts).isCloseTo(10 * 36 / watts, within(1e-9));
        assertThat(solution.troubles()).hasSize(1);
        Trouble.Collapse collapse = (Trouble.Collapse) solution.troubles().get(0);
        assertThat(collapse.branches()).containsExactly(1);
        assertThat(collapse.limits()).containsExactly(0);
        assertThat(collapse.mostWatts()).isCloseTo(118, within(1e-4));
      }
    }
  }

  @Test
  void aLoadThatNoSourceCouldFeedIsNotTheFaultOfALimit() {
    Branch limited = new Branch.Source(1, 0, 12, 1, 1, 10, true);
    Solution solution =
        Solver.solve(new Circuit(2, List.of(limited, new Branch.Load(1, 0, 500, true, 6))));
    Trouble.Collapse collapse = (Trouble.Collapse) solution.troubles().get(0);
    assertThat(collapse.limits()).isEmpty();
    assertThat(collapse.mostWatts()).isCloseTo(36, within(1e-4));
  }

  @Test
  void limitedSourcesSideBySideAndLoadsOfBothKindsComeToRest() {
    List<Branch> branches =
        List.of(
            new Branch.Source(1, 0, 12, 0.02, 1, 10, true),
            new Branch.Source(2, 0, 12.1, 0.02, 1, 8, true),
            new Branch.Resistor(1, 2, 0.01),
            new Branch.Load(1, 0, 100, true, 3),
            new Branch.Load(2, 0, 9, false, 6),
            new Branch.Load(2, 0, 80, true, 9));
    Solution solution = Solver.solve(new Circuit(3, branches));
    assertThat(solution.troubles()).noneMatch(is -> !(is instanceof Trouble.Collapse));
    assertThat(solution.currentResidual()).isLessThan(1e-9);
    for (int i = 3; i < 6; i++) {
      assertThat(solution.amps(i))
          .isCloseTo(((Branch.Load) branches.get(i)).amps(solution.across(i)), within(1e-9));
    }
    assertThat(solution.amps(0)).isEqualTo(-10);
    assertThat(solution.amps(1)).isEqualTo(-8);
  }
}
