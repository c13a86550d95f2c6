package org.tugtest.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.text.Place;

class HarnessPlacesTest {
  private static final String TEXT =
      """
      {
        "format": 1, "title": "\uD83D\uDE97\uD83D\uDE97",
        "loom": {"id": "nose"},
        "parts": {"wires": {"w1.0": {"areaMm2": 1, "maxC": 125}}},
        "devices": {
          "ECU": {
            "pins": {"30": {"family": "b6.3"}},
            "elements": {"fan": {"kind": "load", "a": "1", "b": "2"}},
            "ports": {"A": {"housing": "h"}}
          }
        },
        "fitted": {"ECU.way": "f"},
        "connectors": {"X1": {"housing": "h", "cavities": {"3": {"blank": true}}}},
        "wires": {
          "W1": {"circuit": "\uD83D\uDE97", "from": "X1:1", "via": ["a", "b"]}, "W2": {}
        },
        "layout": {"nodes": {"n": {}}, "segments": {"s": {"lengthMm": 3}}},
        "limits": {"label-missing": {"level": "off"}}
      }
      """;

  private static Place place(String text, String thing, String... names) {
    return Said.read(Map.of("car.harness.json", text)).places().of(thing, names);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          harness                     |                  | 1:1   |
          harness                     | title            | 2:25  | /title
          files/car.harness.json      |                  | 1:1   |
          looms/nose                  |                  | 3:18  | /loom/id
          parts/wires/w1.0            |                  | 4:23  | /parts/wires/w1.0
          parts/wires/w1.0            | maxC             | 4:54  | /parts/wires/w1.0/maxC
          parts/wires/w9              |                  | 4:13  | /parts/wires
          devices/ECU                 |                  | 6:5   | /devices/ECU
          devices/ECU.fan             |                  | 8:20  | /devices/ECU/elements/fan
          devices/ECU.fan             | a                | 8:49  | /devices/ECU/elements/fan/a
          devices/ECU                 | elements fan b   | 8:59  | /devices/ECU/elements/fan/b
          devices/ECU.A               |                  | 9:17  | /devices/ECU/ports/A
          devices/ECU:30              |                  | 7:16  | /devices/ECU/pins/30
          devices/ECU:31              |                  | 6:5   | /devices/ECU
          devices/ECU.none            |                  | 6:5   | /devices/ECU
          fitted/ECU.way              |                  | 12:14 | /fitted/ECU.way
          fitted/ECU.gone             |                  | 12:3  | /fitted
          connectors/X1:3             |                  | 13:54 | /connectors/X1/cavities/3
          connectors/X1:3             | blank            | 13:69 | /connectors/X1/cavities/3/blank
          connectors/X1:4             |                  | 13:18 | /connectors/X1
          connectors/X1:4             | blank            | 13:18 | /connectors/X1
          wires/W1                    | circuit          | 15:23 | /wires/W1/circuit
          wires/W1                    | from             | 15:37 | /wires/W1/from
          wires/W1                    | via              | 15:45 | /wires/W1/via
          wires/W1                    | via 1            | 15:58 | /wires/W1/via/1
          wires/W1                    | via 2            | 15:45 | /wires/W1/via
          wires/W1                    | colour           | 15:5  | /wires/W1
          wires/W2                    |                  | 15:65 | /wires/W2
          wires/W3                    |                  | 14:3  | /wires
          nodes/n                     |                  | 17:24 | /layout/nodes/n
          segments/s                  | lengthMm         | 17:65 | /layout/segments/s/lengthMm
          limits/label-missing        | level            | 18:41 | /limits/label-missing/level
          groups/G1                   |                  | 1:1   |
          waivers/none                |                  | 1:1   |
          """)
  void findsThings(String thing, String names, String at, String pointer) {
    String[] path = names == null ? new String[0] : names.split(" ", -1);
    Place place = place(TEXT, thing, path);
    assertThat(place.line() + ":" + place.column()).isEqualTo(at);
    assertThat(place.pointer()).isEqualTo(pointer == null ? "" : pointer);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\r\n", "\r", "\n"})
  void isRightWithEveryLineEnd(String lineEnd) {
    Place place = place(TEXT.replace("\n", lineEnd), "wires/W1", "from");
    assertThat(place.line()).isEqualTo(15);
    assertThat(place.column()).isEqualTo(37);
    assertThat(place.endColumn()).isEqualTo(43);
  }

  @Test
  void isRightWithTabsAndAMark() {
    String text = "\uFEFF{\"format\": 1,\n\t\"wires\":\t{\t\"W1\": {\"from\":\t\"X:1\"}}}";
    assertThat(place(text, "wires/W1", "from").shown()).isEqualTo("car.harness.json:2:28");
    assertThat(place("\uFEFF{\"format\": 1, \"title\": \"x\"}", "harness", "title").column())
        .isEqualTo(24);
  }

  @Test
  void readsEscapedNames() {
    String text =
        "{\"form\\u0061t\": 1, \"w\\u0069res\": {\"W\\u0031\": {\"fr\\u006fm\": \"A:1\"}}}";
    Place place = place(text, "wires/W1", "from");
    assertThat(place.column()).isEqualTo(60);
    assertThat(place.pointer()).isEqualTo("/wires/W1/from");
  }

  @Test
  void writesPointersWithEscapes() {
    String text = "{\"format\": 1, \"limits\": {\"r\": {\"places\": {\"wires/W~1\": {\"x\": 1}}}}}";
    assertThat(place(text, "limits/r", "places", "wires/W~1", "x").pointer())
        .isEqualTo("/limits/r/places/wires~1W~01/x");
  }

  @Test
  void looksThroughAllFilesOfTheRoot() {
    ReadHarness read =
        Said.read(
            Map.of(
                "car.harness.json", "{\"format\": 1, \"uses\": [\"a.json\", \"b.json\"]}",
                "a.json", "{\"format\": 1, \"loom\": {\"id\": \"nose\"}, \"wires\": {\"W1\": {}}}",
                "b.json", "{\"format\": 1, \"loom\": {\"id\": \"nose\", \"stage\": \"found\"}}"));
    assertThat(read.places().of("wires/W1").file()).isEqualTo("a.json");
    assertThat(read.places().of("looms/nose").file()).isEqualTo("a.json");
    assertThat(read.places().of("looms/nose", "stage").shown()).isEqualTo("b.json:1:47");
    assertThat(read.places().of("files/b.json").shown()).isEqualTo("b.json:1:1");
    assertThat(read.places().of("wires/W2").pointer()).isEqualTo("/wires");
  }
}
