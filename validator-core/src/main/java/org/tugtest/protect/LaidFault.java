package org.tugtest.protect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * A fault between two nodes of one island of a {@link FaultGrid}, while what feeds it opens piece
 * by piece. Arms are tried as they give; one that would give too much gives its most, one that
 * would take takes what its reverse resistance lets through.
 */
final class LaidFault {
  private static final int ROUNDS_EACH = 16;
  private static final double BLOCKS_OHMS = 1e9;
  private static final double HOLDS_OHMS = 1e7;
  private static final double TINY_A = 1e-6;
  private final FaultGrid grid;
  private final List<Integer> numbers;
  private final List<Arm> arms = new ArrayList<>();
  private final List<Integer> gates;
  private final Map<Integer, Integer> partAt = new LinkedHashMap<>();
  private final Mode[] modes;
  private final Set<Integer> openArms = new TreeSet<>();
  private final Set<Integer> openGates = new TreeSet<>();

  private enum Mode {
    GIVES,
    GIVES_MOST,
    TAKES,
    NOTHING
  }

  /**
   * What flows.
   *
   * @param faultA through the fault, in amperes
   * @param armA through each arm, by its number; positive where it gives
   * @param gateA through each gate, by its number, either way
   */
  record Currents(double faultA, Map<Integer, Double> armA, Map<Integer, Double> gateA) {}

  /**
   * Lays a fault.
   *
   * @param from where the current leaves the feed
   * @param to where it enters the return
   * @param ohms of the fault itself
   */
  LaidFault(FaultGrid grid, int from, int to, double ohms) {
    this.grid = grid;
    this.numbers = grid.arms(grid.island(from));
    numbers.forEach(number -> arms.add(grid.arm(number)));
    double drop = grid.drop(from) + grid.drop(to);
    arms.add(new Arm(from, to, -drop, ohms, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));
    this.gates = grid.gates(from, to);
    for (Arm arm : arms) {
      partAt.putIfAbsent(grid.part(arm.from()), partAt.size());
      partAt.putIfAbsent(grid.part(arm.to()), partAt.size());
    }
    this.modes = new Mode[arms.size()];
    Arrays.fill(modes, Mode.GIVES);
  }

  /** The gates that can carry current of it, by number. */
  List<Integer> gates() {
    return gates;
  }

  /** A gate opens. */
  void openGate(int gate) {
    openGates.add(gate);
  }

  /** An arm opens. */
  void openArm(int arm) {
    openArms.add(arm);
  }

  /** What flows now. */
  Currents currents() {
    Arrays.fill(modes, Mode.GIVES);
    Set<List<Mode>> seen = new HashSet<>();
    double[] solved = solve();
    for (int round = 0; round < ROUNDS_EACH * arms.size(); round++) {
      boolean oneByOne = !seen.add(List.of(modes));
      if (!turn(solved, oneByOne)) {
        break;
      }
      solved = solve();
    }
    Map<Integer, Double> armA = new LinkedHashMap<>();
    for (int i = 0; i < numbers.size(); i++) {
      armA.put(numbers.get(i), solved[i]);
    }
    Map<Integer, Double> gateA = new LinkedHashMap<>();
    for (int gate : gates) {
      double sum = 0;
      for (int i = 0; i < arms.size(); i++) {
        sum += beyond(arms.get(i), gate) * solved[i];
      }
      gateA.put(gate, openGates.contains(gate) ? 0 : Math.abs(sum));
    }
    return new Currents(solved[numbers.size()], armA, gateA);
  }

  private boolean isOpen(int arm) {
    return arm < numbers.size() && openArms.contains(numbers.get(arm));
  }

  /** 1 where an arm's current enters beyond a gate, -1 where it leaves there, else 0. */
  private int beyond(Arm arm, int gate) {
    return (grid.behind(arm.to(), gate) ? 1 : 0) - (grid.behind(arm.from(), gate) ? 1 : 0);
  }

  /** Unknowns: a current of each arm, a level of each part, a step at each open gate. */
  private double[] solve() {
    int levels = arms.size();
    int steps = levels + partAt.size();
    List<Integer> open = gates.stream().filter(openGates::contains).toList();
    SmallSystem system = new SmallSystem(steps + open.size());
    for (int i = 0; i < arms.size(); i++) {
      Arm arm = arms.get(i);
      system.add(levels + part(arm.to()), i, 1);
      system.add(levels + part(arm.from()), i, -1);
      for (int g = 0; g < open.size(); g++) {
        system.add(steps + g, i, beyond(arm, open.get(g)));
      }
      if (isOpen(i)) {
        system.add(i, i, 1);
        continue;
      }
      double ohms = ohms(arm, modes[i]);
      double scale = 1 / Math.max(1, ohms);
      system.add(i, i, scale * ohms);
      double most = modes[i] == Mode.GIVES_MOST ? ohms * arm.mostA() : 0;
      system.sum(i, scale * (arm.volts() + most));
      system.add(i, levels + part(arm.to()), scale);
      system.add(i, levels + part(arm.from()), -scale);
      for (int g = 0; g < open.size(); g++) {
        system.add(i, steps + g, scale * beyond(arm, open.get(g)));
      }
      for (int k = 0; k < arms.size(); k++) {
        system.add(i, k, scale * lift(arm, arms.get(k)));
      }
    }
    return system.solve();
  }

  private int part(int node) {
    return Objects.requireNonNull(partAt.get(grid.part(node)));
  }

  /** Volts across an arm, {@code to} over {@code from}, for a current through another. */
  private double lift(Arm at, Arm of) {
    return ohms(at.to(), of.to())
        - ohms(at.to(), of.from())
        - ohms(at.from(), of.to())
        + ohms(at.from(), of.from());
  }

  private double ohms(int at, int into) {
    return grid.transferOhms(at, into);
  }

  /** A blocked arm still has a great resistance, so that there is always an answer. */
  private static double ohms(Arm arm, Mode mode) {
    return switch (mode) {
      case GIVES -> arm.ohms();
      case TAKES -> arm.reverseOhms();
      case GIVES_MOST -> HOLDS_OHMS;
      case NOTHING -> BLOCKS_OHMS;
    };
  }

  /**
   * Puts arms into the mode that fits what flows: all at once, or the first alone (Murty's least
   * index rule); false when all fitted.
   */
  private boolean turn(double[] solved, boolean oneByOne) {
    boolean turned = false;
    for (int i = 0; i < arms.size() && !(turned && oneByOne); i++) {
      Mode fits = isOpen(i) ? modes[i] : fitting(arms.get(i), modes[i], solved[i], solved);
      turned |= fits != modes[i];
      modes[i] = fits;
    }
    return turned;
  }

  private Mode fitting(Arm arm, Mode mode, double amps, double[] solved) {
    if (mode == Mode.GIVES && amps < -TINY_A) {
      return Double.isInfinite(arm.reverseOhms()) ? Mode.NOTHING : Mode.TAKES;
    }
    if (mode == Mode.GIVES) {
      return amps > arm.mostA() ? Mode.GIVES_MOST : Mode.GIVES;
    }
    if (mode == Mode.TAKES) {
      return amps > TINY_A ? Mode.GIVES : Mode.TAKES;
    }
    double volts = arm.volts() - across(arm, solved);
    double least = mode == Mode.GIVES_MOST ? arm.mostA() * arm.ohms() : 0;
    boolean gives = mode == Mode.GIVES_MOST ? volts < least : volts > TINY_A;
    return gives ? Mode.GIVES : mode;
  }

  private double across(Arm arm, double[] solved) {
    int levels = arms.size();
    double volts = solved[levels + part(arm.to())] - solved[levels + part(arm.from())];
    for (int k = 0; k < arms.size(); k++) {
      volts += lift(arm, arms.get(k)) * solved[k];
    }
    int step = levels + partAt.size();
    for (int gate : gates) {
      if (openGates.contains(gate)) {
        volts += beyond(arm, gate) * solved[step++];
      }
    }
    return volts;
  }
}
