package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.tugtest.report.Report;

/** What each room of a page holds, and says when it has nothing to hold. */
class RoomsTest {
  private static final Report WHOLE = SampleCar.whole();

  @Test
  void countsWhatIsThere() {
    Document page = SampleCar.page(WHOLE);
    int wires = WHOLE.harnesses().get(0).facts().harness().wires().size();
    assertThat(page.select("#totals .tiles div").eachText()).contains("wires " + wires);
    int byLoom =
        page.select("#totals table:has(caption:contains(Looms)) tbody tr").stream()
            .mapToInt(row -> Integer.parseInt(row.select("td.num").first().text()))
            .sum();
    assertThat(byLoom).isEqualTo(wires);
  }

  @Test
  void listsEveryNetWithItsPointsAndWires() {
    Document page =
        SampleCar.page(
            SampleCar.checked(
                Map.of(
                    SampleCar.ROOT,
                    """
                    {"format": 1, "sketch": true, "wires": {
                      "W1": {"from": "R1:1", "to": "S1", "circuit": "feed"},
                      "W2": {"from": "S1", "to": "R2:1"},
                      "W3": {"from": "R1:2", "to": "R2:2"}}}
                    """),
                SampleCar.ROOT));
    assertThat(page.select("#nets tbody tr").eachText())
        .containsExactly("R1:1 feed R1:1 R2:1 S1 W1 W2", "R1:2 R1:2 R2:2 W3");
  }

  @Test
  void hasARoomForEachQuestion() {
    Document page = SampleCar.page(WHOLE);
    for (String room :
        List.of(
            "loom",
            "bundles",
            "circuits",
            "fuses",
            "protection",
            "isolation",
            "volts",
            "what-if")) {
      assertThat(page.select("#" + room)).as(room).hasSize(1);
      assertThat(page.select("nav a[href=#" + room + "]")).as(room).hasSize(1);
    }
    assertThat(page.select("svg[role=img]:not([aria-label])")).isEmpty();
    assertThat(page.select("#loom svg, #bundles svg.cross, svg.loop, svg.timechart"))
        .hasSizeGreaterThan(100);
  }

  @Test
  void letsNoTextBecomeMarkupInTheRooms() {
    Document page =
        SampleCar.page(
            SampleCar.checked(
                Map.of(
                    SampleCar.ROOT,
                    """
                    {"format": 1, "devices": {
                       "B": {"elements": {"c": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
                       "F": {"elements": {"f": {"kind": "fuse", "a": "1", "b": "2", "ratingA": 5, "style": "<img src=x onerror=y>"}}},
                       "L": {"elements": {"l": {"kind": "load", "a": "1", "b": "2", "amps": 1}}}},
                     "wires": {
                       "V": {"from": "B:+", "to": "F:1", "areaMm2": 1, "circuit": "</script><img src=x>"},
                       "W": {"from": "F:2", "to": "L:1", "areaMm2": 1},
                       "X": {"from": "L:2", "to": "B:-", "areaMm2": 1}}}
                    """),
                SampleCar.ROOT));
    assertThat(page.select("img, [onerror]")).isEmpty();
    assertThat(page.select("script")).hasSize(2);
    assertThat(page.select("#fuses").text()).contains("<img src=x onerror=y>");
  }

  @Test
  void asksToMendWhatCannotBeReadBeforeItAsksForMore() {
    Map<String, String> files = new TreeMap<>(SampleCar.files());
    files.remove("layout.json");
    files.computeIfPresent("looms/nose.json", (path, text) -> text.substring(0, 3000));
    Document page = SampleCar.page(SampleCar.checked(files, SampleCar.ROOT));
    assertThat(page.select("#verdict").text())
        .contains("What to do first")
        .contains("Mend src/main/harness/layout.json, src/main/harness/looms/nose.json.")
        .doesNotContain("What to add next");
    assertThat(page.select("nav.rooms .unread").text())
        .startsWith("Not read: src/main/harness/layout.json, src/main/harness/looms/nose.json.");
    assertThat(page.select("#loom figcaption").text()).contains("No layout could be read: ");
    assertThat(page.select("#loom .arm.bent")).isEmpty();
  }

  @Test
  void saysInEveryRoomWhyItIsEmpty() {
    Document page =
        SampleCar.page(
            SampleCar.checked(Map.of(SampleCar.ROOT, "{\"format\": 1}"), SampleCar.ROOT));
    for (Element room : page.select("section.room")) {
      assertThat(room.select("p, table, dl").text()).as(room.id()).isNotBlank();
      assertThat(page.select("nav a[href=#" + room.id() + "]")).as(room.id()).hasSize(1);
    }
    assertThat(page.select("#bundles").text()).contains("no wire runs along a segment");
    assertThat(page.select("#isolation").text()).contains("No device has a source");
    assertThat(page.select("#what-if").text()).contains("No load is fed");
    assertThat(page.select("#protection").text()).contains("No fuse is fitted");
  }
}
