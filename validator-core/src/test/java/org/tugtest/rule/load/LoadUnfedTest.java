package org.tugtest.rule.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
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

  private static String relay(String id) {
    return """
    "%s": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 90},
                        "c": {"kind": "contact", "a": "30", "b": "87", "coil": "coil", "rest": "open"}}}
    """
        .formatted(id);
  }

  /** Each relay feeds the coil of the next and a lamp; the switch before the first stays open. */
  private static Judged chain(String first) {
    StringBuilder devices = new StringBuilder();
    StringBuilder wires = new StringBuilder();
    for (int i = 1; i <= 3; i++) {
      devices.append(", ").append(relay("K" + i));
      devices.append(
          ", \"L%1$d\": {\"elements\": {\"l\": {\"kind\": \"load\", \"a\": \"1\", \"b\": \"2\","
                  .formatted(i)
              + " \"amps\": 1}}}");
      wires.append(
          """
          , "A%1$d": {"from": "BAR", "to": "K%1$d:30"}, "B%1$d": {"from": "K%1$d:87", "to": "S%1$d"},
          "C%1$d": {"from": "S%1$d", "to": "L%1$d:1"}, "D%1$d": {"from": "L%1$d:2", "to": "BAT:-"},
          "E%1$d": {"from": "K%1$d:85", "to": "BAT:-"}
          """
              .formatted(i));
    }
    return Judged.of(
        new LoadUnfed(),
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "SW": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2"}}}%s},
         "splices": {"BAR": {}, "S1": {}, "S2": {}, "S3": {}},
         "wires": {"W1": {"from": "BAT:+", "to": "BAR"}, "W2": {"from": "BAR", "to": "SW:1"},
                   "W3": {"from": "%s", "to": "K1:86"}, "W4": {"from": "S1", "to": "K2:86"},
                   "W5": {"from": "S2", "to": "K3:86"}%s},
         "states": {"run": {"on": ["K1", "K2", "K3", "L1", "L2", "L3"]}}}
        """
            .formatted(devices, first, wires));
  }

  private static Map<String, String> causes(Judged judged) {
    Map<String, String> causes = new TreeMap<>();
    judged
        .findings()
        .forEach(each -> causes.put(each.firstSubject().id(), String.valueOf(each.cause())));
    return causes;
  }

  @Test
  void whatARelayFeedsFollowsFromItsCoil() {
    Judged judged = chain("SW:2");
    assertThat(causes(judged))
        .containsEntry("K1.coil", "null")
        .containsEntry("K2.coil", "load-unfed(devices/K1.coil)")
        .containsEntry("K3.coil", "load-unfed(devices/K2.coil)")
        .containsEntry("L1.l", "load-unfed(devices/K2.coil)")
        .containsEntry("L2.l", "load-unfed(devices/K3.coil)")
        .containsEntry("L3.l", "load-unfed(devices/K3.coil)");
    assertThat(judged.findings().get(0).details()).containsExactly("SW.c is open");
  }

  /** Relays that wait for each other: no finding follows from itself. */
  @Test
  void relaysInARingAreNoCauseOfThemselves() {
    Map<String, String> causes = causes(chain("S3"));
    assertThat(causes).hasSize(6);
    for (String start : causes.keySet()) {
      String at = start;
      for (int step = 0; step < 7 && at != null; step++) {
        String cause = causes.get(at);
        at = cause == null || cause.equals("null") ? null : cause.replaceAll(".*/|\\)", "");
      }
      assertThat(at).as("causes of %s", start).isNull();
    }
  }

  /** A contact that leads nowhere is not what stops it. */
  @Test
  void onlyContactsThatLeadToTheSourceAreNamed() {
    String car =
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "SW": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2"}}},
           "HORN": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2"}}},
           "LAMP": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
         "splices": {"S": {}},
         "wires": {%s"W2": {"from": "SW:2", "to": "S"}, "W3": {"from": "S", "to": "LAMP:1"},
                   "W4": {"from": "LAMP:2", "to": "BAT:-"}, "W5": {"from": "S", "to": "HORN:1"}},
         "states": {"on": {"on": ["LAMP"]}}}
        """;
    String fed = "\"W1\": {\"from\": \"BAT:+\", \"to\": \"SW:1\"}, ";
    assertThat(Judged.of(new LoadUnfed(), car.formatted(fed)).findings().get(0).details())
        .containsExactly("SW.c is open");
    assertThat(Judged.of(new LoadUnfed(), car.formatted("")).findings().get(0).details()).isEmpty();
  }
}
