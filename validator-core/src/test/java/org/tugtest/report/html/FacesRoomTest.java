package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.tugtest.report.Report;

/** The faces of connectors. */
class FacesRoomTest {
  private static final Report BROKEN = SampleCar.broken();

  @Test
  void drawsAConnectorFromBothSides() {
    Document page = SampleCar.page(BROKEN);
    Element face =
        page.select(".face").stream()
            .filter(article -> article.select("h4").text().equals("XN-DASH"))
            .findFirst()
            .orElseThrow();
    assertThat(face.select("caption").eachText())
        .containsExactly("Wire side", "Mating side, mirrored");
    assertThat(row(face, 0)).containsExactly("1", "2", "3", "4", "5", "6", "7", "8");
    assertThat(row(face, 1)).containsExactly("8", "7", "6", "5", "4", "3", "2", "1");
    Element doubled = face.select("td.cav").get(1);
    assertThat(doubled.select(".mark").text()).isEqualTo("doubled");
    assertThat(doubled.select(".w").get(0).text()).isEqualTo("N002 guess OG/BU 0.5 mm²");
    assertThat(doubled.select(".sw").get(0).className()).isEqualTo("sw b-OG s-BU");
    assertThat(face.select("td.cav").get(0).text()).isEqualTo("1 plugged");
  }

  private static List<String> row(Element face, int side) {
    return face.select("table").get(side).select("tr").first().select("b.no").eachText();
  }

  @Test
  void saysWhatCannotBeSeenOfAConnectorWithoutAHousing() {
    Document page =
        SampleCar.page(
            SampleCar.checked(
                Map.of(
                    SampleCar.ROOT,
                    """
                    {"format": 1, "sketch": true, "wires": {"W1": {"from": "R1:2", "to": "R1:10"}}}
                    """),
                SampleCar.ROOT));
    assertThat(page.select("#faces caption").eachText())
        .containsExactly("Cavities in order of their names");
    assertThat(page.select("#faces .face b.no").eachText()).containsExactly("2", "10");
    assertThat(page.select("#faces .face").text()).contains("its housing gives no rows");
    assertThat(page.select("#verdict").text())
        .contains("What to add next", "the area of 1 wire (W1)");
    assertThat(page.select("#totals tbody").last().text()).isEqualTo("R1 not known 2 0 not known");
  }

  @Test
  void drawsNoFacesInAPageThatWouldBeTooLong() {
    Document page = SampleCar.page(SampleCar.ofWires(2600));
    assertThat(page.select("#faces .face").size()).isGreaterThan(200);
    assertThat(page.select("#faces table")).isEmpty();
    assertThat(page.select("#faces noscript").text()).contains("draws its connectors on demand");
  }
}
