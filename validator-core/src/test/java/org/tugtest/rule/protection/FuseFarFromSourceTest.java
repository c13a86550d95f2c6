package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.rule.protection.Bench.LAMP;
import static org.tugtest.rule.protection.Bench.all;
import static org.tugtest.rule.protection.Bench.fuse;
import static org.tugtest.rule.protection.Bench.wire;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class FuseFarFromSourceTest {
  private static Judged judged(String devices, String wires, String... more) {
    return Bench.judged(new FuseFarFromSource(), devices, wires, more);
  }

  private static String wireOf(String id, String from, String to, double mm) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": 16, \"cutMm\": %s}"
        .formatted(id, from, to, mm);
  }

  private static List<Finding> fromBattery(double mm, String... more) {
    return judged(fuse("FB", 30), wireOf("W1", "BAT:+", "FB:in", mm), more).findings();
  }

  private static List<Finding> fromGenerator(double mm, boolean covered, String... more) {
    String devices =
        "\"ALT\": {\"at\": \"a\", \"elements\": {\"gen\": {\"kind\": \"source\", \"plus\": \"B+\","
            + " \"minus\": \"31\", \"generator\": true%s}}},"
                .formatted(more.length == 0 ? "" : more[0])
            + " \"FA\": {\"at\": \"b\", \"elements\": {\"f\": {\"kind\": \"fuse\", \"a\": \"in\","
            + " \"b\": \"1\", \"ratingA\": 80}}}";
    return judged(
            devices,
            wireOf("W1", "ALT:B+", "FA:in", mm),
            "\"parts\": {\"coverings\": {\"c\": {\"kind\": \"split-conduit\"}}}",
            "\"layout\": {\"nodes\": {\"a\": {}, \"b\": {}}, \"segments\": {\"s\": {\"from\":"
                + " \"a\", \"to\": \"b\", \"lengthMm\": 100"
                + (covered ? ", \"coverings\": [\"c\"]" : "")
                + "}}}")
        .findings();
  }

  @Test
  void fromABatteryThePassIsAt1830() {
    assertThat(fromBattery(1829)).isEmpty();
    assertThat(fromBattery(1830)).isEmpty();
    Finding finding = fromBattery(1831).get(0);
    assertThat(finding.level()).isEqualTo(Level.ERROR);
    assertThat(finding.message())
        .isEqualTo(
            "fuse FB.f stands 1831 mm of wire from BAT.cell; at most 1830 mm may be without a"
                + " fuse");
    assertThat(finding.subjects()).hasToString("[wires/W1, devices/FB.f, devices/BAT.cell]");
    assertThat(finding.remedy()).startsWith("put a fuse into W1 close to BAT:+");
  }

  @Test
  void fromABareGeneratorLeadTheFirstFigureWarnsAndTheSecondIsAnError() {
    assertThat(fromGenerator(178, false)).isEmpty();
    assertThat(fromGenerator(179, false)).extracting(Finding::level).containsExactly(Level.WARNING);
    assertThat(fromGenerator(1016, false))
        .extracting(Finding::level)
        .containsExactly(Level.WARNING);
    assertThat(fromGenerator(1017, false)).extracting(Finding::level).containsExactly(Level.ERROR);
    assertThat(fromGenerator(1017, false).get(0).remedy()).contains("selfLimiting");
  }

  @Test
  void fromACoveredGeneratorLeadMoreIsAllowed() {
    assertThat(fromGenerator(1016, true)).isEmpty();
    assertThat(fromGenerator(1017, true)).extracting(Finding::level).containsExactly(Level.WARNING);
    assertThat(fromGenerator(1831, true)).extracting(Finding::level).containsExactly(Level.ERROR);
  }

  @Test
  void generatorThatLimitsItselfIsNoSubject() {
    assertThat(fromGenerator(5000, false, ", \"selfLimiting\": true, \"maxA\": 80")).isEmpty();
  }

  @Test
  void wiresInARowAddUpAndTheShortestWayCounts() {
    Judged row =
        judged(
            fuse("FB", 30), all(wireOf("W1", "BAT:+", "S", 1000), wireOf("W2", "S", "FB:in", 900)));
    assertThat(row.messages().get(0)).contains("stands 1900 mm");
    assertThat(row.findings().get(0).subjects()).extracting("place").contains("wires/W2");
    Judged both =
        judged(
            fuse("FB", 30),
            all(wireOf("W1", "BAT:+", "FB:in", 4000), wireOf("W2", "BAT:+", "FB:in", 900)));
    assertThat(both.messages()).isEmpty();
  }

  @Test
  void fusesOfOneBoxAreOneFinding() {
    String box =
        "\"FB\": {\"elements\": {\"f1\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"1\","
            + " \"ratingA\": 5}, \"f2\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"2\","
            + " \"ratingA\": 5}}}";
    Judged judged = judged(box, wireOf("W1", "BAT:+", "FB:in", 3000));
    assertThat(judged.messages())
        .containsExactly(
            "fuses FB.f1 and FB.f2 stand 3000 mm of wire from BAT.cell; at most 1830 mm may be"
                + " without a fuse");
    assertThat(judged.coverage().judged()).isEqualTo(2);
  }

  @Test
  void feedOfTheCrankingMotorIsExempt() {
    String starter =
        "\"STR\": {\"elements\": {\"m\": {\"kind\": \"load\", \"a\": \"30\", \"b\": \"31\", %s}}}";
    String wires = all(wireOf("W1", "BAT:+", "STR:30", 2500), wireOf("W2", "STR:30", "FB:in", 500));
    assertThat(judged(all(fuse("FB", 30), starter.formatted("\"ohms\": 0.05")), wires).messages())
        .isEmpty();
    assertThat(judged(all(fuse("FB", 30), starter.formatted("\"amps\": 99")), wires).messages())
        .hasSize(1);
  }

  @Test
  void lengthThatIsNotKnownIsNotJudgedUnlessTheRestIsTooLongAnyway() {
    Judged unknown = judged(fuse("FB", 30), wire("W1", "BAT:+", "FB:in"));
    assertThat(unknown.messages()).isEmpty();
    assertThat(unknown.coverage().missing()).containsOnlyKeys("a length before it is not known");
    Judged part =
        judged(fuse("FB", 30), all(wire("W1", "BAT:+", "S"), wireOf("W2", "S", "FB:in", 2000)));
    assertThat(part.messages()).hasSize(1);
  }

  @Test
  void coverThatIsNotKnownIsNotJudgedBetweenTheFigures() {
    String generator =
        "\"ALT\": {\"elements\": {\"gen\": {\"kind\": \"source\", \"plus\": \"B+\", \"minus\":"
            + " \"31\", \"generator\": true}}}";
    Judged judged = judged(all(generator, fuse("FA", 80)), wireOf("W1", "ALT:B+", "FA:in", 500));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("whether wires before it are covered is not known");
    assertThat(
            judged(all(generator, fuse("FA", 80)), wireOf("W1", "ALT:B+", "FA:in", 1100))
                .findings())
        .extracting(Finding::level)
        .containsExactly(Level.WARNING);
  }

  @Test
  void teamsOwnFigureHolds() {
    assertThat(fromBattery(900, "\"limits\": {\"fuse-far-from-source\": {\"batteryMm\": 800}}"))
        .hasSize(1);
  }

  @Test
  void fuseBehindAnotherIsNoSubject() {
    Judged judged =
        judged(
            all(fuse("F1", 30), fuse("F2", 10), LAMP),
            all(wireOf("W1", "BAT:+", "F1:in", 100), wireOf("W2", "F1:1", "F2:in", 9000)));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().subjects()).isEqualTo(1);
  }
}
