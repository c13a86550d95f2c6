package org.tugtest.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The last linear network of every solution, solved once more by ngspice. */
class SimulatorTest {
  private static final double SHARE_OF_EMF = 1e-9;

  @BeforeEach
  void needsTheSimulator() {
    assumeTrue(Spice.isThere(), "ngspice is not on the path");
  }

  @Test
  void publishedNetworks() throws Exception {
    Spice spice = new Spice();
    Published.all().forEach(network -> spice.add(Solver.solve(network.circuit())));
    assertThat(spice.differences()).hasSize(8);
    for (double difference : spice.differences()) {
      assertThat(difference).isLessThanOrEqualTo(SHARE_OF_EMF);
    }
  }

  @Test
  void fiveHundredNetworksWithLoadsDiodesRelaysAndLimits() throws Exception {
    Spice spice = new Spice();
    for (int seed = 0; seed < 500; seed++) {
      spice.add(Solver.solve(Circuits.mixed(seed)));
    }
    double[] differences = spice.differences();
    for (int seed = 0; seed < differences.length; seed++) {
      assertThat(differences[seed]).as("network %d", seed).isLessThanOrEqualTo(SHARE_OF_EMF);
    }
    assertThat(spice.compared()).isGreaterThan(10_000);
  }
}
