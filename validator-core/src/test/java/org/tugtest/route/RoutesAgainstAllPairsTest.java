package org.tugtest.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tugtest.model.Layout;

/**
 * Routes against an independent computation: the layout cut at every splice, all pairs by the
 * algorithm of Floyd and Warshall. Layouts are random, with loops, parallel segments, segments to
 * themselves, segments of no length, islands, and many equal ways.
 */
class RoutesAgainstAllPairsTest {
  private static final int LAYOUTS = 120;
  private static final int WIRES = 30;

  /** A random layout with a device at each node and some splices, and random wires. */
  private static final class Plan {
    final Random random;
    final int nodes;
    final StringBuilder segments = new StringBuilder();
    final StringBuilder devices = new StringBuilder();
    final StringBuilder splices = new StringBuilder();
    final List<String> ends = new ArrayList<>();
    final List<String[]> wires = new ArrayList<>();

    Plan(long seed) {
      random = new Random(seed);
      nodes = 3 + random.nextInt(9);
      int count = nodes - 1 + random.nextInt(nodes);
      boolean coarse = random.nextBoolean();
      for (int i = 0; i < count; i++) {
        int length = coarse ? 100 * random.nextInt(4) : random.nextInt(1000);
        String id = "s" + random.nextInt(100) + "-" + i;
        segments
            .append(i == 0 ? "" : ", ")
            .append(
                "\"%s\": {\"from\": \"n%d\", \"to\": \"n%d\", \"lengthMm\": %d}"
                    .formatted(id, random.nextInt(nodes), random.nextInt(nodes), length));
        if (random.nextInt(3) == 0) {
          String splice = "S" + i;
          splices
              .append(splices.isEmpty() ? "" : ", ")
              .append(
                  "\"%s\": {\"on\": \"%s\", \"offsetMm\": %s}"
                      .formatted(splice, id, length * random.nextInt(5) / 4.0));
          ends.add(splice);
        }
      }
      for (int i = 0; i < nodes; i++) {
        devices.append(i == 0 ? "" : ", ").append("\"D%1$d\": {\"at\": \"n%1$d\"}".formatted(i));
        ends.add("D" + i + ":");
      }
      for (int i = 0; i < WIRES; i++) {
        wires.add(new String[] {end(i), end(i)});
      }
    }

    private String end(int i) {
      String end = ends.get(random.nextInt(ends.size()));
      return end.endsWith(":") ? end + i : end;
    }

    Laid laid(List<String[]> some, boolean turned) {
      StringBuilder json = new StringBuilder();
      for (int i = 0; i < some.size(); i++) {
        String[] wire = some.get(i);
        json.append(i == 0 ? "" : ", ")
            .append(
                "\"W%d\": {\"from\": \"%s\", \"to\": \"%s\"}"
                    .formatted(i, wire[turned ? 1 : 0], wire[turned ? 0 : 1]));
      }
      return Laid.out(
          "\"layout\": {\"segments\": {" + segments + "}}",
          "\"devices\": {" + devices + "}",
          "\"splices\": {" + splices + "}",
          "\"wires\": {" + json + "}");
    }
  }

  @Test
  void lengthsAreThoseOfFloydAndWarshall() {
    int routed = 0;
    int broken = 0;
    for (int seed = 0; seed < LAYOUTS; seed++) {
      Plan plan = new Plan(seed);
      Laid laid = plan.laid(plan.wires, false);
      Map<String, Integer> vertex = new HashMap<>();
      double[][] apart = allPairs(laid, vertex);
      for (int i = 0; i < WIRES; i++) {
        Integer from = vertex.get(vertexOf(plan.wires.get(i)[0]));
        Integer to = vertex.get(vertexOf(plan.wires.get(i)[1]));
        double expected =
            from == null || to == null
                ? (plan.wires.get(i)[0].startsWith("D")
                        && vertexOf(plan.wires.get(i)[0]).equals(vertexOf(plan.wires.get(i)[1]))
                    ? 0
                    : Double.POSITIVE_INFINITY)
                : apart[from][to];
        String wire = "W" + i;
        if (Double.isInfinite(expected)) {
          assertThat(laid.reason(wire)).as("seed %d %s", seed, wire).isEqualTo(NoRoute.Why.BROKEN);
          broken++;
        } else {
          assertThat(laid.route(wire).segmentsMm())
              .as("seed %d %s", seed, wire)
              .isCloseTo(expected, within(1e-6));
          hangsTogether(laid, laid.route(wire));
          routed++;
        }
      }
    }
    assertThat(routed).isGreaterThan(1000);
    assertThat(broken).isGreaterThan(100);
  }

  /** Each piece begins where the last one ended; what no length parts is one place. */
  private static void hangsTogether(Laid laid, Route route) {
    Set<String> at = places(laid, route.from());
    for (Piece piece : route.pieces()) {
      assertThat(places(laid, new Stand.OnSegment(piece.segment(), piece.fromMm())))
          .containsAnyElementsOf(at);
      at = places(laid, new Stand.OnSegment(piece.segment(), piece.toMm()));
    }
    assertThat(places(laid, route.to())).containsAnyElementsOf(at);
  }

  private static Set<String> places(Laid laid, Stand stand) {
    if (stand instanceof Stand.AtNode at) {
      return Set.of(at.node());
    }
    Stand.OnSegment on = (Stand.OnSegment) stand;
    Layout.Segment segment = laid.facts().harness().layout().segments().get(on.segment());
    double length = segment.lengthMm();
    Set<String> places = new TreeSet<>(Set.of(on.segment() + "@" + on.offsetMm()));
    if (on.offsetMm() == 0) {
      places.add(segment.from());
    }
    if (on.offsetMm() == length) {
      places.add(segment.to());
    }
    return places;
  }

  private static String vertexOf(String end) {
    return end.startsWith("D") ? "n" + end.substring(1, end.indexOf(':')) : end;
  }

  private static double[][] allPairs(Laid laid, Map<String, Integer> vertex) {
    Layout layout = laid.facts().harness().layout();
    for (Layout.Segment segment : layout.segments().values()) {
      vertex.putIfAbsent(segment.from(), vertex.size());
      vertex.putIfAbsent(segment.to(), vertex.size());
    }
    laid.facts().harness().splices().keySet().forEach(id -> vertex.put(id, vertex.size()));
    double[][] d = new double[vertex.size()][vertex.size()];
    for (int i = 0; i < d.length; i++) {
      Arrays.fill(d[i], Double.POSITIVE_INFINITY);
      d[i][i] = 0;
    }
    for (Layout.Segment segment : layout.segments().values()) {
      edge(d, vertex.get(segment.from()), vertex.get(segment.to()), segment.lengthMm());
      laid.facts().harness().splices().values().stream()
          .filter(splice -> segment.id().equals(splice.on()))
          .forEach(
              splice -> {
                int at = vertex.get(splice.id());
                edge(d, at, vertex.get(segment.from()), splice.offsetMm());
                edge(d, at, vertex.get(segment.to()), segment.lengthMm() - splice.offsetMm());
              });
    }
    for (int k = 0; k < d.length; k++) {
      for (int i = 0; i < d.length; i++) {
        for (int j = 0; j < d.length; j++) {
          d[i][j] = Math.min(d[i][j], d[i][k] + d[k][j]);
        }
      }
    }
    return d;
  }

  private static void edge(double[][] d, int a, int b, double length) {
    d[a][b] = Math.min(d[a][b], length);
    d[b][a] = Math.min(d[b][a], length);
  }

  @Test
  void aWayDependsNeitherOnDirectionNorOnOtherWires() {
    for (int seed = 0; seed < LAYOUTS; seed++) {
      Plan plan = new Plan(seed);
      Laid laid = plan.laid(plan.wires, false);
      Laid turned = plan.laid(plan.wires, true);
      for (int i = 0; i < WIRES; i++) {
        String wire = "W" + i;
        Route route = laid.facts().routes().of(wire).orElse(null);
        Route back = turned.facts().routes().of(wire).orElse(null);
        Laid alone = plan.laid(plan.wires.subList(i, i + 1), false);
        Route only = alone.facts().routes().of("W0").orElse(null);
        if (route == null || back == null || only == null) {
          assertThat(route).isNull();
          assertThat(back).isNull();
          assertThat(only).isNull();
          continue;
        }
        assertThat(only.pieces()).as("seed %d %s", seed, wire).isEqualTo(route.pieces());
        assertThat(only.equalWay()).as("seed %d %s", seed, wire).isEqualTo(route.equalWay());
        assertThat(segments(back)).as("seed %d %s", seed, wire).isEqualTo(segments(route));
        assertThat(back.equalWay()).hasSameElementsAs(route.equalWay());
      }
    }
  }

  private static List<String> segments(Route route) {
    return route.pieces().stream()
        .filter(piece -> piece.lengthMm() > 0)
        .map(Piece::segment)
        .sorted()
        .toList();
  }

  @Test
  void noWayIsLongerThanOneOverAThirdPlace() {
    for (int seed = 0; seed < 40; seed++) {
      Plan plan = new Plan(seed);
      List<String> ends = plan.ends.stream().limit(6).toList();
      List<String[]> wires = new ArrayList<>();
      for (String a : ends) {
        for (String b : ends) {
          wires.add(new String[] {named(a, wires.size()), named(b, wires.size())});
        }
      }
      Laid laid = plan.laid(wires, false);
      int n = ends.size();
      for (int a = 0; a < n; a++) {
        for (int b = 0; b < n; b++) {
          for (int c = 0; c < n; c++) {
            assertThat(mm(laid, a * n + b))
                .isLessThanOrEqualTo(mm(laid, a * n + c) + mm(laid, c * n + b) + 1e-9);
          }
        }
      }
    }
  }

  private static String named(String end, int number) {
    return end.endsWith(":") ? end + number : end;
  }

  private static double mm(Laid laid, int wire) {
    return laid.facts()
        .routes()
        .of("W" + wire)
        .map(Route::segmentsMm)
        .orElse(Double.POSITIVE_INFINITY);
  }
}
