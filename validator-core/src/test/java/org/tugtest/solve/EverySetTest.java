package org.tugtest.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Small circuits with relays, diodes and sources, against every set in which these can be. */
class EverySetTest {
  @Test
  void theSetsThatAreRightContainOurs() {
    int chatters = 0;
    int several = 0;
    for (int seed = 0; seed < 300; seed++) {
      Circuit circuit = circuit(new Random(seed));
      BruteForce every = new BruteForce(circuit);
      assertThat(every.choices()).isLessThanOrEqualTo(12);
      List<BruteForce.Right> right = every.all();
      Solution solution = Solver.solve(circuit);
      boolean noAnswer =
          solution.troubles().stream()
              .anyMatch(t -> t instanceof Trouble.Chatter chatter && !chatter.restsElsewhere());
      assertThat(solution.troubles()).noneMatch(Trouble.PiecesUnsettled.class::isInstance);
      if (noAnswer) {
        assertThat(right).as("%d", seed).isEmpty();
        chatters++;
      } else {
        assertThat(right).as("%d", seed).anyMatch(set -> same(set, solution));
        several += right.size() > 1 ? 1 : 0;
      }
    }
    assertThat(chatters).isBetween(5, 100);
    assertThat(several).isGreaterThan(10);
  }

  private static boolean same(BruteForce.Right set, Solution solution) {
    double zero = solution.volts(0).orElseThrow();
    for (int node = 0; node < set.volts().size(); node++) {
      double volts = solution.volts(node).orElseThrow() - zero;
      if (Math.abs(volts - set.volts().get(node)) > 1e-7) {
        return false;
      }
    }
    return set.pulled().equals(solution.allPulled());
  }

  private static Circuit circuit(Random random) {
    int nodes = 5 + random.nextInt(5);
    List<Branch> branches = new ArrayList<>();
    for (int node = 1; node < nodes; node++) {
      branches.add(new Branch.Resistor(node, 0, 1e3 + 1e4 * random.nextDouble()));
      branches.add(
          new Branch.Resistor(
              node, random.nextInt(node), Math.pow(10, 3 * random.nextDouble() - 2)));
    }
    int sources = 1 + random.nextInt(2);
    for (int i = 0; i < sources; i++) {
      double ohms = 0.01 + 0.1 * random.nextDouble();
      int plus = i == 0 ? 1 : 1 + random.nextInt(nodes - 1);
      branches.add(
          new Branch.Source(
              plus,
              0,
              10 + 5 * random.nextDouble(),
              ohms,
              20 * ohms,
              Double.POSITIVE_INFINITY,
              i > 0 && random.nextBoolean()));
    }
    int relays = 1 + random.nextInt(4);
    for (int i = 0; i < relays; i++) {
      int coil = branches.size();
      int plus = 1 + random.nextInt(nodes - 1);
      branches.add(
          new Branch.Coil(
              plus,
              random.nextInt(plus),
              50 + 50 * random.nextDouble(),
              5 + 2 * random.nextDouble(),
              1 + 2 * random.nextDouble()));
      int contacts = 1 + random.nextInt(2);
      for (int k = 0; k < contacts; k++) {
        int a = 1 + random.nextInt(nodes - 1);
        branches.add(new Branch.Contact(a, random.nextInt(a), 0.01, coil, random.nextBoolean()));
      }
    }
    int diodes = random.nextInt(7);
    for (int i = 0; i < diodes; i++) {
      int a = random.nextInt(nodes);
      int b = random.nextInt(nodes);
      if (a != b) {
        branches.add(new Branch.Diode(a, b, 0.7, 0.01));
      }
    }
    return new Circuit(nodes, branches);
  }
}
