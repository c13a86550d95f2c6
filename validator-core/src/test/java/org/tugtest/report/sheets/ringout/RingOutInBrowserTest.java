package org.tugtest.report.sheets.ringout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.tugtest.built.Intake;
import org.tugtest.built.Told;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadLimits;
import org.tugtest.read.ReadingsReader;
import org.tugtest.report.MemorySink;
import org.tugtest.report.Report;
import org.tugtest.report.html.Chromium;
import org.tugtest.report.html.OneChromium;
import org.tugtest.report.html.SampleCar;
import org.tugtest.report.sheets.DocumentFolder;
import org.tugtest.rule.Judged;
import org.tugtest.rule.Rule;
import org.tugtest.rule.built.ReadingHigh;
import org.tugtest.rule.built.ReadingJoined;
import org.tugtest.rule.built.ReadingOpen;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The ring-out sheet as people use it. Pictures are kept in {@code target/ring-out-pictures}. */
@ExtendWith(OneChromium.class)
class RingOutInBrowserTest {
  private static final Path PICTURES = Path.of("target", "ring-out-pictures");

  /** Limits for everything and for a place; a wire of which no length is known. */
  private static final String BENCH =
      """
      {"format": 1,
       "parts": {"housings": {"h": {"side": "socket", "rows": [["1", "2", "3"], ["4", "5", "6"]]}}},
       "connectors": {"X1": {"housing": "h", "parked": "capped"}, "X2": {"housing": "h", "parked": "capped"}},
       "wires": {
         "W1": {"from": "X1:1", "to": "X2:1", "areaMm2": 0.5, "cutMm": 1000},
         "W2": {"from": "X1:2", "to": "X2:2", "areaMm2": 0.5, "cutMm": 90000},
         "W3": {"from": "X1:3", "to": "X2:3", "areaMm2": 2.5, "cutMm": 500},
         "W4": {"from": "X1:4", "to": "X2:4", "areaMm2": 1},
         "W5": {"from": "X1:5", "to": "X2:5", "areaMm2": 1, "cutMm": 3000}},
       "limits": {
         "reading-open": {"ohms": 60, "places": {"connectors/X1:5": {"ohms": 2}}},
         "reading-high": {"percent": 10, "ohms": 0.02, "places": {"connectors/X1:3": {"ohms": 1}}},
         "reading-joined": {"ohms": 40, "insulationOhms": 500000, "places": {"connectors/X1:1": {"insulationOhms": 2000000}}}}}
      """;

  @TempDir Path folder;
  private final Chromium chromium;

  RingOutInBrowserTest(Chromium chromium) {
    this.chromium = chromium;
  }

  private static MemorySink written(Report report) throws IOException {
    MemorySink sink = new MemorySink();
    new DocumentFolder(List.of(new RingOutSheets())).write(report, sink);
    return sink;
  }

  private void open(MemorySink sink, String page) throws IOException {
    Path to = Files.createDirectories(PICTURES).resolve(page.replace('/', '-'));
    Files.write(to, sink.bytes(page));
    chromium.media("screen", "light");
    chromium.size(1280, 900);
    chromium.open(to, "");
    chromium.ask("localStorage.clear()");
    chromium.open(to, "");
  }

  private static Report bench() {
    return SampleCar.checked(Map.of(Judged.ROOT, BENCH), Judged.ROOT);
  }

  /** The word for what the rules on readings find, by the two points. */
  private static Map<String, String> found(String readings) {
    Map<String, String> files = new TreeMap<>();
    files.put(Judged.ROOT, BENCH);
    files.put("readings/bench.csv", readings);
    Facts plan = Judged.facts(files);
    Intake intake = Told.of(files).orElseThrow().intake(plan);
    assertThat(intake.refused()).isEmpty();
    Facts built = plan.with(intake.asBuilt());
    Map<String, String> found = new TreeMap<>();
    Map<Rule, String> words =
        Map.of(new ReadingOpen(), "open", new ReadingHigh(), "high", new ReadingJoined(), "joined");
    words.forEach(
        (rule, word) -> {
          for (Finding finding : Judged.of(rule, built).findings()) {
            List<Subject> subjects = finding.subjects();
            found.put(subjects.get(0).id() + " " + subjects.get(1).id(), word);
          }
        });
    return found;
  }

  @Test
  void answersAsTheRulesOnReadingsDo() throws IOException {
    open(written(bench()), "ring-out.html");
    int rows = Integer.parseInt(chromium.ask("return Number(document.getElementById('bar').max)"));
    assertThat(rows).isGreaterThan(10);
    List<String> values =
        new ArrayList<>(List.of("open", "joined", "0", "0.02", "0.1", "0.5", "1.1"));
    values.addAll(List.of("1.99", "2", "3.2", "3.9", "39.99", "40", "59.9", "60", "100", "499999"));
    values.addAll(List.of("500000", "1999999", "2000000", "10000000000"));
    for (Row row : rows()) {
      if (row.limitOhms() != null) {
        values.add(String.valueOf(row.limitOhms()));
        values.add(
            new BigDecimal(row.limitOhms() + 1e-9)
                .setScale(12, RoundingMode.HALF_UP)
                .toPlainString());
      }
    }
    int bad = 0;
    for (String method : List.of("meter", "insulation", "lamp")) {
      for (String value : values) {
        JsonNode said = JsonMapper.shared().readTree(chromium.ask(judge(value, method)));
        Map<String, String> found = found(said.get("csv").asString());
        for (JsonNode row : said.get("rows")) {
          String pair = row.get("from").asString() + " " + row.get("to").asString();
          assertThat(row.get("says").asString())
              .as("%s by %s, %s", value, method, pair)
              .isEqualTo(found.getOrDefault(pair, "OK"));
          bad += found.containsKey(pair) ? 1 : 0;
        }
      }
    }
    assertThat(bad).isGreaterThan(200);
  }

  private static List<Row> rows() {
    Facts facts = bench().harnesses().get(0).facts();
    return Rows.of(
            facts,
            org.tugtest.bench.ringout.RingOut.of(
                facts, org.tugtest.bench.ringout.Scope.ofLoose(facts)))
        .joined();
  }

  /** One value in every row but those that share their points with another row. */
  private static String judge(String value, String method) {
    return """
    const data = JSON.parse(document.getElementById('data').textContent);
    const seen = new Set();
    const rows = [];
    const readings = [];
    for (const [kind, from, to, limit, open, insulation] of data.rows) {
      const pair = [from, to].sort().join(' ');
      if (!from || seen.has(pair)) continue;
      seen.add(pair);
      const read = {...Judge.typed('%s'), method: '%s'};
      rows.push({from, to, says: Judge.of({kind, limit, open, insulation}, read)});
      readings.push({from, to, ...read, by: '', date: '', note: ''});
    }
    return JSON.stringify({rows, csv: Judge.csv(readings)});
    """
        .formatted(value, method);
  }

  @Test
  void readsWhatPeopleType() throws IOException {
    open(written(bench()), "ring-out.html");
    Map<String, String> typed = new TreeMap<>();
    typed.put("0.35", "0.35,");
    typed.put(" 0,35 ", "0.35,");
    typed.put("2.2k", "2200,");
    typed.put("20M", "20000000,");
    typed.put(">20 MΩ", "20000000,");
    typed.put("12 ohm", "12,");
    typed.put("OL", ",no");
    typed.put("open", ",no");
    typed.put("beeps", ",yes");
    typed.put("0.0000001", "0.0000001,");
    for (String wrong : List.of("abc", "1.2.3", "-5", "5m", "1e3", "99999999999M")) {
      typed.put(wrong, "wrong");
    }
    typed.forEach(
        (text, csv) ->
            assertThat(
                    chromium.ask(
                        """
                        const read = Judge.typed('%s');
                        return read === 'wrong' ? read
                          : Judge.csv([{from: 'A', to: 'B', ...read, method: '', by: '', date: '', note: ''}])
                            .split('\\n')[1].split(',').slice(2, 4).join(',');
                        """
                            .formatted(text)))
                .as(text)
                .isEqualTo(csv));
  }

  @Test
  void savesAFileThatTheReaderTakesWithoutAProblem() throws Exception {
    open(written(SampleCar.whole()), "loom-night-lamps/ring-out.html");
    chromium.complaints();
    WebElement by = one("#by");
    by.sendKeys("bench, \"two\"");
    chromium.ask(
        "const day = document.getElementById('date'); day.value = '2026-11-27';"
            + " day.dispatchEvent(new Event('input'))");
    List<WebElement> boxes = all(".typed");
    boxes.get(0).sendKeys("0,02", Keys.ENTER);
    chromium.driver().switchTo().activeElement().sendKeys("open", Keys.ENTER);
    boxes.get(2).sendKeys("nonsense");
    chromium.click(one("tr[data-row='3'] [data-put='joined']"));
    all(".note").get(1).sendKeys("wire, loose; =1+1");
    assertThat(one("tr[data-row='0'] .answer").getText()).isEqualTo("OK");
    assertThat(one("tr[data-row='1'] .answer").getText()).isEqualTo("open");
    assertThat(one("tr[data-row='2'] .answer").getText()).isEqualTo("not a reading");
    assertThat(one("#progress").getText()).startsWith("3 of ").endsWith(" measured, 1 not OK");
    assertThat(chromium.ask("return document.documentElement.scrollWidth")).isEqualTo("1280");
    chromium.picture(PICTURES.resolve("typed.png"));
    chromium.command(
        "Browser.setDownloadBehavior",
        Map.of("behavior", "allow", "downloadPath", folder.toAbsolutePath().toString()));
    chromium.click(one("#save"));
    Path saved = folder.resolve("ring-out-night-lamps.csv");
    chromium.until("a saved file", () -> assertThat(saved).isNotEmptyFile());
    String text = Files.readString(saved);
    var read =
        new ReadingsReader(MemoryFiles.of(Map.of("readings/a.csv", text)), ReadLimits.STANDARD)
            .read("readings/a.csv");
    assertThat(read.problems()).isEmpty();
    assertThat(read.value()).hasSize(3);
    assertThat(read.value().get(2).ohms()).isEqualTo(0.02);
    assertThat(read.value().get(3).joined()).isFalse();
    assertThat(read.value().get(3).by()).isEqualTo("bench, \"two\"");
    assertThat(read.value().get(3).note()).isEqualTo("wire, loose; =1+1");
    assertThat(read.value().get(4).joined()).isTrue();
    assertThat(chromium.complaints()).isEmpty();
    chromium.driver().navigate().refresh();
    assertThat(one("#progress").getText()).as("kept by the browser").startsWith("3 of ");
    chromium.click(one("#left"));
    assertThat(one("tr[data-row='0']").isDisplayed()).isFalse();
  }

  @Test
  void aBadTieIsNotWrittenAsAPair() throws Exception {
    open(written(bench()), "ring-out.html");
    int last = all("[data-row]").size() - 1;
    WebElement tie = one("tr[data-row='" + last + "'] .typed");
    tie.sendKeys("20M");
    assertThat(one("tr[data-row='" + last + "'] .answer").getText()).isEqualTo("OK");
    tie.clear();
    tie.sendKeys("3k");
    assertThat(one("tr[data-row='" + last + "'] .answer").getText()).isEqualTo("joined");
    chromium.click(one("#save"));
    assertThat(one("#kept").getText()).contains("1 bad tie is not in it");
  }

  @Test
  void fitsATelephoneInLightAndInDarkAndPrints() throws IOException {
    MemorySink sink = written(SampleCar.whole());
    for (String scheme : List.of("light", "dark")) {
      open(sink, "loom-night-lamps/ring-out.html");
      chromium.media("screen", scheme);
      all(".typed").get(0).sendKeys("open");
      all(".typed").get(1).sendKeys("joined");
      all(".typed").get(2).sendKeys("30");
      chromium.picture(PICTURES.resolve("wide-" + scheme + ".png"));
      assertThat(chromium.tooFaint()).as(scheme).isEmpty();
      chromium.size(360, 740);
      assertThat(chromium.ask("return document.documentElement.scrollWidth")).isEqualTo("360");
      chromium.ask("document.querySelector('[data-row]').scrollIntoView()");
      chromium.picture(PICTURES.resolve("narrow-" + scheme + ".png"));
    }
    byte[] pdf = chromium.pdf();
    Files.write(PICTURES.resolve("ring-out.pdf"), pdf);
  }

  private WebElement one(String selector) {
    return chromium.driver().findElement(By.cssSelector(selector));
  }

  private List<WebElement> all(String selector) {
    return chromium.driver().findElements(By.cssSelector(selector));
  }
}
