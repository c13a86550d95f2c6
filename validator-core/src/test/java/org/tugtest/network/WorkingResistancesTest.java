package org.tugtest.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tugtest.finding.Basis;

class WorkingResistancesTest {
  private static final String WIRE = "\"w\": {\"areaMm2\": 1, \"maxC\": 105, \"milliohmPerM\": 20}";

  private static Resistance of(Built built, String edge, double celsius) {
    Edge found =
        built.network().edges().stream()
            .filter(e -> e.text().equals(edge))
            .findFirst()
            .orElseThrow(() -> new AssertionError(edge));
    return built.facts().operating().resistances().of(found, celsius);
  }

  private static double milliohm(Built built, String edge) {
    return of(built, edge, 20).ohms() * 1000;
  }

  @Test
  void aWireBetweenCavitiesHasACrimpAtEachEnd() {
    Built built =
        Built.sketch(
            "\"parts\": {\"wires\": {" + WIRE + "}}",
            "\"wires\": {\"W1\": {\"from\": \"A:1\", \"to\": \"B:1\", \"part\": \"w\", \"cutMm\":"
                + " 500}}");
    assertThat(milliohm(built, "W1")).isCloseTo(10 + 2 * 0.5, within(1e-9));
    assertThat(of(built, "W1", 120).ohms() * 1000).isCloseTo(10 * 1.393 + 1, within(1e-9));
    assertThat(of(built, "W1", 20).basis()).isEqualTo(Basis.COMMON_PRACTICE);
  }

  @Test
  void everyWayThroughASpliceHasItOnce() {
    Built built =
        Built.sketch(
            "\"defaults\": {\"crimpMilliohm\": 0}",
            "\"parts\": {\"wires\": {"
                + WIRE
                + "},"
                + " \"splices\": {\"s\": {\"areaMinMm2\": 1, \"areaMaxMm2\": 9, \"maxWires\": 4,"
                + " \"milliohm\": 0.6}}}",
            "\"splices\": {\"S1\": {\"part\": \"s\"}}",
            "\"wires\": {\"W1\": {\"from\": \"A:1\", \"to\": \"S1\", \"part\": \"w\", \"cutMm\":"
                + " 100}, \"W2\": {\"from\": \"S1\", \"to\": \"B:1\", \"part\": \"w\", \"cutMm\":"
                + " 100}}");
    assertThat(milliohm(built, "W1") + milliohm(built, "W2")).isCloseTo(4.6, within(1e-9));
  }

  @Test
  void aBladeOnAPinIsAMatedContactAndARingIsBolted() {
    Built built =
        Built.sketch(
            "\"parts\": {\"wires\": {"
                + WIRE
                + "},"
                + " \"terminals\": {\"b\": {\"family\": \"b6.3\", \"side\": \"socket\","
                + " \"areaMinMm2\": 0.5, \"areaMaxMm2\": 2, \"contactMilliohm\": 2,"
                + " \"crimpMilliohm\": 0.3}}}",
            "\"devices\": {\"D\": {\"pins\": {\"1\": {\"family\": \"b6.3\"}, \"2\": {\"family\":"
                + " \"stud-m6\"}, \"3\": {}}}}",
            "\"wires\": {\"W1\": {\"from\": \"D:1\", \"to\": \"A:1\", \"part\": \"w\", \"cutMm\":"
                + " 100, \"fromTerminal\": \"b\"}, \"W2\": {\"from\": \"D:2\", \"to\": \"A:2\","
                + " \"part\": \"w\", \"cutMm\": 100}, \"W3\": {\"from\": \"D:3\", \"to\": \"A:3\","
                + " \"part\": \"w\", \"cutMm\": 100}, \"W4\": {\"from\": \"D:1\", \"to\": \"A:4\","
                + " \"part\": \"w\", \"cutMm\": 100}}");
    assertThat(milliohm(built, "W1")).isCloseTo(2 + 0.3 + 2 + 0.5, within(1e-9));
    assertThat(milliohm(built, "W2")).isCloseTo(2 + 0.5 + 0.1 + 0.5, within(1e-9));
    assertThat(milliohm(built, "W3")).isCloseTo(2 + 0.5 + 0.5, within(1e-9));
    assertThat(milliohm(built, "W4")).isCloseTo(2 + 0.5 + 5 + 0.5, within(1e-9));
  }

  @Test
  void fusesHaveTheirOwnFigureElseThatOfTheTable() {
    Built built =
        Built.sketch(
            "\"parts\": {\"fuses\": {\"f10\": {\"ratingA\": 10, \"style\": \"blade-regular\"},"
                + " \"f7\": {\"ratingA\": 7.5, \"coldMilliohm\": 10.85}}}",
            "\"devices\": {\"FB\": {\"elements\": {\"f1\": {\"kind\": \"fuse\", \"a\": \"in\","
                + " \"b\": \"1\"}, \"f2\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"2\"},"
                + " \"f3\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"3\", \"ratingA\": 20},"
                + " \"t\": {\"kind\": \"fuse\", \"a\": \"in\", \"b\": \"4\", \"electronic\":"
                + " true}}}}",
            "\"fitted\": {\"FB.f1\": \"f10\", \"FB.f2\": \"f7\"}");
    assertThat(milliohm(built, "FB.f1")).isCloseTo(10.9, within(1e-9));
    assertThat(milliohm(built, "FB.f2")).isCloseTo(10.85, within(1e-9));
    assertThat(milliohm(built, "FB.f3")).isCloseTo(109.0 / 20, within(1e-9));
    assertThat(of(built, "FB.t", 20).missing()).isEqualTo("its rating");
    assertThat(of(built, "FB.t", 20).ohms()).isPositive();
  }

  @Test
  void aGivenDefaultIsGivenAndTheFormatsOwnIsCommonPractice() {
    String plug =
        "\"devices\": {\"D\": {\"ports\": {\"P\": {}}}}, \"connectors\": {\"X\": {\"housing\":"
            + " \"h\", \"mates\": \"D\"}}, \"parts\": {\"housings\": {\"h\": {\"side\":"
            + " \"socket\", \"rows\": [[\"1\"]]}}}";
    Built standard = Built.sketch(plug);
    Built given = Built.sketch(plug, "\"defaults\": {\"contactMilliohm\": 3}");
    assertThat(of(standard, "X:1-D:1", 20))
        .isEqualTo(new Resistance(0.005, Basis.COMMON_PRACTICE, ""));
    assertThat(of(given, "X:1-D:1", 20)).isEqualTo(new Resistance(0.003, Basis.GIVEN, ""));
  }
}
