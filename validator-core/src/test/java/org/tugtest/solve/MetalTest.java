package org.tugtest.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Currents through parts without resistance: those of equal resistances as these become small. */
class MetalTest {
  private static Circuit ring(double ohms) {
    List<Branch> branches = new ArrayList<>();
    branches.add(new Branch.Source(1, 0, 12, 0.01, 0.2, Double.POSITIVE_INFINITY, false));
    branches.add(new Branch.Resistor(1, 2, ohms));
    branches.add(new Branch.Resistor(2, 3, ohms));
    branches.add(new Branch.Resistor(3, 4, ohms));
    branches.add(new Branch.Resistor(4, 1, ohms));
    branches.add(new Branch.Resistor(2, 4, ohms));
    branches.add(new Branch.Resistor(3, 0, 3));
    branches.add(new Branch.Resistor(4, 0, 6));
    return new Circuit(5, branches);
  }

  @Test
  void theLimitOfSmallResistances() {
    Solution metal = Solver.solve(ring(0));
    Solution small = Solver.solve(ring(1e-7));
    for (int i = 0; i < 8; i++) {
      assertThat(metal.amps(i)).isCloseTo(small.amps(i), within(1e-5));
      assertThat(metal.watts(i)).isCloseTo(small.watts(i), within(1e-4));
    }
    assertThat(metal.currentResidual()).isLessThan(1e-12);
  }

  @Test
  void twoLikeBarsShareEvenly() {
    Solution solution =
        Solver.solve(
            new Circuit(
                3,
                List.of(
                    new Branch.Source(1, 0, 12, 0.01, 0.2, Double.POSITIVE_INFINITY, false),
                    new Branch.Resistor(1, 2, 0),
                    new Branch.Resistor(1, 2, 0),
                    new Branch.Resistor(2, 0, 1.19))));
    assertThat(solution.amps(1)).isCloseTo(5, within(1e-9));
    assertThat(solution.amps(2)).isCloseTo(5, within(1e-9));
  }

  @Test
  void bothEndsOnOneNodeCarryNothing() {
    Solution solution =
        Solver.solve(
            new Circuit(
                2,
                List.of(
                    new Branch.Source(1, 0, 12, 0.01, 0.2, Double.POSITIVE_INFINITY, false),
                    new Branch.Resistor(1, 1, 0),
                    new Branch.Resistor(1, 1, 5))));
    assertThat(solution.amps(1)).isZero();
    assertThat(solution.amps(2)).isZero();
  }
}
