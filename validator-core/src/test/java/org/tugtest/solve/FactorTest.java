package org.tugtest.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.junit.jupiter.api.Test;

class FactorTest {
  @Test
  void voltsAreThoseOfGaussElimination() {
    Random random = new Random(7);
    for (int round = 0; round < 100; round++) {
      int nodes = 2 + random.nextInt(60);
      RandomGraph graph = RandomGraph.nearTree(random, nodes, random.nextInt(nodes));
      double[] amps = random.doubles(nodes, -1, 1).toArray();
      double[] volts = graph.factor().solve(amps);
      double[] dense = Dense.solve(graph.matrix(), Arrays.copyOfRange(amps, 1, nodes));
      double greatest = Arrays.stream(dense).map(Math::abs).max().orElse(1);
      for (int i = 1; i < nodes; i++) {
        assertThat(volts[i]).isCloseTo(dense[i - 1], within(1e-8 * greatest));
      }
      assertThat(volts[0]).isZero();
    }
  }

  /** The sparse Cholesky factor of EJML 0.46.1, on a matrix with much fill. */
  @Test
  void voltsAreThoseOfAnotherSparseFactor() {
    int nodes = 800;
    RandomGraph graph = RandomGraph.nearTree(new Random(17), nodes, 600);
    double[] amps = new Random(18).doubles(nodes, -1, 1).toArray();
    DMatrixSparseTriplet cells = new DMatrixSparseTriplet(nodes - 1, nodes - 1, 4 * nodes);
    double[][] matrix = graph.matrix();
    for (int row = 0; row < matrix.length; row++) {
      for (int column = 0; column < matrix.length; column++) {
        if (matrix[row][column] != 0) {
          cells.addItem(row, column, matrix[row][column]);
        }
      }
    }
    LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> other =
        LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    assertThat(other.setA(DConvertMatrixStruct.convert(cells, (DMatrixSparseCSC) null))).isTrue();
    DMatrixRMaj volts = new DMatrixRMaj(nodes - 1, 1);
    other.solve(DMatrixRMaj.wrap(nodes - 1, 1, Arrays.copyOfRange(amps, 1, nodes)), volts);
    double[] ours = graph.factor().solve(amps);
    double greatest = Arrays.stream(ours).map(Math::abs).max().orElseThrow();
    for (int i = 1; i < nodes; i++) {
      assertThat(ours[i]).isCloseTo(volts.get(i - 1), within(1e-8 * greatest));
    }
  }

  @Test
  void resistancesOfTheSelectedInverseAreThoseOfOneSolutionEach() {
    Random random = new Random(8);
    for (int round = 0; round < 60; round++) {
      int nodes = 2 + random.nextInt(40);
      RandomGraph graph = RandomGraph.nearTree(random, nodes, random.nextInt(nodes));
      Factor factor = graph.factor();
      DrivingPoints points = factor.drivingPoints();
      for (int node = 0; node < nodes; node++) {
        double dense = node == 0 ? 0 : graph.denseOhms(node, 0);
        assertThat(points.ohms(node)).isCloseTo(dense, within(1e-8 * dense));
        assertThat(factor.drivingPointOhms(node)).isCloseTo(dense, within(1e-8 * dense));
      }
      for (int edge = 0; edge < graph.edges(); edge++) {
        int a = graph.a(edge);
        int b = graph.b(edge);
        double dense = a == b ? 0 : graph.denseOhms(a, b);
        assertThat(points.ohmsBetween(a, b).orElseThrow())
            .isCloseTo(dense, within(1e-7 * dense + 1e-9));
        assertThat(factor.ohmsBetween(a, b)).isCloseTo(dense, within(1e-8 * dense + 1e-9));
      }
    }
  }

  @Test
  void aTreeHasNoFill() {
    RandomGraph tree = RandomGraph.nearTree(new Random(9), 20_000, 0);
    long atGround =
        IntStream.range(0, tree.edges()).filter(i -> tree.a(i) == 0 || tree.b(i) == 0).count();
    assertThat(tree.factor().entries()).isEqualTo((int) (2 * 19_999 - atGround));
  }

  @Test
  void aNearTreeHasLittleFill() {
    RandomGraph tree = RandomGraph.loom(new Random(9), 20_000, 1_000);
    assertThat(tree.factor().entries()).isLessThan(50_000);
  }

  @Test
  void aStarAndARingHaveLittleFill() {
    int nodes = 5_000;
    int[] hub = new int[2 * nodes - 3];
    int[] rim = new int[2 * nodes - 3];
    for (int i = 1; i < nodes; i++) {
      rim[i - 1] = i;
      if (i < nodes - 1) {
        hub[nodes - 2 + i] = i;
        rim[nodes - 2 + i] = i + 1;
      }
    }
    double[] siemens = new double[hub.length];
    Arrays.fill(siemens, 1);
    boolean[] grounded = new boolean[nodes];
    grounded[nodes - 1] = true;
    Factor wheel = Structure.of(nodes, hub, rim, grounded).factor(siemens).orElseThrow();
    assertThat(wheel.entries()).isLessThan(4 * nodes);
  }

  @Test
  void aNegativeConductanceThatIsTooGreatHasNoFactor() {
    Structure structure =
        Structure.of(2, new int[] {0, 0}, new int[] {1, 1}, new boolean[] {true, false});
    assertThat(structure.factor(new double[] {1, -0.5})).isPresent();
    assertThat(structure.factor(new double[] {1, -1.5})).isEmpty();
  }

  @Test
  void groundAloneAndNothingAtAllCanBeSolved() {
    assertThat(Structure.of(0, new int[0], new int[0], new boolean[0]).factor(new double[0]))
        .isPresent();
    Factor ground =
        Structure.of(1, new int[] {0}, new int[] {0}, new boolean[] {true})
            .factor(new double[] {1})
            .orElseThrow();
    assertThat(ground.solve(new double[] {5})).containsExactly(0);
    assertThat(ground.drivingPoints().ohms(0)).isZero();
  }
}
