package org.tugtest.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RelaysTest {
  private static final Branch BATTERY =
      new Branch.Source(1, 0, 12, 0.01, 0.2, Double.POSITIVE_INFINITY, false);

  private static Circuit circuit(int nodes, Branch... branches) {
    List<Branch> all = new ArrayList<>(List.of(BATTERY));
    all.addAll(List.of(branches));
    return new Circuit(nodes, all);
  }

  @Test
  void aCoilPullsAtItsPullInVoltsAndNotBelow() {
    for (double volts : new double[] {6.99, 7, 7.01}) {
      Solution solution =
          Solver.solve(
              new Circuit(
                  2,
                  List.of(
                      new Branch.Source(1, 0, volts, 1e-6, 1, Double.POSITIVE_INFINITY, false),
                      new Branch.Coil(1, 0, 1e6, 6.9999999, 2))));
      assertThat(solution.pulled(1)).isEqualTo(volts >= 7);
    }
  }

  @Test
  void aChangeOverRelayMovesItsLoad() {
    Circuit circuit =
        circuit(
            4,
            new Branch.Coil(1, 0, 80, 7, 2),
            new Branch.Contact(1, 2, 0.01, 1, false),
            new Branch.Contact(1, 3, 0.01, 1, true),
            new Branch.Resistor(2, 0, 10),
            new Branch.Resistor(3, 0, 10));
    Solution solution = Solver.solve(circuit);
    assertThat(solution.pulled(1)).isTrue();
    assertThat(solution.amps(4)).isGreaterThan(1);
    assertThat(solution.amps(5)).isZero();
    assertThat(solution.troubles()).isEmpty();
  }

  /** The contact feeds its own coil; a start button of 1 ohm feeds it too when {@code started}. */
  private static Circuit holding(boolean started) {
    return circuit(
        3,
        new Branch.Coil(2, 0, 80, 7, 2),
        new Branch.Contact(1, 2, 0, 1, false),
        started ? new Branch.Resistor(1, 2, 1) : new Branch.Open(1, 2));
  }

  @Test
  void aRelayThatHoldsItselfHasTwoEnds() {
    Solution released = Solver.solve(holding(false));
    assertThat(released.pulled(1)).isFalse();
    assertThat(released.troubles())
        .containsExactly(new Trouble.HoldsItself(List.of(1), List.of(List.of(), List.of(1))));
    Solution started = Solver.solve(holding(true));
    assertThat(started.pulled(1)).isTrue();
    assertThat(started.troubles()).isEmpty();
    Solution held = Solver.solve(holding(false), started.allPulled());
    assertThat(held.pulled(1)).isTrue();
    assertThat(held.troubles()).isEmpty();
  }

  @Test
  void aBuzzerComesToNoRest() {
    Solution solution =
        Solver.solve(
            circuit(3, new Branch.Coil(2, 0, 80, 7, 2), new Branch.Contact(1, 2, 0, 1, true)));
    assertThat(solution.troubles())
        .containsExactly(new Trouble.Chatter(List.of(List.of(), List.of(1)), false));
    assertThat(solution.troubles().get(0).branches()).containsExactly(1);
  }

  @Test
  void aBuzzerDoesNotKeepOthersFromResting() {
    Solution solution =
        Solver.solve(
            circuit(
                3,
                new Branch.Coil(2, 0, 80, 7, 2),
                new Branch.Contact(1, 2, 0, 1, true),
                new Branch.Coil(1, 0, 80, 7, 2)));
    assertThat(solution.pulled(3)).isTrue();
    assertThat(solution.troubles().get(0).branches()).containsExactly(1);
  }

  @Test
  void twoBuzzersAreTwoTroubles() {
    Solution solution =
        Solver.solve(
            circuit(
                4,
                new Branch.Coil(2, 0, 80, 7, 2),
                new Branch.Contact(1, 2, 0, 1, true),
                new Branch.Coil(3, 0, 80, 7, 2),
                new Branch.Contact(1, 3, 0, 3, true)));
    assertThat(solution.troubles().stream().map(Trouble::branches))
        .containsExactly(List.of(1), List.of(3));
  }

  @Test
  void threeInARingChatterTogether() {
    // Each feeds the next through its closed contact: an odd ring has no rest.
    Solution solution =
        Solver.solve(
            circuit(
                5,
                new Branch.Coil(2, 0, 80, 7, 2),
                new Branch.Contact(1, 3, 0, 1, true),
                new Branch.Coil(3, 0, 80, 7, 2),
                new Branch.Contact(1, 4, 0, 3, true),
                new Branch.Coil(4, 0, 80, 7, 2),
                new Branch.Contact(1, 2, 0, 5, true)));
    assertThat(solution.troubles().stream().map(Trouble::branches))
        .containsExactly(List.of(1, 3, 5));
  }

  @Test
  void twoRelaysThatLockEachOtherRestWithOneOfThem() {
    Solution solution =
        Solver.solve(
            circuit(
                4,
                new Branch.Coil(2, 0, 80, 7, 2),
                new Branch.Contact(1, 3, 0, 1, true),
                new Branch.Coil(3, 0, 80, 7, 2),
                new Branch.Contact(1, 2, 0, 3, true)));
    assertThat(solution.allPulled()).containsExactly(1);
    assertThat(solution.troubles()).noneMatch(Trouble.Chatter.class::isInstance);
  }

  @Test
  void aWeakSupplyThatSagsUnderItsRelayChatters() {
    // 12 V behind 1 ohm; the contact puts 0.5 ohm across: 4 V, under the 5 V that hold the coil.
    Solution solution =
        Solver.solve(
            new Circuit(
                3,
                List.of(
                    new Branch.Source(1, 0, 12, 1, 20, Double.POSITIVE_INFINITY, false),
                    new Branch.Coil(1, 0, 80, 7, 5),
                    new Branch.Contact(1, 2, 0, 1, false),
                    new Branch.Resistor(2, 0, 0.5))));
    assertThat(solution.troubles()).hasSize(1).first().isInstanceOf(Trouble.Chatter.class);
  }

  @Test
  void aLadderOfRelaysFallsInOneAfterAnother() {
    List<Branch> branches = new ArrayList<>(List.of(BATTERY));
    int count = 60;
    for (int i = 0; i < count; i++) {
      int coil = branches.size();
      branches.add(new Branch.Coil(i + 1, 0, 800, 7, 2));
      branches.add(new Branch.Contact(i + 1, i + 2, 0.001, coil, false));
    }
    Solution solution = Solver.solve(new Circuit(count + 2, branches));
    assertThat(solution.allPulled()).hasSize(count);
    assertThat(solution.troubles()).noneMatch(Trouble.Chatter.class::isInstance);
  }
}
