package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.Select;
import org.tugtest.report.MemorySink;
import org.tugtest.report.Report;
import org.tugtest.report.Sample;

/** The pages as people use them. Pictures are kept in {@code target/report-pictures}. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReportInBrowserTest {
  private static final Path PICTURES = Path.of("target", "report-pictures");

  @TempDir Path folder;
  private Chromium chromium;
  private ChromeDriver driver;
  private Path broken;
  private Path sample;

  @BeforeAll
  void start(@TempDir Path profile) throws IOException {
    chromium = Chromium.start(profile);
    driver = chromium.driver();
    Files.createDirectories(PICTURES);
    broken = write(PICTURES.resolve("broken"), SampleCar.broken()).resolve("report.html");
    sample = write(PICTURES.resolve("sample"), Sample.report());
  }

  private static Path write(Path folder, Report report) throws IOException {
    Files.createDirectories(folder);
    MemorySink sink = SampleCar.written(report);
    for (String file : sink.paths()) {
      Files.write(folder.resolve(file), sink.bytes(file));
    }
    return folder;
  }

  @AfterAll
  void stop() {
    if (chromium != null) {
      chromium.close();
    }
  }

  @BeforeEach
  void desk() {
    chromium.scripts(true);
    chromium.size(1280, 900);
    chromium.media("screen", "light");
  }

  @Test
  void opensFromDiskWithoutAWordOnTheConsoleAndWithoutARequest() throws IOException {
    Path big = write(folder.resolve("with space #1 100%-ü"), SampleCar.ofWires(2600));
    chromium.requests();
    chromium.complaints();
    for (Path page :
        List.of(
            broken,
            big.resolve("report.html"),
            sample.resolve("report.html"),
            sample.resolve("report-car.html"))) {
      chromium.open(page, "");
      String itself = driver.getCurrentUrl();
      answer("R1:1");
      assertThat(chromium.complaints()).as(itself).isEmpty();
      assertThat(chromium.requestsUpTo(itself))
          .as(itself)
          .allMatch(url -> url.equals(itself) || url.startsWith("about:"));
    }
  }

  @Test
  void answersWhatIsOnAPin() throws IOException {
    chromium.open(broken, "");
    for (String typed : List.of("XN-DASH:2", "xn-dash 2", "  Xn-Dash : 2 ")) {
      assertThat(answer(typed)).as(typed).isEqualTo("Found 1 contact.");
      WebElement answer = driver.findElement(By.cssSelector(".answer"));
      assertThat(answer.findElements(By.cssSelector("tbody tr")).get(0).getText())
          .contains("N002", "OG/BU", "orange, blue stripe", "0.5 mm²", "S-DASH", "guess");
      assertThat(answer.getText())
          .contains("XN-DASH:2 holds N002 and N004")
          .contains("Meets DASH:31")
          .contains("Net ");
      assertThat(answer.findElements(By.cssSelector("td.here"))).hasSize(2);
    }
    chromium.picture(PICTURES.resolve("answer.png"));
  }

  @Test
  void answersForWiresCircuitsDevicesConnectorsAndSplices() {
    chromium.open(broken, "");
    assertThat(answer("n002")).isEqualTo("Found 1 wire.");
    assertThat(text(".answer")).contains("from", "S-DASH", "XN-DASH:2", "DASH:31");
    assertThat(answer("dash earth")).isEqualTo("Found 1 circuit.");
    assertThat(text(".answer")).contains("N004");
    assertThat(answer("DASH:31")).isEqualTo("Found 1 contact.");
    assertThat(text(".answer")).contains("Meets XN-DASH:2", "Wires on XN-DASH:2");
    assertThat(answer("s-dash")).isEqualTo("Found 1 splice.");
    assertThat(text(".answer")).contains("N001", "N002", "N003");
    assertThat(answer("xn-dash")).isEqualTo("Found 1 connector.");
    assertThat(text(".answer")).contains("Contacts of XN-DASH", "Wire side", "Mating side");
    assertThat(answer("xn-dash:")).startsWith("Found 16 contacts");
    assertThat(answer("N00")).contains("Found 9 wires");
    assertThat(answer("nonsense")).startsWith("Nothing is called nonsense.");
    assertThat(answer("")).isEmpty();
    assertThat(driver.findElements(By.cssSelector(".answer"))).isEmpty();
  }

  @Test
  void tellsWhatAnEndSaysThatNamesNothing() {
    chromium.open(broken, "");
    answer("N006");
    assertThat(text(".answer")).contains("IGN:31 (not known)");
  }

  @Test
  void goesOnFromAnAnswerToTheNext() {
    chromium.open(broken, "");
    answer("XN-DASH:2");
    chromium.click(
        driver.findElement(By.xpath("//div[@id='ask-answer']//button[text()='DASH:31']")));
    assertThat(text(".answer h3")).isEqualTo("DASH:31");
    chromium.click(driver.findElement(By.cssSelector(".finding [data-ask='N004'] button")));
    assertThat(text(".answer h3")).isEqualTo("N004");
    focusIsOn("the answer", "class", "answer");
  }

  @Test
  void drawsInAnAnswerTheFaceThatThePageDraws() {
    chromium.open(broken, "");
    String differing =
        chromium.ask(
            """
            const box = document.getElementById('ask-box');
            const said = node => node.querySelector('.sides').textContent.replace(/\\s+/g, '');
            let differing = '';
            for (const face of document.querySelectorAll('article.face')) {
              box.value = face.querySelector('h4').textContent;
              document.getElementById('ask-form').requestSubmit();
              const drawn = document.querySelector('.answer');
              if (said(drawn) !== said(face).replace(/Howthecavitieslie.*/, '')) differing += box.value + ' ';
            }
            return differing;
            """);
    assertThat(differing).isEmpty();
  }

  @Test
  void filtersTheFindings() {
    chromium.open(sample.resolve("report-car.html"), "");
    assertThat(shown()).hasSize(8);
    chromium.click(box("level", "error"));
    status("#filter-status", "3 of 8 findings shown.");
    chromium.click(box("waived", null));
    chromium.click(box("level", "error"));
    status("#filter-status", "7 of 8 findings shown.");
    new Select(driver.findElement(By.name("rule"))).selectByValue("sample-volts");
    assertThat(shown()).hasSize(1);
    chromium.click(driver.findElement(By.cssSelector("#filter [type=reset]")));
    status("#filter-status", "All 8 findings shown.");
  }

  @Test
  void filtersByLoom() {
    chromium.open(broken, "");
    int all = shown().size();
    Select loom = new Select(driver.findElement(By.name("loom")));
    loom.selectByValue("nose");
    chromium.until(
        "the findings of the loom nose alone",
        () ->
            assertThat(shown())
                .hasSizeLessThan(all)
                .isNotEmpty()
                .allMatch(
                    finding ->
                        List.of(finding.getDomAttribute("data-looms").split(" "))
                            .contains("nose")));
  }

  @Test
  void unfoldsWhatFollowsWhenALinkLeadsThere() {
    Path car = sample.resolve("report-car.html");
    chromium.open(car, "");
    String id = chromium.ask("return document.querySelector('details.follow .finding').id");
    assertThat(driver.findElement(By.id(id)).isDisplayed()).isFalse();
    chromium.open(car, "#" + id);
    chromium.until(
        "the finding, unfolded",
        () -> assertThat(driver.findElement(By.id(id)).isDisplayed()).isTrue());
  }

  @Test
  void unfoldsAgainWhatWasFoldedAfterTheSameLink() {
    chromium.open(broken, "");
    answer("FRB:33-p");
    WebElement link =
        driver.findElement(By.xpath("//div[@id='ask-answer']//a[text()='PUMP.motor']"));
    WebElement circuit = driver.findElement(By.cssSelector(link.getDomAttribute("href")));
    for (int i = 0; i < 2; i++) {
      chromium.click(link);
      chromium.until(
          "the circuit, unfolded", () -> assertThat(circuit.getDomAttribute("open")).isNotNull());
      chromium.ask("document.querySelector('.circuit[open]').open = false");
    }
  }

  @Test
  void isUsedWithTheKeyboardAlone() {
    chromium.open(broken, "");
    press(Keys.TAB);
    chromium.until(
        "the link past the bar, in sight",
        () -> {
          assertThat(focused()).isEqualTo("Skip to the report");
          assertThat(driver.switchTo().activeElement().getLocation().getX()).isNotNegative();
        });
    press(Keys.TAB);
    chromium.until("the first room", () -> assertThat(focused()).isEqualTo("Verdict"));
    assertThat(chromium.ask("return getComputedStyle(document.activeElement).outlineStyle"))
        .isEqualTo("solid");
    press(Keys.TAB);
    press(Keys.ENTER);
    chromium.until(
        "the room of the search",
        () -> assertThat(chromium.ask("return location.hash")).isEqualTo("#ask"));
    chromium.settle();
    for (int i = 0; i < 3 && !"ask-box".equals(focusedId()); i++) {
      press(Keys.TAB);
      chromium.settle();
    }
    focusIsOn("the box of the search", "id", "ask-box");
    driver.switchTo().activeElement().sendKeys("xn-dash 2", Keys.ENTER);
    focusIsOn("the answer", "class", "answer");
    press(Keys.TAB);
    focusIsOn("the first link of the answer", "href", "#finding-");
  }

  @Test
  void fitsANarrowTelephone() throws IOException {
    chromium.size(360, 740);
    for (Path page :
        List.of(broken, sample.resolve("report.html"), sample.resolve("report-car.html"))) {
      chromium.open(page, "");
      answer("XN-DASH:2");
      assertThat(chromium.ask("return document.documentElement.scrollWidth")).isEqualTo("360");
    }
    chromium.open(broken, "");
    unfold();
    assertThat(chromium.ask("return document.documentElement.scrollWidth")).isEqualTo("360");
    chromium.picture(PICTURES.resolve("narrow.png"));
  }

  @Test
  void canBeReadInLightAndInDark() throws IOException {
    for (String scheme : List.of("light", "dark")) {
      chromium.media("screen", scheme);
      for (Path page : List.of(broken, sample.resolve("report-car.html"))) {
        chromium.open(page, "");
        answer("XN-DASH:2");
        unfold();
        assertThat(
                chromium.ask(
                    Files.readString(
                        Path.of("src/test/resources/org/tugtest/report/html/contrast.js"))))
            .as("too little contrast in %s", scheme)
            .isEmpty();
      }
      chromium.open(broken, "");
      chromium.picture(PICTURES.resolve(scheme + ".png"));
    }
    assertThat(chromium.ask("return getComputedStyle(document.body).backgroundColor"))
        .isNotEqualTo("rgb(246, 245, 240)");
  }

  @Test
  void printsEverythingOnA4() throws IOException {
    Path car = sample.resolve("report-car.html");
    chromium.open(car, "");
    chromium.click(box("level", "error"));
    chromium.media("print", "dark");
    chromium.size(703, 1000);
    assertThat(driver.findElement(By.id("filter")).isDisplayed()).isFalse();
    assertThat(driver.findElement(By.className("rooms")).isDisplayed()).isFalse();
    for (WebElement says : driver.findElements(By.cssSelector(".finding .says"))) {
      assertThat(says.getSize().getHeight()).as(says.getText()).isPositive();
    }
    chromium.open(broken, "");
    assertThat(chromium.ask("return document.documentElement.scrollWidth")).isEqualTo("703");
    chromium.media("", "light");
    byte[] pdf =
        Base64.getDecoder()
            .decode(
                chromium
                    .command("Page.printToPDF", Map.of("preferCSSPageSize", true))
                    .get("data")
                    .toString());
    Files.write(PICTURES.resolve("broken.pdf"), pdf);
    String text = new String(pdf, StandardCharsets.ISO_8859_1);
    assertThat(text).startsWith("%PDF-");
    assertThat(Pattern.compile("/MediaBox \\[0 0 59[45][.0-9]* 84[12]").matcher(text).results())
        .hasSizeGreaterThan(5);
  }

  @Test
  void canBeReadWithoutScript() {
    chromium.scripts(false);
    chromium.open(broken, "");
    assertThat(text("#ask noscript")).contains("need JavaScript");
    assertThat(driver.findElement(By.id("filter")).isDisplayed()).isFalse();
    assertThat(driver.findElement(By.cssSelector(".finding .says")).isDisplayed()).isTrue();
    assertThat(driver.findElement(By.cssSelector("#faces td.cav")).isDisplayed()).isTrue();
  }

  @Test
  void drawsAndListsOnDemandWhatIsLong() throws IOException {
    Path big = write(folder.resolve("big"), SampleCar.ofWires(2600)).resolve("report.html");
    chromium.open(big, "");
    assertThat(driver.findElements(By.cssSelector("#faces table"))).isEmpty();
    chromium.click(driver.findElement(By.cssSelector("#faces [data-draw] button")));
    assertThat(driver.findElements(By.cssSelector("#faces table"))).hasSize(2);
    WebElement more = driver.findElement(By.cssSelector("[data-list]"));
    WebElement all = more.findElement(By.xpath(".."));
    int first = all.findElements(By.tagName("span")).size();
    chromium.ask(
        "for (const fold of document.querySelectorAll('#coverage details')) fold.open = true");
    more.findElement(By.tagName("button")).sendKeys(Keys.ENTER);
    assertThat(all.findElements(By.tagName("span")).size()).isGreaterThan(first);
  }

  @Test
  void lightsUpTheWholeRunOfAWire() {
    chromium.open(broken, "");
    assertThat(lit()).isEmpty();
    WebElement wires = driver.findElement(By.id("run-wire"));
    new Select(wires).selectByVisibleText("N004 · dash earth");
    status(
        "#run-status",
        "N004 from XN-DASH:2 to CHASSIS:dash, stays at its node or has no known run.");
    wires.sendKeys("N001", Keys.ENTER);
    status("#run-status", "N001 from XN1:1 to S-DASH, through n11.");
    assertThat(lit()).hasSize(2).allMatch(title -> title.startsWith("n11: sill – bulkhead"));
    new Select(driver.findElement(By.id("run-arm"))).selectByVisibleText("n7");
    status("#run-status", "14 wires in n7. Point at one or step to it to light up its run.");
    WebElement first = driver.findElement(By.cssSelector("#run-more button"));
    new org.openqa.selenium.interactions.Actions(driver).moveToElement(first).perform();
    chromium.until(
        "the run of the wire pointed at",
        () -> assertThat(text("#run-status")).startsWith(first.getText() + " from "));
    assertThat(lit()).hasSizeGreaterThan(2);
    assertThat(driver.findElements(By.cssSelector(".knot.tip"))).hasSize(4);
    chromium.click(driver.findElement(By.cssSelector("#run-form [type=reset]")));
    status("#run-status", "Nothing is lit.");
    assertThat(lit()).isEmpty();
  }

  @Test
  void leadsFromAPinToTheCircuitsThroughIt() {
    chromium.open(broken, "");
    answer("FRB:33-p");
    WebElement link =
        driver.findElement(By.xpath("//div[@id='ask-answer']//a[text()='PUMP.motor']"));
    chromium.click(link);
    WebElement circuit = driver.findElement(By.cssSelector(link.getDomAttribute("href")));
    chromium.until(
        "the circuit, unfolded", () -> assertThat(circuit.getDomAttribute("open")).isNotNull());
    assertThat(circuit.findElement(By.cssSelector("svg.loop")).isDisplayed()).isTrue();
    assertThat(circuit.findElement(By.tagName("summary")).getText())
        .contains("PUMP.motor", "FRB.f21");
  }

  @Test
  void stepsThroughThePageInItsOrderAndAlwaysShowsWhereItIs() {
    chromium.open(broken, "");
    chromium.ask(
        """
        window.steps = [];
        document.addEventListener('focusin', event => {
          const at = event.target;
          const box = at.getBoundingClientRect();
          const bar = document.querySelector('.rooms').getBoundingClientRect();
          const last = window.last;
          const label = at.getAttribute('aria-label') || at.textContent.trim() || at.id
            || (at.labels && at.labels[0] ? at.labels[0].textContent.trim() : '');
          const ring = getComputedStyle(at);
          const wrong = [];
          if (!label && !at.getAttribute('aria-labelledby')) wrong.push('no name');
          if (ring.outlineStyle === 'none') wrong.push('no ring');
          if (last && !(last.compareDocumentPosition(at) & Node.DOCUMENT_POSITION_FOLLOWING)) wrong.push('goes back');
          if (box.bottom < 0 || box.top > innerHeight) wrong.push('out of sight');
          if (!at.closest('.rooms, .mast, .skip') && box.bottom < bar.bottom) wrong.push('under the bar');
          if (wrong.length) window.steps.push(at.tagName + ' ' + label.slice(0, 40) + ': ' + wrong.join(', '));
          window.last = at;
        });
        """);
    for (int i = 0; i < 160; i++) {
      press(Keys.TAB);
    }
    chromium.settle();
    assertThat(chromium.ask("return window.steps.join('; ')")).isEmpty();
    assertThat(chromium.ask("return window.last.closest('section').id")).isNotEqualTo("verdict");
  }

  @Test
  void opensEveryFoldWithTheKeyboard() {
    chromium.open(broken, "");
    for (String room : List.of("circuits", "bundles", "protection", "what-if", "totals")) {
      WebElement fold = driver.findElement(By.cssSelector("#" + room + " details"));
      fold.findElement(By.tagName("summary")).sendKeys(Keys.ENTER);
      chromium.until(
          room + " unfolded", () -> assertThat(fold.getDomAttribute("open")).isNotNull());
      fold.findElement(By.tagName("summary")).sendKeys(Keys.SPACE);
      chromium.until(room + " folded", () -> assertThat(fold.getDomAttribute("open")).isNull());
    }
  }

  @Test
  void shadesTheSegmentsFromTheKeyboard() {
    chromium.open(broken, "");
    assertThat(driver.findElement(By.cssSelector("#loom .shades.of-fill")).isDisplayed()).isFalse();
    String plain =
        chromium.ask(
            "return getComputedStyle(document.querySelector('.loomsvg .fill3 .core')).stroke");
    WebElement none = driver.findElement(By.cssSelector("[name=shade][value='']"));
    none.sendKeys(Keys.ARROW_RIGHT);
    shaded("of-fill");
    assertThat(driver.findElement(By.cssSelector("#loom .shades.of-fill")).getText())
        .contains("70 to 80 %", "over 100 %: does not fit", "not known");
    assertThat(
            chromium.ask(
                "return getComputedStyle(document.querySelector('.loomsvg .fill3 .core')).stroke"))
        .isNotEqualTo(plain);
    assertThat(
            driver.findElements(By.cssSelector(".loomsvg .figure.of-fill")).stream()
                .filter(WebElement::isDisplayed)
                .map(WebElement::getText))
        .hasSizeGreaterThan(10)
        .allMatch(text -> text.isEmpty() || text.endsWith(" %"));
    driver.switchTo().activeElement().sendKeys(Keys.ARROW_RIGHT);
    shaded("of-warm");
    assertThat(driver.findElement(By.cssSelector("#loom .shades.of-warm")).getText())
        .contains("60 to 80 °C");
    assertThat(driver.findElement(By.cssSelector("#loom .shades.of-fill")).isDisplayed()).isFalse();
    driver.switchTo().activeElement().sendKeys(Keys.ARROW_RIGHT);
    chromium.until(
        "a drawing without shades",
        () ->
            assertThat(chromium.ask("return String(document.getElementById('loom').dataset.shade)"))
                .isEqualTo("undefined"));
  }

  private List<String> lit() {
    return driver.findElements(By.cssSelector(".lighting .arm.lit title")).stream()
        .map(title -> title.getDomProperty("textContent"))
        .toList();
  }

  @Test
  void laysNoLabelOfADrawingOnAnother() {
    chromium.open(broken, "");
    assertThat(
            chromium.ask(
                """
                let bad = '';
                for (const svg of document.querySelectorAll('.loomsvg')) {
                  const boxes = [...svg.querySelectorAll('text')].map(text => [text.textContent, text.getBBox()]);
                  boxes.forEach(([one, a], i) => boxes.slice(0, i).forEach(([other, b]) => {
                    if (a.x < b.x + b.width && b.x < a.x + a.width && a.y + 1 < b.y + b.height && b.y + 1 < a.y + a.height)
                      bad += one + ' on ' + other + '; ';
                  }));
                }
                return bad;
                """))
        .isEmpty();
  }

  private void unfold() {
    chromium.ask("for (const fold of document.querySelectorAll('main details')) fold.open = true");
  }

  /** Types into the search box, presses Enter, and gives what the live region says. */
  private String answer(String typed) {
    List<WebElement> boxes = driver.findElements(By.id("ask-box"));
    if (boxes.isEmpty()) {
      return "";
    }
    boxes.get(0).clear();
    boxes.get(0).sendKeys(typed, Keys.ENTER);
    return text("#ask-status");
  }

  private String text(String selector) {
    return driver.findElement(By.cssSelector(selector)).getText();
  }

  /** Waits for what a live region says. */
  private void status(String selector, String says) {
    chromium.until(selector + " that says so", () -> assertThat(text(selector)).isEqualTo(says));
  }

  private void focusIsOn(String awaited, String attribute, String value) {
    chromium.until(
        "the focus on " + awaited,
        () ->
            assertThat(driver.switchTo().activeElement().getDomAttribute(attribute))
                .contains(value));
  }

  private void shaded(String as) {
    chromium.until(
        "a drawing that is shaded " + as,
        () ->
            assertThat(driver.findElement(By.cssSelector("#loom .shades." + as)).isDisplayed())
                .isTrue());
  }

  private WebElement box(String name, String value) {
    return driver.findElement(
        By.cssSelector(
            "#filter [name=" + name + "]" + (value == null ? "" : "[value=" + value + "]")));
  }

  private List<WebElement> shown() {
    return driver.findElements(By.cssSelector(".finding:not([hidden])"));
  }

  private void press(Keys key) {
    driver.switchTo().activeElement().sendKeys(key);
  }

  private String focused() {
    return driver.switchTo().activeElement().getText();
  }

  private String focusedId() {
    return driver.switchTo().activeElement().getDomAttribute("id");
  }
}
