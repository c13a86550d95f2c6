package org.tugtest.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Tries every set of pulled coils and conducting diodes of a small circuit of resistances, with
 * Gauss elimination, and keeps those in which every coil, diode and source is right; for tests.
 * Node 0 is the ground, and every node must have a way to it through resistances.
 */
final class BruteForce {
  private static final double ROUNDING = 1e-9;
  private final Circuit circuit;
  private final int[] bits;

  /**
   * A set that is right.
   *
   * @param pulled numbers of the coils that are pulled
   * @param volts by node
   */
  record Right(List<Integer> pulled, List<Double> volts) {}

  BruteForce(Circuit circuit) {
    this.circuit = circuit;
    int[] all = new int[circuit.branches().size()];
    int count = 0;
    for (int i = 0; i < all.length; i++) {
      Branch branch = circuit.branches().get(i);
      if (branch instanceof Branch.Coil
          || branch instanceof Branch.Diode
          || branch instanceof Branch.Source) {
        all[count++] = i;
      }
    }
    bits = Arrays.copyOf(all, count);
  }

  int choices() {
    return bits.length;
  }

  List<Right> all() {
    List<Right> right = new ArrayList<>();
    boolean[] on = new boolean[circuit.branches().size()];
    for (int set = 0; set < 1 << bits.length; set++) {
      for (int i = 0; i < bits.length; i++) {
        on[bits[i]] = ((set >> i) & 1) == 1;
      }
      double[] volts = volts(on);
      if (volts != null && isRight(on, volts)) {
        List<Integer> pulled = new ArrayList<>();
        for (int i : bits) {
          if (on[i] && circuit.branches().get(i) instanceof Branch.Coil) {
            pulled.add(i);
          }
        }
        right.add(new Right(pulled, Arrays.stream(volts).boxed().toList()));
      }
    }
    return right;
  }

  private double[] volts(boolean[] on) {
    int n = circuit.nodes();
    double[][] matrix = new double[n][n];
    double[] amps = new double[n];
    for (int i = 0; i < on.length; i++) {
      Branch branch = circuit.branches().get(i);
      double siemens = siemens(branch, on, i);
      double emf =
          branch instanceof Branch.Source source
              ? source.volts()
              : branch instanceof Branch.Diode diode ? diode.volts() : 0;
      matrix[branch.a()][branch.a()] += siemens;
      matrix[branch.b()][branch.b()] += siemens;
      matrix[branch.a()][branch.b()] -= siemens;
      matrix[branch.b()][branch.a()] -= siemens;
      amps[branch.a()] += siemens * emf;
      amps[branch.b()] -= siemens * emf;
    }
    Arrays.fill(matrix[0], 0);
    matrix[0][0] = 1;
    amps[0] = 0;
    return Dense.solve(matrix, amps);
  }

  private static double siemens(Branch branch, boolean[] on, int i) {
    if (branch instanceof Branch.Resistor resistor) {
      return 1 / resistor.ohms();
    }
    if (branch instanceof Branch.Coil coil) {
      return 1 / coil.ohms();
    }
    if (branch instanceof Branch.Contact contact) {
      return contact.closed(on[contact.coil()]) ? 1 / contact.ohms() : 0;
    }
    if (branch instanceof Branch.Diode diode) {
      return on[i] ? 1 / diode.ohms() : 0;
    }
    if (branch instanceof Branch.Source source) {
      return on[i] ? 1 / source.ohms() : source.generator() ? 0 : 1 / source.chargeOhms();
    }
    return 0;
  }

  private boolean isRight(boolean[] on, double[] volts) {
    for (int i : bits) {
      Branch branch = circuit.branches().get(i);
      double across = volts[branch.a()] - volts[branch.b()];
      boolean right =
          branch instanceof Branch.Coil coil
              ? coil.pulled(across, on[i]) == on[i]
              : branch instanceof Branch.Diode diode
                  ? isRight(on[i], across - diode.volts())
                  : isRight(on[i], ((Branch.Source) branch).volts() - across);
      if (!right) {
        return false;
      }
    }
    return true;
  }

  /** Whether something that conducts at more than 0 V does so, and only then. */
  private static boolean isRight(boolean on, double over) {
    return on ? over >= -ROUNDING : over <= ROUNDING;
  }
}
