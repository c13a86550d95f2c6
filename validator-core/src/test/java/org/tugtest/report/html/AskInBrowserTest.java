package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** The search of the report, and what its answers lead to. */
@ExtendWith(OneChromium.class)
class AskInBrowserTest {
  private final Chromium chromium;
  private final ChromeDriver driver;
  private final ReportPages pages;

  AskInBrowserTest(Chromium chromium) {
    this.chromium = chromium;
    this.driver = chromium.driver();
    this.pages = new ReportPages(chromium);
  }

  @Test
  void answersWhatIsOnAPin() throws IOException {
    chromium.open(pages.broken(), "");
    for (String typed : List.of("XN-DASH:2", "xn-dash 2", "  Xn-Dash : 2 ")) {
      assertThat(pages.answer(typed)).as(typed).isEqualTo("Found 1 contact.");
      WebElement answer = driver.findElement(By.cssSelector(".answer"));
      assertThat(answer.findElements(By.cssSelector("tbody tr")).get(0).getText())
          .contains("N002", "OG/BU", "orange, blue stripe", "0.5 mm²", "S-DASH", "guess");
      assertThat(answer.getText())
          .contains("XN-DASH:2 holds N002 and N004")
          .contains("Meets DASH:31")
          .contains("Net ");
      assertThat(answer.findElements(By.cssSelector("td.here"))).hasSize(2);
    }
    chromium.picture(ReportPages.PICTURES.resolve("answer.png"));
  }

  @Test
  void answersForWiresCircuitsDevicesConnectorsAndSplices() {
    chromium.open(pages.broken(), "");
    assertThat(pages.answer("n002")).isEqualTo("Found 1 wire.");
    assertThat(pages.text(".answer")).contains("from", "S-DASH", "XN-DASH:2", "DASH:31");
    assertThat(pages.answer("dash earth")).isEqualTo("Found 1 circuit.");
    assertThat(pages.text(".answer")).contains("N004");
    assertThat(pages.answer("DASH:31")).isEqualTo("Found 1 contact.");
    assertThat(pages.text(".answer")).contains("Meets XN-DASH:2", "Wires on XN-DASH:2");
    assertThat(pages.answer("s-dash")).isEqualTo("Found 1 splice.");
    assertThat(pages.text(".answer")).contains("N001", "N002", "N003");
    assertThat(pages.answer("xn-dash")).isEqualTo("Found 1 connector.");
    assertThat(pages.text(".answer")).contains("Contacts of XN-DASH", "Wire side", "Mating side");
    assertThat(pages.answer("xn-dash:")).startsWith("Found 16 contacts");
    assertThat(pages.answer("N00")).contains("Found 9 wires");
    assertThat(pages.answer("nonsense")).startsWith("Nothing is called nonsense.");
    assertThat(pages.answer("")).isEmpty();
    assertThat(driver.findElements(By.cssSelector(".answer"))).isEmpty();
  }

  @Test
  void tellsWhatAnEndSaysThatNamesNothing() {
    chromium.open(pages.broken(), "");
    pages.answer("N006");
    assertThat(pages.text(".answer")).contains("IGN:31 (not known)");
  }

  @Test
  void goesOnFromAnAnswerToTheNext() {
    chromium.open(pages.broken(), "");
    pages.answer("XN-DASH:2");
    chromium.click(
        driver.findElement(By.xpath("//div[@id='ask-answer']//button[text()='DASH:31']")));
    assertThat(pages.text(".answer h3")).isEqualTo("DASH:31");
    chromium.click(driver.findElement(By.cssSelector(".finding [data-ask='N004'] button")));
    assertThat(pages.text(".answer h3")).isEqualTo("N004");
    pages.focusIsOn("the answer", "class", "answer");
  }

  @Test
  void drawsInAnAnswerTheFaceThatThePageDraws() {
    chromium.open(pages.broken(), "");
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
  void leadsFromAPinToTheCircuitsThroughIt() {
    chromium.open(pages.broken(), "");
    pages.answer("FRB:33-p");
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
  void unfoldsAgainWhatWasFoldedAfterTheSameLink() {
    chromium.open(pages.broken(), "");
    pages.answer("FRB:33-p");
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
}
