package org.tugtest.solve;

import java.util.Arrays;
import org.tugtest.network.Joined;

/**
 * What hangs together in a linear network: nodes that metal makes one (clusters), and clusters
 * between which current can flow (islands). Each island has a ground: the minus of its first
 * battery, else of its first generator, else its first cluster.
 */
final class Islands {
  private final int[] clusterOf;
  private final int[] islandOf;
  private final int[] groundOf;
  private final boolean[] powered;
  private final int clusters;

  private Islands(int[] clusterOf, int[] islandOf, int[] groundOf, boolean[] powered) {
    this.clusterOf = clusterOf;
    this.islandOf = islandOf;
    this.groundOf = groundOf;
    this.powered = powered;
    this.clusters = islandOf.length;
  }

  static Islands of(Linear linear) {
    Joined metal = new Joined(linear.nodes());
    for (int i = 0; i < linear.branches(); i++) {
      if (linear.metal(i)) {
        metal.join(linear.a(i), linear.b(i));
      }
    }
    int[] clusterOf = metal.numbered();
    int clusters = count(clusterOf);
    Joined joined = new Joined(clusters);
    for (int i = 0; i < linear.branches(); i++) {
      if (linear.joins(i)) {
        joined.join(clusterOf[linear.a(i)], clusterOf[linear.b(i)]);
      }
    }
    int[] islandOf = joined.numbered();
    int islands = count(islandOf);
    int[] groundOf = new int[islands];
    boolean[] powered = new boolean[islands];
    Arrays.fill(groundOf, -1);
    for (Linear.Kind kind : new Linear.Kind[] {Linear.Kind.BATTERY, Linear.Kind.GENERATOR}) {
      for (int i = 0; i < linear.branches(); i++) {
        if (linear.kind(i) == kind && (linear.joins(i) || linear.amps(i) != 0)) {
          int minus = clusterOf[linear.b(i)];
          int island = islandOf[minus];
          powered[island] = true;
          powered[islandOf[clusterOf[linear.a(i)]]] = true;
          groundOf[island] = groundOf[island] < 0 ? minus : groundOf[island];
        }
      }
    }
    for (int cluster = 0; cluster < clusters; cluster++) {
      int island = islandOf[cluster];
      groundOf[island] = groundOf[island] < 0 ? cluster : groundOf[island];
    }
    return new Islands(clusterOf, islandOf, groundOf, powered);
  }

  private static int count(int[] numbered) {
    return Arrays.stream(numbered).max().orElse(-1) + 1;
  }

  int clusters() {
    return clusters;
  }

  int clusterOf(int node) {
    return clusterOf[node];
  }

  int islands() {
    return groundOf.length;
  }

  int islandOf(int node) {
    return islandOf[clusterOf[node]];
  }

  boolean powered(int island) {
    return powered[island];
  }

  boolean isGround(int node) {
    return groundOf[islandOf(node)] == clusterOf[node];
  }

  /** For every cluster whether it is a ground. */
  boolean[] grounds() {
    boolean[] grounds = new boolean[clusters];
    for (int ground : groundOf) {
      grounds[ground] = true;
    }
    return grounds;
  }
}
