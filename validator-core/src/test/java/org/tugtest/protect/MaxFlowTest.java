package org.tugtest.protect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.Random;
import org.jgrapht.alg.flow.DinicMFImpl;
import org.jgrapht.alg.flow.PushRelabelMFImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;

/** The flow against two other algorithms, on random graphs of up to 40 nodes. */
class MaxFlowTest {
  @Test
  void agreesWithPushRelabelAndDinicAndItsCutIsAsGreat() {
    int positive = 0;
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      int nodes = 2 + random.nextInt(38);
      double[][] capacity = new double[nodes][nodes];
      MaxFlow flow = new MaxFlow(nodes);
      for (int i = 0; i < 3 * nodes; i++) {
        int one = random.nextInt(nodes);
        int other = random.nextInt(nodes);
        double amps = RandomCar.RATINGS[random.nextInt(RandomCar.RATINGS.length)];
        double back = random.nextInt(4) == 0 ? 0 : amps;
        if (one != other) {
          flow.join(one, other, amps, back);
          capacity[one][other] += amps;
          capacity[other][one] += back;
        }
      }
      SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> graph =
          new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
      for (int i = 0; i < nodes; i++) {
        graph.addVertex(i);
      }
      for (int i = 0; i < nodes; i++) {
        for (int j = 0; j < nodes; j++) {
          if (capacity[i][j] > 0) {
            graph.setEdgeWeight(graph.addEdge(i, j), capacity[i][j]);
          }
        }
      }
      double amps = flow.greatest(0, nodes - 1);
      assertThat(amps)
          .as("seed %d", seed)
          .isCloseTo(new PushRelabelMFImpl<>(graph).getMaximumFlowValue(0, nodes - 1), within(1e-6))
          .isCloseTo(new DinicMFImpl<>(graph).getMaximumFlowValue(0, nodes - 1), within(1e-6));
      BitSet behind = flow.sinkSide();
      double cut = 0;
      for (int i = 0; i < nodes; i++) {
        for (int j = 0; j < nodes; j++) {
          cut += !behind.get(i) && behind.get(j) ? capacity[i][j] : 0;
        }
      }
      assertThat(cut).as("seed %d", seed).isCloseTo(amps, within(1e-9));
      positive += amps > 0 ? 1 : 0;
    }
    assertThat(positive).isGreaterThan(200);
  }

  @Test
  void aWayWithoutABoundIsInfiniteAndNoWayIsNothing() {
    MaxFlow open = new MaxFlow(3);
    open.join(0, 1, Double.POSITIVE_INFINITY, 0);
    open.join(1, 2, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    assertThat(open.greatest(0, 2)).isInfinite();
    MaxFlow against = new MaxFlow(2);
    against.join(1, 0, 5, 0);
    assertThat(against.greatest(0, 1)).isZero();
    assertThat(new MaxFlow(1).greatest(0, 0)).isInfinite();
  }
}
