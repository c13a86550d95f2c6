package org.tugtest.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Updates of a factor against solving the changed network afresh. */
class WhatIfTest {
  @Test
  void openedBranchesAndNewOnes() {
    int compared = 0;
    for (int seed = 0; seed < 200; seed++) {
      Circuit circuit = Circuits.linear(seed);
      Random random = new Random(seed);
      List<WhatIf.Change> changes = new ArrayList<>();
      List<Branch> branches = new ArrayList<>(circuit.branches());
      for (int i = 0; i < 1 + random.nextInt(3); i++) {
        int branch = random.nextInt(circuit.branches().size());
        if (branches.get(branch) instanceof Branch.Resistor) {
          changes.add(WhatIf.Change.open(branch));
          branches.set(branch, new Branch.Open(branches.get(branch).a(), branches.get(branch).b()));
        }
      }
      int a = random.nextInt(circuit.nodes());
      int b = random.nextInt(circuit.nodes());
      if (a != b && random.nextBoolean()) {
        changes.add(WhatIf.Change.joined(a, b, 0.2));
        branches.add(new Branch.Resistor(a, b, 0.2));
      }
      WhatIf.Answer answer =
          Solver.solve(circuit).whatIf().orElseThrow().after(changes).orElseThrow();
      Solution afresh = Solver.solve(new Circuit(circuit.nodes(), branches));
      for (int node = 0; node < circuit.nodes(); node++) {
        OptionalDouble volts = afresh.volts(node);
        assertThat(answer.volts(node).isPresent()).isEqualTo(volts.isPresent());
        if (volts.isPresent()) {
          assertThat(answer.volts(node).getAsDouble()).isCloseTo(volts.getAsDouble(), within(1e-6));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(3000);
  }

  @Test
  void ohmsBetweenAreThoseThatAShortShows() {
    Circuit circuit =
        new Circuit(
            3,
            List.of(
                new Branch.Source(1, 0, 12, 0.5, 0.5, Double.POSITIVE_INFINITY, false),
                new Branch.Resistor(1, 2, 1.5),
                new Branch.Resistor(2, 0, 2)));
    WhatIf whatIf = Solver.solve(circuit).whatIf().orElseThrow();
    assertThat(whatIf.ohmsBetween(2, 0).orElseThrow()).isCloseTo(1, within(1e-12));
    WhatIf.Answer shorted = whatIf.after(List.of(WhatIf.Change.joined(2, 0, 1e-6))).orElseThrow();
    assertThat(shorted.amps(1)).isCloseTo(12 / 2.0, within(1e-4));
  }
}
