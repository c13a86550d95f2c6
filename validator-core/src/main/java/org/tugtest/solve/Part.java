package org.tugtest.solve;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A part of a circuit that nothing can join to the rest: no branch lies between them, open or
 * closed, and no coil of the one moves a contact of the other. It comes to rest by itself, whatever
 * the rest does.
 */
final class Part {
  private final Circuit whole;
  private final int[] branches;
  private final int[] nodes;
  private final IntUnaryOperator nodeIn;
  private final IntUnaryOperator number;
  private @Nullable Circuit circuit;

  /**
   * A part of a circuit.
   *
   * @param branches of it, ascending
   * @param nodes of it, ascending
   * @param nodeIn the number in the part of each of its nodes
   * @param number the number in the part of each of its branches
   */
  Part(
      Circuit whole,
      int[] branches,
      int[] nodes,
      IntUnaryOperator nodeIn,
      IntUnaryOperator number) {
    this.whole = whole;
    this.branches = branches;
    this.nodes = nodes;
    this.nodeIn = nodeIn;
    this.number = number;
  }

  /** All of a circuit. */
  static Part all(Circuit whole) {
    int[] branches = IntStream.range(0, whole.branches().size()).toArray();
    int[] nodes = IntStream.range(0, whole.nodes()).toArray();
    Part all = new Part(whole, branches, nodes, node -> node, branch -> branch);
    all.circuit = whole;
    return all;
  }

  private static Branch moved(Branch branch, IntUnaryOperator node, IntUnaryOperator coilOf) {
    int a = node.applyAsInt(branch.a());
    int b = node.applyAsInt(branch.b());
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
      return new Branch.Contact(a, b, is.ohms(), coilOf.applyAsInt(is.coil()), is.restClosed());
    }
    return new Branch.Open(a, b);
  }

  /** The part as a circuit of its own. */
  Circuit circuit() {
    Circuit made = circuit;
    if (made == null) {
      List<Branch> inside = new ArrayList<>(branches.length);
      for (int i : branches) {
        inside.add(moved(whole.branches().get(i), nodeIn, number));
      }
      made = new Circuit(nodes.length, inside);
      circuit = made;
    }
    return made;
  }

  /** The nodes of the whole that are in it, by their numbers in it. */
  int[] nodes() {
    return nodes;
  }

  /** The branches of the whole that are in it, by their numbers in it. */
  int[] branches() {
    return branches;
  }

  /** Whether the same branches are equal in another circuit. */
  boolean isIn(Circuit other) {
    for (int i : branches) {
      if (!same(whole.branches().get(i), other.branches().get(i))) {
        return false;
      }
    }
    return true;
  }

  /** Its branches as they are in the whole. */
  Branch[] outside() {
    Branch[] outside = new Branch[branches.length];
    for (int i = 0; i < outside.length; i++) {
      outside[i] = whole.branches().get(branches[i]);
    }
    return outside;
  }

  /** Whether its branches in the whole are equal to these. */
  boolean is(Branch[] outside) {
    for (int i = 0; i < outside.length; i++) {
      if (!same(whole.branches().get(branches[i]), outside[i])) {
        return false;
      }
    }
    return true;
  }

  private static boolean same(Branch one, Branch other) {
    return one == other || one.equals(other);
  }

  /** Equal for parts of the same branches. */
  IntBuffer key() {
    return IntBuffer.wrap(branches);
  }

  /** The number in the whole circuit of a branch of the part. */
  int outer(int branch) {
    return branches[branch];
  }

  /** The numbers in the whole circuit of branches of the part. */
  List<Integer> outer(List<Integer> inside) {
    return inside.stream().map(this::outer).toList();
  }

  /** The number in the part of a branch of the whole; negative when it is not in it. */
  int inner(int branch) {
    return Arrays.binarySearch(branches, branch);
  }

  /** Whether all of these branches of the whole are in it, and there is one. */
  boolean has(List<Integer> outside) {
    return !outside.isEmpty() && outside.stream().allMatch(branch -> inner(branch) >= 0);
  }

  /** The numbers in the part of those of some branches of the whole that are in it. */
  List<Integer> inner(List<Integer> outside) {
    return outside.stream().map(this::inner).filter(branch -> branch >= 0).toList();
  }
}
