package org.tugtest.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What holds for the solution of any network. */
class LawsTest {
  private static final int NETWORKS = 500;

  @Test
  void currentsSumToZeroAtEveryNode() {
    for (int seed = 0; seed < NETWORKS; seed++) {
      assertThat(Solver.solve(Circuits.mixed(seed)).currentResidual())
          .as("%d", seed)
          .isLessThan(1e-9);
    }
  }

  @Test
  void whatIsGivenIsTaken() {
    for (int seed = 0; seed < NETWORKS; seed++) {
      assertThat(Solver.solve(Circuits.mixed(seed)).powerResidual())
          .as("%d", seed)
          .isLessThan(1e-9);
    }
  }

  @Test
  void loadsAboveTheirFloorDrawWhatTheyAreSaidToDraw() {
    int seen = 0;
    for (int seed = 0; seed < NETWORKS; seed++) {
      Solution solution = Solver.solve(Circuits.mixed(seed));
      if (solution.troubles().stream().anyMatch(Trouble.LoadsUnsettled.class::isInstance)) {
        continue;
      }
      for (int i = 0; i < solution.circuit().branches().size(); i++) {
        if (solution.circuit().branches().get(i) instanceof Branch.Load load) {
          double amps = load.amps(solution.across(i));
          assertThat(solution.amps(i)).isCloseTo(amps, within(1e-9 * Math.abs(amps) + 1e-12));
          seen++;
        }
      }
    }
    assertThat(seen).isGreaterThan(2000);
  }

  @Test
  void sourceAndMeterCanChangePlaces() {
    Random random = new Random(3);
    for (int seed = 0; seed < 100; seed++) {
      RandomGraph graph = RandomGraph.nearTree(random, 30, 10);
      Factor factor = graph.factor();
      int here = 1 + random.nextInt(29);
      int there = 1 + random.nextInt(29);
      double[] one = new double[30];
      double[] other = new double[30];
      one[here] = 1;
      other[there] = 1;
      double transfer = factor.solve(one)[there];
      assertThat(factor.solve(other)[here]).isCloseTo(transfer, within(1e-9 * transfer));
    }
  }

  @Test
  void numberingChangesNothing() {
    for (int seed = 0; seed < 200; seed++) {
      Circuit circuit = Circuits.linear(seed);
      List<Integer> nodes = new ArrayList<>();
      for (int i = 0; i < circuit.nodes(); i++) {
        nodes.add(i);
      }
      Collections.shuffle(nodes, new Random(seed));
      List<Integer> branches = new ArrayList<>();
      for (int i = 0; i < circuit.branches().size(); i++) {
        branches.add(i);
      }
      Collections.shuffle(branches.subList(0, branches.size()), new Random(seed));
      List<Branch> moved = new ArrayList<>();
      for (int i : branches) {
        moved.add(moved(circuit.branches().get(i), nodes));
      }
      Solution before = Solver.solve(circuit);
      Solution after = Solver.solve(new Circuit(circuit.nodes(), moved));
      for (int i = 0; i < branches.size(); i++) {
        assertThat(after.across(i)).isCloseTo(before.across(branches.get(i)), within(1e-9));
      }
    }
  }

  private static Branch moved(Branch branch, List<Integer> nodes) {
    int a = nodes.get(branch.a());
    int b = nodes.get(branch.b());
    if (branch instanceof Branch.Source source) {
      return new Branch.Source(
          a,
          b,
          source.volts(),
          source.ohms(),
          source.chargeOhms(),
          source.maxA(),
          source.generator());
    }
    return new Branch.Resistor(a, b, ((Branch.Resistor) branch).ohms());
  }
}
