package org.tugtest.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Circuits that nothing joins come to rest each by itself, as if the others were not there. */
class PartsTest {
  private static final double SAME = 1e-9;

  /** Circuits laid into one: node n of circuit k is node n·K + k, so that no range is one's own. */
  private static Circuit together(List<Circuit> circuits) {
    List<Branch> branches = new ArrayList<>();
    int most = circuits.stream().mapToInt(Circuit::nodes).max().orElse(0);
    int count = circuits.size();
    for (int row = 0; row < longest(circuits); row++) {
      for (int k = 0; k < count; k++) {
        if (row < circuits.get(k).branches().size()) {
          branches.add(moved(circuits, k, row));
        }
      }
    }
    return new Circuit(most * count, branches);
  }

  private static int longest(List<Circuit> circuits) {
    return circuits.stream().mapToInt(one -> one.branches().size()).max().orElse(0);
  }

  /** The number in the whole of a row of one of the circuits. */
  private static int number(List<Circuit> circuits, int k, int row) {
    int number = 0;
    for (int i = 0; i < circuits.size(); i++) {
      number += Math.min(circuits.get(i).branches().size(), row + (i < k ? 1 : 0));
    }
    return number;
  }

  private static Branch moved(List<Circuit> circuits, int k, int row) {
    int count = circuits.size();
    Branch branch = circuits.get(k).branches().get(row);
    int a = branch.a() * count + k;
    int b = branch.b() * count + k;
    if (branch instanceof Branch.Resistor is) {
      return new Branch.Resistor(a, b, is.ohms());
    } else if (branch instanceof Branch.Source is) {
      return new Branch.Source(
          a, b, is.volts(), is.ohms(), is.chargeOhms(), is.maxA(), is.generator());
    } else if (branch instanceof Branch.Load is) {
      return new Branch.Load(a, b, is.amount(), is.watts(), is.floorV());
    } else if (branch instanceof Branch.Diode is) {
      return new Branch.Diode(a, b, is.volts(), is.ohms());
    } else if (branch instanceof Branch.Coil is) {
      return new Branch.Coil(a, b, is.ohms(), is.pullInV(), is.dropOutV());
    } else if (branch instanceof Branch.Contact is) {
      int coil = number(circuits, k, is.coil());
      return new Branch.Contact(a, b, is.ohms(), coil, is.restClosed());
    }
    return new Branch.Open(a, b);
  }

  private static List<Integer> outer(List<Circuit> circuits, int k, List<Integer> inside) {
    return inside.stream().map(row -> number(circuits, k, row)).toList();
  }

  @Test
  void randomCircuitsTogetherAreWhatEachIsAlone() {
    int troubled = 0;
    for (int seed = 0; seed < 200; seed++) {
      List<Circuit> circuits = new ArrayList<>();
      for (int k = 0; k < 2 + seed % 4; k++) {
        circuits.add(Circuits.mixed(1000L * seed + k));
      }
      Solution whole = Solver.solve(together(circuits));
      List<Integer> pulled = new ArrayList<>();
      List<Trouble> troubles = new ArrayList<>();
      for (int k = 0; k < circuits.size(); k++) {
        Solution alone = Solver.solve(circuits.get(k));
        assertThat(alone.linear()).as("seed %d", seed).isPresent();
        for (int row = 0; row < circuits.get(k).branches().size(); row++) {
          int branch = number(circuits, k, row);
          String as = "seed " + seed + ", branch " + row + " of " + k;
          assertThat(whole.across(branch)).as(as).isEqualTo(alone.across(row), within(SAME * 100));
          assertThat(whole.amps(branch))
              .as(as)
              .isEqualTo(alone.amps(row), within(SAME * (1000 + Math.abs(alone.amps(row)))));
        }
        pulled.addAll(outer(circuits, k, alone.allPulled()));
        int which = k;
        alone
            .troubles()
            .forEach(
                trouble -> troubles.add(trouble.renumbered(row -> number(circuits, which, row))));
      }
      assertThat(whole.allPulled()).containsExactlyInAnyOrderElementsOf(pulled).isSorted();
      assertThat(whole.troubles().stream().map(Trouble::branches))
          .as("seed %d", seed)
          .containsExactlyInAnyOrderElementsOf(troubles.stream().map(Trouble::branches).toList());
      assertThat(whole.currentResidual()).isLessThan(SAME);
      troubled += troubles.isEmpty() ? 0 : 1;
    }
    assertThat(troubled).isBetween(10, 190);
  }

  /** A coil behind its own rest contact buzzes; a coil that its own contact feeds holds itself. */
  private static Circuit relay(boolean buzzes) {
    return new Circuit(
        3,
        List.of(
            new Branch.Source(0, 1, 12, 0.02, 0.4, Double.POSITIVE_INFINITY, false),
            new Branch.Coil(2, 1, 80, 7, 2),
            new Branch.Contact(0, 2, 0.01, 1, buzzes)));
  }

  @Test
  void theWorkGrowsAsTheNumberOfPartsAndNotAsItsPowers() {
    int one = Solver.solve(relay(true)).rounds() + Solver.solve(relay(false)).rounds();
    for (int pairs : new int[] {1, 8, 64}) {
      List<Circuit> circuits = new ArrayList<>();
      for (int k = 0; k < pairs; k++) {
        circuits.add(relay(true));
        circuits.add(relay(false));
      }
      Solution solution = Solver.solve(together(circuits));
      assertThat(solution.rounds()).isLessThanOrEqualTo(pairs * one + 1);
      assertThat(solution.troubles()).hasSize(2 * pairs);
      assertThat(solution.troubles())
          .filteredOn(Trouble.Chatter.class::isInstance)
          .hasSize(pairs)
          .allMatch(trouble -> trouble.branches().size() == 1);
    }
  }

  @Test
  void aRelayThatHoldsItselfIsRememberedInItsPart() {
    List<Circuit> circuits = List.of(relay(false), relay(true), relay(false));
    Circuit whole = together(circuits);
    Grids grids = new Grids();
    Solution first = Solver.solve(whole, null, grids);
    assertThat(first.troubles()).hasSize(3);
    Solution again = Solver.again(whole, null, first, grids);
    assertThat(again.allPulled()).isEqualTo(first.allPulled());
    assertThat(again.troubles()).containsExactlyInAnyOrderElementsOf(first.troubles());
  }

  @Test
  void whatWasBeforeIsThatOfThePart() {
    List<Circuit> circuits = List.of(relay(false), relay(true), relay(false));
    int coil = number(circuits, 2, 1);
    Solution solution = Solver.solve(together(circuits), List.of(coil));
    assertThat(solution.pulled(coil)).isTrue();
    assertThat(solution.pulled(number(circuits, 0, 1))).isFalse();
    assertThat(solution.troubles()).hasSize(1).allMatch(Trouble.Chatter.class::isInstance);
  }

  @Test
  void aContactIsOfThePartOfItsCoil() {
    Circuit circuit =
        new Circuit(
            6,
            List.of(
                new Branch.Source(0, 1, 12, 0.02, 0.4, Double.POSITIVE_INFINITY, false),
                new Branch.Coil(0, 1, 80, 7, 2),
                new Branch.Source(2, 3, 24, 0.02, 0.4, Double.POSITIVE_INFINITY, false),
                new Branch.Contact(2, 4, 0.01, 1, false),
                new Branch.Resistor(4, 3, 10)));
    Solution solution = Solver.solve(circuit);
    assertThat(solution.allPulled()).containsExactly(1);
    assertThat(solution.amps(4)).isCloseTo(24 / 10.03, within(1e-9));
    assertThat(solution.volts(5)).isEmpty();
  }

  @Test
  void whereNothingIsFedNothingFlows() {
    Circuit circuit =
        new Circuit(
            4,
            List.of(
                new Branch.Resistor(0, 1, 1),
                new Branch.Load(1, 0, 20, true, 6),
                new Branch.Diode(2, 3, 0.7, 0.01)));
    Solution solution = Solver.solve(circuit);
    assertThat(solution.linear()).isPresent();
    assertThat(solution.volts(0)).isEmpty();
    assertThat(solution.amps(0)).isZero();
    assertThat(solution.troubles()).isEmpty();
  }
}
