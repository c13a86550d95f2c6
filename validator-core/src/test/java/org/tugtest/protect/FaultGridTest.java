package org.tugtest.protect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tugtest.solve.Branch;
import org.tugtest.solve.Circuit;
import org.tugtest.solve.Solution;
import org.tugtest.solve.Solver;

class FaultGridTest {
  /** A random near-tree on each side, joined by arms. */
  private static final class Loom {
    final Random random;
    final int side;
    final int[] a;
    final int[] b;
    final double[] ohms;
    final BitSet gates = new BitSet();
    final List<Arm> arms = new ArrayList<>();

    Loom(long seed, boolean plain) {
      random = new Random(seed);
      side = 5 + random.nextInt(40);
      int rings = random.nextInt(4);
      int edges = 2 * (side - 1 + rings);
      a = new int[edges];
      b = new int[edges];
      ohms = new double[edges];
      int at = 0;
      for (int half = 0; half < 2; half++) {
        for (int i = 1; i < side + rings; i++) {
          boolean ring = i >= side;
          a[at] = half * side + random.nextInt(ring ? side : i);
          b[at] = half * side + (ring ? random.nextInt(side) : i);
          ohms[at] = 1e-4 + random.nextDouble();
          gates.set(at, random.nextInt(3) == 0);
          at++;
        }
      }
      int sources = 1 + random.nextInt(4);
      for (int i = 0; i < sources; i++) {
        double own = 0.005 + random.nextDouble();
        double back = plain ? own : i % 2 == 0 ? 20 * own : Double.POSITIVE_INFINITY;
        double most =
            plain || i % 3 != 1 ? Double.POSITIVE_INFINITY : 0.5 + 5 * random.nextDouble();
        arms.add(new Arm(minus(), plus(), 10 + 5 * random.nextDouble(), own, back, most));
      }
    }

    int plus() {
      return random.nextInt(side);
    }

    int minus() {
      return side + random.nextInt(side);
    }

    FaultGrid grid() {
      List<Conductor> conductors = new ArrayList<>();
      for (int i = 0; i < a.length; i++) {
        conductors.add(new Conductor(a[i], b[i], ohms[i], 0, gates.get(i)));
      }
      return FaultGrid.of(2 * side, conductors, arms).orElseThrow();
    }

    /** The same as one circuit: edges, then arms, then the fault. */
    Solution solved(int from, int to, Set<Integer> openGates, Set<Integer> openArms) {
      List<Branch> branches = new ArrayList<>();
      for (int i = 0; i < a.length; i++) {
        branches.add(
            openGates.contains(i)
                ? new Branch.Open(a[i], b[i])
                : new Branch.Resistor(a[i], b[i], ohms[i]));
      }
      for (int i = 0; i < arms.size(); i++) {
        Arm arm = arms.get(i);
        boolean generator = Double.isInfinite(arm.reverseOhms());
        double charge = generator ? 1 : arm.reverseOhms();
        branches.add(
            openArms.contains(i)
                ? new Branch.Open(arm.to(), arm.from())
                : new Branch.Source(
                    arm.to(), arm.from(), arm.volts(), arm.ohms(), charge, arm.mostA(), generator));
      }
      branches.add(new Branch.Resistor(from, to, 1e-8));
      return Solver.solve(new Circuit(2 * side, branches));
    }
  }

  /** A full solve of every fault, as a second algorithm, while gates and arms open. */
  @Test
  void aFaultLaidInTheGridIsAFullSolve() {
    int compared = 0;
    for (int seed = 0; seed < 200; seed++) {
      Loom loom = new Loom(seed, seed % 2 == 0);
      FaultGrid grid = loom.grid();
      for (int fault = 0; fault < 3; fault++) {
        int from = loom.plus();
        int to = loom.minus();
        LaidFault laid = new LaidFault(grid, from, to, 1e-8);
        TreeSet<Integer> openGates = new TreeSet<>();
        TreeSet<Integer> openArms = new TreeSet<>();
        for (int step = 0; step < 4; step++) {
          LaidFault.Currents currents = laid.currents();
          Solution full = loom.solved(from, to, openGates, openArms);
          assertThat(currents.faultA())
              .as("seed %s fault %s step %s", seed, fault, step)
              .isCloseTo(full.amps(loom.a.length + loom.arms.size()), within(1e-4));
          currents
              .armA()
              .forEach(
                  (arm, amps) ->
                      assertThat(amps).isCloseTo(-full.amps(loom.a.length + arm), within(1e-4)));
          currents
              .gateA()
              .forEach(
                  (gate, amps) ->
                      assertThat(amps).isCloseTo(Math.abs(full.amps(gate)), within(1e-4)));
          compared += currents.gateA().size();
          List<Integer> gates = new ArrayList<>(currents.gateA().keySet());
          if (!gates.isEmpty() && step % 2 == 0) {
            int gate = gates.get(loom.random.nextInt(gates.size()));
            openGates.add(gate);
            laid.openGate(gate);
          } else {
            int arm = loom.random.nextInt(loom.arms.size());
            openArms.add(arm);
            laid.openArm(arm);
          }
        }
      }
    }
    assertThat(compared).isGreaterThan(1000);
  }

  /** One battery of 12 V behind 10 milliohm, a feed of 20 and a return of 30: 200 A. */
  @Test
  void oneSourceIsTheSumOfTheWay() {
    List<Conductor> conductors =
        List.of(new Conductor(0, 1, 0.02, 0, true), new Conductor(2, 3, 0.03, 0, false));
    Arm battery = new Arm(2, 0, 12, 0.01, 0.2, Double.POSITIVE_INFINITY);
    FaultGrid grid = FaultGrid.of(4, conductors, List.of(battery)).orElseThrow();
    LaidFault.Currents currents = new LaidFault(grid, 1, 3, 0).currents();
    assertThat(currents.faultA()).isCloseTo(200, within(1e-9));
    assertThat(currents.gateA()).containsOnlyKeys(0);
    assertThat(currents.gateA().get(0)).isCloseTo(200, within(1e-9));
    LaidFault opened = new LaidFault(grid, 1, 3, 0);
    opened.openGate(0);
    assertThat(opened.currents().faultA()).isCloseTo(0, within(1e-9));
    assertThat(new LaidFault(grid, 0, 2, 0).gates()).isEmpty();
  }

  /** A dead end with a diode takes its volts. */
  @Test
  void aDiodeInADeadEndTakesItsVolts() {
    List<Conductor> conductors = List.of(new Conductor(0, 1, 0.09, 0.7, false));
    Arm battery = new Arm(2, 0, 12.7, 0.01, 0.2, Double.POSITIVE_INFINITY);
    FaultGrid grid = FaultGrid.of(3, conductors, List.of(battery)).orElseThrow();
    assertThat(new LaidFault(grid, 1, 2, 0).currents().faultA()).isCloseTo(120, within(1e-9));
    assertThat(new LaidFault(grid, 0, 2, 0).currents().faultA()).isCloseTo(1270, within(1e-6));
  }

  @Test
  void withoutSourcesNothingCanBeLaid() {
    FaultGrid grid = FaultGrid.of(2, List.of(), List.of()).orElseThrow();
    assertThat(grid.canTake(grid.island(0))).isFalse();
    assertThat(FaultGrid.of(0, List.of(), List.of())).isPresent();
  }
}
