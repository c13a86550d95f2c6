package org.tugtest.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class MeterTest {
  private static Meter meter(Built built) {
    return Meter.of(
        built.network().points(),
        built.network().edges(),
        new MeterOhms(
            built.facts().harness(),
            built.wiring(),
            built.facts().fitting(),
            built.facts().lengths()));
  }

  /** A sketch of wires between splices, each {@code from, to, milliohm}, crimps and splices 0. */
  private static Built of(int[]... wires) {
    List<String> parts = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < wires.length; i++) {
      parts.add(
          "\"p%d\": {\"areaMm2\": 1, \"maxC\": 100, \"milliohmPerM\": %d}"
              .formatted(i, wires[i][2]));
      lines.add(
          "\"W%d\": {\"from\": \"S%d\", \"to\": \"S%d\", \"part\": \"p%d\", \"cutMm\": 1000}"
              .formatted(i, wires[i][0], wires[i][1], i));
    }
    return Built.sketch(
        "\"defaults\": {\"spliceMilliohm\": 0}",
        "\"parts\": {\"wires\": {" + String.join(", ", parts) + "}}",
        "\"wires\": {" + String.join(", ", lines) + "}");
  }

  private static double between(Meter meter, Point one, Point other) {
    Double milliohm = meter.between(one, other).orElseThrow().milliohm();
    assertThat(milliohm).isNotNull();
    return milliohm == null ? -1 : milliohm;
  }

  @Test
  void seriesAddsUpAndParallelShares() {
    Built built = of(new int[] {1, 2, 30}, new int[] {2, 3, 20}, new int[] {2, 3, 60});
    assertThat(between(meter(built), built.at("S1"), built.at("S3"))).isCloseTo(45, within(1e-9));
    assertThat(between(meter(built), built.at("S1"), built.at("S1"))).isZero();
  }

  /** A balanced bridge: the branch across carries nothing, 10 + 10 beside 10 + 10 are 10. */
  @Test
  void balancedBridgeIsAsIfTheBranchAcrossWereNotThere() {
    Built built =
        of(
            new int[] {1, 2, 10},
            new int[] {2, 4, 10},
            new int[] {1, 3, 10},
            new int[] {3, 4, 10},
            new int[] {2, 3, 77});
    assertThat(between(meter(built), built.at("S1"), built.at("S4"))).isCloseTo(10, within(1e-9));
  }

  /** Twelve equal resistors as the edges of a cube: 5/6 from corner to far corner (textbooks). */
  @Test
  void cubeOfEqualResistors() {
    List<int[]> edges = new ArrayList<>();
    for (int corner = 0; corner < 8; corner++) {
      for (int bit = 1; bit < 8; bit *= 2) {
        if ((corner & bit) == 0) {
          edges.add(new int[] {corner, corner | bit, 12});
        }
      }
    }
    Built built = of(edges.toArray(int[][]::new));
    assertThat(between(meter(built), built.at("S0"), built.at("S7"))).isCloseTo(10, within(1e-9));
    assertThat(between(meter(built), built.at("S0"), built.at("S1"))).isCloseTo(7, within(1e-9));
  }

  @Test
  void figureIsNotKnownOnlyWhereItIsMissing() {
    Built built =
        Built.sketch(
            """
            "wires": {"W1": {"from": "A:1", "to": "S1", "areaMm2": 1, "cutMm": 1000},
                      "W2": {"from": "S1", "to": "A:2", "areaMm2": 1},
                      "W3": {"from": "S1", "to": "A:3", "areaMm2": 1, "cutMm": 500}}
            """);
    Meter meter = meter(built);
    Shown lacking = meter.between(built.at("A:1"), built.at("A:2")).orElseThrow();
    assertThat(lacking.milliohm()).isNull();
    assertThat(lacking.missing()).isEqualTo("W2 gives no length");
    assertThat(between(meter, built.at("A:1"), built.at("A:3")))
        .isCloseTo(19.5 * 1.5 + 2 * 0.5 + 1, within(1e-9));
    assertThat(meter.between(built.at("A:1"), Point.cavity("A", "9"))).isEmpty();
  }

  @Test
  void ringWithAMissingFigureIsNotKnownButTheWayBesideItIs() {
    Built built =
        Built.sketch(
            """
            "wires": {"W1": {"from": "A:1", "to": "B:1", "areaMm2": 1, "cutMm": 1000},
                      "W2": {"from": "A:1", "to": "B:1", "areaMm2": 1},
                      "W3": {"from": "B:1", "to": "C:1", "areaMm2": 1, "cutMm": 1000}}
            """);
    assertThat(meter(built).between(built.at("A:1"), built.at("C:1")).orElseThrow().missing())
        .isEqualTo("W2 gives no length");
    assertThat(between(meter(built), built.at("B:1"), built.at("C:1")))
        .isCloseTo(20.5, within(1e-9));
  }

  @Test
  void aRingTooLargeToSolveIsBoundFromAbove() {
    int n = RingOhms.MOST + 2;
    int[][] wires = new int[n][];
    for (int i = 0; i < n; i++) {
      wires[i] = new int[] {i, (i + 1) % n, 10};
    }
    Built built = of(wires);
    Shown shown = meter(built).between(built.at("S0"), built.at("S3")).orElseThrow();
    assertThat(shown.atMost()).isTrue();
    assertThat(shown.milliohm()).isEqualTo(30);
  }

  @Test
  void aChainOfManyWiresIsWalkedWithoutRecursion() {
    int n = 20_000;
    int[][] wires = new int[n][];
    for (int i = 0; i < n; i++) {
      wires[i] = new int[] {i, i + 1, 1};
    }
    Built built = of(wires);
    Meter meter = meter(built);
    assertThat(between(meter, built.at("S0"), built.at("S" + n))).isCloseTo(n, within(1e-6));
    assertThat(meter.telling(List.of(built.at("S0"), built.at("S" + n)))).hasSize(n);
    assertThat(meter.path(built.at("S0"), built.at("S" + n)).orElseThrow().edges()).hasSize(n);
  }

  /**
   * Random graphs: what is joined by a plain walk; the resistance by counting trees (Kirchhoff:
   * determinant without both points over determinant without one); breaks by taking each edge out.
   */
  @Test
  void randomGraphsAgreeWithPlainMethods() {
    Random random = new Random(20261125);
    for (int round = 0; round < 400; round++) {
      int points = 2 + random.nextInt(7);
      int[][] wires = new int[1 + random.nextInt(11)][];
      for (int i = 0; i < wires.length; i++) {
        int from = random.nextInt(points);
        wires[i] =
            new int[] {
              from, (from + 1 + random.nextInt(points - 1)) % points, 1 + random.nextInt(99)
            };
      }
      Built built = of(wires);
      Meter meter = meter(built);
      Set<Integer> named = named(wires);
      List<Integer> probes = named.stream().filter(p -> random.nextInt(3) > 0).toList();
      for (int a : named) {
        for (int b : named) {
          Set<Integer> joined = walk(wires, a, -1);
          Point one = built.at("S" + a);
          Point other = built.at("S" + b);
          assertThat(meter.joined(one, other)).isEqualTo(joined.contains(b));
          if (joined.contains(b)) {
            assertThat(between(meter, one, other))
                .isCloseTo(byTrees(wires, joined, a, b), within(1e-6));
            Path path = meter.path(one, other).orElseThrow();
            assertThat(path.end()).isEqualTo(other);
            assertThat(new HashSet<>(path.edges())).hasSameSizeAs(path.edges());
          }
        }
      }
      Set<Edge> telling = meter.telling(probes.stream().map(p -> built.at("S" + p)).toList());
      for (int i = 0; i < wires.length; i++) {
        String id = "W" + i;
        boolean parted = false;
        for (int a : probes) {
          parted |= !walk(wires, a, i).containsAll(both(walk(wires, a, -1), probes));
        }
        assertThat(telling.stream().anyMatch(edge -> edge.text().equals(id))).isEqualTo(parted);
      }
      assertThat(sum(meter, built, probes)).isCloseTo(leastTrees(wires, probes), within(1e-9));
    }
  }

  private static double sum(Meter meter, Built built, List<Integer> probes) {
    return meter
        .nearest(
            probes.stream().map(p -> built.at("S" + p)).toList(),
            edge -> ((Edge.OfWire) edge).wire().part() == null ? 0 : milliohm(built, edge))
        .stream()
        .mapToDouble(NearestPairs.Pair::length)
        .sum();
  }

  private static double milliohm(Built built, Edge edge) {
    String part = ((Edge.OfWire) edge).wire().part();
    return built.facts().harness().parts().wires().get(part).milliohmPerM();
  }

  /** Prim's way over all distances (Floyd and Warshall). */
  private static double leastTrees(int[][] wires, List<Integer> probes) {
    double[][] far = new double[9][9];
    for (int i = 0; i < 9; i++) {
      Arrays.fill(far[i], Double.POSITIVE_INFINITY);
      far[i][i] = 0;
    }
    for (int[] wire : wires) {
      far[wire[0]][wire[1]] = Math.min(far[wire[0]][wire[1]], wire[2]);
      far[wire[1]][wire[0]] = far[wire[0]][wire[1]];
    }
    for (int k = 0; k < 9; k++) {
      for (int i = 0; i < 9; i++) {
        for (int j = 0; j < 9; j++) {
          far[i][j] = Math.min(far[i][j], far[i][k] + far[k][j]);
        }
      }
    }
    Set<Integer> left = new HashSet<>(probes);
    Set<Integer> in = new HashSet<>();
    double sum = 0;
    while (!left.isEmpty()) {
      int best = -1;
      double least = Double.POSITIVE_INFINITY;
      for (int to : left) {
        for (int from : in) {
          if (far[from][to] < least) {
            least = far[from][to];
            best = to;
          }
        }
      }
      if (best < 0) {
        best = left.iterator().next();
        least = 0;
      }
      sum += least;
      left.remove(best);
      in.add(best);
    }
    return sum;
  }

  private static Set<Integer> both(Set<Integer> one, List<Integer> other) {
    Set<Integer> both = new HashSet<>(one);
    both.retainAll(other);
    return both;
  }

  private static Set<Integer> named(int[][] wires) {
    Set<Integer> named = new TreeSet<>();
    for (int[] wire : wires) {
      named.add(wire[0]);
      named.add(wire[1]);
    }
    return named;
  }

  private static Set<Integer> walk(int[][] wires, int start, int without) {
    Set<Integer> seen = new HashSet<>(Set.of(start));
    boolean more = true;
    while (more) {
      more = false;
      for (int i = 0; i < wires.length; i++) {
        if (i != without && seen.contains(wires[i][0]) != seen.contains(wires[i][1])) {
          seen.addAll(List.of(wires[i][0], wires[i][1]));
          more = true;
        }
      }
    }
    return seen;
  }

  private static double byTrees(int[][] wires, Set<Integer> joined, int a, int b) {
    if (a == b) {
      return 0;
    }
    return determinant(wires, joined, Set.of(a, b)) / determinant(wires, joined, Set.of(a));
  }

  /** Of the matrix of conductances, without the rows and columns of some points. */
  private static double determinant(int[][] wires, Set<Integer> joined, Set<Integer> without) {
    Map<Integer, Integer> rows = new TreeMap<>();
    for (int point : joined) {
      if (!without.contains(point)) {
        rows.put(point, rows.size());
      }
    }
    double[][] m = new double[rows.size()][rows.size()];
    for (int[] wire : wires) {
      Integer a = rows.get(wire[0]);
      Integer b = rows.get(wire[1]);
      if (a != null) {
        m[a][a] += 1.0 / wire[2];
      }
      if (b != null) {
        m[b][b] += 1.0 / wire[2];
      }
      if (a != null && b != null) {
        m[a][b] -= 1.0 / wire[2];
        m[b][a] -= 1.0 / wire[2];
      }
    }
    double value = 1;
    for (int i = 0; i < m.length; i++) {
      value *= m[i][i];
      for (int j = i + 1; j < m.length; j++) {
        double share = m[j][i] / m[i][i];
        for (int k = i; k < m.length; k++) {
          m[j][k] -= share * m[i][k];
        }
      }
    }
    return value;
  }
}
