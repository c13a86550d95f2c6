package org.tugtest.protect;

import java.util.Arrays;
import java.util.Collection;
import org.tugtest.network.Joined;

/**
 * The parts of a network that hang together, and depth-first trees of them, each beginning at an
 * end of an arm where there is one: its ground. One more node, behind all others, joins the grounds
 * by edges behind all others.
 */
final class Rooted {
  private final int[] partOf;
  private final int[] grounds;
  private final Bridges trees;

  Rooted(int nodes, int[] a, int[] b, Collection<Arm> arms) {
    Joined joined = new Joined(nodes);
    for (int i = 0; i < a.length; i++) {
      joined.join(a[i], b[i]);
    }
    partOf = joined.numbered();
    grounds = new int[Arrays.stream(partOf).max().orElse(-1) + 1];
    Arrays.fill(grounds, -1);
    for (Arm arm : arms) {
      ground(arm.to());
      ground(arm.from());
    }
    for (int node = 0; node < nodes; node++) {
      ground(node);
    }
    int[] one = Arrays.copyOf(a, a.length + grounds.length);
    int[] other = Arrays.copyOf(b, b.length + grounds.length);
    for (int i = 0; i < grounds.length; i++) {
      one[a.length + i] = nodes;
      other[b.length + i] = grounds[i];
    }
    trees = new Bridges(nodes + 1, one, other, nodes);
  }

  private void ground(int node) {
    if (grounds[partOf[node]] < 0) {
      grounds[partOf[node]] = node;
    }
  }

  int[] partOf() {
    return partOf;
  }

  int[] grounds() {
    return grounds;
  }

  Bridges trees() {
    return trees;
  }
}
