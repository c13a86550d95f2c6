package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.tugtest.benchmark.GeneratedHarness;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.report.Report;
import org.tugtest.report.html.text.Figures;

/** A harness of 10,000 wires, most of which are too thin, and every third on a taken cavity. */
class LargePageTest {
  private static final String ROOT = "large.harness.json";
  private static final Report REPORT = SampleCar.checked(Map.of(ROOT, text()), ROOT);
  private static final byte[] BYTES = SampleCar.written(REPORT).bytes("report.html");
  private static final Document PAGE = Jsoup.parse(new String(BYTES, StandardCharsets.UTF_8));

  private static String text() {
    int[] nth = {0};
    String thin =
        GeneratedHarness.of(10_000, 7)
            .replace("\"ratingA\": 5", "\"ratingA\": 40")
            .replace(
                "\"w1\": {\"areaMm2\": 1.0, \"maxC\": 125}",
                "\"w1\": {\"areaMm2\": 0.2, \"maxC\": 60}");
    return Pattern.compile("\"to\": \"(L\\d+):\\d+\"")
        .matcher(thin)
        .replaceAll(end -> nth[0]++ % 3 == 0 ? "\"to\": \"" + end.group(1) + ":1\"" : end.group());
  }

  private static List<Finding> found() {
    return REPORT.harnesses().get(0).result().standing().stream()
        .map(checked -> checked.finding())
        .toList();
  }

  @Test
  void staysBelowSixMillionBytes() {
    assertThat(found()).hasSizeGreaterThan(9_000);
    assertThat(BYTES.length).isLessThan(6_000_000);
  }

  @Test
  void namesTheParameterWhereTheJsonThatHasTheRestIsNotWritten() {
    String page =
        Jsoup.parse(
                new String(
                    SampleCar.written(REPORT.withJson(false)).bytes("report.html"),
                    StandardCharsets.UTF_8))
            .body()
            .text();
    assertThat(page).contains(" more: with json among tugtest.formats, report.json has them all");
    assertThat(page.replace("with json among tugtest.formats, report.json", ""))
        .doesNotContain("report.json");
  }

  @Test
  void countsTheFindingsThatItDoesNotShow() {
    int shown = PAGE.select("#findings article.finding").size();
    assertThat(shown).isEqualTo(FindingChoice.MOST);
    int left = found().size() - shown;
    assertThat(PAGE.select("#findings-left").text())
        .isEqualTo("and " + Figures.count(left) + " more: report.json has them all");
    int counted =
        PAGE.select("#findings-left ~ .scroll tbody td.num").stream()
            .mapToInt(cell -> Integer.parseInt(cell.text().replace(",", "")))
            .sum();
    assertThat(counted).isEqualTo(left);
    assertThat(PAGE.select(".counts li").first().text())
        .startsWith(
            found().stream().filter(finding -> finding.level() == Level.ERROR).count() + " error");
  }

  @Test
  void showsSomeOfEveryRuleThatFoundSomething() {
    Set<String> rules = new HashSet<>();
    found().forEach(finding -> rules.add(finding.rule()));
    assertThat(new HashSet<>(PAGE.select("article.finding").eachAttr("data-rule")))
        .isEqualTo(rules);
  }

  @Test
  void saysInEveryRoomWhatIsLeftOut() {
    for (String room :
        List.of("findings", "loom", "bundles", "circuits", "fuses", "volts", "faces", "nets")) {
      assertThat(PAGE.select("#" + room).text())
          .as(room)
          .containsPattern("and \\d{1,3}(,\\d{3})* more");
    }
  }

  @Test
  void pointsAtNothingThatItLeavesOut() {
    Set<String> ids = new HashSet<>(PAGE.select("[id]").eachAttr("id"));
    for (Element link : PAGE.select("a[href^=#], use[href^=#]")) {
      assertThat(ids).as(link.outerHtml()).contains(link.attr("href").substring(1));
    }
  }
}
