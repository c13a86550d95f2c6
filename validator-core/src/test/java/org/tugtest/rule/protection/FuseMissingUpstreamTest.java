package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.rule.protection.Bench.LAMP;
import static org.tugtest.rule.protection.Bench.all;
import static org.tugtest.rule.protection.Bench.fuse;
import static org.tugtest.rule.protection.Bench.wire;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.rule.Judged;

class FuseMissingUpstreamTest {
  private static Judged judged(String devices, String wires, String... more) {
    return Bench.judged(new FuseMissingUpstream(), devices, wires, more);
  }

  @Test
  void loadBehindAFuseIsFine() {
    Judged judged =
        judged(
            all(fuse("FB", 10), LAMP),
            all(wire("W1", "BAT:+", "FB:in"), wire("W2", "FB:1", "LAMP:1")));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(3);
    assertThat(judged.coverage().missing()).isEmpty();
  }

  @Test
  void unfusedLoadIsFoundWithItsWayAndFollowsFromItsWire() {
    Judged judged =
        judged(
            all(
                LAMP,
                "\"SW\": {\"elements\": {\"c\": {\"kind\": \"contact\", \"a\": \"1\", \"b\":"
                    + " \"2\"}}}"),
            all(
                wire("W1", "BAT:+", "SW:1"),
                wire("W2", "SW:2", "LAMP:1"),
                wire("W3", "LAMP:2", "BAT:-")));
    assertThat(judged.messages())
        .containsExactly(
            "wire W1 can be reached from BAT.cell without a fuse",
            "wire W2 can be reached from BAT.cell without a fuse",
            "load LAMP.bulb can be reached from BAT.cell without a fuse");
    List<Finding> findings = judged.findings();
    assertThat(findings.get(0).cause()).isNull();
    assertThat(findings.get(1).cause()).isEqualTo(findings.get(0).identity());
    assertThat(findings.get(2).cause()).isEqualTo(findings.get(0).identity());
    assertThat(findings.get(2).details())
        .containsExactly("BAT:+ -W1- SW:1 -SW.c- SW:2 -W2- LAMP:1");
    assertThat(findings.get(0).remedy()).contains("put a fuse into W1 close to BAT.cell");
    assertThat(findings.get(0).remedy())
        .as("the greatest fuse that 1 mm2 allows")
        .endsWith("; at most 15 A for what W1 stands");
    assertThat(findings.get(2).remedy()).contains("W1");
  }

  @Test
  void wireRoundAFuseIsFoundAndWhatLiesBeforeTheFuseIsNot() {
    Judged judged =
        judged(
            all(fuse("FB", 10), LAMP),
            all(
                wire("W1", "BAT:+", "S"),
                wire("W2", "S", "FB:in"),
                wire("W3", "FB:1", "LAMP:1"),
                wire("W4", "S", "LAMP:2")));
    assertThat(judged.subjects()).containsExactly("wires/W4", "devices/LAMP.bulb");
  }

  @Test
  void wireParallelToAFuseLeavesAllBehindItUnfused() {
    Judged judged =
        judged(
            all(fuse("FB", 10), LAMP),
            all(
                wire("W1", "BAT:+", "FB:in"),
                wire("W2", "FB:in", "FB:1"),
                wire("W3", "FB:1", "LAMP:1")));
    assertThat(judged.subjects()).contains("wires/W3", "devices/LAMP.bulb");
  }

  @Test
  void emptyFuseWayIsOpen() {
    assertThat(
            judged(
                    all(
                        "\"FB\": {\"elements\": {\"f\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\":"
                            + " \"1\"}}}",
                        LAMP),
                    all(wire("W1", "FB:in", "BAT:+"), wire("W2", "FB:1", "LAMP:1")))
                .coverage()
                .missing())
        .containsOnlyKeys("no source leads to it");
  }

  @Test
  void changeOverDoesNotLeadRoundTheFuse() {
    String device =
        """
        "SW": {"positions": ["batt", "ext"], "elements": {
          "x": {"kind": "contact", "a": "in", "b": "out", "closedIn": ["batt"]},
          "y": {"kind": "contact", "a": "out", "b": "load", "closedIn": ["ext"]}}}
        """;
    assertThat(
            judged(
                    all(LAMP, device),
                    all(wire("W1", "BAT:+", "SW:in"), wire("W2", "SW:load", "LAMP:1")))
                .subjects())
        .containsExactly("wires/W1");
  }

  @Test
  void selfLimitingSourceProtectsItselfAndItsOwnLoads() {
    String supply =
        """
        "PSU": {"elements": {
          "out": {"kind": "source", "plus": "+", "minus": "-", "volts": 5, "selfLimiting": true%s},
          "bleed": {"kind": "load", "a": "+", "b": "-", "ohms": 100, "use": "free"}}}
        """;
    assertThat(
            judged(all(LAMP, supply.formatted(", \"maxA\": 2")), wire("W1", "PSU:+", "LAMP:1"))
                .messages())
        .isEmpty();
    assertThat(judged(all(LAMP, supply.formatted("")), wire("W1", "PSU:+", "LAMP:1")).subjects())
        .containsExactly("wires/W1", "devices/LAMP.bulb", "devices/PSU.bleed");
  }

  @Test
  void shortIsNotToldAsUnfusedWires() {
    Judged judged =
        judged(
            all(fuse("FB", 10), LAMP),
            all(
                wire("W1", "BAT:+", "FB:in"),
                wire("W2", "FB:1", "LAMP:1"),
                wire("W3", "LAMP:2", "BAT:-"),
                wire("W4", "BAT:+", "BAT:-")));
    assertThat(judged.messages()).isEmpty();
  }

  @Test
  void withoutASourceNothingIsJudged() {
    Judged judged =
        Judged.of(
            new FuseMissingUpstream(),
            "{\"format\": 1, \"sketch\": true, \"devices\": {"
                + LAMP
                + "}, \"wires\": {"
                + wire("W1", "A:1", "LAMP:1")
                + "}}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing()).containsOnlyKeys("no source is described");
    assertThat(judged.coverage().notJudged()).isEqualTo(2);
  }

  /** Two batteries in a row, the second with its fuse or without. */
  private static Judged inARow(String first, String last) {
    return Judged.of(
        new FuseMissingUpstream(),
        """
        {"format": 1, "sketch": true,
         "devices": {
           "A": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "B": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": 10}}},
           "LED": {"elements": {"it": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
         "wires": {"W1": {"from": "A:+", "to": "B:-", "areaMm2": 16, "cutMm": 200},
                   "W2": {"from": "B:+", "to": "%s", "areaMm2": 1, "cutMm": 200},
                   "W3": {"from": "%s", "to": "LED:1", "areaMm2": 1, "cutMm": 200},
                   "W4": {"from": "LED:2", "to": "A:-", "areaMm2": 1, "cutMm": 200}}}
        """
            .formatted(first, last));
  }

  @Test
  void theLinkBetweenTwoBatteriesInARowLeadsToTheFuseBehindTheLast() {
    assertThat(inARow("FB:in", "FB:1").messages()).isEmpty();
    assertThat(inARow("LED:1", "B:+").messages())
        .contains("wire W2 can be reached from B.cell without a fuse")
        .doesNotContain("wire W1 can be reached from A.cell without a fuse");
  }

  /** A drive that gives back limits what it gives, not what the battery gives to it. */
  @Test
  void aLoadBesideASelfLimitingSourceIsNotProtectedFromABattery() {
    String drive =
        """
        "INV": {"elements": {
          "brake": {"kind": "source", "plus": "+", "minus": "-", "volts": 13, "maxA": 60,
                    "generator": true, "selfLimiting": true},
          "motor": {"kind": "load", "a": "+", "b": "-", "watts": 500},
          "bleed": {"kind": "load", "a": "+", "b": "-", "ohms": 100, "use": "free"}}}
        """;
    assertThat(judged(drive, wire("W1", "BAT:+", "INV:+")).subjects())
        .containsExactly("wires/W1", "devices/INV.motor");
    assertThat(
            judged(
                    all(fuse("FB", 10), drive),
                    all(wire("W1", "BAT:+", "FB:in"), wire("W2", "FB:1", "INV:+")))
                .subjects())
        .isEmpty();
  }
}
