package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tugtest.rule.Judged;

class LoadUnfedTest {
  private static Judged judged(String states, String fitted) {
    return Judged.of(
        new LoadUnfed(),
        """
        {"format": 1,
         "parts": {"fuses": {"f5": {"ratingA": 5, "style": "blade-mini"}}},
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}}},
           "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
           "K1": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80},
                               "contact": {"kind": "contact", "a": "30", "b": "87", "coil": "coil", "rest": "open"}}},
           "LAMP-L": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}},
           "LAMP-R": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
         "fitted": {%s},
         "wires": {"W1": {"from": "BAT:+", "to": "FB:in"}, "W2": {"from": "FB:1", "to": "SW:1"},
                   "W3": {"from": "SW:2", "to": "K1:86"}, "W4": {"from": "K1:85", "to": "BAT:-"},
                   "W5": {"from": "BAT:+", "to": "K1:30"}, "W6": {"from": "K1:87", "to": "LAMP-L:1"},
                   "W7": {"from": "LAMP-L:1", "to": "LAMP-R:1"}, "W8": {"from": "LAMP-L:2", "to": "BAT:-"},
                   "W9": {"from": "LAMP-R:2", "to": "BAT:-"}}%s}
        """
            .formatted(fitted, states));
  }

  private static final String FUSE = "\"FB.f1\": \"f5\"";
  private static final String LAMPS = "\"on\": [\"LAMP-L\", \"LAMP-R\", \"K1.coil\"]";

  @Test
  void aLoadBehindAPulledRelayIsFed() {
    Judged judged =
        judged(", \"states\": {\"night\": {\"set\": {\"SW\": \"on\"}, " + LAMPS + "}}", FUSE);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(3);
  }

  @Test
  void aMissingFuseIsNamedAndWhatFollowsNamesItsCause() {
    Judged judged =
        judged(", \"states\": {\"night\": {\"set\": {\"SW\": \"on\"}, " + LAMPS + "}}", "");
    assertThat(judged.messages())
        .containsExactlyInAnyOrder(
            "K1.coil has no way to a source's plus in state night",
            "LAMP-L.led has no way to a source's plus in state night",
            "LAMP-R.led has no way to a source's plus in state night");
    assertThat(judged.findings().get(0).details()).containsExactly("FB.f1 has no fuse");
    assertThat(judged.findings())
        .filteredOn(finding -> finding.firstSubject().place().equals("devices/LAMP-R.led"))
        .allMatch(finding -> "load-unfed(devices/LAMP-L.led)".equals(finding.cause()));
  }

  @Test
  void statesThatDoNotWantALoadDoNotCountAndThoseThatDoAreListed() {
    Judged judged =
        judged(
            ", \"states\": {\"off\": {}, \"day\": {\"on\": [\"LAMP-L\"]}, \"dusk\": {\"on\":"
                + " [\"LAMP-L\"]}, \"night\": {\"set\": {\"SW\": \"on\"}, "
                + LAMPS
                + "}}",
            FUSE);
    assertThat(judged.messages())
        .containsExactly("LAMP-L.led has no way to a source's plus in states day and dusk");
    assertThat(judged.findings().get(0).details()).containsExactly("K1.contact is open");
  }

  @Test
  void withoutASourceNothingIsJudged() {
    Judged judged =
        Judged.of(
            new LoadUnfed(),
            """
            {"format": 1, "devices": {"L": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}}}
            """);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().notJudged()).isEqualTo(1);
  }

  @Test
  void aWayIntoAConnectorThatASketchOnlyNamesIsNotJudged() {
    Judged judged =
        Judged.of(
            new LoadUnfed(),
            """
            {"format": 1, "sketch": true,
             "devices": {
               "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
               "LAMP": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
             "wires": {"W1": {"from": "BAT:+", "to": "SW:1"}, "W2": {"from": "SW:2", "to": "LAMP:1"},
                       "W3": {"from": "LAMP:2", "to": "BAT:-"}}}
            """);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().missing().keySet())
        .containsExactly("its way leads into a connector of which the sketch says no more");
  }

  @Test
  void whatAFileThatCannotBeReadMayHoldIsNotSaidToBeMissing() {
    Judged judged =
        Judged.of(
            new LoadUnfed(),
            java.util.Map.of(
                Judged.ROOT,
                """
                {"format": 1, "uses": ["wires.json"],
                 "devices": {
                   "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
                   "LAMP": {"elements": {"led": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}}}
                """,
                "wires.json",
                "{\"format\": 1, \"wires\": {"));
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.coverage().missing().keySet())
        .containsExactly("a file of this harness could not be read");
  }

  @Test
  void theSecondOfTwoFansInARowIsFedThroughTheFirst() {
    String text =
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "A": {"elements": {"it": {"kind": "load", "a": "1", "b": "2", "ohms": 1, "minV": 5}}},
           "B": {"elements": {"it": {"kind": "load", "a": "1", "b": "2", "ohms": 1, "minV": 5}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "A:1", "areaMm2": 1, "cutMm": 100},
                   "W2": {"from": "A:2", "to": "B:1", "areaMm2": 1, "cutMm": 100},
                   "W3": {"from": "B:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 100}},
         "states": {"run": {"on": [%s]}}}
        """;
    assertThat(Judged.of(new LoadUnfed(), text.formatted("\"A\", \"B\"")).findings()).isEmpty();
    assertThat(Judged.of(new LoadUnfed(), text.formatted("\"B\"")).messages())
        .containsExactly("B.it has no way to a source's plus in state run");
  }
}
