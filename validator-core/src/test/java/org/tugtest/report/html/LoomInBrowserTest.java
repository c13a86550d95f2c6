package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.Select;

/** The drawing of the loom: runs of wires, shades, labels. */
@ExtendWith(OneChromium.class)
class LoomInBrowserTest {
  private final Chromium chromium;
  private final ChromeDriver driver;
  private final ReportPages pages;

  LoomInBrowserTest(Chromium chromium) {
    this.chromium = chromium;
    this.driver = chromium.driver();
    this.pages = new ReportPages(chromium);
  }

  @Test
  void lightsUpTheWholeRunOfAWire() {
    chromium.open(pages.broken(), "");
    assertThat(lit()).isEmpty();
    WebElement wires = driver.findElement(By.id("run-wire"));
    new Select(wires).selectByVisibleText("N004 · dash earth");
    pages.status(
        "#run-status",
        "N004 from XN-DASH:2 to CHASSIS:dash, stays at its node or has no known run.");
    wires.sendKeys("N001", Keys.ENTER);
    pages.status("#run-status", "N001 from XN1:1 to S-DASH, through n11.");
    assertThat(lit()).hasSize(2).allMatch(title -> title.startsWith("n11: sill – bulkhead"));
    new Select(driver.findElement(By.id("run-arm"))).selectByVisibleText("n7");
    pages.status("#run-status", "14 wires in n7. Point at one or step to it to light up its run.");
    WebElement first = driver.findElement(By.cssSelector("#run-more button"));
    new org.openqa.selenium.interactions.Actions(driver).moveToElement(first).perform();
    chromium.until(
        "the run of the wire pointed at",
        () -> assertThat(pages.text("#run-status")).startsWith(first.getText() + " from "));
    assertThat(lit()).hasSizeGreaterThan(2);
    assertThat(driver.findElements(By.cssSelector(".knot.tip"))).hasSize(4);
    chromium.click(driver.findElement(By.cssSelector("#run-form [type=reset]")));
    pages.status("#run-status", "Nothing is lit.");
    assertThat(lit()).isEmpty();
  }

  @Test
  void shadesTheSegmentsFromTheKeyboard() {
    chromium.open(pages.broken(), "");
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

  @Test
  void laysNoLabelOfADrawingOnAnother() {
    chromium.open(pages.broken(), "");
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

  private List<String> lit() {
    return driver.findElements(By.cssSelector(".lighting .arm.lit title")).stream()
        .map(title -> title.getDomProperty("textContent"))
        .toList();
  }

  private void shaded(String as) {
    chromium.until(
        "a drawing that is shaded " + as,
        () ->
            assertThat(driver.findElement(By.cssSelector("#loom .shades." + as)).isDisplayed())
                .isTrue());
  }
}
