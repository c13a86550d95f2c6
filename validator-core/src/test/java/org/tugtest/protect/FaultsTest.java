package org.tugtest.protect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.WorkingResistances;
import org.tugtest.rule.Judged;

class FaultsTest {
  private static Facts facts(String devices, String wires, String... more) {
    String root =
        "{\"format\": 1, \"sketch\": true, \"devices\": {%s}, \"wires\": {%s}%s}"
            .formatted(devices, wires, more.length == 0 ? "" : ", " + String.join(", ", more));
    return Judged.facts(Map.of(Judged.ROOT, root));
  }

  private static String battery(String more) {
    return "\"BAT\": {\"elements\": {\"cell\": {\"kind\": \"source\", \"plus\": \"+\", \"minus\":"
        + " \"-\", \"volts\": 12, \"ohms\": 0.01"
        + more
        + "}}}";
  }

  private static String alternator(String more) {
    return "\"ALT\": {\"elements\": {\"g\": {\"kind\": \"source\", \"plus\": \"B\", \"minus\":"
        + " \"E\", \"volts\": 14, \"ohms\": 0.02, \"generator\": true"
        + more
        + "}}}";
  }

  private static String fuse(String id, double ratingA) {
    return "\"%s\": {\"elements\": {\"f\": {\"kind\": \"fuse\", \"a\": \"i\", \"b\": \"o\", \"ratingA\": %s, \"style\": \"blade-mini\"}}}"
        .formatted(id, ratingA);
  }

  private static final String LAMP =
      "\"LAMP\": {\"elements\": {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", \"amps\":"
          + " 1}}}";

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": 1, \"cutMm\": 1000}"
        .formatted(id, from, to);
  }

  private static String all(String... things) {
    return String.join(", ", things);
  }

  private static Faults.Spot only(Facts facts) {
    return facts.faults().inLoads().get(0);
  }

  private static final String WAY =
      all(wire("W1", "BAT:+", "F:i"), wire("W2", "F:o", "LAMP:1"), wire("W3", "LAMP:2", "BAT:-"));

  /**
   * Three wires of 1 m, 1 mm²: 19.5 milliohm/m at 20 °C (IEC 60228 class 5), class 100 °C; a 10 A
   * blade of 7.7 milliohm; two crimps of 0.5 milliohm a wire, counted twice when worn.
   */
  @Test
  void theTwoCornersAreSumsOfTheWay() {
    Facts facts = facts(all(battery(""), fuse("F", 10), LAMP), WAY);
    double cold = 3 * 0.0195;
    double blade =
        facts
                .operating()
                .resistances()
                .fuseMilliohm(fuseEdge(facts, "F"), true)
                .orElseThrow()
                .value()
            / 1000;
    ShortCircuit most = facts.faults().greatest(only(facts)).orElseThrow();
    assertThat(most.amps()).isCloseTo(12 / (0.01 + cold + blade), Percentage.withPercentage(0.01));
    double hot = cold * (1 + 0.00393 * 80) + 6 * 2 * 0.0005;
    FaultCourse least = facts.faults().slowest(only(facts)).orElseThrow();
    assertThat(least.first().amps())
        .isCloseTo(12 / (0.01 + hot + blade), Percentage.withPercentage(0.01));
    assertThat(least.first().known()).isTrue();
    assertThat(least.first().basis()).isEqualTo(Basis.COMMON_PRACTICE);
    assertThat(least.dead()).isTrue();
    assertThat(least.openings()).hasSize(1);
    assertThat(least.openings().get(0).fuse().text()).isEqualTo("F.f");
  }

  private static Edge.OfElement fuseEdge(Facts facts, String device) {
    return facts.network().edges().stream()
        .filter(edge -> edge instanceof Edge.OfElement inside && inside.device().equals(device))
        .map(Edge.OfElement.class::cast)
        .findFirst()
        .orElseThrow();
  }

  /** A dense solve per fault, over the points themselves, on 50 random looms. */
  @Test
  void aDenseSolvePerFaultIsTheSweep() {
    int compared = 0;
    for (int seed = 0; seed < 50; seed++) {
      Facts facts = new RandomLoom(seed, true).facts();
      for (Faults.Spot spot : facts.faults().inLoads()) {
        double least = dense(facts, spot, FaultCorner.LEAST);
        double most = dense(facts, spot, FaultCorner.GREATEST);
        assertThat(facts.faults().slowest(spot).orElseThrow().first().amps())
            .as("seed %s %s", seed, spot.text())
            .isCloseTo(least, Percentage.withPercentage(0.01));
        assertThat(facts.faults().greatest(spot).orElseThrow().amps())
            .as("seed %s %s", seed, spot.text())
            .isCloseTo(most, Percentage.withPercentage(0.01));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(500);
  }

  private static double dense(Facts facts, Faults.Spot spot, FaultCorner corner) {
    Network network = facts.network();
    WorkingResistances working = facts.operating().resistances();
    FaultOhms ohms = new FaultOhms(facts.harness(), working, corner);
    int size = network.points().size();
    DMatrixRMaj matrix = new DMatrixRMaj(size, size);
    DMatrixRMaj amps = new DMatrixRMaj(size, 1);
    for (Edge edge : network.edges()) {
      int a = network.index(edge.a());
      int b = network.index(edge.b());
      double siemens = 0;
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Source source) {
        if (!source.generator() || corner == FaultCorner.GREATEST) {
          siemens = 1 / source.ohms();
          amps.add(a, 0, +source.volts() * siemens);
          amps.add(b, 0, -source.volts() * siemens);
        }
      } else if (!(edge instanceof Edge.OfElement inside)
          || inside.element() instanceof Element.Fuse) {
        siemens = 1 / ohms.of(edge).ohms();
      }
      add(matrix, a, b, siemens);
    }
    for (int i = 0; i < size; i++) {
      matrix.add(i, i, i == 0 ? 1 : 1e-12);
    }
    int from = network.index(spot.from());
    int to = network.index(spot.to());
    DMatrixRMaj unit = new DMatrixRMaj(size, 1);
    unit.set(from, 0, 1);
    unit.set(to, 0, -1);
    DMatrixRMaj open = solve(matrix, amps);
    DMatrixRMaj one = solve(matrix, unit);
    return (open.get(from, 0) - open.get(to, 0)) / (one.get(from, 0) - one.get(to, 0));
  }

  private static DMatrixRMaj solve(DMatrixRMaj matrix, DMatrixRMaj amps) {
    DMatrixRMaj volts = new DMatrixRMaj(amps.numRows, 1);
    assertThat(CommonOps_DDRM.solve(matrix, amps, volts)).isTrue();
    return volts;
  }

  private static void add(DMatrixRMaj matrix, int a, int b, double siemens) {
    matrix.add(a, a, siemens);
    matrix.add(b, b, siemens);
    matrix.add(a, b, -siemens);
    matrix.add(b, a, -siemens);
  }

  /**
   * A law: a longer wire never raises the current of a fault. (With a second source of other volts
   * it may: it then keeps current from the first.)
   */
  @Test
  void aLongerWireNeverRaisesAFault() {
    Random random = new Random(23);
    for (int seed = 100; seed < 120; seed++) {
      RandomLoom loom = new RandomLoom(seed, false);
      Map<String, Double> before = currents(loom.facts());
      int wire = random.nextInt(loom.cutMm.size());
      loom.cutMm.set(wire, loom.cutMm.get(wire) + 2500);
      Map<String, Double> after = currents(loom.facts());
      before.forEach(
          (spot, amps) ->
              assertThat(after.get(spot)).as(spot).isLessThanOrEqualTo(amps * (1 + 1e-9)));
    }
  }

  private static Map<String, Double> currents(Facts facts) {
    Map<String, Double> currents = new HashMap<>();
    for (Faults.Spot spot : facts.faults().inLoads()) {
      currents.put(
          spot.text() + " least", facts.faults().slowest(spot).orElseThrow().first().amps());
      currents.put(spot.text() + " most", facts.faults().greatest(spot).orElseThrow().amps());
    }
    return currents;
  }

  /** Two fuses side by side: the smaller opens, then the other carries all. */
  @Test
  void fusesSideBySideOpenOneAfterAnother() {
    Facts facts =
        facts(
            all(battery(""), fuse("F", 10), fuse("G", 15), LAMP),
            all(
                wire("W1", "BAT:+", "S"),
                wire("W2", "S", "F:i"),
                wire("W3", "S", "G:i"),
                wire("W4", "F:o", "T"),
                wire("W5", "G:o", "T"),
                wire("W6", "T", "LAMP:1"),
                wire("W7", "LAMP:2", "BAT:-")));
    FaultCourse course = facts.faults().slowest(only(facts)).orElseThrow();
    assertThat(course.openings())
        .extracting(opening -> opening.fuse().text())
        .containsExactly("F.f", "G.f");
    assertThat(course.openings().get(1).amps()).isGreaterThan(course.openings().get(0).amps());
    assertThat(course.openings().get(1).amps()).isLessThan(course.first().amps());
    assertThat(course.openings().get(1).atS()).isGreaterThan(course.openings().get(0).atS());
    assertThat(course.dead()).isTrue();
  }

  /** When the fuse towards the battery has opened, a current-limited alternator goes on. */
  @Test
  void anAlternatorWithoutAFuseGoesOnAtItsMost() {
    Facts facts =
        facts(
            all(battery(""), alternator(", \"maxA\": 30"), fuse("F", 10), LAMP),
            all(WAY, wire("W8", "ALT:B", "LAMP:1"), wire("W9", "ALT:E", "BAT:-")),
            "\"states\": {}");
    assertThat(facts.faults().slowest(only(facts)).orElseThrow().dead()).isTrue();
    ShortCircuit most = facts.faults().greatest(only(facts)).orElseThrow();
    assertThat(most.amps() - most.fuses().get(0).amps()).isCloseTo(30, within(1e-3));
    Facts alone =
        facts(
            all(alternator(", \"maxA\": 30"), fuse("F", 10), LAMP),
            all(wire("W8", "ALT:B", "LAMP:1"), wire("W3", "LAMP:2", "ALT:E")));
    FaultCourse lasting = alone.faults().slowest(only(alone)).orElseThrow();
    assertThat(lasting.lastingA()).isCloseTo(30, within(1e-3));
    assertThat(lasting.from()).extracting(Edge.OfElement::text).containsExactly("ALT.g");
  }

  /** Two batteries in a row: a short between the ends of both sees both. */
  @Test
  void batteriesInARowAddUp() {
    String second = battery("").replace("BAT", "BAT2");
    Facts facts =
        facts(
            all(battery(""), second, LAMP),
            all(
                wire("W1", "BAT:+", "BAT2:-"),
                wire("W2", "BAT2:+", "LAMP:1"),
                wire("W3", "LAMP:2", "BAT:-")));
    ShortCircuit most = facts.faults().greatest(only(facts)).orElseThrow();
    assertThat(most.amps()).isCloseTo(24 / (0.02 + 3 * 0.0195), Percentage.withPercentage(0.02));
  }

  /** The two throws of a change-over are never closed together, on whichever side they are. */
  @Test
  void aChangeOverFeedsThroughOneThrowAndReturnsThroughTheOther() {
    String motor =
        "\"REL\": {\"positions\": [\"rest\", \"run\"], \"elements\": {\"no\": {\"kind\":"
            + " \"contact\", \"a\": \"87\", \"b\": \"30\", \"closedIn\": [\"run\"]},\"nc\":"
            + " {\"kind\": \"contact\", \"a\": \"30\", \"b\": \"87a\", \"closedIn\": [\"rest\"]}}}";
    Facts facts =
        facts(
            all(battery(""), fuse("F", 10), motor, LAMP),
            all(
                wire("W1", "BAT:+", "F:i"),
                wire("W2", "F:o", "REL:87"),
                wire("W3", "REL:87a", "BAT:-"),
                wire("W4", "REL:30", "LAMP:1"),
                wire("W5", "LAMP:2", "BAT:-")));
    FaultCourse course = facts.faults().slowest(only(facts)).orElseThrow();
    double hot = 4 * 0.0195 * (1 + 0.00393 * 80) + 8 * 2 * 0.0005;
    double blade =
        facts
                .operating()
                .resistances()
                .fuseMilliohm(fuseEdge(facts, "F"), true)
                .orElseThrow()
                .value()
            / 1000;
    assertThat(course.first().amps())
        .isCloseTo(12 / (0.01 + hot + blade), Percentage.withPercentage(0.02));
  }

  /** Two switches in a row of which either feeds: each way is tried alone. */
  @Test
  void ofTwoWaysThroughContactsTheWorseCounts() {
    String switches =
        "\"SW\": {\"elements\": {\"c\": {\"kind\": \"contact\", \"a\": \"1\", \"b\":"
            + " \"2\"}}},\"SX\": {\"elements\": {\"c\": {\"kind\": \"contact\", \"a\": \"1\","
            + " \"b\": \"2\"}}}";
    Facts facts =
        facts(
            all(battery(""), switches, fuse("F", 5), fuse("G", 15), LAMP),
            all(
                wire("W1", "BAT:+", "F:i"),
                wire("W2", "F:o", "SW:1"),
                wire("W3", "SW:2", "LAMP:1"),
                wire("W4", "BAT:+", "G:i"),
                wire("W5", "G:o", "SX:1"),
                wire("W6", "SX:2", "S"),
                wire("W6b", "S", "LAMP:1").replace("1000", "9000"),
                wire("W7", "LAMP:2", "BAT:-")));
    FaultCourse course = facts.faults().slowest(only(facts)).orElseThrow();
    assertThat(course.first().fuses())
        .extracting(through -> through.fuse().text())
        .containsExactly("G.f");
    assertThat(facts.faults().greatest(only(facts)).orElseThrow().fuses())
        .extracting(through -> through.fuse().text())
        .containsExactly("F.f");
  }

  /** Behind a rectifier the field of a still alternator is not fed from outside. */
  @Test
  void aDiodeFeedsNothingBackwards() {
    String alternator =
        "\"ALT\": {\"pins\": {\"w\": {\"inside\": true}, \"B\": {}, \"E\": {}}, \"elements\":"
            + " {\"g\": {\"kind\": \"source\", \"plus\": \"w\", \"minus\": \"E\", \"volts\": 14,"
            + " \"ohms\": 0.02, \"generator\": true},\"d\": {\"kind\": \"diode\", \"a\": \"w\","
            + " \"b\": \"B\"},\"field\": {\"kind\": \"load\", \"a\": \"w\", \"b\": \"E\", \"amps\":"
            + " 1}}}";
    Facts facts =
        facts(
            all(battery(""), alternator, fuse("F", 10)),
            all(
                wire("W1", "BAT:+", "F:i"),
                wire("W2", "F:o", "ALT:B"),
                wire("W3", "ALT:E", "BAT:-")));
    assertThat(facts.faults().slowest(only(facts)).map(course -> course.first().amps()).orElse(0.0))
        .isCloseTo(0, within(1e-6));
    assertThat(facts.faults().greatest(only(facts)).orElseThrow().amps())
        .isCloseTo(14 / 0.02, Percentage.withPercentage(0.01));
    Faults.Spot outside = new Faults.Spot(null, org.tugtest.network.Point.pin("ALT", "B"), null);
    assertThat(facts.faults().greatest(outside).orElseThrow().amps()).isGreaterThan(300);
  }

  @Test
  void whatIsNotKnownIsTold() {
    Facts facts =
        facts(
            all(battery(""), fuse("F", 10), LAMP),
            WAY.replace("\"W2\": {", "\"W2\": {\"note\": \"x\", ")
                .replace(
                    "\"to\": \"LAMP:1\", \"areaMm2\": 1, \"cutMm\": 1000",
                    "\"to\": \"LAMP:1\", \"areaMm2\": 1"));
    assertThat(facts.faults().slowest(only(facts)).orElseThrow().first().missing())
        .isEqualTo("its length of W2");
  }

  /** A spare plug at the end of a feed is a dead end; the short is to the return beside it. */
  @Test
  void deadEndsAreShortedToTheReturnBesideThem() {
    Facts facts =
        facts(
            all(battery(""), fuse("F", 10), LAMP),
            all(
                WAY,
                wire("W4", "F:o", "X:1"),
                wire("W5", "X:2", "LAMP:2"),
                wire("W6", "F:o", "S")));
    List<Faults.Spot> ends = facts.faults().deadEnds();
    assertThat(ends).extracting(Faults.Spot::text).containsExactly("at X:1", "at S to the chassis");
    assertThat(ends.get(0).to()).hasToString("X:2");
    assertThat(ends.get(1).to()).isNull();
    assertThat(facts.faults().slowest(ends.get(0)).orElseThrow().first().amps())
        .isLessThan(facts.faults().slowest(ends.get(1)).orElseThrow().first().amps());
  }

  @Test
  void withoutSourcesThereIsNoFault() {
    Facts facts = facts(all(fuse("F", 10), LAMP), wire("W2", "F:o", "LAMP:1"));
    assertThat(facts.faults().inLoads()).isEmpty();
    assertThat(facts.faults().deadEnds()).isEmpty();
    assertThat(Judged.facts(Map.of(Judged.ROOT, "{\"format\": 1}")).faults().inLoads()).isEmpty();
  }
}
