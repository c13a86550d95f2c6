package org.tugtest.rule.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.rule.protection.Bench.all;
import static org.tugtest.rule.protection.Bench.wire;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class IsolatorLeavesLoadDumpTest {
  private static final String ALTERNATOR =
      """
      "ALT": {"elements": {
        "gen": {"kind": "source", "plus": "B+", "minus": "31", "generator": true},
        "field": {"kind": "load", "a": "B+", "b": "31", "ohms": 6, "use": "free"}}}
      """;

  private static String isolator(String more) {
    return "\"ISO\": {\"elements\": {\"pole\": {\"kind\": \"contact\", \"a\": \"1\", \"b\": \"2\","
        + " \"isolator\": true}"
        + more
        + "}}";
  }

  private static final String SURGE =
      ", \"surge\": {\"kind\": \"contact\", \"a\": \"2\", \"b\": \"3\", \"closedIn\": [\"%s\"]}";

  private static final String RESISTOR =
      "\"DUMP\": {\"elements\": {\"r\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\", \"ohms\":"
          + " 3%s}}}";

  private static String wires(String... more) {
    return all(
        wire("W1", "BAT:+", "ISO:1"),
        wire("W2", "ISO:2", "ALT:B+"),
        wire("W3", "ALT:31", "BAT:-"),
        more.length == 0 ? wire("W9", "X:1", "Y:1") : all(more));
  }

  private static Judged judged(String devices, String wires) {
    return Bench.judged(new IsolatorLeavesLoadDump(), devices, wires);
  }

  private static Judged withResistor(String position, String use) {
    return judged(
        all(ALTERNATOR, isolator(SURGE.formatted(position)), RESISTOR.formatted(use)),
        wires(wire("W4", "ISO:3", "DUMP:1"), wire("W5", "DUMP:2", "BAT:-")));
  }

  @Test
  void generatorThatIsThrownOffIsFoundThoughItsOwnFieldStays() {
    Judged judged = judged(all(ALTERNATOR, isolator("")), wires());
    assertThat(judged.messages())
        .containsExactly(
            "isolator contact ISO.pole parts generator ALT.gen from every battery while it turns,"
                + " and nothing on its side takes the surge");
    assertThat(judged.findings().get(0).subjects())
        .hasToString("[devices/ISO.pole, devices/ALT.gen]");
  }

  @Test
  void resistorThatComesOnAsTheIsolatorOpensTakesTheSurge() {
    assertThat(withResistor("off", ", \"use\": \"free\"").messages()).isEmpty();
    assertThat(withResistor("on", ", \"use\": \"free\"").messages())
        .as("it goes off with the isolator")
        .hasSize(1);
    assertThat(withResistor("off", "").messages()).as("a load that may be off").hasSize(1);
  }

  @Test
  void generatorThatStaysOnTheBatteryIsFine() {
    Judged judged =
        judged(
            all(ALTERNATOR, isolator("")),
            all(
                wire("W1", "BAT:+", "ALT:B+"),
                wire("W2", "BAT:+", "ISO:1"),
                wire("W3", "ALT:31", "BAT:-")));
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(1);
  }

  @Test
  void withoutAnIsolatorOrAGeneratorThereIsNothingToJudge() {
    assertThat(judged(ALTERNATOR, wire("W1", "BAT:+", "ALT:B+")).coverage().subjects()).isZero();
    assertThat(judged(isolator(""), wire("W1", "BAT:+", "ISO:1")).coverage().subjects()).isZero();
  }

  /** What is fed by its input turns nothing; a field that is named as such is no input. */
  @Test
  void aConverterTurnsNothing() {
    String converter =
        """
        "ALT": {"elements": {
          "in": {"kind": "load", "a": "24", "b": "31", "watts": 100%s},
          "gen": {"kind": "source", "plus": "B+", "minus": "31", "generator": true, "fedBy": "in"}}}
        """;
    assertThat(judged(all(converter.formatted(""), isolator("")), wires()).messages()).isEmpty();
    assertThat(
            judged(all(converter.formatted(", \"use\": \"free\""), isolator("")), wires())
                .messages())
        .hasSize(1);
  }
}
