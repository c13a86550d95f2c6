package org.tugtest.solve;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.tugtest.network.Joined;

/**
 * A part of a circuit that nothing can join to the rest: no branch lies between them, open or
 * closed, and no coil of the one moves a contact of the other. It comes to rest by itself, whatever
 * the rest does.
 */
final class Part {
  private final int[] branches;
  private final Circuit circuit;

  private Part(int[] branches, Circuit circuit) {
    this.branches = branches;
    this.circuit = circuit;
  }

  /**
   * The parts that have something to find out, those with a source or a coil; where that is one
   * alone, the whole as it is.
   */
  static List<Part> of(Circuit whole) {
    int[] partOf = parts(whole);
    int parts = Arrays.stream(partOf).max().orElse(-1) + 1;
    boolean[] lives = new boolean[parts];
    int[] sizes = new int[parts];
    for (Branch branch : whole.branches()) {
      int part = partOf[branch.a()];
      lives[part] |= branch instanceof Branch.Source || branch instanceof Branch.Coil;
      sizes[part]++;
    }
    if (count(lives) == 1) {
      return List.of(new Part(IntStream.range(0, whole.branches().size()).toArray(), whole));
    }
    int[][] branches = new int[parts][];
    int[] filled = new int[parts];
    Arrays.setAll(branches, part -> new int[lives[part] ? sizes[part] : 0]);
    int[] number = new int[whole.branches().size()];
    for (int i = 0; i < number.length; i++) {
      int part = partOf[whole.branches().get(i).a()];
      if (lives[part]) {
        branches[part][filled[part]] = i;
        number[i] = filled[part]++;
      }
    }
    int[] nodes = new int[parts];
    int[] nodeIn = new int[partOf.length];
    for (int node = 0; node < partOf.length; node++) {
      nodeIn[node] = nodes[partOf[node]]++;
    }
    List<Part> living = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      if (lives[part]) {
        List<Branch> inside = new ArrayList<>(branches[part].length);
        for (int i : branches[part]) {
          inside.add(moved(whole.branches().get(i), node -> nodeIn[node], coil -> number[coil]));
        }
        living.add(new Part(branches[part], new Circuit(nodes[part], inside)));
      }
    }
    return living;
  }

  private static int count(boolean[] flags) {
    int count = 0;
    for (boolean flag : flags) {
      count += flag ? 1 : 0;
    }
    return count;
  }

  private static int[] parts(Circuit whole) {
    Joined joined = new Joined(whole.nodes());
    for (Branch branch : whole.branches()) {
      joined.join(branch.a(), branch.b());
      if (branch instanceof Branch.Contact contact) {
        joined.join(branch.a(), whole.branches().get(contact.coil()).a());
      }
    }
    return joined.numbered();
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
    return circuit;
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

  /** Whether all of these branches of the whole are in it. */
  boolean has(List<Integer> outside) {
    return outside.stream().allMatch(branch -> inner(branch) >= 0);
  }

  /** The numbers in the part of those of some branches of the whole that are in it. */
  List<Integer> inner(List<Integer> outside) {
    return outside.stream().map(this::inner).filter(branch -> branch >= 0).toList();
  }
}
