package org.tugtest.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WaiverRemovalTest {
  private static final String FILE =
      """
      {
        "format": 1,
        "waivers": {
          "a": {"rule": "earth-single", "at": "wires/W1", "reason": "bench rig only"},
          "b": {"rule": "earth-single", "at": "wires/W2", "reason": "bench rig only"}
        }
      }
      """;

  @Test
  void refusesABrokenFile() {
    assertThat(WaiverRemoval.remove("a.json", "{", List.of("a")))
        .isInstanceOf(TidyResult.Refused.class);
  }

  @Test
  void passesOverIdsThatAreNotThere() {
    assertThat(WaiverRemoval.remove("a.json", FILE, List.of("z")))
        .isEqualTo(new TidyResult.Tidied(FILE, false));
    assertThat(WaiverRemoval.remove("a.json", "{\n  \"format\": 1\n}\n", List.of("z")))
        .isEqualTo(new TidyResult.Tidied("{\n  \"format\": 1\n}\n", false));
  }

  @Test
  void takesOneOut() {
    assertThat(WaiverRemoval.remove("a.json", FILE, List.of("a", "a", "z")))
        .isEqualTo(new TidyResult.Tidied(FILE.replaceAll("(?m)^ +\"a\".*\n", ""), true));
  }

  @Test
  void takesTheSectionOutWithTheLast() {
    assertThat(WaiverRemoval.remove("a.json", "\uFEFF" + FILE, List.of("b", "a")))
        .isEqualTo(new TidyResult.Tidied("{\n  \"format\": 1\n}\n", true));
  }
}
