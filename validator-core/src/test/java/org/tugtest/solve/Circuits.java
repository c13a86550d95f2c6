package org.tugtest.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Seeded circuits like a vehicle's: near-trees of feed and return with loads between; for tests.
 */
final class Circuits {
  private final Random random;
  private final List<Branch> branches = new ArrayList<>();
  private int nodes;

  private Circuits(Random random) {
    this.random = random;
  }

  /** Sources, wires, metal, loads of all sorts, diodes, relays; several islands at times. */
  static Circuit mixed(long seed) {
    Circuits circuits = new Circuits(new Random(seed));
    int islands = 1 + circuits.random.nextInt(2);
    for (int i = 0; i < islands; i++) {
      circuits.island(4 + circuits.random.nextInt(40), true);
    }
    circuits.nodes += circuits.random.nextInt(3);
    return new Circuit(circuits.nodes, circuits.branches);
  }

  /** The same with loads that are resistances, without diodes and relays. */
  static Circuit linear(long seed) {
    Circuits circuits = new Circuits(new Random(seed));
    circuits.island(4 + circuits.random.nextInt(60), false);
    return new Circuit(circuits.nodes, circuits.branches);
  }

  private void island(int wires, boolean all) {
    List<Integer> feed = new ArrayList<>(List.of(nodes++));
    List<Integer> back = new ArrayList<>(List.of(nodes++));
    int sources = 1 + random.nextInt(3);
    for (int i = 0; i < wires; i++) {
      grow(random.nextBoolean() ? feed : back);
    }
    for (int i = 0; i < wires / 6; i++) {
      List<Integer> side = random.nextBoolean() ? feed : back;
      branches.add(new Branch.Resistor(some(side), some(side), ohms()));
    }
    for (int i = 0; i < sources; i++) {
      source(i == 0 ? feed.get(0) : some(feed), i == 0 ? back.get(0) : some(back), all);
    }
    for (int i = 0; i < wires / 3 + 1; i++) {
      load(some(feed), some(back), all);
    }
    if (all) {
      for (int i = 0; i < random.nextInt(4); i++) {
        branches.add(
            new Branch.Diode(some(feed), some(random.nextInt(3) == 0 ? back : feed), 0.7, 0.01));
      }
      for (int i = 0; i < random.nextInt(4); i++) {
        relay(some(feed), some(back), some(feed), nodes++, some(back));
      }
    }
  }

  private void grow(List<Integer> side) {
    int node = nodes++;
    boolean metal = random.nextInt(6) == 0;
    branches.add(new Branch.Resistor(some(side), node, metal ? 0 : ohms()));
    side.add(node);
  }

  private void source(int plus, int minus, boolean all) {
    double ohms = 0.004 + 0.02 * random.nextDouble();
    boolean generator = all && random.nextInt(4) == 0;
    double charge = all ? 20 * ohms : ohms;
    double most =
        all && random.nextInt(4) == 0 ? 5 + 60 * random.nextDouble() : Double.POSITIVE_INFINITY;
    branches.add(
        new Branch.Source(
            plus, minus, 11.5 + 3 * random.nextDouble(), ohms, charge, most, generator));
  }

  private void load(int a, int b, boolean all) {
    int sort = all ? random.nextInt(3) : 0;
    double size = Math.pow(10, 2 * random.nextDouble());
    if (sort == 0) {
      branches.add(new Branch.Resistor(a, b, 144 / size));
    } else {
      boolean watts = sort == 1;
      branches.add(new Branch.Load(a, b, watts ? size : size / 12, watts, 6));
    }
  }

  private void relay(int coilA, int coilB, int from, int to, int loadB) {
    int coil = branches.size();
    branches.add(new Branch.Coil(coilA, coilB, 90, 7.2, 1.8));
    branches.add(
        new Branch.Contact(from, to, random.nextBoolean() ? 0 : 0.002, coil, random.nextBoolean()));
    branches.add(new Branch.Resistor(to, loadB, 3));
  }

  private int some(List<Integer> list) {
    return list.get(random.nextInt(list.size()));
  }

  private double ohms() {
    return Math.pow(10, -4 + 3.5 * random.nextDouble());
  }
}
