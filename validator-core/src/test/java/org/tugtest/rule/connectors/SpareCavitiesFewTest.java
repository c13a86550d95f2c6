package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;
import org.tugtest.rule.Judged;

class SpareCavitiesFewTest {
  /** X1 of so many cavities, mated with X2, with so many wires on X1 from cavity 1 on. */
  private static Judged inline(int cavities, int wired, String more) {
    String rows =
        IntStream.rangeClosed(1, cavities)
            .mapToObj(i -> "\"" + i + "\"")
            .collect(Collectors.joining(", "));
    String wires =
        IntStream.rangeClosed(1, wired)
            .mapToObj("\"W%1$d\": {\"from\": \"X1:%1$d\", \"to\": \"S%1$d\"}"::formatted)
            .collect(Collectors.joining(", "));
    return Judged.of(
        new SpareCavitiesFew(),
        """
        {"format": 1, "loom": {"id": "nose"}, %s
         "parts": {"housings": {"h": {"side": "pin", "rows": [[%s]]}}},
         "connectors": {"X1": {"housing": "h", "mates": "X2"}, "X2": {}},
         "wires": {%s}}
        """
            .formatted(more, rows, wires));
  }

  @Test
  void tenPerCentIsEnough() {
    assertThat(inline(10, 9, "").messages()).isEmpty();
    assertThat(inline(10, 9, "").coverage().judged()).isEqualTo(1);
  }

  @Test
  void fewerIsANoteForTheLoom() {
    Judged judged = inline(11, 10, "");
    assertThat(judged.messages())
        .containsExactly(
            "1 connector of loom nose has fewer than 10 % of the cavities free: X1 and X2 (1 of"
                + " 11)");
    assertThat(judged.subjects()).containsExactly("looms/nose");
    assertThat(judged.findings().get(0).basis()).isEqualTo(Basis.COMMON_PRACTICE);
    assertThat(judged.findings().get(0).measured().actualShown()).isEqualTo("9.09");
  }

  @Test
  void theTeamMaySetTheFigureForAllOrForOne() {
    assertThat(inline(10, 9, "\"limits\": {\"spare-cavities-few\": {\"percent\": 11}},").messages())
        .hasSize(1);
    assertThat(
            inline(
                    2,
                    2,
                    """
                    "limits": {"spare-cavities-few": {"places": {"connectors/X1": {"percent": 0}}}},
                    """)
                .messages())
        .isEmpty();
  }

  @Test
  void aCavityIsFreeOnlyWhenItIsOnBothHalves() {
    Judged judged =
        Judged.of(
            new SpareCavitiesFew(),
            """
            {"format": 1, "parts": {"housings": {"h": {"side": "pin", "rows": [["1", "2", "3"]]},
                                                 "g": {"side": "socket", "rows": [["1", "2"]]}}},
             "connectors": {"X1": {"housing": "h", "mates": "X2"}, "X2": {"housing": "g"}},
             "splices": {"S1": {}},
             "wires": {"W1": {"from": "X1:1", "to": "S1"}, "W2": {"from": "X2:2", "to": "S1"}}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "1 connector outside any loom has fewer than 10 % of the cavities free: X1 and X2 (0"
                + " of 3)");
  }

  @Test
  void connectorsOnDevicesAreLeftOutAndParkedOnesCount() {
    Judged judged =
        Judged.of(
            new SpareCavitiesFew(),
            """
            {"format": 1, "parts": {"housings": {"h": {"side": "socket", "rows": [["1"]]}}},
             "devices": {"LAMP": {"ports": {"plug": {}}}},
             "connectors": {"X1": {"housing": "h", "mates": "LAMP"},
                            "X2": {"housing": "h", "parked": "capped"}},
             "wires": {"W1": {"from": "X1:1", "to": "X2:1"}}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "1 connector outside any loom has fewer than 10 % of the cavities free: X2 (0 of 1)");
    assertThat(judged.coverage().subjects()).isEqualTo(1);
  }

  @Test
  void withoutAHousingTheCavitiesAreNotKnown() {
    Judged judged =
        Judged.of(
            new SpareCavitiesFew(),
            "{\"format\": 1, \"connectors\": {\"X1\": {\"mates\": \"X2\"}, \"X2\": {}}}");
    assertThat(judged.coverage().missing()).containsOnlyKeys("its housing is not known");
  }
}
