package org.tugtest.protect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tugtest.network.Joined;
import org.tugtest.solve.DrivingPoints;
import org.tugtest.solve.Factor;
import org.tugtest.solve.Structure;

/**
 * A network of resistances with a few arms that give, in which faults are laid one after another.
 * The resistances are factored once; a fault then takes only the resistance at its ends (selected
 * inverse) and the volts that a current into each end of an arm makes there, and a small system of
 * the arms, the parts that hang together and the fault. Near linear in the network on a near-tree.
 *
 * <p>A gate is a resistance that can open and without which its part falls in two, such as a fuse
 * in a feed. Its current is the sum of what enters beyond it.
 */
final class FaultGrid {
  /** So many arms of one island are reckoned with. */
  static final int MOST_ARMS = 32;

  private final List<Conductor> conductors;
  private final List<Arm> arms;
  private final Bridges trees;
  private final int[] partOf;
  private final int[] islandOf;
  private final int[] gateAbove;
  private final double[] dropAbove;

  /** By island; only of those that have arms, since every point by itself is an island too. */
  private final Map<Integer, List<Integer>> armsOf = new TreeMap<>();

  private final Map<Integer, Set<Integer>> gatesOf = new HashMap<>();
  private final DrivingPoints ohms;
  private final Map<Integer, double[]> columns = new HashMap<>();

  private FaultGrid(
      int nodes, List<Conductor> conductors, List<Arm> arms, Rooted rooted, Factor factor) {
    this.conductors = List.copyOf(conductors);
    this.arms = List.copyOf(arms);
    this.trees = rooted.trees();
    this.partOf = rooted.partOf();
    this.ohms = factor.drivingPoints();
    this.gateAbove = new int[nodes];
    this.dropAbove = new double[nodes];
    Arrays.fill(gateAbove, -1);
    for (int node : trees.order()) {
      int by = trees.by(node);
      if (node < nodes && by >= 0 && by < conductors.size()) {
        int up = trees.parent(node);
        boolean gate = conductors.get(by).gate() && trees.hangs(node);
        gateAbove[node] = gate ? node : gateAbove[up];
        dropAbove[node] = dropAbove[up] + conductors.get(by).drop();
      }
    }
    this.islandOf = islands(count(partOf));
    fillColumns(nodes, factor);
  }

  /** The grid of these; empty when it cannot be factored. */
  static Optional<FaultGrid> of(int nodes, List<Conductor> conductors, List<Arm> arms) {
    int[] a = conductors.stream().mapToInt(Conductor::a).toArray();
    int[] b = conductors.stream().mapToInt(Conductor::b).toArray();
    Rooted rooted = new Rooted(nodes, a, b, arms);
    boolean[] grounded = new boolean[nodes];
    Arrays.stream(rooted.grounds()).forEach(node -> grounded[node] = true);
    double[] siemens = conductors.stream().mapToDouble(one -> 1 / one.ohms()).toArray();
    return Structure.of(nodes, a, b, grounded)
        .factor(siemens)
        .map(factor -> new FaultGrid(nodes, conductors, arms, rooted, factor));
  }

  private static int count(int[] numbered) {
    return Arrays.stream(numbered).max().orElse(-1) + 1;
  }

  private int[] islands(int parts) {
    Joined joined = new Joined(parts);
    arms.forEach(arm -> joined.join(partOf[arm.from()], partOf[arm.to()]));
    int[] islands = joined.numbered();
    for (int i = 0; i < arms.size(); i++) {
      int island = islands[partOf[arms.get(i).to()]];
      armsOf.computeIfAbsent(island, none -> new ArrayList<>()).add(i);
      Set<Integer> gates = gatesOf.computeIfAbsent(island, none -> new TreeSet<>());
      addGates(arms.get(i).to(), gates);
      addGates(arms.get(i).from(), gates);
    }
    return islands;
  }

  private void addGates(int node, Collection<Integer> into) {
    for (int at = gateAbove[node]; at >= 0; at = gateAbove[trees.parent(at)]) {
      into.add(at);
    }
  }

  /** One solve serves one node of every part. */
  private void fillColumns(int nodes, Factor factor) {
    Map<Integer, Set<Integer>> ofPart = new LinkedHashMap<>();
    for (List<Integer> island : armsOf.values()) {
      for (int number : island.size() > MOST_ARMS ? List.<Integer>of() : island) {
        for (int node : new int[] {arms.get(number).to(), arms.get(number).from()}) {
          ofPart.computeIfAbsent(partOf[node], none -> new TreeSet<>()).add(node);
        }
      }
    }
    List<List<Integer>> queues = new ArrayList<>();
    ofPart.values().forEach(set -> queues.add(new ArrayList<>(set)));
    int rounds = queues.stream().mapToInt(List::size).max().orElse(0);
    for (int round = 0; round < rounds; round++) {
      double[] amps = new double[nodes];
      for (List<Integer> queue : queues) {
        if (round < queue.size()) {
          amps[queue.get(round)] = 1;
        }
      }
      double[] volts = factor.solve(amps);
      for (List<Integer> queue : queues) {
        if (round < queue.size()) {
          columns.put(queue.get(round), volts);
        }
      }
    }
  }

  /** The island of a node: parts that arms join. */
  int island(int node) {
    return islandOf[partOf[node]];
  }

  /** The arms of an island, by number. */
  List<Integer> arms(int island) {
    return armsOf.getOrDefault(island, List.of());
  }

  /** The arm of that number. */
  Arm arm(int number) {
    return arms.get(number);
  }

  /** Whether an island has an arm, and not too many, so that faults can be laid in it. */
  boolean canTake(int island) {
    int count = arms(island).size();
    return count > 0 && count <= MOST_ARMS;
  }

  /** The gates that can carry current of a fault between these nodes, by number of the edge. */
  List<Integer> gates(int from, int to) {
    Set<Integer> nodes = new TreeSet<>(gatesOf.getOrDefault(island(from), Set.of()));
    addGates(from, nodes);
    addGates(to, nodes);
    return nodes.stream().map(trees::by).toList();
  }

  /** The first gate on the way from a node to the arms; -1 when there is none. */
  int gateAbove(int node) {
    return gateAbove[node] < 0 ? -1 : trees.by(gateAbove[node]);
  }

  /** The gate after another on the way to the arms; -1 when there is none. */
  int gateAfter(int gate) {
    int up = gateAbove[trees.parent(lower(gate))];
    return up < 0 ? -1 : trees.by(up);
  }

  private int lower(int gate) {
    return trees.later(conductors.get(gate).a(), conductors.get(gate).b());
  }

  /** Whether a node lies behind a gate, seen from the ground of its part. */
  boolean behind(int node, int gate) {
    return trees.below(node, lower(gate));
  }

  /** All nodes, each after the one that it hangs on; one more joins the parts. */
  int[] order() {
    return trees.order();
  }

  /** The conductor by which a node hangs on the way to the arms; -1 at the ground of a part. */
  int by(int node) {
    int by = trees.by(node);
    return by < conductors.size() ? by : -1;
  }

  /** The node that it hangs on by that. */
  int parent(int node) {
    return trees.parent(node);
  }

  /** Volts that dead ends take from a fault at a node. */
  double drop(int node) {
    return dropAbove[node];
  }

  /** Ohms that a current into {@code into} meets at {@code at}, one of them an end of an arm. */
  double transferOhms(int at, int into) {
    if (partOf[at] != partOf[into]) {
      return 0;
    }
    double[] column = columns.get(into);
    if (column != null) {
      return column[at];
    }
    double[] other = columns.get(at);
    if (other != null) {
      return other[into];
    }
    if (at != into) {
      throw new IllegalArgumentException("neither " + at + " nor " + into + " ends an arm");
    }
    return ohms.ohms(at);
  }

  /** The part of a node: what hangs together without arms. */
  int part(int node) {
    return partOf[node];
  }
}
