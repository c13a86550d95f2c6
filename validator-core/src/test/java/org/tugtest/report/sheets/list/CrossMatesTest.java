package org.tugtest.report.sheets.list;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CrossMatesTest {
  private static String lamps(String node) {
    return """
    {"format": 1, "sketch": true,
     "parts": {"housings": {"pin": {"side": "pin", "rows": [["1", "2"]]},
                            "skt": {"side": "socket", "rows": [["2", "1"]]}}},
     "devices": {
       "HORN": {"at": "nose", "ports": {"p": {"housing": "pin"}}, "elements": {
         "coil": {"kind": "load", "a": "1", "b": "2", "amps": 3}}},
       "LAMP": {"at": "%s", "ports": {"p": {"housing": "pin"}}, "elements": {
         "bulb": {"kind": "load", "a": "1", "b": "2", "amps": 2}}}},
     "connectors": {"X1": {"housing": "skt", "mates": "HORN"},
                    "X2": {"housing": "skt", "mates": "LAMP"}},
     "wires": {"W1": {"from": "X1:1", "to": "S1"}, "W2": {"from": "X1:2", "to": "S2"},
               "W3": {"from": "X2:1", "to": "S3"}, "W4": {"from": "X2:2", "to": "S2"}}}
    """
        .formatted(node);
  }

  @Test
  void saysWhatEachPinWouldMeet() {
    Made made = Made.of(new CrossMates(), lamps("nose"));
    assertThat(made.words("cross-mates.html"))
        .contains("can be plugged into each other&#39;s places");
    // cavity 1 meets pin 1 and cavity 2 pin 2, either way round
    assertThat(made.rows("cross-mates.csv"))
        .hasSize(4)
        .anyMatch(
            row ->
                row.get("plug").equals("X1 plugged into LAMP.p")
                    && row.get("contact").startsWith("X1:1 W1")
                    && row.get("would_meet").startsWith("LAMP:1"));
  }

  @Test
  void saysThatNothingCanBeExchanged() {
    assertThat(Made.of(new CrossMates(), lamps("tail")).words("cross-mates.html"))
        .contains("No two connectors can be exchanged")
        .doesNotContain("Would meet");
  }
}
