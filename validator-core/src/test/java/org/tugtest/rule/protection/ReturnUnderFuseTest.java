package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.rule.protection.Bench.all;
import static org.tugtest.rule.protection.Bench.fuse;
import static org.tugtest.rule.protection.Bench.wire;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.rule.Judged;

class ReturnUnderFuseTest {
  private static String load(String id) {
    return "\"%s\": {\"elements\": {\"m\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\"}}}"
        .formatted(id);
  }

  private static Judged judged(String devices, String wires, String... more) {
    return Bench.judged(new ReturnUnderFuse(), devices, wires, more);
  }

  private static Judged earthOf(double areaMm2) {
    return judged(
        all(fuse("FB", 30), load("FAN")),
        all(
            wire("W1", "BAT:+", "FB:in", 25),
            wire("W2", "FB:1", "FAN:1", 4),
            wire("W3", "FAN:2", "BAT:-", areaMm2)));
  }

  @Test
  void earthAsThickAsTheFeedIsFine() {
    assertThat(earthOf(4).messages()).isEmpty();
    assertThat(earthOf(4).coverage().judged()).isEqualTo(1);
    assertThat(earthOf(4).coverage().subjects()).isEqualTo(1);
  }

  @Test
  void thinEarthIsFoundWithItsLoadAndFuse() {
    Judged judged = earthOf(0.5);
    assertThat(judged.messages())
        .containsExactly(
            "wire W3 stands 12.4 A, but a fault in FAN.m can send 30 A through it, as FB.f (30 A)"
                + " allows");
    assertThat(judged.findings().get(0).level()).isEqualTo(Level.ERROR);
    assertThat(judged.subjects()).containsExactly("wires/W3");
    assertThat(judged.findings().get(0).remedy()).startsWith("make W3 at least 2.5 mm2");
  }

  private static String drawing(String id, double amps) {
    return load(id).replace("\"b\": \"2\"", "\"b\": \"2\", \"amps\": " + amps);
  }

  /** Two loads of so many amperes behind fuses of 10 A and 15 A, with one earth. */
  private static Judged common(String one, String other, double areaMm2, String... more) {
    return judged(
        all(fuse("F1", 10), fuse("F2", 15), one, other),
        all(
            wire("W1", "BAT:+", "F1:in", 25),
            wire("W2", "BAT:+", "F2:in", 25),
            wire("W3", "F1:1", "L:1", 2.5),
            wire("W4", "F2:1", "M:1", 2.5),
            wire("R1", "L:2", "S", 1.5),
            wire("R2", "M:2", "S", 1.5),
            wire("R3", "S", "BAT:-", areaMm2)),
        more);
  }

  @Test
  void commonEarthTakesOneFaultBesideWhatTheOthersDraw() {
    assertThat(common(drawing("L", 6), drawing("M", 9), 1).messages())
        .containsExactly(
            "wire R3 stands 19 A, but a fault in M.m can send 21 A through it, as F2.f (15 A)"
                + " allows, beside 6 A of others");
    assertThat(common(drawing("L", 2), drawing("M", 9), 1).messages())
        .as("15 A and 2 A; the fuses together let 25 A through")
        .isEmpty();
  }

  @Test
  void otherLoadsOfUnknownDrawCountOnlyWhereTheyMatter() {
    assertThat(common(load("L"), load("M"), 1).coverage().missing())
        .containsOnlyKeys("what flows through it is not known");
    assertThat(common(load("L"), load("M"), 2.5).coverage().judged()).isEqualTo(3);
    assertThat(common(load("L"), load("M"), 0.5).messages())
        .as("one fault alone is too much")
        .hasSize(1);
  }

  @Test
  void aCarWithManyFusesAndNoMainFuseHasNoFindingOnItsBatteryLead() {
    StringBuilder devices = new StringBuilder();
    StringBuilder wires = new StringBuilder();
    for (int i = 1; i <= 20; i++) {
      devices.append(i == 1 ? "" : ", ").append(fuse("F" + i, 15)).append(", ");
      devices.append(drawing("L" + i, 3));
      wires.append(i == 1 ? "" : ", ").append(wire("A" + i, "BAT:+", "F" + i + ":in", 25));
      wires.append(", ").append(wire("B" + i, "F" + i + ":1", "L" + i + ":1", 2.5));
      wires.append(", ").append(wire("C" + i, "L" + i + ":2", "GND", 2.5));
    }
    String common = ", " + wire("R", "GND", "BAT:-", 16);
    assertThat(judged(devices.toString(), wires + common).messages())
        .as("57 A and 15 A through 16 mm2; 300 A if all failed at once")
        .isEmpty();
    assertThat(judged(devices.toString(), wires + common.replace(": 16", ": 6")).messages())
        .hasSize(1);
  }

  @Test
  void aFuseInTheWayBackBoundsWhatIsBehindIt() {
    String home =
        "\"FR\": {\"elements\": {\"f\": {\"kind\": \"fuse\", \"a\": \"1\", \"b\": \"2\","
            + " \"ratingA\": 10}}}";
    String wires =
        all(
            wire("W1", "BAT:+", "FB:in", 25),
            wire("W2", "FB:1", "FAN:1", 4),
            wire("W3", "FAN:2", "FR:1", 0.5),
            wire("W4", "FR:2", "BAT:-", 0.5));
    assertThat(judged(all(fuse("FB", 30), load("FAN"), home), wires).messages()).isEmpty();
    String unrated = home.replace(", \"ratingA\": 10", "");
    String[] fitted = {
      "\"parts\": {\"fuses\": {\"x\": {\"style\": \"blade-mini\"}}}",
      "\"fitted\": {\"FR.f\": \"x\"}"
    };
    assertThat(
            judged(all(fuse("FB", 30), load("FAN"), unrated), wires, fitted).coverage().missing())
        .containsOnlyKeys("a fuse before it has no known rating");
    String greater = home.replace("10}", "20}");
    assertThat(judged(all(fuse("FB", 30), load("FAN"), greater), wires).messages().get(0))
        .isEqualTo(
            "wire W3 stands 12.4 A, but a fault in FAN.m can send 20 A through it, as FR.f (20 A)"
                + " allows");
  }

  @Test
  void loadsWithoutAFuseAreLeftOut() {
    Judged judged =
        judged(
            load("STR"), all(wire("W1", "BAT:+", "STR:1", 35), wire("W2", "STR:2", "BAT:-", 0.5)));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("only loads without a fuse return through it");
  }

  @Test
  void lowSideSwitchedWireIsAReturnWireAndASignalWireIsNone() {
    Judged judged =
        judged(
            all(
                fuse("FB", 30),
                load("INJ"),
                "\"ECU\": {\"elements\": {\"d\": {\"kind\": \"contact\", \"a\": \"o\", \"b\":"
                    + " \"g\"}}}",
                "\"SEN\": {\"pins\": {\"1\": {}}}"),
            all(
                wire("W1", "BAT:+", "FB:in", 25),
                wire("W2", "FB:1", "INJ:1", 4),
                wire("W3", "INJ:2", "ECU:o", 0.5),
                wire("W4", "ECU:g", "BAT:-", 4),
                wire("W5", "SEN:1", "ECU:g", 0.35)));
    assertThat(judged.subjects()).containsExactly("wires/W3");
    assertThat(judged.coverage().subjects()).isEqualTo(2);
  }

  @Test
  void heldOverloadIsAWarning() {
    Judged judged =
        judged(
            all(fuse("FB", 10), load("FAN")),
            all(
                wire("W1", "BAT:+", "FB:in", 25),
                wire("W2", "FB:1", "FAN:1", 4),
                wire("W3", "FAN:2", "BAT:-", 0.35)),
            "\"defaults\": {\"ambientC\": 36}");
    assertThat(judged.findings())
        .singleElement()
        .extracting(Finding::level)
        .isEqualTo(Level.WARNING);
    assertThat(judged.messages().get(0)).endsWith("(a fault in FAN.m can send it through)");
  }

  /** A converter whose minus shares the battery's return; its earth wire, input fuse and output. */
  private static Judged converter(double areaMm2, double inputA, double outputA) {
    return judged(
        all(
            fuse("FB", 100),
            fuse("FD", inputA),
            load("MOTOR"),
            load("LED"),
            """
            "DC": {"elements": {
              "in": {"kind": "load", "a": "in", "b": "0", "watts": 60},
              "out": {"kind": "source", "plus": "12", "minus": "0", "volts": 13, "maxA": %s,
                      "generator": true, "selfLimiting": true}}}
            """
                .formatted(outputA),
            "\"BAR\": {\"pins\": {\"1\": {}}}"),
        all(
            wire("W1", "BAT:+", "FB:in", 35),
            wire("W2", "FB:1", "MOTOR:1", 35),
            wire("W3", "MOTOR:2", "BAR:1", 35),
            wire("W4", "BAR:1", "BAT:-", 35),
            wire("W5", "BAT:+", "FD:in", 35),
            wire("W6", "FD:1", "DC:in", 4),
            wire("W7", "DC:0", "BAR:1", areaMm2),
            wire("W8", "DC:12", "LED:1", 4),
            wire("W9", "LED:2", "BAR:1", 4)));
  }

  @Test
  void toAConverterComesBackNoMoreThanItGivesOrItsInputTakes() {
    assertThat(converter(0.5, 5, 12).messages()).as("0.5 mm2 stands 12.4 A").isEmpty();
    assertThat(converter(0.5, 5, 13).messages())
        .containsExactly(
            "wire W7 stands 12.4 A, but faults in DC.in, MOTOR.m and LED.m can send 13 A through"
                + " it, as DC.out (limits itself to 13 A) allows");
    assertThat(converter(0.5, 15, 12).messages())
        .containsExactly(
            "wire W7 stands 12.4 A, but a fault in DC.in can send 15 A through"
                + " it, as FD.f (15 A) allows");
  }

  /** A drive that also gives back: what it gives returns to it inside, not by its minus wire. */
  @Test
  void whatADriveGivesBackDoesNotReturnThroughItsMinusWire() {
    String drive =
        """
        "INV": {"elements": {
          "motor": {"kind": "load", "a": "p", "b": "m", "watts": 500},
          "brake": {"kind": "source", "plus": "p", "minus": "m", "volts": 13, "maxA": 60,
                    "generator": true, "selfLimiting": true}}}
        """;
    for (double areaMm2 : new double[] {25, 10}) {
      Judged judged =
          judged(
              all(fuse("FB", 100), drive),
              all(
                  wire("W1", "BAT:+", "FB:in", 50),
                  wire("W2", "FB:1", "INV:p", 50),
                  wire("W3", "INV:m", "BAT:-", areaMm2)));
      if (areaMm2 == 25) {
        assertThat(judged.messages()).as("25 mm2 stands 100 A, and no 160 A").isEmpty();
      } else {
        assertThat(judged.messages())
            .singleElement()
            .asString()
            .endsWith("a fault in INV.motor can send 100 A through it, as FB.f (100 A) allows");
      }
    }
  }
}
