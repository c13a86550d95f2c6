package org.tugtest.operate;

import org.jspecify.annotations.Nullable;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Resistance;
import org.tugtest.network.WorkingResistances;
import org.tugtest.solve.Branch;

/**
 * What is the same in every state however warm it is, held once for all of them: what is mated or
 * bolted, links, and fuses.
 */
final class Unchanging {
  private final @Nullable Branch[] branches;
  private final Resistance[] figures;

  /** That of a network. */
  Unchanging(Network network, WorkingResistances resistances) {
    branches = new Branch[network.edges().size()];
    figures = new Resistance[branches.length];
    for (int i = 0; i < branches.length; i++) {
      Edge edge = network.edges().get(i);
      if (never(edge)) {
        Resistance figure = resistances.of(edge, edge instanceof Edge.OfElement ? 0 : Double.NaN);
        branches[i] = new Branch.Resistor(network.indexOfA(i), network.indexOfB(i), figure.ohms());
        figures[i] = figure;
      }
    }
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
