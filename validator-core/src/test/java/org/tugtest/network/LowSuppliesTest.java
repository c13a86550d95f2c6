package org.tugtest.network;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.model.Element;

class LowSuppliesTest {
  private static String source(String id, double volts) {
    return "\"%s\": {\"elements\": {\"s\": {\"kind\": \"source\", \"plus\": \"+\", \"minus\": \"-\", \"volts\": %s}}}"
        .formatted(id, volts);
  }

  private static String load(String id) {
    return "\"%s\": {\"elements\": {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\"}}}"
        .formatted(id);
  }

  private static String wire(String id, String from, String to) {
    return "\"%s\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(id, from, to);
  }

  /** What the load L is made for in a harness of 12 V. */
  private static double of(String devices, String... wires) {
    Built built =
        Built.of(
            "\"devices\": {" + devices + ", " + load("L") + "}",
            "\"wires\": {" + String.join(", ", wires) + "}");
    Edge.OfElement load =
        built.network().edges().stream()
            .filter(
                edge -> edge instanceof Edge.OfElement in && in.element() instanceof Element.Load)
            .map(Edge.OfElement.class::cast)
            .findFirst()
            .orElseThrow();
    return LowSupplies.of(built.network(), 12).nominalV(load);
  }

  @Test
  void aLoadOnALowSourceAloneIsMadeForItsVolts() {
    String five = source("B", 12) + ", " + source("E", 5);
    String[] wires = {wire("W1", "E:+", "L:1"), wire("W2", "L:2", "E:-"), wire("W3", "E:-", "B:-")};
    assertThat(of(five, wires)).isEqualTo(5);
    assertThat(of(source("B", 12) + ", " + source("E", 8.9), wires)).isEqualTo(8.9);
    assertThat(of(source("B", 12) + ", " + source("E", 9), wires))
        .as("75 % of nominal is a flat battery")
        .isEqualTo(12);
  }

  @Test
  void aLoadOnBothIsMadeForNominal() {
    assertThat(
            of(
                source("B", 12) + ", " + source("E", 5),
                wire("W1", "E:+", "L:1"),
                wire("W2", "L:2", "E:-"),
                wire("W3", "E:-", "B:-"),
                wire("W4", "B:+", "L:1")))
        .isEqualTo(12);
  }

  @Test
  void batteriesInARowMakeNominalTogether() {
    String two = source("B1", 6) + ", " + source("B2", 6);
    String[] ends = {wire("J", "B1:+", "B2:-"), wire("W2", "L:2", "B1:-")};
    assertThat(of(two, ends[0], ends[1], wire("W1", "B2:+", "L:1"))).isEqualTo(12);
    assertThat(of(two, ends[0], ends[1], wire("W1", "B1:+", "L:1")))
        .as("on the tap between them")
        .isEqualTo(6);
  }

  @Test
  void aHarnessWithoutSourcesIsMadeForNominal() {
    assertThat(of(load("M"), wire("W1", "L:1", "M:1"))).isEqualTo(12);
  }
}
