package org.tugtest.report.html.loom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.facts.Facts;
import org.tugtest.report.html.SampleCar;
import org.tugtest.route.Piece;
import org.tugtest.rule.Judged;

class LoomRoomTest {
  private static LoomRoom room(String json) {
    return LoomRoom.of(Judged.facts(Map.of(Judged.ROOT, json)));
  }

  private static LoomRoom sample() {
    return LoomRoom.of(sampleFacts());
  }

  private static Facts sampleFacts() {
    return SampleCar.facts();
  }

  @Test
  void drawsEverySegmentToLength() {
    LoomRoom room = sample();
    Drawing board = room.figures().get(0).drawing();
    assertThat(board.lines()).hasSize(sampleFacts().harness().layout().segments().size());
    Map<Integer, Double> mm = new LinkedHashMap<>();
    room.skeleton().arms().forEach(arm -> mm.put(arm.number(), arm.mm()));
    ToDoubleFunction<Drawing.Line> drawn = line -> length(line.path());
    List<Drawing.Line> straight = board.lines().stream().filter(line -> !line.bent()).toList();
    double scale =
        straight.stream().mapToDouble(drawn).sum()
            / straight.stream().mapToDouble(line -> mm.get(line.arm())).sum();
    assertThat(straight).hasSizeGreaterThanOrEqualTo(board.lines().size() - 2);
    for (Drawing.Line line : straight) {
      assertThat(drawn.applyAsDouble(line))
          .as(line.title())
          .isCloseTo(mm.get(line.arm()) * scale, org.assertj.core.data.Offset.offset(1.5));
    }
  }

  private static double length(String path) {
    String[] numbers = path.substring(1).split("[L,]", -1);
    return Math.hypot(
        Double.parseDouble(numbers[2]) - Double.parseDouble(numbers[0]),
        Double.parseDouble(numbers[3]) - Double.parseDouble(numbers[1]));
  }

  @Test
  void marksWhatIsNotToLength() {
    LoomRoom room =
        room(
            layout(
                "\"s1\": {\"from\": \"a\", \"to\": \"b\", \"lengthMm\": 100}",
                "\"s2\": {\"from\": \"b\", \"to\": \"c\", \"lengthMm\": 100}",
                "\"s3\": {\"from\": \"c\", \"to\": \"a\", \"lengthMm\": 100}",
                "\"s4\": {\"from\": \"c\", \"to\": \"d\", \"lengthMm\": 100}",
                "\"s5\": {\"from\": \"d\", \"to\": \"e\", \"lengthMm\": 90000}"));
    assertThat(room.figures().get(0).drawing().lines())
        .extracting(Drawing.Line::title, Drawing.Line::bent)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("s1: a – b, 100 mm, 0 wires", false),
            org.assertj.core.groups.Tuple.tuple("s2: b – c, 100 mm, 0 wires", false),
            org.assertj.core.groups.Tuple.tuple("s3: c – a, 100 mm, 0 wires", true),
            org.assertj.core.groups.Tuple.tuple("s4: c – d, 100 mm, 0 wires", false),
            org.assertj.core.groups.Tuple.tuple("s5: d – e, 90000 mm, 0 wires", true));
  }

  private static String layout(String... segments) {
    StringBuilder nodes = new StringBuilder();
    for (char node = 'a'; node <= 'e'; node++) {
      nodes.append(node == 'a' ? "" : ", ").append('"').append(node).append("\": {}");
    }
    return "{\"format\": 1, \"layout\": {\"nodes\": {"
        + nodes
        + "}, \"segments\": {"
        + String.join(", ", segments)
        + "}}}";
  }

  @Test
  void drawsTheSampleInTheVehicleToo() {
    assertThat(sample().figures())
        .extracting(LoomRoom.Figure::title)
        .containsExactly("On the board", "In the vehicle");
  }

  @Test
  void givesEachWireTheRunThatItsRouteSays() {
    Facts facts = sampleFacts();
    LoomRoom room = LoomRoom.of(facts);
    facts
        .routes()
        .all()
        .forEach(
            (wire, route) -> {
              Integer run = room.runs().of().get(wire);
              List<String> arms =
                  run == null
                      ? List.of()
                      : room.runs().all().get(run).stream()
                          .map(arm -> room.skeleton().arms().get(arm).id())
                          .toList();
              assertThat(arms)
                  .as(wire)
                  .isEqualTo(route.pieces().stream().map(Piece::segment).toList());
            });
    for (List<LoomRoom.Row> chunk : room.stretches()) {
      for (LoomRoom.Row row : chunk) {
        long through =
            facts.routes().all().values().stream()
                .filter(
                    route ->
                        route.pieces().stream().anyMatch(piece -> piece.segment().equals(row.id())))
                .count();
        assertThat((long) row.count()).as(row.id()).isEqualTo(through);
        assertThat(row.wires().size() + row.more()).isEqualTo(row.count());
      }
    }
  }

  @Test
  void drawsWhatIsWiredToWhatWhereThereIsNoLayout() {
    LoomRoom room =
        room(
            """
            {"format": 1, "sketch": true, "wires": {
              "W1": {"from": "R1:1", "to": "S1"}, "W2": {"from": "S1", "to": "R2:1"},
              "W3": {"from": "R1:2", "to": "R2:2"}, "W4": {"from": "R1:3", "to": "R2:3"},
              "W5": {"from": "R1:4", "to": "R1:5"}}}
            """);
    assertThat(room.figures()).hasSize(1);
    assertThat(room.figures().get(0).drawing().lines())
        .extracting(Drawing.Line::title)
        .containsExactlyInAnyOrder(
            "R1 – S1, 1 wire", "S1 – R2, 1 wire", "R1 – R2, 2 wires", "R1 – R1, 1 wire");
    assertThat(room.figures().get(0).note()).startsWith("The harness has no layout");
  }

  @Test
  void saysThatThereIsNothingToDraw() {
    assertThat(room("{\"format\": 1}").figures()).isEmpty();
  }

  @Test
  void namesSegmentsThatLackAnEnd() {
    LoomRoom room =
        room(
            layout(
                "\"s1\": {\"from\": \"a\", \"to\": \"b\", \"lengthMm\": 100}",
                "\"s2\": {\"from\": \"b\", \"lengthMm\": 100}"));
    assertThat(room.notes()).containsExactly("Not drawn, as an end of it is not given: s2.");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void neverLaysALabelOnAnother(int seed) {
    LoomRoom room = room(anyLayout(new Random(seed), 20 + 10 * seed));
    assertThat(room.figures()).isNotEmpty();
    room.figures().forEach(figure -> assertApart(figure.drawing()));
  }

  @Test
  void neverLaysALabelOnAnotherInTheSample() {
    sample().figures().forEach(figure -> assertApart(figure.drawing()));
  }

  @Test
  void findsRoomForFiftyLabelsAtOnePlace() {
    StringBuilder segments = new StringBuilder();
    StringBuilder nodes = new StringBuilder("\"hub\": {\"xyzMm\": [0, 0, 0]}");
    for (int i = 0; i < 50; i++) {
      nodes.append(", \"n").append(i).append("\": {\"xyzMm\": [0, 0, 0]}");
      segments
          .append(i == 0 ? "" : ", ")
          .append("\"s" + i + "\": {\"from\": \"hub\", \"to\": \"n" + i + "\", \"lengthMm\": 100}");
    }
    LoomRoom room =
        room(
            "{\"format\": 1, \"layout\": {\"nodes\": {"
                + nodes
                + "}, \"segments\": {"
                + segments
                + "}}}");
    assertThat(room.figures()).hasSize(2);
    room.figures().forEach(figure -> assertApart(figure.drawing()));
  }

  private static void assertApart(Drawing drawing) {
    List<Box> boxes = new ArrayList<>();
    for (Drawing.Label label : drawing.labels()) {
      double width = label.lines().stream().mapToDouble(Labels::width).max().orElse(0);
      // Half a unit on each side for the rounding of the places.
      Box box =
          new Box(
              label.x() + 0.5, label.y() - 11.5, width - 1, Labels.LINE * label.lines().size() - 3);
      for (Box other : boxes) {
        assertThat(box.touches(other)).as(label + " on another").isFalse();
      }
      for (Drawing.Spot spot : drawing.spots()) {
        assertThat(box.touches(new Box(spot.x() - 4.0, spot.y() - 4.0, 8, 8)))
            .as(label + " on " + spot)
            .isFalse();
      }
      boxes.add(box);
      assertThat(box.left()).isGreaterThan(drawing.left());
      assertThat(box.right()).isLessThan(drawing.left() + drawing.width());
      assertThat(box.bottom()).isLessThan(drawing.top() + drawing.height());
    }
  }

  /** Trees with loops, parallel segments, segments from a node to itself, and islands. */
  private static String anyLayout(Random random, int nodes) {
    StringBuilder all = new StringBuilder();
    StringBuilder segments = new StringBuilder();
    int count = 0;
    for (int i = 0; i < nodes; i++) {
      all.append(i == 0 ? "" : ", ").append("\"node-" + i + "\": {}");
      int to = i == 0 || random.nextInt(12) == 0 ? i : random.nextInt(i);
      int twice = random.nextInt(9) == 0 ? 2 : 1;
      for (int k = 0; k < twice; k++) {
        segments
            .append(count == 0 ? "" : ", ")
            .append("\"s" + count++ + "\": {\"from\": \"node-" + i + "\", \"to\": \"node-" + to)
            .append("\", \"lengthMm\": " + (20 + random.nextInt(900)) + "}");
      }
    }
    return "{\"format\": 1, \"layout\": {\"nodes\": {"
        + all
        + "}, \"segments\": {"
        + segments
        + "}}}";
  }

  @Test
  void drawsALargeHarnessLoomByLoomAndSaysWhatItLeavesOut() {
    LoomRoom room = LoomRoom.of(SampleCar.ofWires(10_000).harnesses().get(0).facts());
    assertThat(room.figures()).hasSize(1);
    assertThat(room.figures().get(0).note())
        .contains("Only the 70 of 417 with most wires are drawn");
    assertThat(room.arms()).isGreaterThan(400);
    assertThat(room.list().count()).isEqualTo(room.arms());
  }
}
