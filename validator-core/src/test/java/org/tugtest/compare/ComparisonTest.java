package org.tugtest.compare;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ComparisonTest {
  static final String BASE =
      """
      {"format": 1, "title": "Work lamp",
       "parts": {
        "wires": {"w1": {"areaMm2": 1.0, "maxC": 125}, "w15": {"areaMm2": 1.5, "maxC": 125}},
        "fuses": {"mini-10": {"ratingA": 10}, "mini-15": {"ratingA": 15}},
        "housings": {
         "skt": {"side": "socket", "rows": [["1", "2", "3"]], "matesWith": ["pin"]},
         "pin": {"side": "pin", "rows": [["3", "2", "1"]]}}},
       "devices": {
        "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
        "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"},
                            "f2": {"kind": "fuse", "a": "in", "b": "2"}}},
        "SW": {"elements": {"c": {"kind": "contact", "a": "1", "b": "2"}}},
        "LAMP": {"ports": {"plug": {"housing": "pin"}},
                 "elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
       "fitted": {"FB.f1": "mini-10"},
       "connectors": {"X1": {"housing": "skt", "mates": "LAMP"}},
       "splices": {"S1": {}},
       "wires": {
        "W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 2.5, "cutMm": 150},
        "W2": {"from": "FB:1", "to": "SW:1", "part": "w1", "colour": "RD/WH"},
        "W3": {"from": "SW:2", "to": "X1:1", "part": "w1", "colour": "YE"},
        "W4": {"from": "X1:2", "to": "S1", "part": "w1", "colour": "BK"},
        "W5": {"from": "S1", "to": "BAT:-", "part": "w15", "colour": "BK"}},
       "states": {"on": {"set": {"SW": "on"}, "on": ["LAMP"]}}}
      """;

  private static Compared with(String... replace) {
    String after = BASE;
    for (int i = 0; i < replace.length; i += 2) {
      assertThat(after).contains(replace[i]);
      after = after.replace(replace[i], replace[i + 1]);
    }
    return Compared.json(BASE, after);
  }

  @Test
  void sameIsTheSame() {
    Compared same = with();
    assertThat(same.sentences()).isEmpty();
    assertThat(same.comparison().circuits().same()).isTrue();
    assertThat(same.comparison().findings().fresh()).isEmpty();
    assertThat(same.comparison().findings().resolved()).isEmpty();
  }

  @Test
  void rePinned() {
    Compared moved = with("\"to\": \"X1:1\"", "\"to\": \"X1:3\"");
    assertThat(moved.sentences()).containsExactly("W3 moves from X1:1 to X1:3.");
    assertThat(moved.nets())
        .containsExactly(
            "The net of LAMP:1 and SW:2 loses LAMP:1, by W3.",
            "The net of LAMP:1 and SW:2 gains LAMP:3, by W3.");
    assertThat(moved.comparison().circuits().same()).isFalse();
    assertThat(moved.comparison().circuits().elements()).isEmpty();
  }

  @Test
  void turnedRoundAndReorderedIsTheSame() {
    assertThat(
            with("\"from\": \"SW:2\", \"to\": \"X1:1\"", "\"from\": \"X1:1\", \"to\": \"SW:2\"")
                .sentences())
        .isEmpty();
  }

  @Test
  void renamedWireIsOneRenamedWire() {
    Compared renamed = with("\"W3\"", "\"W33\"");
    assertThat(renamed.sentences())
        .containsExactly("W3 is called W33 now (same ends, part and colour).");
    assertThat(renamed.comparison().circuits().same()).isTrue();
  }

  @Test
  void renamedConnectorAndSpliceMoveNoWire() {
    Compared renamed = with("\"X1\"", "\"X7\"", "X1:", "X7:", "\"S1\"", "\"S9\"");
    assertThat(renamed.sentences())
        .containsExactly(
            "X1 is called X7 now (in the same port).",
            "S1 is called S9 now (holds the same wires).");
    assertThat(renamed.comparison().circuits().same()).isTrue();
  }

  @Test
  void everyIdButThoseOfDevicesMayChange() {
    Compared renamed =
        with(
            "\"X1\"", "\"X7\"", "X1:", "X7:", "\"S1\"", "\"S9\"", "\"W1\"", "\"A1\"", "\"W2\"",
            "\"A2\"", "\"W3\"", "\"A3\"", "\"W4\"", "\"A4\"", "\"W5\"", "\"A5\"");
    assertThat(renamed.comparison().circuits().same()).isTrue();
    assertThat(renamed.renames()).hasSize(7);
    assertThat(renamed.sentences()).hasSize(7);
  }

  @Test
  void exchangedIdsAreNoRewrites() {
    Compared exchanged = with("\"W3\"", "\"tmp\"", "\"W1\"", "\"W3\"", "\"tmp\"", "\"W1\"");
    assertThat(exchanged.sentences())
        .containsExactly("W1 and W3 have each other's id (same ends, part and colour).");
    assertThat(exchanged.comparison().circuits().same()).isTrue();
  }

  @Test
  void deviceIsKnownByItsIdAlone() {
    Compared other = with("\"SW\"", "\"SW2\"", "SW:", "SW2:");
    assertThat(other.comparison().circuits().same()).isFalse();
    assertThat(other.sentences())
        .contains("Device SW is gone.", "Device SW2 is new.", "W2 moves from SW:1 to SW2:1.");
  }

  @Test
  void gaugeColourLengthAndFuse() {
    assertThat(
            with(
                    "\"W3\": {\"from\": \"SW:2\", \"to\": \"X1:1\", \"part\": \"w1\"",
                    "\"W3\": {\"from\": \"SW:2\", \"to\": \"X1:1\", \"part\": \"w15\"")
                .sentences())
        .containsExactly("W3 goes from 1 mm2 (w1) to 1.5 mm2 (w15).");
    assertThat(with("\"YE\"", "\"OG\"").sentences()).containsExactly("W3 goes from YE to OG.");
    assertThat(with("150", "400").sentences())
        .containsExactly("W1 is 250 mm longer (cutMm from 150 to 400 mm).");
    assertThat(with("\"FB.f1\": \"mini-10\"", "\"FB.f1\": \"mini-15\"").sentences())
        .containsExactly("Fuse FB.f1 goes from 10 A to 15 A (mini-10 to mini-15).");
    assertThat(with("\"YE\"", "\"OG\"").comparison().circuits().same()).isTrue();
  }

  @Test
  void emptiedFuseWayIsAChangeOfCircuits() {
    Compared emptied = with("\"FB.f1\": \"mini-10\"", "");
    assertThat(emptied.comparison().circuits().nets()).isEmpty();
    assertThat(emptied.comparison().circuits().elements())
        .extracting(change -> change.sentence())
        .containsExactly(
            "FB.f1 was a fuse between 1 and in and is an empty fuse way between 1 and in.");
    assertThat(emptied.sentences()).containsExactly("Fuse way FB.f1 loses fuse mini-10 of 10 A.");
  }

  @Test
  void policyHeadsTheList() {
    Compared policy =
        with(
            "\"SW\": \"on\"}, \"on\": [\"LAMP\"]",
            "\"SW\": \"on\"}, \"on\": []",
            "\"YE\"",
            "\"OG\"",
            "\"states\"",
            "\"limits\": {\"wire-repeated\": {\"level\": \"off\"}}, \"states\"");
    assertThat(policy.sentences())
        .containsExactly(
            "The limit of wire-repeated is new: switched off.",
            "State on: on goes from LAMP to none.",
            "W3 goes from YE to OG.");
    assertThat(policy.comparison().policy()).hasSize(2);
  }

  @Test
  void whatIsDemandedOrLetPassIsToldInFull() {
    assertThat(
            with(
                    "\"states\"",
                    """
                    "limits": {"voltage-drop-excessive": {"level": "error", "percent": 8,
                      "places": {"devices/LAMP": {"percent": 9}, "wires/W1": {"level": "off"}}}},
                    "waivers": {"w": {"rule": "wire-repeated", "at": "wires/W3",
                      "reason": "both are wanted", "until": "2027-06-30", "state": "on"}},
                    "states\"\
                    """)
                .sentences())
        .containsExactly(
            "The limit of voltage-drop-excessive is new: level error, percent 8, percent 9 at"
                + " devices/LAMP, switched off at wires/W1.",
            "Waiver w is new: findings of wire-repeated at wires/W3 in state on pass until"
                + " 2027-06-30, because \"both are wanted\".");
    Compared loose =
        with("\"states\"", "\"limits\": {\"wire-repeated\": {\"level\": \"off\"}}, \"states\"");
    assertThat(
            new Compared(Comparison.of(loose.comparison().after(), loose.comparison().before()))
                .sentences())
        .containsExactly("The limit of wire-repeated is gone; it was: switched off.");
  }

  @Test
  void ofALongListOnlyWhatItGainsAndLosesIsTold() {
    String more = "\"SW\": \"on\"}, \"on\": [\"LAMP\", \"FB\"]";
    String other = "\"SW\": \"on\"}, \"on\": [\"FB\"]";
    assertThat(with("\"SW\": \"on\"}, \"on\": [\"LAMP\"]", more).sentences())
        .containsExactly("State on: on gains FB.");
    assertThat(with("\"SW\": \"on\"}, \"on\": [\"LAMP\"]", other).sentences())
        .containsExactly("State on: on loses LAMP and gains FB.");
  }

  @Test
  void spliceMovedAndAnythingElseIsTold() {
    assertThat(with("\"S1\": {}", "\"S1\": {\"at\": \"n1\", \"label\": \"E\"}").sentences())
        .containsExactly(
            "Splice S1 moves from no node of its own to n1.", "S1: label is given, E.");
  }

  @Test
  void aLengthThatIsGivenOnOneSideAloneIsTold() {
    String plain = "\"to\": \"X1:1\"";
    String built = "\"to\": \"X1:1\", \"builtMm\": 410";
    assertThat(with(plain, built).sentences())
        .containsExactly("W3 has a built length now, 410 mm.");
    assertThat(Compared.json(BASE.replace(plain, built), BASE).sentences())
        .containsExactly("W3 has no built length any more; it was 410 mm.");
    assertThat(with(plain, plain + ", \"cutMm\": 400").sentences())
        .containsExactly("W3 has a cut length now, 400 mm.");
  }

  @Test
  void ageOfFindings() {
    Compared doubled = with("\"X1:2\"", "\"X1:1\"");
    assertThat(doubled.comparison().findings().fresh())
        .extracting(finding -> finding.rule())
        .contains("cavity-doubled");
    Compared back =
        new Compared(Comparison.of(doubled.comparison().after(), doubled.comparison().before()));
    assertThat(back.comparison().findings().resolved())
        .extracting(finding -> finding.rule())
        .contains("cavity-doubled");
    assertThat(back.comparison().findings().fresh()).isEmpty();
  }

  @Test
  void findingOnARenamedThingIsKnown() {
    String doubled = BASE.replace("\"X1:2\"", "\"X1:1\"");
    Compared renamed =
        Compared.json(doubled, doubled.replace("\"X1\"", "\"X7\"").replace("X1:", "X7:"));
    assertThat(renamed.comparison().findings().fresh()).isEmpty();
    assertThat(renamed.comparison().findings().known())
        .extracting(finding -> finding.rule())
        .contains("cavity-doubled");
  }

  @Test
  void laidInPlaceInsteadOfCutAndBack() {
    Compared laid = with("\"to\": \"X1:1\"", "\"to\": \"X1:1\", \"laidInPlace\": true");
    assertThat(laid.sentences())
        .containsExactly("W3 is laid in place and cut there instead of cut to length.");
    assertThat(laid.comparison().circuits().same()).isTrue();
    assertThat(with("\"to\": \"X1:1\"", "\"to\": \"X1:1\", \"laidInPlace\": false").sentences())
        .isEmpty();
  }
}
