package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** The whole page: from disk, long, narrow, dark, on paper, without script. */
@ExtendWith(OneChromium.class)
class PageInBrowserTest {
  @TempDir Path folder;
  private final Chromium chromium;
  private final ChromeDriver driver;
  private final ReportPages pages;

  PageInBrowserTest(Chromium chromium) {
    this.chromium = chromium;
    this.driver = chromium.driver();
    this.pages = new ReportPages(chromium);
  }

  @Test
  void opensFromDiskWithoutAWordOnTheConsoleAndWithoutARequest() throws IOException {
    Path big = ReportPages.write(folder.resolve("with space #1 100%-ü"), SampleCar.ofWires(2600));
    chromium.requests();
    chromium.complaints();
    for (Path page :
        List.of(pages.broken(), big.resolve("report.html"), pages.index(), pages.car())) {
      chromium.open(page, "");
      String itself = driver.getCurrentUrl();
      pages.answer("R1:1");
      assertThat(chromium.complaints()).as(itself).isEmpty();
      assertThat(chromium.requestsUpTo(itself))
          .as(itself)
          .allMatch(url -> url.equals(itself) || url.startsWith("about:"));
    }
  }

  @Test
  void drawsAndListsOnDemandWhatIsLong() throws IOException {
    Path big =
        ReportPages.write(folder.resolve("big"), SampleCar.ofWires(2600)).resolve("report.html");
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
  void fitsANarrowTelephone() throws IOException {
    chromium.size(360, 740);
    for (Path page : List.of(pages.broken(), pages.index(), pages.car())) {
      chromium.open(page, "");
      pages.answer("XN-DASH:2");
      assertThat(chromium.ask("return document.documentElement.scrollWidth")).isEqualTo("360");
    }
    chromium.open(pages.broken(), "");
    unfold();
    assertThat(chromium.ask("return document.documentElement.scrollWidth")).isEqualTo("360");
    chromium.picture(ReportPages.PICTURES.resolve("narrow.png"));
  }

  @Test
  void canBeReadInLightAndInDark() throws IOException {
    for (String scheme : List.of("light", "dark")) {
      chromium.media("screen", scheme);
      for (Path page : List.of(pages.broken(), pages.car())) {
        chromium.open(page, "");
        pages.answer("XN-DASH:2");
        unfold();
        assertThat(chromium.tooFaint()).as("too little contrast in %s", scheme).isEmpty();
      }
      chromium.open(pages.broken(), "");
      chromium.picture(ReportPages.PICTURES.resolve(scheme + ".png"));
    }
    assertThat(chromium.ask("return getComputedStyle(document.body).backgroundColor"))
        .isNotEqualTo("rgb(246, 245, 240)");
  }

  @Test
  void printsEverythingOnA4() throws IOException {
    Path car = pages.car();
    chromium.open(car, "");
    chromium.click(pages.box("level", "error"));
    chromium.media("print", "dark");
    chromium.size(703, 1000);
    assertThat(driver.findElement(By.id("filter")).isDisplayed()).isFalse();
    assertThat(driver.findElement(By.className("rooms")).isDisplayed()).isFalse();
    for (WebElement says : driver.findElements(By.cssSelector(".finding .says"))) {
      assertThat(says.getSize().getHeight()).as(says.getText()).isPositive();
    }
    chromium.open(pages.broken(), "");
    assertThat(chromium.ask("return document.documentElement.scrollWidth")).isEqualTo("703");
    byte[] pdf = chromium.pdf();
    Files.write(ReportPages.PICTURES.resolve("broken.pdf"), pdf);
    String text = new String(pdf, StandardCharsets.ISO_8859_1);
    assertThat(text).startsWith("%PDF-");
    assertThat(Pattern.compile("/MediaBox \\[0 0 59[45][.0-9]* 84[12]").matcher(text).results())
        .hasSizeGreaterThan(5);
  }

  @Test
  void canBeReadWithoutScript() {
    chromium.scripts(false);
    chromium.open(pages.broken(), "");
    assertThat(pages.text("#ask noscript")).contains("need JavaScript");
    assertThat(driver.findElement(By.id("filter")).isDisplayed()).isFalse();
    assertThat(driver.findElement(By.cssSelector(".finding .says")).isDisplayed()).isTrue();
    assertThat(driver.findElement(By.cssSelector("#faces td.cav")).isDisplayed()).isTrue();
  }

  private void unfold() {
    chromium.ask("for (const fold of document.querySelectorAll('main details')) fold.open = true");
  }
}
