package org.tugtest.report.sheets.track;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tugtest.benchmark.GeneratedHarness;
import org.tugtest.report.Report;
import org.tugtest.report.html.SampleCar;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class TrackPageTest {
  private static final String LAMP =
      """
      {"format": 1, "title": "Lamp %1$s",
       "devices": {
         "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
         "FB": {"elements": {"f": {"kind": "fuse", "a": "in", "b": "out", "ratingA": 10}}},
         "L": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "ohms": 10}}}},
       "connectors": {"X1": {"housing": "%1$s", "label": "%1$s"}},
       "wires": {
         "W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 1, "cutMm": 200, "circuit": "%1$s"},
         "W2": {"from": "FB:out", "to": "L:1", "areaMm2": 1, "cutMm": 200, "label": "%1$s"},
         "W3": {"from": "L:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 200, "colour": "%1$s"}},
       "states": {"%1$s": {"on": ["L"]}}}
      """;

  private static String page(String json) throws IOException {
    Report report = SampleCar.checked(Map.of("a.harness.json", json), "a.harness.json");
    return Written.html(report);
  }

  private static String room(String page, String id) {
    int start = page.indexOf("<section id=\"" + id + "\"");
    return page.substring(start, page.indexOf("</section>", start));
  }

  private static JsonNode data(String page) {
    Matcher block =
        Pattern.compile(
                "<script type=\"application/json\" id=\"data\">(.*?)</script>", Pattern.DOTALL)
            .matcher(page);
    assertThat(block.find()).isTrue();
    return JsonMapper.shared().readTree(block.group(1));
  }

  @Test
  void escapesWhatFilesSayEverywhere() throws IOException {
    String odd = "</script><img src=x onerror=alert(1)>'&quot;<!-- 🏁" + "xx";
    String page = page(LAMP.formatted(odd).replace("Lamp ", "Lamp \\u202E "));
    assertThat(page.split("<script", -1)).as("the data block and the script alone").hasSize(3);
    assertThat(page).doesNotContain("<img").doesNotContain("\u202E");
    assertThat(data(page).get("wires").get(0).get(7).asString())
        .contains("</script><img", "🏁", "xx");
    assertThat(page).contains("&lt;/script&gt;&lt;img src=x onerror=alert(1)&gt;&#39;&amp;quot;");
  }

  @Test
  void saysWhatTheTableTakesForGranted() throws IOException {
    assertThat(page(LAMP.formatted("plain")))
        .contains("One fault at a time", "wired as the files say; computed, not measured");
  }

  @Test
  void tellsWhatAFaultTakes() throws IOException {
    String page = page(LAMP.formatted("plain"));
    assertThat(page)
        .contains("fuse FB.f blown", "wire W3 broken")
        .contains("<p><b>plain</b>: dead: L.bulb</p>");
    JsonNode clues = data(page).get("clues");
    assertThat(clues.get("faults")).hasSize(4);
    assertThat(clues.get("whole").get(0).asString()).isEqualTo("w");
    assertThat(clues.get("black").asString()).isEqualTo("BAT:-");
  }

  @Test
  void saysThatAnIsolatorIsMissingAndWhatStaysFed() throws IOException {
    assertThat(room(page(LAMP.formatted("plain")), "isolator"))
        .contains("no contact is marked as isolator");
    String isolated =
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
           "ISO": {"elements": {"main": {"kind": "contact", "a": "1", "b": "2", "isolator": true}}},
           "L": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "ohms": 10}}},
           "CLOCK": {"elements": {"it": {"kind": "load", "a": "1", "b": "2", "ohms": 900}}}},
         "wires": {
           "W1": {"from": "BAT:+", "to": "ISO:1", "areaMm2": 1, "cutMm": 200},
           "W2": {"from": "ISO:2", "to": "L:1", "areaMm2": 1, "cutMm": 200},
           "W3": {"from": "L:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 200},
           "W4": {"from": "%s", "to": "CLOCK:1", "areaMm2": 1, "cutMm": 200},
           "W5": {"from": "CLOCK:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 200}}}
        """;
    assertThat(room(page(isolated.formatted("ISO:1")), "isolator"))
        .contains("<b>Still fed:</b>")
        .contains("<li><b>CLOCK.it</b> by ")
        .doesNotContain("<li><b>L.bulb</b>");
    assertThat(room(page(isolated.formatted("ISO:2")), "isolator"))
        .contains("<b>No load stays fed.</b>")
        .contains("1 wire stays live");
  }

  @Test
  void withoutASourceItSaysWhatIsMissing() throws IOException {
    String page =
        page(
            """
            {"format": 1, "sketch": true, "wires": {"W1": {"from": "A:1", "to": "B:1", "colour": "RD"}}}
            """);
    assertThat(page)
        .contains("There is no table of faults: the harness gives no source")
        .contains("what stays live is not known");
    assertThat(data(page).get("volts")).isEmpty();
    assertThat(data(page).get("wires")).hasSize(1);
  }

  @Test
  void anEmptyHarnessHasAPage() throws IOException {
    assertThat(page("{\"format\": 1}")).contains("The files name no connectors.");
  }

  /** So that a telephone can open it, and the mail takes it. */
  @Test
  void tenThousandWiresStayBelowTenMegabytes() throws IOException {
    String page = page(GeneratedHarness.of(10_000, 1));
    assertThat(page.getBytes(StandardCharsets.UTF_8).length).isLessThan(10_000_000);
    assertThat(page).contains("There is no table of faults: 100", "are more than the");
  }
}
