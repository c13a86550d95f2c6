package org.tugtest.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.text.Problem;

class HarnessReaderTest {
  private static final String WORK_LAMP =
      """
      {
        "format": 1, "title": "Work lamp",
        "parts": {
          "wires": {"w1.0": {"areaMm2": 1.0, "maxC": 125}},
          "fuses": {"mini-10": {"ratingA": 10, "style": "blade-mini"}},
          "housings": {
            "lamp-skt": {"side": "socket", "family": "t2.8", "rows": [["1", "2"]], "matesWith": ["lamp-pin"]},
            "lamp-pin": {"side": "pin", "family": "t2.8", "rows": [["2", "1"]]}
          }
        },
        "devices": {
          "BAT": {"at": "rear", "elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6, "ohms": 0.01}}},
          "FB": {"at": "rear", "elements": {"f1": {"kind": "fuse", "a": "in", "b": "1"}, "f2": {"kind": "fuse", "a": "in", "b": "2"}}},
          "SW": {"at": "dash", "positions": ["off", "on"], "elements": {"contact": {"kind": "contact", "a": "1", "b": "2", "ratingA": 16}}},
          "LAMP": {"at": "dash", "ports": {"plug": {"housing": "lamp-pin"}}, "elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35, "atVolts": 12}}}
        },
        "fitted": {"FB.f1": "mini-10"},
        "connectors": {"X1": {"housing": "lamp-skt", "mates": "LAMP"}},
        "wires": {
          "W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 2.5, "cutMm": 150},
          "W2": {"from": "FB:1", "to": "SW:1", "part": "w1.0", "colour": "RD/WH", "circuit": "lamp feed"},
          "W3": {"from": "SW:2", "to": "X1:1", "part": "w1.0", "colour": "YE", "circuit": "lamp"},
          "W4": {"from": "X1:2", "to": "BAT:-", "part": "w1.0", "colour": "BK", "circuit": "return"}
        },
        "layout": {"nodes": {"rear": {}, "dash": {}}, "segments": {"s1": {"from": "rear", "to": "dash", "lengthMm": 2400, "supports": 9}}},
        "states": {"on": {"set": {"SW": "on"}, "on": ["LAMP"]}}
      }
      """;

  private static ReadHarness read(Map<String, String> texts) {
    return new HarnessReader(MemoryFiles.of(texts), ReadLimits.STANDARD).read("car.harness.json");
  }

  @Test
  void readsEverySectionOfTheWorkLamp() {
    ReadHarness read = read(Map.of("car.harness.json", WORK_LAMP));
    Harness harness = read.harness();
    assertThat(read.problems()).isEmpty();
    assertThat(harness.wires().keySet()).containsExactly("W1", "W2", "W3", "W4");
    assertThat(harness.wires().get("W2").from()).isEqualTo(Ref.pin("FB", "1"));
    assertThat(harness.devices().get("BAT").own().elements().get("cell"))
        .isEqualTo(new Element.Source("+", "-", 12.6, 0.01, null, null, false, false, null));
    assertThat(harness.parts().housings().get("lamp-skt").cavityNames()).containsExactly("1", "2");
    assertThat(harness.fitted()).containsExactly(Map.entry("FB.f1", "mini-10"));
    assertThat(harness.layout().segments().get("s1").supports()).isEqualTo(9);
    assertThat(harness.states().get("on").on()).containsExactly(Ref.parse("LAMP"));
  }

  @Test
  void knowsWhereThingsStand() {
    ReadHarness read = read(Map.of("car.harness.json", WORK_LAMP));
    assertThat(read.places().of("wires/W3").shown()).isEqualTo("car.harness.json:22:5");
    assertThat(read.places().of("wires/W3", "colour").shown()).isEqualTo("car.harness.json:22:68");
    assertThat(read.places().of("wires/W3", "colour").pointer()).isEqualTo("/wires/W3/colour");
    assertThat(read.places().of("connectors/X1:2").pointer()).isEqualTo("/connectors/X1");
    assertThat(read.places().of("devices/FB.f2").pointer()).isEqualTo("/devices/FB/elements/f2");
    assertThat(read.places().of("parts/wires/w1.0").shown()).isEqualTo("car.harness.json:4:15");
    assertThat(read.places().of("wires/W9").pointer()).isEqualTo("/wires");
    assertThat(read.places().of("harness").shown()).isEqualTo("car.harness.json:1:1");
  }

  @Test
  void reportsAnIdGivenInTwoFilesWithBothPlaces() {
    ReadHarness read =
        read(
            Map.of(
                "car.harness.json",
                """
                {"format": 1, "uses": ["looms/nose.json"],
                 "wires": {"W1": {"from": "A:1", "to": "B:1", "areaMm2": 1}}}
                """,
                "looms/nose.json",
                """
                {"format": 1, "loom": {"id": "nose"},
                 "splices": {"w1": {"at": "n"}}}
                """));
    assertThat(read.harness().files()).containsExactly("car.harness.json", "looms/nose.json");
    assertThat(read.harness().looms()).containsOnlyKeys("nose");
    assertThat(read.problems()).hasSize(1);
    Problem problem = read.problems().get(0);
    assertThat(problem.kind()).isEqualTo(Problem.Kind.ID_GIVEN_TWICE);
    assertThat(problem.at()).hasSize(2);
  }

  @Test
  void saysWhereAFileThatIsNotThereIsNamed() {
    ReadHarness read =
        read(Map.of("car.harness.json", "{\"format\": 1, \"uses\": [\"parts.json\"]}"));
    assertThat(read.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.kind()).isEqualTo(Problem.Kind.FILE_UNREADABLE);
              assertThat(problem.at().get(0).shown()).isEqualTo("car.harness.json:1:24");
            });
  }

  @Test
  void namesTheFilesThatNoRootUses() {
    MemoryFiles files =
        MemoryFiles.of(
            Map.of(
                "car.harness.json", "{\"format\": 1, \"uses\": [\"a.json\"]}",
                "a.json", "{\"format\": 1}",
                "b.json", "{\"format\": 1}",
                "built/41.record.json", "{\"format\": 1}",
                "changes/rain.json", "{\"format\": 1}",
                "../shared/c.json", "{\"format\": 1}"));
    HarnessReader reader = new HarnessReader(files, ReadLimits.STANDARD);
    assertThat(reader.roots()).containsExactly("car.harness.json");
    assertThat(reader.unused(List.of(reader.read("car.harness.json"))))
        .extracting(Problem::subject)
        .containsExactly("files/b.json");
  }

  @Test
  void keepsTheRestWhenTheRootIsBroken() {
    ReadHarness read = read(Map.of("car.harness.json", "{\"format\": 1,, }"));
    assertThat(read.unread()).isEqualTo(List.of("car.harness.json"));
    assertThat(read.problems())
        .extracting(Problem::kind)
        .containsExactly(Problem.Kind.FILE_UNREADABLE);
  }
}
