package org.tugtest.solve;

import java.util.Arrays;
import org.tugtest.network.Joined;

/**
 * How a circuit falls into parts of which each comes to rest by itself: told once for all circuits
 * that have sources, coils and contacts in the same places.
 */
final class Parts {
  private static final int NEITHER = -1;
  private static final int LIVES = -2;
  private final int[] kinds;
  private final int[][] branches;
  private final int[][] nodes;
  private final int[] number;
  private final int[] nodeIn;

  private Parts(int[] kinds, int[][] branches, int[][] nodes, int[] number, int[] nodeIn) {
    this.kinds = kinds;
    this.branches = branches;
    this.nodes = nodes;
    this.number = number;
    this.nodeIn = nodeIn;
  }

  /** What the parts depend on: for each branch its coil if it is a contact, else what it is. */
  static int[] kinds(Circuit circuit) {
    int[] kinds = new int[circuit.branches().size()];
    for (int i = 0; i < kinds.length; i++) {
      Branch branch = circuit.branches().get(i);
      if (branch instanceof Branch.Contact contact) {
        kinds[i] = contact.coil();
      } else {
        boolean lives = branch instanceof Branch.Source || branch instanceof Branch.Coil;
        kinds[i] = lives ? LIVES : NEITHER;
      }
    }
    return kinds;
  }

  /**
   * The parts that have something to find out, those with a source or a coil; where that is one
   * alone, the whole as it is.
   *
   * @param kinds of its branches
   */
  static Parts of(Circuit whole, int[] kinds) {
    int[] partOf = parts(whole, kinds);
    int parts = Arrays.stream(partOf).max().orElse(-1) + 1;
    int[] sizes = new int[parts];
    boolean[] lives = new boolean[parts];
    for (int i = 0; i < kinds.length; i++) {
      int part = partOf[whole.branches().get(i).a()];
      lives[part] |= kinds[i] == LIVES;
      sizes[part]++;
    }
    int[] places = new int[parts];
    int count = 0;
    for (int part = 0; part < parts; part++) {
      places[part] = lives[part] ? count++ : -1;
    }
    if (count == 1) {
      return new Parts(kinds, new int[1][], new int[1][], new int[0], new int[0]);
    }
    int[] widths = new int[parts];
    int[] nodeIn = new int[partOf.length];
    for (int node = 0; node < partOf.length; node++) {
      nodeIn[node] = widths[partOf[node]]++;
    }
    int[][] branches = new int[count][];
    int[][] nodes = new int[count][];
    for (int part = 0; part < parts; part++) {
      if (lives[part]) {
        branches[places[part]] = new int[sizes[part]];
        nodes[places[part]] = new int[widths[part]];
      }
    }
    for (int node = 0; node < partOf.length; node++) {
      if (lives[partOf[node]]) {
        nodes[places[partOf[node]]][nodeIn[node]] = node;
      }
    }
    int[] filled = new int[parts];
    int[] number = new int[kinds.length];
    for (int i = 0; i < kinds.length; i++) {
      int part = partOf[whole.branches().get(i).a()];
      if (lives[part]) {
        branches[places[part]][filled[part]] = i;
        number[i] = filled[part]++;
      }
    }
    return new Parts(kinds, branches, nodes, number, nodeIn);
  }

  private static int[] parts(Circuit whole, int[] kinds) {
    Joined joined = new Joined(whole.nodes());
    for (int i = 0; i < kinds.length; i++) {
      Branch branch = whole.branches().get(i);
      joined.join(branch.a(), branch.b());
      if (kinds[i] >= 0) {
        joined.join(branch.a(), whole.branches().get(kinds[i]).a());
      }
    }
    return joined.numbered();
  }

  /** Whether a circuit of these kinds falls into the same parts. */
  boolean fit(int[] others) {
    return Arrays.equals(kinds, others);
  }

  /** How many parts there are. */
  int count() {
    return branches.length;
  }

  /** One of the parts of a circuit. */
  Part part(int at, Circuit whole) {
    return count() == 1
        ? Part.all(whole)
        : new Part(whole, branches[at], nodes[at], node -> nodeIn[node], branch -> number[branch]);
  }
}
