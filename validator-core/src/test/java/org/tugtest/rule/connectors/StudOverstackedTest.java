package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.rule.Judged;

class StudOverstackedTest {
  private static Judged stacked(String pin, int wires, String terminal) {
    String list =
        IntStream.rangeClosed(1, wires)
            .mapToObj(
                i -> "\"W%d\": {\"from\": \"A:%d\", \"to\": \"E:1\"%s}".formatted(i, i, terminal))
            .collect(Collectors.joining(", "));
    return Judged.of(
        new StudOverstacked(),
        """
        {"format": 1, "sketch": true,
         "parts": {"terminals": {"twin": {"family": "stud-m8", "side": "ring", "areaMinMm2": 1,
                                          "areaMaxMm2": 9, "maxWires": 2}}},
         "devices": {"E": {"pins": {"1": %s}}}, "wires": {%s}}
        """
            .formatted(pin, list));
  }

  @ParameterizedTest
  @CsvSource({"3, 0", "4, 0", "5, 1"})
  void aStudTakesFour(int wires, int findings) {
    assertThat(stacked("{\"family\": \"stud-m8\"}", wires, "").findings()).hasSize(findings);
  }

  @Test
  void theSentenceNamesWiresAndLimit() {
    assertThat(stacked("{\"family\": \"stud-m8\"}", 5, "").messages())
        .containsExactly("E:1 holds 5 terminals (W1, W2, W3, W4, W5); it takes at most 4");
  }

  @ParameterizedTest
  @CsvSource({"2, 0", "3, 1"})
  void itsOwnNumberCounts(int wires, int findings) {
    assertThat(stacked("{\"family\": \"stud-m8\", \"maxTerminals\": 2}", wires, "").findings())
        .hasSize(findings);
  }

  @ParameterizedTest
  @CsvSource({"8, 0", "9, 1"})
  void wiresInOneTerminalCountOnce(int wires, int findings) {
    assertThat(stacked("{\"family\": \"stud-m8\"}", wires, ", \"toTerminal\": \"twin\"").findings())
        .hasSize(findings);
  }

  @Test
  void aPinForOneTerminalIsAnotherRulesMatter() {
    Judged judged = stacked("{\"family\": \"b6.3\"}", 5, "");
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().subjects()).isZero();
  }
}
