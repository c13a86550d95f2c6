package org.tugtest.solve;

import java.util.Arrays;
import java.util.List;

/**
 * A network of linear pieces. Through branch {@code i} flows {@code siemens · (Va − Vb − emf) +
 * amps} from {@code a} to {@code b}. An open branch has 0 siemens and 0 amps; one of {@link #METAL}
 * siemens makes its two nodes one.
 */
public final class Linear {
  /** The conductance of a branch without resistance. */
  public static final double METAL = Double.POSITIVE_INFINITY;

  private final int nodes;
  private final int[] a;
  private final int[] b;
  private final double[] siemens;
  private final double[] emf;
  private final double[] amps;
  private final Kind[] kinds;

  /** What a branch is to its island. */
  enum Kind {
    /** A battery or the like: its minus ({@code b}) is what volts are held against. */
    BATTERY,
    /** A generator: the same where there is no battery. */
    GENERATOR,
    /** Neither. */
    PASSIVE
  }

  /** A network in which every branch is open. */
  Linear(Circuit circuit) {
    int count = circuit.branches().size();
    nodes = circuit.nodes();
    a = new int[count];
    b = new int[count];
    siemens = new double[count];
    emf = new double[count];
    amps = new double[count];
    kinds = new Kind[count];
    for (int i = 0; i < count; i++) {
      Branch branch = circuit.branches().get(i);
      a[i] = branch.a();
      b[i] = branch.b();
      kinds[i] = Kind.PASSIVE;
      if (branch instanceof Branch.Source source) {
        kinds[i] = source.generator() ? Kind.GENERATOR : Kind.BATTERY;
      }
    }
  }

  /** Where the branches lie is not written again, so that copies of a network share it. */
  private Linear(Linear same, int more) {
    int count = same.branches() + more;
    nodes = same.nodes;
    a = more == 0 ? same.a : Arrays.copyOf(same.a, count);
    b = more == 0 ? same.b : Arrays.copyOf(same.b, count);
    siemens = Arrays.copyOf(same.siemens, count);
    emf = Arrays.copyOf(same.emf, count);
    amps = Arrays.copyOf(same.amps, count);
    kinds = more == 0 ? same.kinds : Arrays.copyOf(same.kinds, count);
  }

  /** How many nodes there are. */
  public int nodes() {
    return nodes;
  }

  /** How many branches there are. */
  public int branches() {
    return a.length;
  }

  /** One end of a branch. */
  public int a(int branch) {
    return a[branch];
  }

  /** The other end of a branch. */
  public int b(int branch) {
    return b[branch];
  }

  /** The conductance of a branch. */
  public double siemens(int branch) {
    return siemens[branch];
  }

  /** The volts at which nothing flows through a branch. */
  public double emf(int branch) {
    return emf[branch];
  }

  /** The current that flows through a branch whatever the volts. */
  public double amps(int branch) {
    return amps[branch];
  }

  /** Whether a branch makes its two nodes one. */
  public boolean metal(int branch) {
    return siemens[branch] == METAL;
  }

  /** Whether a branch holds its two ends together, with or without resistance. */
  boolean joins(int branch) {
    return siemens[branch] != 0;
  }

  Kind kind(int branch) {
    return kinds[branch];
  }

  double[] allAmps() {
    return Arrays.copyOf(amps, amps.length);
  }

  void set(int branch, double conductance, double volts, double current) {
    siemens[branch] = conductance;
    emf[branch] = volts;
    amps[branch] = current;
  }

  Linear copy() {
    return new Linear(this, 0);
  }

  /** The same with some branches open, and with resistances put in behind the last branch. */
  Linear with(List<WhatIf.Change> changes) {
    Linear changed = new Linear(this, changes.size());
    for (int i = 0; i < changes.size(); i++) {
      WhatIf.Change change = changes.get(i);
      int added = a.length + i;
      changed.kinds[added] = Kind.PASSIVE;
      if (change.branch() >= 0) {
        changed.set(change.branch(), 0, 0, 0);
      } else {
        changed.a[added] = change.a();
        changed.b[added] = change.b();
        changed.set(added, 1 / change.ohms(), 0, 0);
      }
    }
    return changed;
  }
}
