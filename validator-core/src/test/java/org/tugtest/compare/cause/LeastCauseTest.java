package org.tugtest.compare.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tugtest.check.RuleCatalog;
import org.tugtest.compare.Compared;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.change.Change;
import org.tugtest.finding.Finding;

class LeastCauseTest {
  /** Forty wires from one plug to another, all to be changed in one commit. */
  private static String loom(int shift, String colour, String more, String plug) {
    StringBuilder wires = new StringBuilder();
    for (int i = 1; i <= 40; i++) {
      int to = i == 17 ? i + shift : i;
      wires
          .append(i == 1 ? "" : ", ")
          .append(
              "\"W%d\": {\"from\": \"D:%d\", \"to\": \"%s:%d\", \"areaMm2\": 1, \"colour\": \"%s\"}"
                  .formatted(i, i, plug, to, colour));
    }
    StringBuilder pins = new StringBuilder();
    StringBuilder cavities = new StringBuilder();
    for (int i = 1; i <= 44; i++) {
      pins.append(i == 1 ? "" : ", ").append("\"%d\": {}".formatted(i));
      cavities.append(i == 1 ? "" : ", ").append("\"%d\"".formatted(i));
    }
    return """
    {"format": 1,
     "parts": {"housings": {"h": {"side": "socket", "rows": [[%s]]}}},
     "devices": {"D": {"pins": {%s}}},
     "connectors": {"%s": {"housing": "h", "parked": "capped"}},
     "wires": {%s%s}}
    """
        .formatted(cavities, pins, plug, wires, more);
  }

  private static Map<Finding, LeastCause> causes(String before, String after, int most) {
    Comparison comparison = Compared.json(before, after).comparison();
    return LeastCause.of(comparison, RuleCatalog.standard(), most);
  }

  private static List<String> of(Map<Finding, LeastCause> causes, String rule) {
    Optional<LeastCause> cause =
        causes.entrySet().stream()
            .filter(entry -> entry.getKey().rule().equals(rule))
            .map(Map.Entry::getValue)
            .findFirst();
    return cause.orElseThrow(() -> new AssertionError(causes)).changes().stream()
        .map(Change::sentence)
        .toList();
  }

  @Test
  void oneChangeOfMany() {
    Map<Finding, LeastCause> causes = causes(loom(0, "RD", "", "X1"), loom(1, "BU", "", "X1"), 100);
    assertThat(of(causes, "cavity-doubled")).containsExactly("W17 moves from X1:17 to X1:18.");
    assertThat(causes.values()).allMatch(LeastCause::least);
  }

  @Test
  void twoThatOnlyTogetherCauseIt() {
    String more =
        ", \"N1\": {\"from\": \"D:41\", \"to\": \"X1:41\", \"areaMm2\": 1, \"colour\": \"RD\"},"
            + " \"N2\": {\"from\": \"D:42\", \"to\": \"X1:41\", \"areaMm2\": 1, \"colour\":"
            + " \"RD\"}";
    Map<Finding, LeastCause> causes =
        causes(loom(0, "RD", "", "X1"), loom(0, "BU", more, "X1"), 100);
    assertThat(of(causes, "cavity-doubled"))
        .containsExactly(
            "Wire N1 from D:41 to X1:41 (1 mm2, RD) is new.",
            "Wire N2 from D:42 to X1:41 (1 mm2, RD) is new.");
  }

  @Test
  void newIdsCauseNothing() {
    Map<Finding, LeastCause> causes = causes(loom(0, "RD", "", "X1"), loom(1, "BU", "", "X9"), 100);
    assertThat(of(causes, "cavity-doubled")).containsExactly("W17 moves from X1:17 to X9:18.");
  }

  /** The doubled cavity is that of a new plug, without which no wire can move into it. */
  @Test
  void whatIsNeededComesAlong() {
    String before = loom(0, "RD", "", "X1");
    String after =
        loom(0, "BU", "", "X1")
            .replace("\"X1:5\"", "\"X2:5\"")
            .replace("\"X1:6\"", "\"X2:5\"")
            .replace(
                "\"X1\": {", "\"X2\": {\"housing\": \"h\", \"parked\": \"capped\"}, \"X1\": {");
    assertThat(of(causes(before, after, 100), "cavity-doubled"))
        .containsExactlyInAnyOrder(
            "Connector X2 (h) is new.",
            "W5 moves from X1:5 to X2:5.",
            "W6 moves from X1:6 to X2:5.");
  }

  @Test
  void trialsAreBounded() {
    Map<Finding, LeastCause> causes = causes(loom(0, "RD", "", "X1"), loom(1, "BU", "", "X1"), 3);
    assertThat(causes.values()).allMatch(cause -> !cause.changes().isEmpty());
  }

  @Test
  void nothingNewHasNoCause() {
    assertThat(causes(loom(1, "RD", "", "X1"), loom(1, "BU", "", "X1"), 100)).isEmpty();
  }
}
