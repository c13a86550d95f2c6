package org.tugtest.solve;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Volts and currents of a circuit, how its relays rest, and what is wrong with the answer. */
public final class Solution {
  /** Below this many amperes nothing is said to flow. */
  private static final double SOME_AMPS = 1e-9;

  private final Circuit circuit;
  private final @Nullable Flow flow;
  private final Pieces pieces;
  private final List<Integer> pulled;
  private final List<Trouble> troubles;
  private final int rounds;

  Solution(
      Circuit circuit,
      @Nullable Flow flow,
      Pieces pieces,
      List<Integer> pulled,
      List<Trouble> troubles,
      int rounds) {
    this.circuit = circuit;
    this.flow = flow;
    this.pieces = pieces;
    this.pulled = List.copyOf(pulled);
    this.troubles = List.copyOf(troubles);
    this.rounds = rounds;
  }

  /** What was solved. */
  public Circuit circuit() {
    return circuit;
  }

  /**
   * Volts of a node against the minus of the first battery of its island, else of the first
   * generator; empty on an island without a source.
   */
  public OptionalDouble volts(int node) {
    Flow found = flow;
    return found == null || !found.powered(node)
        ? OptionalDouble.empty()
        : OptionalDouble.of(found.volts(node));
  }

  /** Volts from {@code a} to {@code b} of a branch; 0 when an end is on no powered island. */
  public double across(int branch) {
    Flow found = flow;
    int a = circuit.branches().get(branch).a();
    return found == null || !found.powered(a) || !found.inOneIsland(branch)
        ? 0
        : found.across(branch);
  }

  /** Whether the volts of an island are held against this node. */
  public boolean isReference(int node) {
    Flow found = flow;
    return found != null && found.islands().isGround(node);
  }

  /** The current through a branch in amperes, {@code a} to {@code b}. */
  public double amps(int branch) {
    Flow found = flow;
    return found == null ? 0 : found.amps(branch);
  }

  /** The power that goes into a branch, in watts; negative when it gives. */
  public double watts(int branch) {
    return across(branch) * amps(branch);
  }

  /** Whether two nodes are on one island. */
  public boolean oneIsland(int a, int b) {
    Flow found = flow;
    return found != null && found.islands().islandOf(a) == found.islands().islandOf(b);
  }

  /** The number of the island of a node; islands are counted from 0. */
  public int island(int node) {
    Flow found = flow;
    return found == null ? 0 : found.islands().islandOf(node);
  }

  /** Whether a coil is pulled. */
  public boolean pulled(int coil) {
    return pulled.contains(coil);
  }

  /** Whether a source gives the greatest current that it can. */
  public boolean limited(int source) {
    return flow != null && pieces.of(source) == Pieces.Piece.LIMITED;
  }

  /** The coils that are pulled, by number. */
  public List<Integer> allPulled() {
    return pulled;
  }

  /** What is wrong with the answer; nothing in most cases. */
  public List<Trouble> troubles() {
    return troubles;
  }

  /** How many linear networks were solved. */
  public int rounds() {
    return rounds;
  }

  /**
   * How far the currents at a node are from summing to zero: the greatest sum, as a share of the
   * greatest current at its node, or of a nanoampere where less flows.
   */
  public double currentResidual() {
    double[] sums = new double[circuit.nodes()];
    double[] greatest = new double[circuit.nodes()];
    for (int i = 0; i < circuit.branches().size(); i++) {
      double through = amps(i);
      int a = circuit.branches().get(i).a();
      int b = circuit.branches().get(i).b();
      sums[a] -= through;
      sums[b] += through;
      greatest[a] = Math.max(greatest[a], Math.abs(through));
      greatest[b] = Math.max(greatest[b], Math.abs(through));
    }
    double worst = 0;
    for (int i = 0; i < sums.length; i++) {
      worst = Math.max(worst, Math.abs(sums[i]) / Math.max(greatest[i], SOME_AMPS));
    }
    return worst;
  }

  /** The power that is given less the power that is taken, as a share of what is given. */
  public double powerResidual() {
    double given = 0;
    double sum = 0;
    for (int i = 0; i < circuit.branches().size(); i++) {
      double watts = watts(i);
      sum += watts;
      given -= Math.min(0, watts);
    }
    return given == 0 ? 0 : Math.abs(sum) / given;
  }

  /** The last linear network with its volts; empty when there is no answer. */
  Optional<Flow> flow() {
    return Optional.ofNullable(flow);
  }

  /** On which of their pieces sources and diodes work. */
  Pieces pieces() {
    return pieces;
  }

  /** The last linear network that was solved; empty when there is no answer. */
  public Optional<Linear> linear() {
    return Optional.ofNullable(flow).map(Flow::linear);
  }

  /** What would change with a few branches; empty when there is no answer. */
  public Optional<WhatIf> whatIf() {
    return Optional.ofNullable(flow).filter(Flow::canBeFactored).map(WhatIf::new);
  }
}
