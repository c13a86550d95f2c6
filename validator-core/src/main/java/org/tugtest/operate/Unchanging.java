package org.tugtest.operate;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.LowSupplies;
import org.tugtest.network.Network;
import org.tugtest.network.Resistance;
import org.tugtest.network.WorkingResistances;
import org.tugtest.solve.Branch;

/**
 * What is the same in every state, held once for all of them: what is mated or bolted, links, and
 * fuses, however warm it is, and wires as long as they are as warm as they were first.
 */
final class Unchanging {
  private final Network network;
  private final WorkingResistances resistances;
  private final LowSupplies supplies;
  private final Map<String, Integer> coils = new HashMap<>();
  private final @Nullable Branch[] branches;
  private final Resistance[] figures;
  private final @Nullable Wire[] wires;
  private final int[] wireEdges;
  private final int[] loadEdges;

  /**
   * A wire.
   *
   * @param celsius of its conductor
   */
  record Wire(double celsius, Branch branch, Resistance figure) {}

  /** That of a network. */
  Unchanging(Network network, WorkingResistances resistances, double nominalV) {
    this.network = network;
    this.resistances = resistances;
    this.supplies = LowSupplies.of(network, nominalV);
    branches = new Branch[network.edges().size()];
    figures = new Resistance[branches.length];
    wires = new Wire[branches.length];
    int[] ofWires = new int[branches.length];
    int[] ofLoads = new int[branches.length];
    int wireCount = 0;
    int loadCount = 0;
    for (int i = 0; i < branches.length; i++) {
      Edge edge = network.edges().get(i);
      if (never(edge)) {
        Resistance figure = resistances.of(edge, edge instanceof Edge.OfElement ? 0 : Double.NaN);
        branches[i] = new Branch.Resistor(network.indexOfA(i), network.indexOfB(i), figure.ohms());
        figures[i] = figure;
      } else if (edge instanceof Edge.OfWire) {
        ofWires[wireCount++] = i;
      } else if (edge instanceof Edge.OfElement inside) {
        if (inside.element() instanceof Element.Load) {
          ofLoads[loadCount++] = i;
        } else if (inside.element() instanceof Element.Coil coil && conducts(coil)) {
          coils.put(inside.text(), i);
        }
      }
    }
    wireEdges = Arrays.copyOf(ofWires, wireCount);
    loadEdges = Arrays.copyOf(ofLoads, loadCount);
  }

  private static boolean conducts(Element.Coil coil) {
    Double ohms = coil.ohms();
    return ohms != null && ohms > 0 && !ohms.isInfinite();
  }

  /** The supplies of far less than nominal volts. */
  LowSupplies supplies() {
    return supplies;
  }

  /** The edges of coils that conduct, by their texts. */
  Map<String, Integer> coils() {
    return coils;
  }

  /** The edges that are wires, by number. */
  int[] wireEdges() {
    return wireEdges;
  }

  /** The edges that are loads, by number. */
  int[] loadEdges() {
    return loadEdges;
  }

  /** A wire as warm as this; the first one is kept, for states in which it is as warm. */
  Wire wire(int edge, double celsius) {
    Wire first = wires[edge];
    if (first != null && first.celsius() == celsius) {
      return first;
    }
    Resistance figure = resistances.of(network.edges().get(edge), celsius);
    Wire made =
        new Wire(
            celsius,
            new Branch.Resistor(network.indexOfA(edge), network.indexOfB(edge), figure.ohms()),
            figure);
    if (first == null) {
      wires[edge] = made;
    }
    return made;
  }

  private static boolean never(Edge edge) {
    return edge instanceof Edge.OfElement inside
        ? inside.fitted()
            && (inside.element() instanceof Element.Link
                || inside.element() instanceof Element.Fuse)
        : !(edge instanceof Edge.OfWire);
  }

  /** The branch of an edge, by its number; null where a state has a say. */
  @Nullable Branch branch(int edge) {
    return branches[edge];
  }

  /** What a branch that is there rests on. */
  Resistance figure(int edge) {
    return figures[edge];
  }
}
