package org.tugtest.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** N01 to N08 against their published answers and those of ngspice 39.3. */
class PublishedNetworksTest {
  static List<Published> networks() {
    return Published.all();
  }

  @ParameterizedTest
  @MethodSource("networks")
  void answersArePublishedOnesToTheirPrintedDigits(Published network) {
    Solution solution = Solver.solve(network.circuit());
    assertThat(solution.troubles()).isEmpty();
    for (Published.Expected expected : Published.expected(network.id())) {
      if (!expected.published().isEmpty()) {
        BigDecimal printed = new BigDecimal(expected.published());
        double half = 0.5 * Math.pow(10, -printed.scale());
        assertThat(network.figure(solution, expected.quantity()))
            .as(expected.quantity())
            .isCloseTo(printed.doubleValue(), within(half * 1.001));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("networks")
  void answersAreThoseOfTheSimulator(Published network) {
    Solution solution = Solver.solve(network.circuit());
    for (Published.Expected expected : Published.expected(network.id())) {
      double size = Math.max(Math.abs(expected.simulated()), 1e-3);
      assertThat(network.figure(solution, expected.quantity()))
          .as(expected.quantity())
          .isCloseTo(expected.simulated(), within(2e-9 * size));
    }
  }
}
